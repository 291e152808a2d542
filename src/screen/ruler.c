#include "screen/ruler.h"
#include "base/text.h"
#include "report/drawing/scale.h"
#include "screen/bracket.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/borders.h"

/* Characters from one label to the next, at least. */
enum { APART_ACROSS = 8, APART_DOWN = 3 };

/* ---- Labels ---------------------------------------------------------------------------------- */

nm ruler_step(const struct editor *editor, int characters, int cells, int apart)
{
	return scale_step(plot_units(editor->plot),
		(nm)apart * cells * plot_cell(editor->plot) / characters);
}

void ruler_words(const struct editor *editor, nm at, struct text *words)
{
	text_clear(words);
	scale_words(words, at, plot_units(editor->plot));
}

/* One direction of the view: its cells in view, and how many of them characters stand for. */
struct extent {
	int first, last;       /* cells */
	int characters, cells; /* one of them is 1 */
};

/* How far into its cell a length from the plan's edge is, in characters. */
static int inset(const struct editor *editor, const struct extent *extent, nm at)
{
	nm cell = plot_cell(editor->plot);

	return (int)(at % cell * extent->characters / cell);
}

/* The first label at the beginning of the cell or after it. */
static nm first_label(const struct editor *editor, const struct extent *extent, nm step)
{
	return (extent->first * plot_cell(editor->plot) + step - 1) / step * step;
}

/* Leaves out labels that would reach beyond the ruler, or over what is taken. They are shorter than
 * what they are apart. */
static void draw_across(const struct editor *editor, const struct area *ruler,
	const struct extent *extent, const struct bracket *taken)
{
	nm cell = plot_cell(editor->plot);
	nm step = ruler_step(editor, extent->characters, extent->cells, APART_ACROSS);
	struct text words = TEXT_EMPTY;

	for (nm at = first_label(editor, extent, step); at / cell <= extent->last; at += step) {
		struct place on = { (int)(at / cell), editor->view.first.y };
		int column = view_character(&editor->view, on).x + inset(editor, extent, at), after;

		ruler_words(editor, at, &words);
		after = column + (int)words.length;
		if (after > ruler->columns ||
		    (taken->length && taken->last >= column && taken->first < after))
			continue;
		draw_text(ruler, 0, column, words.bytes, LOOK_PLAIN);
	}
	text_fini(&words);
}

/* The last column is for the line along the plan's edge. */
static void draw_down(const struct editor *editor, const struct area *ruler,
	const struct extent *extent, const struct bracket *taken)
{
	nm cell = plot_cell(editor->plot);
	nm step = ruler_step(editor, extent->characters, extent->cells, APART_DOWN);
	struct text words = TEXT_EMPTY;

	for (nm at = first_label(editor, extent, step); at / cell <= extent->last; at += step) {
		struct place on = { editor->view.first.x, (int)(at / cell) };
		int row = view_character(&editor->view, on).y + inset(editor, extent, at);

		ruler_words(editor, at, &words);
		if ((int)words.length < ruler->columns &&
		    (!taken->length || row < taken->first || row > taken->last))
			draw_text(ruler, row, 0, words.bytes, LOOK_PLAIN);
	}
	text_fini(&words);
}

/* ---- Edges ----------------------------------------------------------------------------------- */

/* A line below a label, or where there is none. */
static void draw_above(const struct area *ruler, int column, enum border line, struct paint paint)
{
	attr_t bold = line == BORDER_FENCE ? A_BOLD : A_NORMAL;

	if ((mvinch(ruler->row, ruler->column + column) & A_CHARTEXT) == ' ')
		borders_foot(ruler, 0, column, line, paint);
	else
		mvchgat(ruler->row, ruler->column + column, 1, A_UNDERLINE | bold, 0, NULL);
}

/* Walls, fences and services along the upper edge, below the labels, and along the left one. */
static void draw_edges(const struct scene *scene, const struct layout *layout,
	const struct extent *across, const struct extent *down)
{
	const struct area *side = &layout->side_ruler;
	const struct paint plain = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT };
	int edge = side->columns - 1, rows = down->last - down->first + 1;
	int columns = across->last - across->first + 1;

	for (int i = 0; down->first == 0 && i < columns * across->characters; i++) {
		enum border line = scene_below(scene, across->first + i / across->characters, -1);

		if (line != BORDER_NONE)
			draw_above(&layout->ruler, i, line, plain);
	}
	for (int i = 0; across->first == 0 && i < rows * down->characters; i++) {
		enum border line = scene_right(scene, -1, down->first + i / down->characters);

		if (line != BORDER_NONE)
			borders_upright(side, i, edge, line, plain);
	}
}

/* ---- All ------------------------------------------------------------------------------------- */

static void draw_measure(const struct editor *editor, const struct layout *layout,
	struct bracket *across, struct bracket *down)
{
	struct place mark = view_character(&editor->view, editor->cursor);
	struct measure measure = measure_of(editor);

	if (!measure.is_shown)
		return;
	*across = measure_draw_across(editor, &layout->ruler, &measure.across, mark.x);
	measure_draw_down(editor, &layout->side_ruler, &measure.down, mark.y);
	*down = measure.down;
}

static void draw_cursor(const struct editor *editor, const struct layout *layout)
{
	const struct grain *grain = view_grain(&editor->view);
	struct place mark = view_character(&editor->view, editor->cursor);
	const struct area *side = &layout->side_ruler;

	mvchgat(layout->ruler.row, layout->ruler.column + mark.x, grain->columns, A_REVERSE, 0,
		NULL);
	for (int row = mark.y; row < mark.y + grain->rows; row++)
		mvchgat(side->row + row, side->column + side->columns - 1, 1, A_REVERSE, 0, NULL);
}

void ruler_draw(const struct editor *editor, const struct layout *layout)
{
	const struct view *view = &editor->view;
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, &editor->plot->ground);
	struct rectangle last = view_block(view, &editor->plot->ground,
		(struct place){ blocks.x - 1, blocks.y - 1 });
	struct extent across = { view->first.x, last.right, grain->columns, grain->across };
	struct extent down = { view->first.y, last.bottom, grain->rows, grain->down };
	struct bracket taken_across = { .length = 0 }, taken_down = { .length = 0 };
	struct scene scene = scene_of(editor);

	draw_measure(editor, layout, &taken_across, &taken_down);
	draw_across(editor, &layout->ruler, &across, &taken_across);
	draw_down(editor, &layout->side_ruler, &down, &taken_down);
	if (grain->down == 1 && !taken_down.length)
		draw_edges(&scene, layout, &across, &down);
	draw_cursor(editor, layout);
}
