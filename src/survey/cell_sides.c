#include "survey/cell_sides.h"

void cell_sides_mark(unsigned char *sides, int columns, struct leg leg, int right, int below)
{
	struct leg f = leg_forward(leg);

	if (leg_is_upright(f))
		for (int y = f.from.y; y < f.to.y; y++)
			sides[cell_sides_index(columns, f.from.x - 1, y)] |= (unsigned char)right;
	else
		for (int x = f.from.x; x < f.to.x; x++)
			sides[cell_sides_index(columns, x, f.from.y - 1)] |= (unsigned char)below;
}
