#include "plot/edit/route_beside.h"
#include "base/number.h"

/* A move from one cell to the next. */
struct move {
	bool is_level;
	int sign; /* 1: right or down */
};

static struct move move_between(struct place from, struct place to)
{
	bool is_level = from.y == to.y;

	return (struct move){ is_level, sign(is_level ? to.x - from.x : to.y - from.y) };
}

/* The corner of a cell. */
static struct place corner(struct place cell, bool is_right, bool is_below)
{
	return (struct place){ cell.x + is_right, cell.y + is_below };
}

/* Where a move ends, or where the one against it begins: the far edge of its cell. */
static struct place end_of(struct place cell, struct move move, struct beside beside)
{
	return move.is_level ? corner(cell, move.sign > 0, beside.is_below) :
		corner(cell, beside.is_right, move.sign > 0);
}

void route_beside(struct route *route, const struct place *cells, int count, struct beside beside)
{
	struct move before = { beside.is_level, 1 };

	if (count > 1)
		before = move_between(cells[0], cells[1]);
	route_add(route, end_of(cells[0], (struct move){ before.is_level, -before.sign }, beside));
	for (int i = 1; i + 1 < count; i++) {
		struct move next = move_between(cells[i], cells[i + 1]);

		if (next.is_level != before.is_level)
			route_add(route, corner(cells[i], beside.is_right, beside.is_below));
		else if (next.sign != before.sign)
			route_add(route, end_of(cells[i], before, beside));
		before = next;
	}
	route_add(route, end_of(cells[count - 1], before, beside));
}
