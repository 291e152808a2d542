#include "survey/middle.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* More room than this for a name is no better. */
enum { ROOM_WANTED = 4 };

/* How far the middle of a run is from that of the region's box, in half cells. */
static int distance(const struct region *region, struct place first, int length)
{
	return abs(2 * first.y - region->first_cell.y - region->most.y) +
		abs(2 * first.x + length - 1 - region->left - region->most.x);
}

static bool is_better(const struct region *region, struct middle one, struct middle other)
{
	int room = least(one.length, ROOM_WANTED), had = least(other.length, ROOM_WANTED);

	if (room != had)
		return room > had;
	return distance(region, one.first, one.length) <
		distance(region, other.first, other.length);
}

const struct middle *survey_middles(const struct survey *survey, struct arena *arena)
{
	struct middle *middles = arena_new(arena, (size_t)survey->region_count, sizeof *middles);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];
			struct middle here = { { run->left, y }, run->right - run->left };

			if (run->region != NO_REGION && is_better(&survey->regions[run->region],
				here, middles[run->region]))
				middles[run->region] = here;
		}
	return middles;
}
