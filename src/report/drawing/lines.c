#include "report/drawing/lines.h"
#include "base/stop.h"

#include <stdlib.h>

/* ---- Lines ----------------------------------------------------------------------------------- */

enum weight { WEIGHT_NONE, WEIGHT_DOTS, WEIGHT_LINE };

static char letter_at(const struct plot *plot, int x, int y)
{
	return ground_holds(&plot->ground, x, y) ? ground_cell(&plot->ground, x, y) : '\0';
}

static bool is_built(const struct plot *plot, char letter)
{
	enum plot_class class = letter ? plot_class_of(plot, letter) : CLASS_BOUNDARY;

	return class == CLASS_BED || class == CLASS_FIXTURE;
}

static enum weight weight_between(const struct plot *plot, char one, char other)
{
	if (one == other)
		return WEIGHT_NONE;
	return is_built(plot, one) || is_built(plot, other) ? WEIGHT_LINE : WEIGHT_DOTS;
}

static enum weight heavier(enum weight one, enum weight other)
{
	return one > other ? one : other;
}

/* The cells before and after a point along one direction; the same one within a cell. */
struct beside {
	int before, after;
};

static struct beside beside(int at, int pitch)
{
	int cell = at / pitch;

	return (struct beside){ at % pitch == 0 ? cell - 1 : cell, cell };
}

/* The lines that meet in a point: to the left and right, and above and below it. */
struct meeting {
	enum weight level, upright;
};

static struct meeting meeting_at(const struct plot *plot, struct beside across, struct beside down)
{
	char a = letter_at(plot, across.before, down.before);
	char b = letter_at(plot, across.after, down.before);
	char c = letter_at(plot, across.before, down.after);
	char d = letter_at(plot, across.after, down.after);

	return (struct meeting){
		heavier(weight_between(plot, a, c), weight_between(plot, b, d)),
		heavier(weight_between(plot, a, b), weight_between(plot, c, d)) };
}

/* Where a cell has several characters, every other one of a level row of dots is left out. */
static char line_sign(const struct meeting *meeting, int column, int pitch)
{
	if (meeting->level == WEIGHT_LINE)
		return meeting->upright == WEIGHT_LINE ? '+' : '-';
	if (meeting->upright == WEIGHT_LINE)
		return '|';
	if (meeting->level == WEIGHT_DOTS)
		return pitch > 1 && column % 2 ? POINT_BLANK : '.';
	return meeting->upright == WEIGHT_DOTS ? ':' : POINT_FREE;
}

void lines_draw(struct points *points, const struct plot *plot)
{
	const struct cuts *cuts = &points->cuts;

	for (int row = 0; row < points->rows && !stop_asked(); row++)
		for (int column = 0; column < points->columns; column++) {
			struct meeting meeting = meeting_at(plot, beside(column, cuts->across),
				beside(row, cuts->down));

			points_put(points, column, row,
				line_sign(&meeting, column, cuts->across));
		}
}

/* ---- Letters --------------------------------------------------------------------------------- */

/* One in so many characters and rows, each row's between those of the next. */
enum { EVERY_ACROSS = 8, EVERY_DOWN = 2 };

/* at: in half characters. */
static bool is_lettered(int column, int row, struct place middle)
{
	int across = abs(2 * column - middle.x) / 2, down = abs(2 * row - middle.y) / 2;
	int shift = down / EVERY_DOWN % 2 ? EVERY_ACROSS / 2 : 0;

	return down % EVERY_DOWN == 1 && across % EVERY_ACROSS == (EVERY_ACROSS / 4 + shift);
}

static char fill_sign(const struct points *points, const struct plot *plot, struct place at,
	struct place middle)
{
	char letter = letter_at(plot, at.x / points->cuts.across, at.y / points->cuts.down);
	enum plot_class class = plot_class_of(plot, letter);

	if (class == CLASS_OPEN || (class != CLASS_FIXTURE && !is_lettered(at.x, at.y, middle)))
		return POINT_FREE;
	return letter;
}

void lines_fill(struct points *points, const struct plot *plot)
{
	const struct mirror mirror = mirror_of(plot);
	struct place middle = points_middle(points, &mirror);

	for (int row = 0; row < points->rows && !stop_asked(); row++) {
		char before = '\0'; /* what stood there before letters were strewn */

		for (int column = 0; column < points->columns; column++) {
			char here = points_at(points, column, row);

			if (here == POINT_FREE && !points_is_word(before) &&
			    !points_is_word(points_at(points, column + 1, row)))
				points_put(points, column, row, fill_sign(points, plot,
					(struct place){ column, row }, middle));
			before = here;
		}
	}
}
