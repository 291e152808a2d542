#include "editor/acts/act_groups.h"
#include "base/number.h"
#include "editor/acts/shared.h"
#include "editor/cards/cells.h"

static void act_fill(struct editor *editor)
{
	if (!act_has_peg(editor))
		return;
	editor->is_pegged = false;
	act_lay_end(editor, lay_rectangle(editor_edit(editor), editor_pegged(editor), editor->hand),
		ACT_IS_THERE);
}

/* Says what was laid in whole cells, where there is nothing else to say; that a length was rounded
 * in any case. */
void act_say_cells(struct editor *editor, const char *what, const struct cells *cells)
{
	struct report report = editor_report(editor, &editor->words);
	const char *length = exact_length(&report, cells->count * plot_cell(editor->plot));

	if (cells->is_rounded)
		editor_say(editor, "%s of %s, which is rounded to whole cells: %d.%s%s", what,
			length, cells->count, editor->message.length ? " " : "",
			editor->message.bytes);
	else if (!editor->message.length)
		editor_say(editor, "%s of %s: %d %s.", what, length, cells->count,
			cells->count == 1 ? "cell" : "cells");
}

/* A frame is no thicker than half the rectangle. */
static void act_frame(struct editor *editor)
{
	static const struct cells_question question = { "Frame it", "Thickness", "lay it",
		"How thick the frame is, from the rectangle's edge inward." };
	struct rectangle r = editor_pegged(editor);
	int half = most(least(r.right - r.left + 1, r.bottom - r.top + 1) / 2, 1);
	struct cells cells = { .least = 1, .most = half, .count = least(editor->frame, half),
		.limit = "no more than half the rectangle" };

	if (!act_has_peg(editor) || !cells_ask(editor, &question, &cells))
		return;
	editor->frame = cells.count;
	editor->is_pegged = false;
	act_lay_end(editor, lay_frame(editor_edit(editor), editor_pegged(editor), cells.count,
		editor->hand), ACT_IS_THERE);
	act_say_cells(editor, "A thickness", &cells);
}

static void rectangle_end(struct editor *editor)
{
	static const struct choice choices[] = {
		{ .words = "Fill it", .act = ACT_FILL },
		{ .words = "Frame it", .act = ACT_FRAME },
		{ .words = "Lay a straight run", .act = ACT_RUN },
		{ .words = "Bend the run here and go on", .act = ACT_BEND },
		{ .words = "Round its corners", .act = ACT_ROUNDED },
		{ .words = "Lay a disc in it", .act = ACT_DISC },
		{ .words = "Mark it", .act = ACT_MARK },
		{ .words = "Lay a service line", .act = ACT_SERVICE },
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
	editor->bend_count = 0;
	editor_say(editor, "Pegged. Go to the opposite corner and press %s again.",
		acts_key(ACT_PEG));
}

static const struct act acts[] = {
	{ .id = ACT_PEG, .keys = ONE_KEY(PRESS_ENTER), .key_name = "Enter", .name = "Peg",
		.wish = "peg a rectangle's corners",
		.words = "rectangle corner box square",
		.hints = { [STATE_REST] = "peg", [STATE_PEGGED] = "other corner",
			[STATE_MARKED] = "move, flip" },
		.rank = 1, .writes = true, .run = act_peg },
	{ .id = ACT_FILL, .key_name = "Enter twice", .name = "Fill", .wish = "lay a rectangle",
		.words = "rectangle box square", .writes = true, .lays = true, .run = act_fill },
	{ .id = ACT_FRAME, .key_name = "Enter twice", .name = "Frame",
		.wish = "lay a frame of any thickness",
		.words = "border edge outline rectangle", .writes = true, .lays = true,
		.run = act_frame },
};
const struct act_group acts_of_peg = ACT_GROUP("Draw", acts);
