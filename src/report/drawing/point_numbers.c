#include "report/drawing/point_numbers.h"
#include "base/stop.h"

#include <stdio.h>
#include <string.h>

enum { NUMBER_MOST = 12 };

static bool is_line(char c)
{
	return c != '\0' && (c == POINT_FREE || c == POINT_BLANK || strchr("+-|.:", c));
}

static bool write_at(struct points *points, int column, int row, const char *number)
{
	int count = (int)strlen(number);

	for (int i = 0; i < count; i++)
		if (!is_line(points_at(points, column + i, row)))
			return false;
	if (points_is_word(points_at(points, column - 1, row)) ||
	    points_is_word(points_at(points, column + count, row)) ||
	    !points_are_together(points, column, count))
		return false;
	points_write(points, column, row, number);
	return true;
}

/* A corner on the drawing. */
struct numbered {
	struct place at;
	char number[NUMBER_MOST];
	int digits;
};

/* With its first digit on the corner, or where the next corner is too near for that, its last. */
static bool write_number(struct points *points, const struct numbered *corner, int next)
{
	int column = corner->at.x, before = column - corner->digits + 1;
	bool is_near = next > column && next - column <= corner->digits;

	return write_at(points, is_near ? before : column, corner->at.y, corner->number) ||
		write_at(points, is_near ? column : before, corner->at.y, corner->number);
}

static bool next_corner(struct setout_walk *walk, const struct points *points,
	struct numbered *corner)
{
	nm cell = walk->setout->survey->cell;
	struct setout_point point;

	while (setout_next(walk, &point)) {
		if (point.kind != SETOUT_CORNER)
			continue;
		corner->at = (struct place){ (int)(point.at.x / cell) * points->cuts.across,
			(int)(point.at.y / cell) * points->cuts.down };
		corner->digits = snprintf(corner->number, sizeof corner->number, "%d",
			point.number);
		return true;
	}
	return false;
}

int point_numbers_write(struct points *points, const struct setout *setout)
{
	int without = 0;

	for (int i = 0; i < setout->string_count && !stop_asked(); i++) {
		struct setout_walk walk = setout_along(setout, &setout->strings[i]);
		struct numbered corner, next;
		bool is_any = next_corner(&walk, points, &corner), is_more;

		for (; is_any; corner = next, is_any = is_more) {
			is_more = next_corner(&walk, points, &next);
			without += !write_number(points, &corner, is_more ? next.at.x : 0);
		}
	}
	return without;
}
