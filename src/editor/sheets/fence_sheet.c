#include "editor/sheets/fence_sheet.h"
#include "base/memory.h"
#include "base/show.h"
#include "plot/edit/fence_lay.h"
#include "editor/ask/block_sheet.h"
#include "editor/sheets/metric.h"

#include <stdlib.h>
#include <string.h>

enum { NAME, FENCE_BLOCK, NEW_FENCE = -1 }; /* fields; the block's follow from FENCE_BLOCK on */

static const struct value_rule name_rule = { .kind = VALUE_TEXT, .least = 1, .most = NAME_MOST };

/* The sheet's owner. */
struct entering {
	struct editor *editor;
	int fence; /* NEW_FENCE: one that is not there yet */
};

/* The one that is there, or NULL. */
static struct fence *fence_of(const struct entering *entering)
{
	return entering->fence == NEW_FENCE ? NULL :
		&entering->editor->plot.details.fences[entering->fence];
}

/* The block as it is so far, owned by the caller. */
static struct block block_of(const struct entering *entering)
{
	const struct fence *fence = fence_of(entering);
	struct block block = { .kind = BLOCK_FENCE };

	if (fence)
		return block_copy(&fence->block);
	if (plot_units(&entering->editor->plot) == UNITS_METRIC)
		metric_fill(&block);
	return block;
}

/* A name that nobody touched is good, be it nothing but blanks. */
static bool name_read(const struct sheet *sheet, struct value *name, struct fault *fault)
{
	const struct fence *fence = fence_of(sheet->owner);
	struct value was = { .set = fence != NULL, .as.text = fence ? fence->name : NULL };

	if (!fence || !sheet_says(sheet, NAME, &was))
		return sheet_read(sheet, NAME, name, fault);
	*name = value_copy(VALUE_TEXT, &was);
	return true;
}

static bool accept(struct sheet *sheet, struct fault *fault)
{
	const struct entering *entering = sheet->owner;
	const struct block_part whole = block_whole(BLOCK_FENCE);
	struct block block = block_of(entering);
	struct value name = { .set = false };
	struct fence *fence = fence_of(entering);

	if (!name_read(sheet, &name, fault) ||
		!block_fields_read(sheet, FENCE_BLOCK, &block, &whole, fault)) {
		block_fini(&block);
		value_fini(VALUE_TEXT, &name);
		return false;
	}
	if (!fence)
		fence = details_add_fence(&entering->editor->plot.details, NULL);
	free(fence->name);
	fence->name = memory_string(name.as.text);
	block_fini(&fence->block);
	fence->block = block;
	value_fini(VALUE_TEXT, &name);
	return true;
}

static bool fill(struct entering *entering, const char *title, const char *name)
{
	const struct block_part whole = block_whole(BLOCK_FENCE);
	struct block block = block_of(entering);
	struct sheet sheet;
	bool is_filled;

	sheet_init(&sheet, FENCE_BLOCK + block_fields(&block, &whole));
	sheet.title = title;
	sheet.done = fence_of(entering) ? "set all this" : "add it";
	sheet.units = plot_units(&entering->editor->plot);
	sheet.accept = accept;
	sheet.owner = entering;
	sheet.fields[NAME].label = "Name";
	sheet.fields[NAME].rule = &name_rule;
	sheet.fields[NAME].required = true;
	sheet_type(&sheet, NAME, name);
	block_fields_set(&sheet, FENCE_BLOCK, &block, &whole);
	is_filled = entering->editor->asker->fill(entering->editor->asker, &sheet);
	sheet_fini(&sheet);
	block_fini(&block);
	return is_filled;
}

struct fence *fence_sheet_begin(struct editor *editor)
{
	struct fence *fence = details_add_fence(&editor->plot.details, memory_string("Fence"));

	if (plot_units(&editor->plot) == UNITS_METRIC)
		metric_fill(&fence->block);
	return fence;
}

bool fence_sheet_change(struct editor *editor, int fence)
{
	struct entering entering = { editor, fence };

	return fill(&entering, "A fence", editor->plot.details.fences[fence].name);
}

bool fence_sheet_add(struct editor *editor)
{
	struct entering entering = { editor, NEW_FENCE };

	if (!fill(&entering, "A new fence", ""))
		return false;
	editor->fence = (int)editor->plot.details.fence_count - 1;
	return true;
}

/* ---- Removing ------------------------------------------------------------------------------- */

/* Which, with its length beside it. */
static int fence_ask(struct editor *editor)
{
	const struct details *details = &editor->plot.details;
	struct arena arena = ARENA_EMPTY;
	const char **answers = arena_new(&arena, details->fence_count, sizeof *answers);
	const char **notes = arena_new(&arena, details->fence_count, sizeof *notes);
	struct question question = { .text = "Remove which fence, with all of it on the plan?",
		.answers = answers, .notes = notes, .count = (int)details->fence_count };
	int answer;

	for (size_t i = 0; i < details->fence_count; i++) {
		struct text length = TEXT_EMPTY;

		show_length(&length, fence_length(&details->fences[i]) * plot_cell(&editor->plot),
			plot_units(&editor->plot));
		answers[i] = details->fences[i].name;
		notes[i] = arena_print(&arena, "%s", length.bytes);
		text_fini(&length);
	}
	answer = editor->asker->choose(editor->asker, &question);
	arena_clear(&arena);
	return answer;
}

bool fence_sheet_remove(struct editor *editor)
{
	struct details *details = &editor->plot.details;
	int fence = fence_ask(editor);

	if (fence == ANSWER_NONE)
		return false;
	fence_fini(&details->fences[fence]);
	details->fence_count--;
	memmove(&details->fences[fence], &details->fences[fence + 1],
		(details->fence_count - (size_t)fence) * sizeof *details->fences);
	return true;
}
