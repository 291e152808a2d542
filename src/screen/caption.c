#include "screen/caption.h"
#include "report/drawing/scale.h"
#include "screen/borders.h"
#include "screen/draw.h"
#include "screen/plan_levels.h"
#include "screen/ruler.h"
#include "screen/width.h"

#include <string.h>

enum { SCALE_COLUMNS = 10, TITLE_LEAST = 8, GAP = 3 };

/* ---- What it says ---------------------------------------------------------------------------- */

struct caption {
	int last;          /* the last column of the scale's line */
	struct text scale, north;
	const char *title; /* NULL: there is none */
};

/* "north <up>", "north <up> 20 degrees left", as short as there are signs for it. */
static void add_north(const struct editor *editor, struct text *words)
{
	static const char *const arrows[][2] = { { "up", "\u2191" }, { "right", "\u2192" },
		{ "down", "\u2193" }, { "left", "\u2190" } };
	const struct value *north = block_value(&editor->plot->details.head, HEAD_NORTH);
	struct scale_way way;
	const char *towards;

	if (!north->set)
		return;
	way = scale_way(north->as.number, 0);
	towards = way.way;
	for (size_t i = 0; i < sizeof arrows / sizeof *arrows && brush_has_unicode(); i++)
		if (strcmp(way.way, arrows[i][0]) == 0)
			towards = arrows[i][1];
	text_print(words, "north %s", towards);
	if (way.side) {
		text_add(words, " ");
		text_add_decimal(words, way.off, 6);
		text_print(words, "%s %.*s", brush_has_unicode() ? "\u00b0" : "",
			(int)strcspn(way.side, " "), way.side);
	}
}

static struct caption caption_of(const struct editor *editor)
{
	const struct grain *grain = view_grain(&editor->view);
	const struct value *title = block_value(&editor->plot->details.head, HEAD_TITLE);
	nm step = ruler_step(editor, grain->columns, grain->across, SCALE_COLUMNS);
	struct caption caption = { .scale = TEXT_EMPTY, .north = TEXT_EMPTY,
		.title = title->set ? title->as.text : NULL };

	caption.last = (int)(step * grain->columns / (grain->across * plot_cell(editor->plot))) - 1;
	ruler_words(editor, step, &caption.scale);
	add_north(editor, &caption.north);
	return caption;
}

static void caption_fini(struct caption *caption)
{
	text_fini(&caption->scale);
	text_fini(&caption->north);
}

static int scale_columns(const struct caption *caption)
{
	return caption->last + 2 + width_of(caption->scale.bytes) + GAP;
}

static int north_columns(const struct caption *caption)
{
	return caption->north.length ? width_of(caption->north.bytes) + GAP : 0;
}

/* ---- Drawing --------------------------------------------------------------------------------- */

/* Returns the column after it. */
static int draw_scale(const struct caption *caption, const struct area *area)
{
	const struct paint plain = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT };

	if (scale_columns(caption) - GAP > area->columns)
		return 0;
	for (int i = 1; i < caption->last; i++)
		brush_sign(area, 0, i, WACS_HLINE, plain);
	brush_sign(area, 0, 0, WACS_LTEE, plain);
	brush_sign(area, 0, caption->last, WACS_RTEE, plain);
	draw_text(area, 0, caption->last + 2, caption->scale.bytes, LOOK_PLAIN);
	return scale_columns(caption);
}

/* On the first row where there is room, else below what is there; whole words, and dots where some
 * of them are left out. */
static void draw_title(const char *title, const struct area *area, int column)
{
	const char *dots = brush_has_unicode() ? "\u2026" : "...";
	int above = column > 0;
	struct area lines = { area->row + above, area->column, area->rows - above, area->columns };
	int room = area->columns - column;
	size_t next, length;

	if (width_of(title) <= room) {
		draw_text(area, 0, column, title, LOOK_STRONG);
		return;
	}
	if (area->rows > 1) {
		draw_wrapped(&lines, 0, title, LOOK_STRONG);
		return;
	}
	if (room - width_of(dots) < TITLE_LEAST)
		return;
	length = width_line(title, room - width_of(dots), &next);
	column = draw_bytes(area, 0, column, title, length, LOOK_STRONG);
	draw_text(area, 0, column, dots, LOOK_STRONG);
}

/* In a row at least. */
static void draw_words(const struct editor *editor, const struct area *area)
{
	struct caption caption = caption_of(editor);
	int columns = scale_columns(&caption) + north_columns(&caption) +
		(caption.title ? width_of(caption.title) : 0);
	int column = area->rows > 1 || columns <= area->columns ? draw_scale(&caption, area) : 0;

	if (column + north_columns(&caption) - GAP <= area->columns) {
		draw_text(area, 0, column, caption.north.bytes, LOOK_PLAIN);
		column += north_columns(&caption);
	}
	if (caption.title)
		draw_title(caption.title, area, column);
	caption_fini(&caption);
}

void caption_draw(const struct scene *scene, const struct area *area)
{
	int above = plan_levels_draw_scale(scene, area);

	if (area->rows > above)
		draw_words(scene->editor, &(struct area){ area->row + above, area->column,
			area->rows - above, area->columns });
}
