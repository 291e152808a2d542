#include "takeoff/walls/ring_corners.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/walls/corners.h"

#include <assert.h>
#include <stdlib.h>

/* More than the cuts of any loop: 4 million sides of 40 courses with 3 cuts each, sides with an
 * image counted twice, are 1e9. */
#define COST_FAULT INT64_C(2000000000)

static const struct loop *loop_at(const struct ring_corners *corners, int loop)
{
	return &corners->plan->outline->loops[loop];
}

static bool *through_at(const struct ring_corners *corners, int loop, int corner)
{
	return &corners->through[corners->first_runs[loop] + corner];
}

/* ---- Sides ----------------------------------------------------------------------------------- */

/* True where a flip brings the side onto itself. */
static bool is_own_image(const struct symmetry *symmetry, struct side_place place, int sides)
{
	for (int i = 0; symmetry && i < symmetry->count; i++) {
		const struct image *image = &symmetry->images[i];

		if (turn_is_flip(image->turn) && image->loops[place.loop].loop == place.loop &&
			image_side(image, place.loop, place.side, sides) == place.side)
			return true;
	}
	return false;
}

struct side ring_side(const struct ring_corners *corners, struct side_place place)
{
	const struct loop *loop = loop_at(corners, place.loop);
	int next = (place.side + 1) % loop->count;

	return (struct side){
		.length = outline_side(loop, place.side) * corners->plan->cell,
		.first_reflex = loop->corners[place.side].reflex,
		.last_reflex = loop->corners[next].reflex,
		.first_through = *through_at(corners, place.loop, place.side),
		.last_through = !*through_at(corners, place.loop, next),
		.mirrored = is_own_image(corners->plan->symmetry, place, loop->count),
	};
}

/* The same corners in the wall below. */
static struct side side_below(const struct ring_corners *corners, struct side_place place,
	const struct side *side)
{
	const bool *through = corners->plan->wall->through + corners->first_runs[place.loop];
	int next = (place.side + 1) % loop_at(corners, place.loop)->count;
	struct side below = *side;

	below.first_through = through[place.side];
	below.last_through = !through[next];
	return below;
}

const struct bond *ring_bond(const struct ring_corners *corners, struct side_place place,
	const struct side *side, bool with_pieces)
{
	const struct ring_plan *plan = corners->plan;
	struct capped capped;

	if (!plan->wall)
		return with_pieces ? side_lay(plan->book, side, &plan->masonry) :
			side_bond(plan->book, side, &plan->masonry);
	capped = (struct capped){ .wall = side_below(corners, place, side),
		.masonry = plan->wall_masonry, .cap = plan->masonry,
		.first_through = side->first_through, .last_through = side->last_through };
	return side_cap(plan->book, &capped);
}

/* Course 1 is the last of an odd number of courses: then a cap swaps its corners. */
static bool swaps_course_1(const struct ring_plan *plan)
{
	return plan->wall_masonry.courses % 2 == 1;
}

bool ring_is_swapped(const struct ring_corners *corners, struct side_place place)
{
	const struct ring_plan *plan = corners->plan;
	struct side side, below;

	if (!plan->wall)
		return true;
	side = ring_side(corners, place);
	below = side_below(corners, place, &side);
	return (side.first_through != below.first_through) == swaps_course_1(plan) &&
		(side.last_through != below.last_through) == swaps_course_1(plan);
}

int64_t ring_side_cost(const struct ring_corners *corners, struct side_place place,
	const struct bond *bond)
{
	int64_t courses = corners->plan->masonry.courses;
	/* A wall is weaker by joints than by a corner piece. */
	int64_t faults = 2 * !(bond->holds && ring_is_swapped(corners, place)) +
		!bond->corners_hold;

	return faults * COST_FAULT + (courses + 1) / 2 * bond->odd.cut +
		courses / 2 * bond->even.cut;
}

/* ---- Choosing -------------------------------------------------------------------------------- */

/* Sides that all others of a loop are images of: `count` from `first` on. They close a ring, or
 * where it is open the first and the last are their own images. */
struct chain {
	int first, count;
	bool is_open;
};

/* False where a corner would be its own image. */
static bool find_chain(struct chain *out, const struct symmetry *symmetry, int loop, int sides)
{
	int turns = 1, flips = 0, first = sides;

	for (int i = 0; symmetry && i < symmetry->count; i++) {
		const struct image *image = &symmetry->images[i];

		if (image->loops[loop].loop != loop)
			continue;
		if (!turn_is_flip(image->turn)) {
			turns++;
			continue;
		}
		if (image->loops[loop].first % 2 != 0)
			return false;
		flips++;
		first = least(first, image->loops[loop].first / 2);
	}
	*out = flips == 0 ? (struct chain){ 0, sides / turns, false } :
		(struct chain){ first, sides / (2 * flips) + 1, true };
	return true;
}

/* What a side costs by what goes through at its corners. */
static struct side_cost cost_of(const struct ring_corners *corners, struct side_place place,
	bool is_own)
{
	int next = (place.side + 1) % loop_at(corners, place.loop)->count;
	struct side_cost cost;

	for (int first = 0; first < 2; first++) {
		for (int last = 0; last < 2; last++) {
			const struct bond *bond = NULL;

			*through_at(corners, place.loop, place.side) = first;
			*through_at(corners, place.loop, next) = !last;
			if (!is_own || first == last) {
				struct side side = ring_side(corners, place);

				bond = ring_bond(corners, place, &side, false);
			}
			cost.of[first][last] = bond ? ring_side_cost(corners, place, bond) :
				COST_EXCLUDED;
		}
	}
	return cost;
}

/* A side that has images on both sides of an axis counts twice, one on the axis once. */
static void double_cost(struct side_cost *cost)
{
	for (int i = 0; i < 4; i++)
		if (cost->of[i / 2][i % 2] != COST_EXCLUDED)
			cost->of[i / 2][i % 2] *= 2;
}

/* Says of a corner and its images what goes through there. */
static void set_through(const struct ring_corners *corners, int loop, int corner, bool through)
{
	const struct symmetry *symmetry = corners->plan->symmetry;
	int sides = loop_at(corners, loop)->count;

	*through_at(corners, loop, corner) = through;
	for (int i = 0; symmetry && i < symmetry->count; i++) {
		const struct image *image = &symmetry->images[i];

		*through_at(corners, image->loops[loop].loop,
			image_corner(image, loop, corner, sides)) =
			through != turn_is_flip(image->turn);
	}
}

/* An open chain is closed by one side more that costs nothing. */
static bool choose_loop(const struct ring_corners *corners, int loop)
{
	int sides = loop_at(corners, loop)->count;
	struct side_cost *costs = memory_new((size_t)sides, sizeof *costs);
	bool *through = memory_new((size_t)sides, sizeof *through);
	struct chain chain = { 0, 0, false };
	bool is_laid = find_chain(&chain, corners->plan->symmetry, loop, sides);

	for (int i = 0; is_laid && i < chain.count && !stop_asked(); i++) {
		bool is_end = chain.is_open && (i == 0 || i == chain.count - 1);

		costs[i] = cost_of(corners,
			(struct side_place){ loop, (chain.first + i) % sides }, is_end);
		if (chain.is_open && !is_end)
			double_cost(&costs[i]);
	}
	is_laid = is_laid && corners_choose(through, costs, chain.count + chain.is_open) !=
		COST_EXCLUDED;
	for (int i = chain.is_open; is_laid && i < chain.count && !stop_asked(); i++)
		set_through(corners, loop, (chain.first + i) % sides, through[i]);
	free(costs);
	free(through);
	return is_laid;
}

/* Swaps the corners of a cap against those below. */
static void swap_all(const struct ring_corners *corners)
{
	const struct ring_plan *plan = corners->plan;

	for (int i = 0; i < corners->first_runs[plan->outline->count]; i++)
		corners->through[i] = plan->wall->through[i] != swaps_course_1(plan);
}

/* False where a run is too short so. */
static bool can_be_laid(const struct ring_corners *corners, int loop)
{
	for (int i = 0; i < loop_at(corners, loop)->count && !stop_asked(); i++) {
		struct side_place place = { loop, i };
		struct side side = ring_side(corners, place);

		if (!ring_bond(corners, place, &side, false))
			return false;
	}
	return true;
}

/* True where an earlier loop has been chosen for with it. */
static bool is_image_of_earlier(const struct symmetry *symmetry, int loop)
{
	for (int i = 0; symmetry && i < symmetry->count; i++)
		if (symmetry->images[i].loops[loop].loop < loop)
			return true;
	return false;
}

const int *ring_first_runs(struct arena *arena, const struct outline *outline)
{
	int *firsts = arena_new(arena, (size_t)outline->count + 1, sizeof *firsts);

	for (int i = 0; i < outline->count; i++)
		firsts[i + 1] = firsts[i] + outline->loops[i].count;
	return firsts;
}

/* What is chosen for is what is laid: images may bond with other cuts if laid by themselves. */
static const int *first_sides(const struct ring_plan *plan)
{
	int *firsts = arena_new(plan->arena, (size_t)plan->outline->count, sizeof *firsts);

	for (int i = 0; i < plan->outline->count && !stop_asked(); i++) {
		struct chain chain = { 0, 0, false };

		find_chain(&chain, plan->symmetry, i, plan->outline->loops[i].count);
		firsts[i] = chain.first;
	}
	return firsts;
}

bool ring_choose(struct ring_corners *out, const struct ring_plan *plan)
{
	const struct outline *outline = plan->outline;

	*out = (struct ring_corners){ plan, ring_first_runs(plan->arena, outline),
		first_sides(plan), NULL };
	out->through = arena_new(plan->arena, (size_t)out->first_runs[outline->count],
		sizeof *out->through);
	if (plan->wall)
		swap_all(out);
	for (int i = 0; i < outline->count && !stop_asked(); i++) {
		if (is_image_of_earlier(plan->symmetry, i) ||
			(plan->wall && can_be_laid(out, i)) || choose_loop(out, i))
			continue;
		assert(plan->symmetry);
		return false;
	}
	return true;
}
