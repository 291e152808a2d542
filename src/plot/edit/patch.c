#include "plot/edit/patch.h"

#include <string.h>

struct ground patch_of(const struct plot *plot, struct rectangle r)
{
	struct ground patch;
	size_t width = (size_t)(r.right - r.left + 1);

	ground_init(&patch, (int)width, r.bottom - r.top + 1);
	for (int y = r.top; y <= r.bottom; y++)
		memcpy(patch.cells + (size_t)(y - r.top) * width,
			plot->ground.cells + (size_t)y * (size_t)plot->ground.columns +
			(size_t)r.left, width);
	return patch;
}

static char *cell_of(struct ground *ground, int x, int y)
{
	return ground->cells + (size_t)y * (size_t)ground->columns + (size_t)x;
}

void patch_turn(struct ground *patch)
{
	struct ground old = *patch;

	ground_init(patch, old.rows, old.columns);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++)
			*cell_of(patch, old.rows - 1 - y, x) = *cell_of(&old, x, y);
	ground_fini(&old);
}

void patch_flip(struct ground *patch, bool across)
{
	struct ground old = *patch;

	ground_init(patch, old.columns, old.rows);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++)
			*cell_of(patch, across ? old.columns - 1 - x : x,
				across ? y : old.rows - 1 - y) = *cell_of(&old, x, y);
	ground_fini(&old);
}

struct laid patch_stamp(struct plot *plot, const struct ground *patch, int x, int y)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, 0 };

	/* Those beside x, y come last, so that their letters stay. */
	for (int beside = 0; beside <= 1; beside++) {
		for (int row = 0; row < patch->rows; row++) {
			for (int column = 0; column < patch->columns; column++) {
				struct place at = { x + column, y + row };

				if (mirror_is_beside(&mirror, (struct place){ x, y }, at.x, at.y) ==
					(beside == 1))
					lay_cell(plot, &mirror, at,
						ground_cell(patch, column, row), &laid);
			}
		}
	}
	return laid;
}
