#include "editor/acts/acts.h"
#include "editor/sheets/cells.h"
#include "editor/acts/choice.h"

/* A rectangle is there once a corner is pegged; these acts are also in the list of all acts. */
static bool is_pegged(struct editor *editor)
{
	if (!editor->is_pegged)
		editor_say(editor, "Peg a corner first: Enter, go to the other corner, and Enter again.");
	return editor->is_pegged;
}

void act_fill(struct editor *editor, int key)
{
	(void)key;
	if (!is_pegged(editor))
		return;
	editor->is_pegged = false;
	act_lay_end(editor, lay_rectangle(&editor->plot, editor_pegged(editor), editor->hand),
		ACT_IS_THERE);
}

/* Says what was laid in whole cells, where there is nothing else to say; of a length that had to be rounded
 * in any case. */
static void say_laid(struct editor *editor, const char *what, const struct cells *cells)
{
	struct text length = TEXT_EMPTY;

	length_write(&length, cells->count * plot_cell(&editor->plot), plot_units(&editor->plot));
	if (cells->is_rounded)
		editor_say(editor, "%s of %s, which is rounded to whole cells: %d.%s%s", what,
			length.bytes, cells->count, editor->message.length ? " " : "",
			editor->message.length ? editor->message.bytes : "");
	else if (!editor->message.length)
		editor_say(editor, "%s of %s: %d %s.", what, length.bytes, cells->count,
			cells->count == 1 ? "cell" : "cells");
	text_fini(&length);
}

void act_frame(struct editor *editor, int key)
{
	struct cells cells = { .least = 1, .most = SIDE_MOST, .count = editor->frame };

	(void)key;
	if (!is_pegged(editor) || !cells_ask(editor, "Frame it", "Thickness", &cells))
		return;
	editor->frame = cells.count;
	editor->is_pegged = false;
	act_lay_end(editor, lay_frame(&editor->plot, editor_pegged(editor), cells.count,
		editor->hand), ACT_IS_THERE);
	say_laid(editor, "A thickness", &cells);
}

static int most(int a, int b)
{
	return a > b ? a : b;
}

static int least(int a, int b)
{
	return a < b ? a : b;
}

void act_run(struct editor *editor, int key)
{
	const struct ground *ground = &editor->plot.ground;
	struct cells cells = { .least = 1, .most = SIDE_MOST, .count = editor->run };
	struct rectangle r;

	(void)key;
	if (!is_pegged(editor) || !cells_ask(editor, "Lay a straight run", "Width", &cells))
		return;
	editor->run = cells.count;
	editor->is_pegged = false;
	r = rectangle_run(editor->peg, editor->cursor, cells.count);
	r = (struct rectangle){ most(r.left, 0), most(r.top, 0), least(r.right, ground->columns - 1),
		least(r.bottom, ground->rows - 1) };
	act_lay_end(editor, lay_rectangle(&editor->plot, r, editor->hand), ACT_IS_THERE);
	say_laid(editor, "A width", &cells);
}

static void rectangle_end(struct editor *editor)
{
	static const struct choice choices[] = {
		{ "Fill it", NULL, act_fill }, { "Frame it", NULL, act_frame },
		{ "Lay a straight run", NULL, act_run }, { "Mark it", NULL, act_mark },
		{ "Fence ...", "`", act_fence },
		{ "Take the peg out", "Esc", act_step_back },
	};
	struct rectangle r = editor_pegged(editor);
	struct text words = TEXT_EMPTY;

	editor_name_letter(editor, editor->hand, &words);
	text_add(&words, ", a rectangle of ");
	editor_name_size(editor, r.right - r.left + 1, r.bottom - r.top + 1, &words);
	text_add(&words, ":");
	choice_ask(editor, words.bytes, choices, sizeof choices / sizeof *choices);
	text_fini(&words);
}

void act_peg(struct editor *editor, int key)
{
	(void)key;
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
	editor_say(editor, "Pegged. Go to the opposite corner and press Enter again.");
}
