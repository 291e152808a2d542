#include "plot/edit/patch.h"

#include <string.h>

struct ground patch_of(const struct plot *plot, struct rectangle r)
{
	struct ground patch;

	ground_init(&patch, r.right - r.left + 1, r.bottom - r.top + 1);
	for (int y = 0; y < patch.rows; y++)
		memcpy(ground_at(&patch, 0, y), ground_at(&plot->ground, r.left, r.top + y),
			(size_t)patch.columns);
	return patch;
}

void patch_turn(struct ground *patch)
{
	struct ground old = *patch;

	ground_init(patch, old.rows, old.columns);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++)
			*ground_at(patch, old.rows - 1 - y, x) = *ground_at(&old, x, y);
	ground_fini(&old);
}

void patch_flip(struct ground *patch, bool across)
{
	struct ground old = *patch;

	ground_init(patch, old.columns, old.rows);
	for (int y = 0; y < old.rows; y++)
		for (int x = 0; x < old.columns; x++)
			*ground_at(patch, across ? old.columns - 1 - x : x,
				across ? y : old.rows - 1 - y) = *ground_at(&old, x, y);
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
