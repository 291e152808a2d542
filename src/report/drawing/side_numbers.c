#include "report/drawing/side_numbers.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/outline.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { NUMBER_MOST = 16 };

static bool is_bed(const struct plot *plot, int x, int y)
{
	return ground_holds(&plot->ground, x, y) &&
		plot_class_of(plot, ground_cell(&plot->ground, x, y)) == CLASS_BED;
}

/* Whether ground on both sides of a line is beds, so that it would be unclear whose a number is. */
static bool is_shared(const struct points *points, const struct plot *plot, int column, int row,
	bool is_upright)
{
	int x = column / points->cuts.across, y = row / points->cuts.down;

	return is_bed(plot, x, y) && is_bed(plot, x - is_upright, y - !is_upright);
}

static bool write_at(struct points *points, const struct plot *plot, struct place at,
	bool is_upright, const char *number)
{
	int last = is_upright ? at.x : at.x + (int)strlen(number) - 1;

	if (is_shared(points, plot, at.x, at.y, is_upright) ||
	    is_shared(points, plot, last, at.y, is_upright))
		return false;
	return is_upright ? points_write_across(points, at.x, at.y, number, '|') :
		points_write_over(points, at.x, at.y, number, '-');
}

static void write_side(struct points *points, const struct plot *plot, struct corner from,
	struct corner to, int side)
{
	bool is_upright = from.x == to.x;
	int pitch = is_upright ? points->cuts.down : points->cuts.across;
	int first = pitch * (is_upright ? least(from.y, to.y) : least(from.x, to.x));
	int length = pitch * (abs(to.x - from.x) + abs(to.y - from.y));
	char number[NUMBER_MOST];
	int columns = snprintf(number, sizeof number, "%d", side + 1);
	int room = is_upright ? 1 : columns; /* of the side's own points */

	for (int off = 0; off <= length; off++) {
		int at = first + (length - room + 1) / 2 + (off % 2 ? off / 2 + 1 : -off / 2);

		if (at <= first || at + room > first + length)
			continue;
		if (write_at(points, plot, is_upright ?
			(struct place){ from.x * points->cuts.across, at } :
			(struct place){ at, from.y * points->cuts.down }, is_upright, number))
			return;
	}
}

static void write_bed(struct points *points, const struct plot *plot, const struct survey *survey,
	int region)
{
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, plot, survey, region);
	for (int i = 0; i < outline.count && !stop_asked(); i++) {
		const struct loop *loop = &outline.loops[i];

		for (int side = 0; side < loop->count; side++)
			write_side(points, plot, loop->corners[side],
				loop->corners[(side + 1) % loop->count], side);
	}
	arena_clear(&arena);
}

void side_numbers_write(struct points *points, const struct plot *plot,
	const struct survey *survey, const struct walls *walls)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++)
		if (walls->list[i].turn == TURN_NONE)
			write_bed(points, plot, survey, walls->list[i].region);
}
