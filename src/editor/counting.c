#include "editor/editor.h"
#include "base/stop.h"
#include "editor/price_book.h"
#include "editor/saved.h"
#include "takeoff/sun/plant_sun.h"

#include <assert.h>

static bool has_takeoff(const struct editor *editor)
{
	return !editor->is_stale && !editor->has_news;
}

bool editor_is_counted(const struct editor *editor)
{
	return has_takeoff(editor) && editor->faults != FAULTS_UNKNOWN &&
		editor->pages.pages[editor->page].is_made;
}

static bool faults_refresh(struct editor *editor)
{
	struct mirror mirror = mirror_of(editor->plot);
	int64_t faults;

	if (editor->faults != FAULTS_UNKNOWN)
		return true;
	faults = mirror_faults(&mirror, &editor->plot->ground);
	if (stop_asked())
		return false;
	editor->faults = faults;
	return true;
}

static bool takeoff_refresh(struct editor *editor)
{
	if (has_takeoff(editor))
		return true;
	arena_clear(&editor->arena);
	editor->is_stale = true;
	price_book_refresh(editor);
	if (!takeoff_with_sun(&editor->takeoff, &editor->arena, editor->plot,
		editor->has_book ? &editor->book : NULL)) {
		arena_clear(&editor->arena);
		return false;
	}
	editor->middles = survey_middles(&editor->takeoff.survey, &editor->arena);
	if (stop_asked())
		return false;
	if (editor->has_news)
		pages_renew(&editor->pages);
	editor->is_stale = editor->has_news = false;
	return true;
}

/* What a page is compared with is there for as long as it is made. */
static bool page_refresh(struct editor *editor, int page)
{
	struct saved_plot saved;
	bool is_made;

	if (editor->pages.pages[page].is_made || !page_is_of_saved(page))
		return pages_make(&editor->pages, page, &editor->takeoff, editor->plot, NULL);
	is_made = saved_read(&saved, editor) && pages_make(&editor->pages, page, &editor->takeoff,
		editor->plot, &saved.saved);
	saved_fini(&saved);
	return is_made;
}

bool editor_refresh(struct editor *editor)
{
	return faults_refresh(editor) && takeoff_refresh(editor) &&
		page_refresh(editor, editor->page);
}

bool editor_has_light(const struct editor *editor)
{
	return editor->layer != LAYER_SUN || (has_takeoff(editor) &&
		editor->pages.pages[pages_of_sun()].is_made);
}

bool editor_refresh_light(struct editor *editor)
{
	return editor->layer != LAYER_SUN || (takeoff_refresh(editor) &&
		page_refresh(editor, pages_of_sun()));
}

bool editor_refresh_pages(struct editor *editor)
{
	const int next = (editor->page + 1) % pages_count();
	int page = 0;

	assert(editor_is_counted(editor));
	while (page < pages_count() &&
		((page_is_of_saved(page) && page != next) || page_refresh(editor, page)))
		page++;
	return page == pages_count();
}

int64_t editor_faults(struct editor *editor)
{
	faults_refresh(editor);
	return editor->faults;
}

void editor_draw(struct editor *editor)
{
	if (!editor->has_moved)
		return;
	arena_clear(&editor->drawn);
	editor->fences = fence_map_of(editor->plot, &editor->drawn);
	editor->around = around_map_of(editor->plot, &editor->drawn);
	editor->has_moved = false;
}
