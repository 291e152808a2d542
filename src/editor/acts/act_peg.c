#include "editor/acts/act_groups.h"
#include "base/number.h"
#include "editor/acts/shared.h"
#include "editor/sheets/cells.h"

static void act_fill(struct editor *editor)
{
	if (!act_has_peg(editor))
		return;
	editor->is_pegged = false;
	act_lay_end(editor, lay_rectangle(editor_edit(editor), editor_pegged(editor), editor->hand),
		ACT_IS_THERE);
}

/* A run is no wider than the plan is across it; a frame no thicker than half the rectangle. */
static struct cells wide_cells(const struct editor *editor, bool is_run)
{
	const struct ground *ground = &editor->plot->ground;
	struct rectangle r = editor_pegged(editor);
	int columns = r.right - r.left + 1, rows = r.bottom - r.top + 1;
	struct cells cells = { .least = 1, .most = most(least(columns, rows) / 2, 1),
		.limit = "no more than half the rectangle" };

	if (is_run)
		cells = (struct cells){ .least = 1,
			.most = columns >= rows ? ground->rows : ground->columns,
			.limit = "no more than the plan" };
	cells.count = least(is_run ? editor->run : editor->frame, cells.most);
	return cells;
}

/* A frame of the rectangle, or a straight run from corner to corner. Says what was laid in whole
 * cells, where there is nothing else to say; that a length was rounded in any case. */
static void act_lay_wide(struct editor *editor, int is_run)
{
	int *last = is_run ? &editor->run : &editor->frame;
	const char *what = is_run ? "A width" : "A thickness", *length;
	const struct cells_question question = {
		.title = is_run ? "Lay a straight run" : "Frame it",
		.label = is_run ? "Width" : "Thickness",
		.meaning = is_run ? "How wide the run is, all of it." :
			"How thick the frame is, from the rectangle's edge inward." };
	struct cells cells;
	struct report report = editor_report(editor, &editor->words);
	struct laid laid;

	if (!act_has_peg(editor))
		return;
	cells = wide_cells(editor, is_run);
	if (!cells_ask(editor, &question, &cells))
		return;
	*last = cells.count;
	editor->is_pegged = false;
	if (is_run)
		laid = lay_rectangle(editor_edit(editor), rectangle_within(rectangle_run(
			editor->peg, editor->cursor, cells.count), &editor->plot->ground),
			editor->hand);
	else
		laid = lay_frame(editor_edit(editor), editor_pegged(editor), cells.count,
			editor->hand);
	act_lay_end(editor, laid, ACT_IS_THERE);
	length = exact_length(&report, cells.count * plot_cell(editor->plot));
	if (cells.is_rounded)
		editor_say(editor, "%s of %s, which is rounded to whole cells: %d.%s%s", what,
			length, cells.count, editor->message.length ? " " : "",
			editor->message.bytes);
	else if (!editor->message.length)
		editor_say(editor, "%s of %s: %d %s.", what, length, cells.count,
			cells.count == 1 ? "cell" : "cells");
}

static void rectangle_end(struct editor *editor)
{
	static const struct choice choices[] = {
		{ .words = "Fill it", .act = ACT_FILL },
		{ .words = "Frame it", .act = ACT_FRAME },
		{ .words = "Lay a straight run", .act = ACT_RUN },
		{ .words = "Mark it", .act = ACT_MARK },
		{ .words = "Fence ...", .act = ACT_FENCE, .by = ACT_FENCE },
		{ .words = "Take the peg out", .act = ACT_STEP_BACK },
	};
	struct rectangle r = editor_pegged(editor);
	struct report report = editor_report(editor, &editor->words);

	choice_ask(editor, say(&report, "%s, a rectangle of %s:",
		plain_letter(&report, editor->hand), plain_cells(&report,
		r.right - r.left + 1, r.bottom - r.top + 1)), choices,
		sizeof choices / sizeof *choices);
}

static void act_peg(struct editor *editor)
{
	if (editor->is_marked) {
		act_mark_ask(editor);
		return;
	}
	if (editor->is_pegged) {
		rectangle_end(editor);
		return;
	}
	editor->is_trailing = false;
	editor->is_pegged = true;
	editor->peg = editor->cursor;
	editor_say(editor, "Pegged. Go to the opposite corner and press %s again.",
		acts_key(ACT_PEG));
}

static const struct act acts[] = {
	{ .id = ACT_PEG, .keys = ONE_KEY(PRESS_ENTER), .key_name = "Enter", .name = "Peg",
		.wish = "peg a rectangle's corners",
		.words = "rectangle corner box square",
		.hints = { [STATE_REST] = "peg", [STATE_PEGGED] = "other corner",
			[STATE_MARKED] = "move, flip" },
		.rank = 2, .writes = true, .run = act_peg },
	{ .id = ACT_FILL, .key_name = "Enter twice", .name = "Fill", .wish = "lay a rectangle",
		.words = "rectangle box square", .writes = true, .run = act_fill },
	{ .id = ACT_FRAME, .key_name = "Enter twice", .name = "Frame",
		.wish = "lay a frame of any thickness",
		.words = "border edge outline rectangle", .writes = true, .run_with = act_lay_wide,
		.with = false },
	{ .id = ACT_RUN, .key_name = "Enter twice", .name = "Straight run",
		.wish = "lay a straight path",
		.words = "line strip road", .writes = true, .run_with = act_lay_wide,
		.with = true },
};
const struct act_group acts_of_peg = ACT_GROUP("Draw", acts);
