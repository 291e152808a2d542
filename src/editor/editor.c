#include "editor/editor.h"
#include "base/memory.h"
#include "base/spell.h"
#include "editor/price_book.h"

#include <assert.h>
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

enum { NOWHERE = -1 };

struct drawing {
	struct plot plot;
};

/* Of the plot's file without its folder, spelled out. */
static char *name_of(const char *path)
{
	const char *slash = strrchr(path, '/');
	struct text name = TEXT_EMPTY;

	spell(&name, slash ? slash + 1 : path);
	return text_take(&name);
}

void editor_init(struct editor *editor, struct asker *asker, const char *path)
{
	*editor = (struct editor){ .asker = asker, .step = 1, .hand = OPEN_GROUND,
		.frame = 1, .run = 1, .message = TEXT_EMPTY, .no_rescue = TEXT_EMPTY,
		.doing = TEXT_EMPTY };
	store_open(&editor->store, path);
	editor->is_looking = editor->store.access == STORE_LOOKS;
	editor->name = name_of(path);
	editor->drawing = memory_new(1, sizeof *editor->drawing);
	editor->plot = &editor->drawing->plot;
	plot_init(&editor->drawing->plot);
}

void editor_fini(struct editor *editor)
{
	pages_fini(&editor->pages);
	arena_clear(&editor->arena);
	arena_clear(&editor->drawn);
	price_book_close(editor);
	text_fini(&editor->message);
	text_fini(&editor->no_rescue);
	text_fini(&editor->doing);
	free(editor->spoilt);
	arena_clear(&editor->words);
	history_free(editor->history);
	editor_drop_mark(editor);
	plot_fini(&editor->drawing->plot);
	free(editor->drawing);
	store_close(&editor->store);
	free(editor->name);
}

/* Whether steps were written down; that they were not is said once, and stays in no_rescue. */
static void keep(struct editor *editor, bool is_kept, const struct file_error *error)
{
	if (is_kept) {
		editor->unkept = 0;
		return;
	}
	text_clear(&editor->no_rescue);
	text_add(&editor->no_rescue, error->sentence);
	if (editor->unkept++ == 0)
		editor_say(editor, "No rescue: %s.", error->sentence);
}

static void note(struct editor *editor)
{
	struct file_error error;

	keep(editor, store_note(&editor->store, history_last(editor->history), editor->plot,
		&error), &error);
}

static void hold(struct editor *editor)
{
	struct file_error error;

	keep(editor, store_hold(&editor->store, editor->plot, &error), &error);
}

/* The plot may have moved or changed. */
static void outdate(struct editor *editor)
{
	editor->is_stale = editor->has_moved = true;
	editor->faults = FAULTS_UNKNOWN;
}

void editor_take(struct editor *editor, struct plot *plot, bool is_saved)
{
	plot_fini(&editor->drawing->plot);
	editor->drawing->plot = *plot;
	plot_init(plot);
	history_free(editor->history);
	editor->history = history_new(editor->plot);
	editor->position = 0;
	editor->saved_position = is_saved ? 0 : NOWHERE;
	editor->cursor = (struct place){ 0, 0 };
	editor->snag = 0;
	editor->is_pegged = editor->is_trailing = editor->said_outside = false;
	editor_drop_mark(editor);
	editor->hand = editor->plot->details.legend_count ?
		editor->plot->details.legend[0].letter : OPEN_GROUND;
	pages_fini(&editor->pages);
	editor->has_news = true;
	outdate(editor);
	if (!is_saved)
		hold(editor);
}

void editor_saved(struct editor *editor)
{
	editor->saved_position = editor->position;
	editor->unkept = 0;
	pages_drop_saved(&editor->pages);
}

void editor_move(struct editor *editor, struct store *next)
{
	struct store before = editor->store;

	store_forget(&before);
	editor->store = *next;
	*next = before;
	free(editor->name);
	editor->name = name_of(editor->store.path);
	editor->is_looking = false;
	editor->has_begun = true;
	editor_saved(editor);
	price_book_close(editor); /* its name may lead elsewhere now */
	editor->is_stale = editor->has_news = true;
}

struct plot *editor_edit(struct editor *editor)
{
	editor->is_edited = true;
	outdate(editor);
	return &editor->drawing->plot;
}

enum state editor_state(const struct editor *editor)
{
	if (editor->is_marked)
		return STATE_MARKED;
	if (editor->is_pegged)
		return STATE_PEGGED;
	return editor->is_trailing ? STATE_TRAIL : STATE_REST;
}

bool editor_is_saved(const struct editor *editor)
{
	return editor->position == editor->saved_position && !editor->is_dragging;
}

static void mark(struct editor *editor, struct rectangle r, struct patch carried)
{
	editor_drop_mark(editor);
	editor->marked = r;
	editor->carried = carried;
	editor->shape = ground_copy(&carried.ground);
	editor->is_pegged = editor->is_trailing = false;
	editor->is_marked = true;
}

void editor_mark(struct editor *editor)
{
	struct rectangle r = editor_pegged(editor);

	mark(editor, r, patch_of(editor->plot, r));
}

void editor_mark_region(struct editor *editor)
{
	struct rectangle r;
	struct patch carried = patch_of_region(&editor->drawing->plot, editor->cursor, &r);

	mark(editor, r, carried);
}

void editor_take_in_hand(struct editor *editor, char letter)
{
	editor->hand = letter;
	editor->is_trailing = editor->is_trailing &&
		!plants_find(&editor->plot->details.plants, letter);
}

void editor_drop_mark(struct editor *editor)
{
	if (editor->is_marked) {
		patch_fini(&editor->carried);
		ground_fini(&editor->shape);
	}
	editor->is_marked = false;
}

struct rectangle editor_pegged(const struct editor *editor)
{
	return rectangle_between(editor->peg.x, editor->peg.y, editor->cursor.x, editor->cursor.y);
}

bool editor_stroke(struct editor *editor)
{
	bool is_edited = editor->is_edited;

	editor->is_edited = false;
	if (!history_record(editor->history, editor->plot, editor->doing.bytes))
		return false;
	assert(is_edited); /* else somebody changed the plot past editor_edit */
	(void)is_edited;
	if (editor->saved_position > editor->position)
		editor->saved_position = NOWHERE;
	editor->position++;
	editor->has_news = true;
	note(editor);
	return true;
}

void editor_dragged(struct editor *editor, struct laid laid)
{
	if (laid.changed)
		editor->is_dragging = editor->has_news = true;
}

void editor_end_drag(struct editor *editor)
{
	bool has_laid = editor->is_dragging, has_news = editor->has_news;

	editor->drag = DRAG_NONE;
	editor->is_dragging = false;
	if (!has_laid)
		return;
	editor_stroke(editor);
	editor->has_news = has_news; /* where the drag's end was drawn already its stars stay */
}

/* After a step back or on: `at` is where it happened. The ground may have another size now. Returns
 * the step's name. */
static const char *stepped(struct editor *editor, int by, struct place at)
{
	bool is_there;

	editor->position += by;
	editor->has_news = true;
	outdate(editor);
	if (ground_holds(&editor->plot->ground, at.x, at.y))
		editor->cursor = at;
	editor->cursor = ground_nearest(&editor->plot->ground, editor->cursor);
	editor->peg = ground_nearest(&editor->plot->ground, editor->peg);
	for (int i = 0; i < editor->bend_count; i++)
		editor->bends[i] = ground_nearest(&editor->plot->ground, editor->bends[i]);
	if (!ground_holds(&editor->plot->ground, editor->marked.right, editor->marked.bottom))
		editor_drop_mark(editor);
	is_there = plot_entry(editor->plot, editor->hand) ||
		plants_find(&editor->plot->details.plants, editor->hand);
	editor_take_in_hand(editor, is_there ? editor->hand : OPEN_GROUND);
	note(editor);
	return history_last(editor->history).step->name;
}

const char *editor_take_back(struct editor *editor)
{
	struct place at;

	return history_undo(editor->history, &editor->drawing->plot, &at) ?
		stepped(editor, -1, at) : NULL;
}

const char *editor_put_back(struct editor *editor)
{
	struct place at;

	return history_redo(editor->history, &editor->drawing->plot, &at) ?
		stepped(editor, 1, at) : NULL;
}

int editor_idle(struct editor *editor)
{
	return store_sync(&editor->store);
}

bool editor_has_rescue(const struct editor *editor)
{
	return store_has_place(&editor->store) && editor->unkept == 0;
}

/* Where work lies that was written down. */
static void kept_say(const struct editor *editor, struct text *said)
{
	const struct store *store = &editor->store;
	const char *kept = store->journal.path ? store->journal.path : store->taken;

	if (editor->unkept)
		text_add_sentence(said, "%d %s lost: %s.", editor->unkept,
			editor->unkept == 1 ? "stroke is" : "strokes are", editor->no_rescue.bytes);
	if (kept)
		text_add_sentence(said, "%s kept in %s and offered at the next start.",
			editor->unkept ? "What came before is" :
			"The plot is not saved: its work is", kept);
}

void editor_rescue(struct editor *editor, struct text *said)
{
	struct file_error error;

	editor_end_drag(editor);
	if (!editor->has_begun || editor_is_saved(editor)) {
		store_forget(&editor->store);
		return;
	}
	/* There may be room again. */
	if (editor->unkept && store_hold(&editor->store, editor->plot, &error))
		editor->unkept = 0;
	kept_say(editor, said);
}

void editor_say(struct editor *editor, const char *format, ...)
{
	struct text before = editor->message; /* the arguments may be in it */
	va_list list;

	editor->message = TEXT_EMPTY;
	va_start(list, format);
	text_vprint(&editor->message, format, list);
	va_end(list);
	text_fini(&before);
}

struct report editor_report(const struct editor *editor, struct arena *words)
{
	return (struct report){ .words = words, .plot = editor->plot, .takeoff = &editor->takeoff,
		.units = plot_units(editor->plot) };
}
