#include "takeoff/advice/propose.h"
#include "base/stop.h"
#include "takeoff/advice/near.h"

#include <stdlib.h>

/* Of how many beds, with their images, sizes are looked for: that takes time too. */
enum { BEDS_MOST = 64 };

/* How a bed gets wider, or deeper: the cells that its left and its right edge, or its top and its
 * bottom one, move outward by. */
struct ways {
	struct place list[3];
	int count;
};

static struct ways ways_of(int more)
{
	struct ways ways = { { { 0, more }, { more, 0 }, { more / 2, more / 2 } }, 1 };

	if (more != 0)
		ways.count = more % 2 == 0 ? 3 : 2;
	return ways;
}

static struct rectangle rectangle_of(const struct region *bed)
{
	return (struct rectangle){ bed->left, bed->first_cell.y, bed->most.x, bed->most.y };
}

/* Tries all that makes the bed that size; true where one of them is kept. */
static bool try_size(struct attempts *attempts, struct proposal *proposal, struct place size)
{
	struct rectangle from = proposal->from;
	struct ways across = ways_of(size.x - (from.right - from.left + 1));
	struct ways down = ways_of(size.y - (from.bottom - from.top + 1));

	for (int i = 0; i < across.count * down.count && !stop_asked(); i++) {
		struct place x = across.list[i / down.count], y = down.list[i % down.count];

		proposal->to = (struct rectangle){ from.left - x.x, from.top - y.x,
			from.right + x.y, from.bottom + y.y };
		if (attempt(attempts, proposal)) {
			attempts_keep(attempts, proposal);
			return true;
		}
	}
	return false;
}

/* The bed and its images, each once; they are marked as done. */
static void add_regions(const struct attempts *attempts, struct proposal *proposal, int region,
	bool *is_done)
{
	const struct survey *survey = &attempts->takeoff->survey;
	const struct mirror mirror = mirror_of(attempts->plot);
	struct rectangle images[IMAGES_MOST];
	int count = mirror_rectangles(&mirror, rectangle_of(&survey->regions[region]), images);

	for (int i = 0; i < count; i++) {
		int image = ground_holds(&attempts->plot->ground, images[i].left, images[i].top) ?
			survey_region_at(survey, images[i].left, images[i].top) : NO_REGION;

		if (image == NO_REGION || (i > 0 && image == region))
			continue;
		proposal->regions[proposal->region_count++] = image;
		is_done[image] = true;
	}
}

static void propose_bed(struct attempts *attempts, const struct wall *wall, bool *is_done)
{
	const struct region *bed = &attempts->takeoff->survey.regions[wall->region];
	struct arena trials = ARENA_EMPTY;
	struct place sizes[NEAR_SIZES_MOST];
	int count = near_sizes(sizes, NEAR_SIZES_MOST, &trials, attempts->takeoff, wall), told = 0;
	struct proposal proposal = { .kind = PROPOSE_SIZE, .letter = bed->entry->letter,
		.from = rectangle_of(bed) };

	arena_clear(&trials);
	add_regions(attempts, &proposal, wall->region, is_done);
	for (int i = 0; i < count && told < SIZES_TOLD && !stop_asked(); i++)
		told += try_size(attempts, &proposal, sizes[i]);
}

void propose_sizes(struct attempts *attempts)
{
	const struct walls *walls = &attempts->takeoff->walls;
	bool *is_done = memory_new((size_t)attempts->takeoff->survey.region_count, sizeof *is_done);

	for (int i = 0, beds = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		if (wall->cut_pieces == 0 || is_done[wall->region])
			continue;
		if (beds++ < BEDS_MOST && attempts_go_on(attempts))
			propose_bed(attempts, wall, is_done);
		else
			attempts->is_short = true;
	}
	free(is_done);
}
