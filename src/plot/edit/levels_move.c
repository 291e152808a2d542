#include "plot/edit/levels_move.h"

void levels_move(struct levels *levels, const struct spots_way *way)
{
	struct levels old = *levels;
	nm step = old.step;
	int64_t columns, rows;

	if (!old.step)
		return;
	for (;; step *= 2) {
		columns = levels_count(way->size->columns, way->cell, step);
		rows = levels_count(way->size->rows, way->cell, step);
		if (columns <= LEVELS_SIDE_MOST && rows <= LEVELS_SIDE_MOST)
			break;
	}
	levels_init(levels, step, (int)columns, (int)rows);
	for (int y = 0; y < levels->rows; y++)
		for (int x = 0; x < levels->columns; x++)
			levels->drops[y * levels->columns + x] = levels_drop(&old,
				way->old(way->how, false, x * step),
				way->old(way->how, true, y * step));
	levels_fini(&old);
}

static nm spot_kept(const void *how, bool is_down, nm at)
{
	(void)how, (void)is_down;
	return at;
}

void levels_cover(struct levels *levels, const struct ground *size, nm cell)
{
	levels_move(levels, &(struct spots_way){ size, cell, spot_kept, NULL });
}
