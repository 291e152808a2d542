#include "plot/edit/levels_move.h"

/* At a step that may have to be doubled. */
static void measure(struct levels *levels, nm step, const struct spots_way *way)
{
	struct levels old = *levels;
	int64_t columns, rows;

	for (;; step *= 2) {
		columns = levels_count(way->size->columns, way->cell, step);
		rows = levels_count(way->size->rows, way->cell, step);
		if (columns <= LEVELS_SIDE_MOST && rows <= LEVELS_SIDE_MOST)
			break;
	}
	levels_init(levels, step, (int)columns, (int)rows);
	for (int y = 0; y < levels->rows; y++)
		for (int x = 0; x < levels->columns; x++)
			levels->drops[y * levels->columns + x] = !old.step ? 0 : levels_drop(&old,
				way->old(way->how, false, x * step),
				way->old(way->how, true, y * step));
	levels_fini(&old);
}

void levels_move(struct levels *levels, const struct spots_way *way)
{
	if (levels->step)
		measure(levels, levels->step, way);
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

void levels_set_step(struct levels *levels, nm step, const struct ground *size, nm cell)
{
	measure(levels, step, &(struct spots_way){ size, cell, spot_kept, NULL });
}
