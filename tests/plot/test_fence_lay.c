/* Drawing fences: runs are checked by what they look like, acts against the sides of cells that
 * a fence goes along, kept one by one in a map of their own. */
#include "plot/edit/fence_lay.h"
#include "plot/edit/resize.h"
#include "plot/edit/rescale.h"
#include "support/details.h"
#include "support/fences.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

enum { KINDS = MIRROR_HALF_TURN + 1, SIDE = 12, POINTS = SIDE + 1, SIDES = 2 * POINTS * POINTS };

/* ---- By hand --------------------------------------------------------------------------------- */

static void yard(struct plot *plot)
{
	plot_from_rows(plot, (const char *const[]){ "........", "........", "........", "........",
		NULL });
}

static struct leg leg(int x0, int y0, int x1, int y1)
{
	return (struct leg){ { x0, y0 }, { x1, y1 } };
}

START_TEST(a_ring_drawn_in_four_legs_is_one_run)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "", NULL);
	ck_assert_int_eq(fence_lay(&plot, fence, leg(6, 3, 1, 3)).changed, 5);
	fence_is(fence, "1,3 6,3", "");
	fence_lay(&plot, fence, leg(6, 1, 6, 3));
	fence_is(fence, "6,1 6,3 1,3", "");
	fence_lay(&plot, fence, leg(1, 1, 1, 3));
	fence_is(fence, "1,1 1,3 6,3 6,1", "");
	ck_assert_int_eq(fence_lay(&plot, fence, leg(1, 1, 6, 1)).changed, 5);
	fence_is(fence, "1,1 6,1 6,3 1,3 1,1", "");
	ck_assert_int_eq(fence_length(fence), 14);
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

START_TEST(what_is_there_already_stays)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "5,1 3,1 1,1", "4,1 3,1");
	ck_assert_int_eq(fence_lay(&plot, fence, leg(2, 1, 5, 1)).changed, 0);
	fence_is(fence, "5,1 3,1 1,1", "4,1 3,1");
	ck_assert_int_eq(fence_lay(&plot, fence, leg(4, 1, 8, 1)).changed, 3);
	fence_is(fence, "1,1 8,1", "3,1 4,1");
	plot_fini(&plot);
}
END_TEST

START_TEST(tees_and_crossings_do_not_join_runs)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "0,2 8,2", NULL);
	fence_lay(&plot, fence, leg(4, 0, 4, 4)); /* crosses */
	fence_lay(&plot, fence, leg(8, 0, 8, 4)); /* a tee: its middle at an end */
	fence_lay(&plot, fence, leg(2, 2, 2, 3)); /* a tee, then a corner */
	fence_lay(&plot, fence, leg(2, 3, 0, 3));
	fence_is(fence, "4,0 4,4; 8,0 8,4; 0,2 8,2; 2,2 2,3 0,3", "");
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_run_has_64_points_at_most_and_the_next_begins_where_it_ends)
{
	struct plot plot;
	struct fence *fence;

	plot_init(&plot);
	plot_set(&plot, 0, HEAD_UNITS, "metric");
	plot_set(&plot, 0, HEAD_CELL, "1 m");
	ground_init(&plot.ground, 80, 80);
	fence = fence_from(&plot, "", NULL);
	for (int i = 0; i < 65; i++) {
		fence_lay(&plot, fence, leg(i, i, i + 1, i));
		fence_lay(&plot, fence, leg(i + 1, i, i + 1, i + 1));
	}
	ck_assert_uint_eq(fence->run_count, 3);
	ck_assert_int_eq(fence->runs[0].count, 64);
	ck_assert_int_eq(fence->runs[1].count, 64);
	ck_assert_int_eq(fence->runs[2].count, 5);
	ck_assert(place_equal(fence->runs[0].points[63], fence->runs[1].points[0]));
	ck_assert(place_equal(fence->runs[1].points[63], fence->runs[2].points[0]));
	ck_assert_int_eq(fence_length(fence), 130);
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

START_TEST(lifting_splits_runs_and_takes_gates_that_lose_ground)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "0,0 8,0 8,4", "1,0 3,0; 4,0 6,0; 8,2 8,4");
	ck_assert_int_eq(fence_take_out(&plot, fence, leg(5, 0, 7, 0)).changed, 2);
	fence_is(fence, "0,0 5,0; 7,0 8,0 8,4", "1,0 3,0; 8,2 8,4");
	ck_assert_int_eq(fence_take_out(&plot, fence, leg(0, 1, 8, 1)).changed, 0);
	ck_assert_int_eq(fence_take_out(&plot, fence, leg(8, 0, 8, 4)).changed, 4);
	ck_assert_int_eq(fence_take_out(&plot, fence, leg(0, 0, 8, 0)).changed, 6);
	fence_is(fence, "", "");
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_gate_needs_fence_all_along_and_stands_in_place_of_what_is_in_its_way)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "0,4 4,4 6,4", NULL);
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(5, 4, 7, 4)).changed, 0);
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(5, 4, 5, 3)).changed, 0);
	fence_is(fence, "0,4 4,4 6,4", "");
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(5, 4, 3, 4)).changed, 1);
	fence_is(fence, "0,4 6,4", "3,4 5,4");
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(3, 4, 5, 4)).changed, 0);
	fence_set_gate(&plot, fence, leg(1, 4, 3, 4)); /* touching is fine */
	fence_is(fence, "0,4 6,4", "1,4 3,4; 3,4 5,4");
	fence_set_gate(&plot, fence, leg(2, 4, 4, 4));
	fence_is(fence, "0,4 6,4", "2,4 4,4");
	ck_assert_int_eq(fence_take_out_gate(&plot, fence, leg(0, 4, 2, 4)).changed, 0);
	ck_assert_int_eq(fence_take_out_gate(&plot, fence, leg(3, 4, 6, 4)).changed, 1);
	fence_is(fence, "0,4 6,4", "");
	plot_fini(&plot);
}
END_TEST

START_TEST(images_that_overlap_make_one_gate)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fence = fence_from(&plot, "0,0 8,0", NULL);
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(3, 0, 5, 0)).changed, 1);
	fence_is(fence, "0,0 8,0", "3,0 5,0");
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(2, 0, 5, 0)).changed, 1);
	fence_is(fence, "0,0 8,0", "2,0 6,0");
	ck_assert_int_eq(fence_set_gate(&plot, fence, leg(2, 0, 4, 0)).changed, 2);
	fence_is(fence, "0,0 8,0", "2,0 4,0; 4,0 6,0");
	plot_fini(&plot);
}
END_TEST

START_TEST(images_outside_the_plan_are_left_out_and_told)
{
	struct plot plot;
	struct fence *fence;
	struct laid laid;

	yard(&plot);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&plot, 0, HEAD_AXIS, "5,4");
	fence = fence_from(&plot, "", NULL);
	laid = fence_lay(&plot, fence, leg(0, 1, 2, 1));
	ck_assert(!laid.outside);
	fence_is(fence, "0,1 2,1; 3,1 5,1", "");
	laid = fence_lay(&plot, fence, leg(4, 3, 8, 3));
	ck_assert(laid.outside);
	ck_assert_int_eq(laid.changed, 5);
	fence_is(fence, "0,1 2,1; 3,1 5,1; 0,3 1,3; 4,3 8,3", "");
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

/* ---- By sides of cells ----------------------------------------------------------------------- */

/* Level and upright sides by the grid point they start from: 1 where there is fence; the number
 * of a gate, 0 for none. */
struct map {
	int fence[SIDES], gate[SIDES];
	int gates;
};

static int side_index(int upright, int x, int y)
{
	return (upright * POINTS + y) * POINTS + x;
}

/* Writes the indexes of the sides of a leg, -1 for those outside the plan; returns how many. */
static int sides_of(const struct ground *ground, struct leg l, int list[])
{
	int upright = l.from.x == l.to.x, count = abs(l.to.x - l.from.x) + abs(l.to.y - l.from.y);
	int x = l.from.x < l.to.x ? l.from.x : l.to.x, y = l.from.y < l.to.y ? l.from.y : l.to.y;

	for (int i = 0; i < count; i++, x += !upright, y += upright) {
		bool is_in = x >= 0 && y >= 0 && x + !upright <= ground->columns &&
			y + upright <= ground->rows;

		list[i] = is_in ? side_index(upright, x, y) : -1;
	}
	return count;
}

static struct leg mirrored(const struct mirror *m, struct leg l, bool across, bool down)
{
	if (across)
		l = leg(m->across - l.from.x, l.from.y, m->across - l.to.x, l.to.y);
	if (down)
		l = leg(l.from.x, m->down - l.from.y, l.to.x, m->down - l.to.y);
	return l;
}

/* With itself, some perhaps twice. */
static int images_of(const struct mirror *m, struct leg l, struct leg images[4])
{
	int count = 0;

	images[count++] = l;
	if (m->kind == MIRROR_LEFT_RIGHT || m->kind == MIRROR_FOUR_WAY)
		images[count++] = mirrored(m, l, true, false);
	if (m->kind == MIRROR_TOP_BOTTOM || m->kind == MIRROR_FOUR_WAY)
		images[count++] = mirrored(m, l, false, true);
	if (m->kind == MIRROR_HALF_TURN || m->kind == MIRROR_FOUR_WAY)
		images[count++] = mirrored(m, l, true, true);
	return count;
}

static void drop_gate(struct map *map, int gate)
{
	for (int i = 0; gate && i < SIDES; i++)
		if (map->gate[i] == gate)
			map->gate[i] = 0;
}

static void map_lay(struct map *map, const struct plot *plot, struct leg l, bool is_lift)
{
	struct mirror mirror = mirror_of(plot);
	struct leg images[4];
	int list[SIDE];

	for (int n = images_of(&mirror, l, images); n > 0; n--)
		for (int i = sides_of(&plot->ground, images[n - 1], list); i > 0; i--) {
			if (list[i - 1] < 0)
				continue;
			map->fence[list[i - 1]] = !is_lift;
			if (is_lift)
				drop_gate(map, map->gate[list[i - 1]]);
		}
}

/* Joins images with a side in common, by marking sides with the image's number until nothing
 * changes. */
static void map_gate(struct map *map, const struct plot *plot, struct leg l)
{
	struct mirror mirror = mirror_of(plot);
	struct leg images[4];
	int count = images_of(&mirror, l, images), list[4][SIDE], lengths[4], group[4];

	for (int n = 0; n < count; n++) {
		lengths[n] = sides_of(&plot->ground, images[n], list[n]);
		group[n] = n;
	}
	for (int turn = 0; turn < count; turn++)
		for (int a = 0; a < count; a++)
			for (int b = 0; b < count; b++)
				for (int i = 0; i < lengths[a]; i++)
					for (int j = 0; j < lengths[b]; j++)
						if (list[a][i] >= 0 && list[a][i] == list[b][j] &&
							group[b] < group[a])
							group[a] = group[b];
	for (int g = 0; g < count; g++) {
		bool is_covered = true, has_any = false;

		for (int n = 0; n < count; n++)
			for (int i = 0; group[n] == g && i < lengths[n]; i++) {
				has_any = has_any || list[n][i] >= 0;
				is_covered = is_covered &&
					(list[n][i] < 0 || map->fence[list[n][i]]);
			}
		if (!has_any || !is_covered)
			continue;
		map->gates++;
		for (int n = 0; n < count; n++)
			for (int i = 0; group[n] == g && i < lengths[n]; i++)
				if (list[n][i] >= 0 && map->gate[list[n][i]] != map->gates) {
					drop_gate(map, map->gate[list[n][i]]);
					map->gate[list[n][i]] = map->gates;
				}
	}
}

static void map_lift_gate(struct map *map, const struct plot *plot, struct leg l)
{
	struct mirror mirror = mirror_of(plot);
	struct leg images[4];
	int list[SIDE];

	for (int n = images_of(&mirror, l, images); n > 0; n--)
		for (int i = sides_of(&plot->ground, images[n - 1], list); i > 0; i--)
			if (list[i - 1] >= 0)
				drop_gate(map, map->gate[list[i - 1]]);
}

static void check_map(const struct map *map, const struct plot *plot, const struct fence *fence,
	const char *what)
{
	struct legs legs = LEGS_EMPTY;
	int fenced[SIDES] = { 0 }, gated[SIDES] = { 0 }, list[SIDE] = { 0 }, sides = 0;

	plot_check(plot);
	fence_legs(fence, &legs);
	for (size_t l = 0; l < legs.count; l++)
		for (int i = sides_of(&plot->ground, legs.items[l], list); i > 0; i--)
			fenced[list[i - 1]]++;
	ck_assert_msg(memcmp(fenced, map->fence, sizeof fenced) == 0, "%s: other sides", what);
	for (size_t g = 0; g < fence->gates.count; g++) {
		int count = sides_of(&plot->ground, fence->gates.items[g], list),
			number = map->gate[list[0]];

		ck_assert_msg(number > 0, "%s: a gate too many", what);
		for (int i = 0; i < count; i++) {
			ck_assert_msg(map->gate[list[i]] == number, "%s: a gate too long", what);
			gated[list[i]] = number;
		}
	}
	ck_assert_msg(memcmp(gated, map->gate, sizeof gated) == 0, "%s: other gates", what);
	for (int i = 0; i < SIDES; i++)
		sides += map->fence[i];
	ck_assert_int_eq(fence_length(fence), sides);
	legs_fini(&legs);
}

static void start(struct plot *plot, struct random *random, int kind)
{
	plot_at_random(plot, random, SIDE, ".");
	block_set(&plot->details.head, HEAD_MIRROR,
		(struct value){ .set = true, .as.number = kind });
	if (random_below(random, 2))
		block_set(&plot->details.head, HEAD_AXIS, (struct value){ .set = true, .as.place = {
			random_between(random, 1, 2 * plot->ground.columns - 1),
			random_between(random, 1, 2 * plot->ground.rows - 1) } });
}

static struct leg leg_at_random(const struct ground *ground, struct random *random)
{
	struct leg l;

	do {
		l.from = l.to = (struct place){ random_between(random, 0, ground->columns),
			random_between(random, 0, ground->rows) };
		if (random_below(random, 2))
			l.to.x = random_between(random, 0, ground->columns);
		else
			l.to.y = random_between(random, 0, ground->rows);
	} while (!leg_is_straight(l));
	return l;
}

static const char *const act_names[] = { "laying", "laying", "lifting", "a gate", "a gate",
	"lifting a gate" };

static struct laid act(struct plot *plot, struct fence *fence, struct map *map, int which,
	struct leg l)
{
	switch (which) {
	case 0:
	case 1:
		map_lay(map, plot, l, false);
		return fence_lay(plot, fence, l);
	case 2:
		map_lay(map, plot, l, true);
		return fence_take_out(plot, fence, l);
	case 3:
	case 4:
		map_gate(map, plot, l);
		return fence_set_gate(plot, fence, l);
	default:
		map_lift_gate(map, plot, l);
		return fence_take_out_gate(plot, fence, l);
	}
}

static int sides_changed(const int before[], const int after[])
{
	int count = 0;

	for (int i = 0; i < SIDES; i++)
		count += before[i] != after[i];
	return count;
}

START_TEST(any_acts_do_to_sides_and_gates_what_they_say_with_all_images)
{
	for (uint64_t seed = 0; seed < 120; seed++) {
		struct random random = { seed };
		struct map map = { .gates = 0 };
		struct plot plot;
		struct fence *fence;

		start(&plot, &random, _i);
		fence = fence_from(&plot, "", NULL);
		for (int i = 0; i < 60; i++) {
			int which = random_below(&random, 6);
			struct map before = map;
			struct fence was = fence_copy(fence);
			struct laid laid = act(&plot, fence, &map, which,
				leg_at_random(&plot.ground, &random));

			check_map(&map, &plot, fence, act_names[which]);
			if (which < 3)
				ck_assert_int_eq(laid.changed,
					sides_changed(before.fence, map.fence));
			if (laid.changed == 0)
				ck_assert_msg(fence_equal(&was, fence), "%s changed it",
					act_names[which]);
			fence_fini(&was);
		}
		plot_fini(&plot);
	}
}
END_TEST

/* However a fence came about, it is written in one way. */
START_TEST(the_same_sides_make_the_same_runs)
{
	for (uint64_t seed = 0; seed < 400; seed++) {
		struct random random = { seed };
		struct plot plot;
		struct fence *one, *other;
		struct leg legs[12];
		int count = random_between(&random, 1, 12);

		start(&plot, &random, MIRROR_OFF);
		fence_from(&plot, "", NULL);
		fence_from(&plot, "", NULL);
		one = &plot.details.fences[0];
		other = &plot.details.fences[1];
		for (int i = 0; i < count; i++)
			fence_lay(&plot, one, legs[i] = leg_at_random(&plot.ground, &random));
		fence_lay(&plot, other, leg(0, 0, plot.ground.columns, 0));
		fence_take_out(&plot, other, leg(0, 0, plot.ground.columns, 0));
		for (int i = count - 1; i >= 0; i--) /* backwards, in two pieces */
			for (int piece = 0; piece < 2; piece++) {
				struct leg l = legs[i];
				struct place middle = { (l.from.x + l.to.x) / 2,
					(l.from.y + l.to.y) / 2 };

				*(piece ? &l.from : &l.to) = middle;
				if (leg_is_straight(l))
					fence_lay(&plot, other, l);
			}
		ck_assert_msg(fence_equal(one, other), "seed %d", (int)seed);
		plot_fini(&plot);
	}
}
END_TEST

/* Two runs share an end only where a third leg goes on from there, or the one has all its
 * points. */
START_TEST(runs_that_meet_end_to_end_are_one)
{
	for (uint64_t seed = 0; seed < 300; seed++) {
		struct random random = { seed };
		struct plot plot;
		struct fence *fence;

		start(&plot, &random, (int)seed % KINDS);
		fence = fence_from(&plot, "", NULL);
		for (int i = random_between(&random, 1, 20); i > 0; i--)
			fence_lay(&plot, fence, leg_at_random(&plot.ground, &random));
		for (size_t i = 0; i < fence->run_count; i++)
			for (size_t j = 0; j < i; j++) {
				const struct route *a = &fence->runs[i], *b = &fence->runs[j];
				bool meet = place_equal(a->points[0], b->points[0]) ||
					place_equal(a->points[0], b->points[b->count - 1]) ||
					place_equal(a->points[a->count - 1], b->points[0]) ||
					place_equal(a->points[a->count - 1],
					b->points[b->count - 1]);

				ck_assert_msg(!meet || a->count == ROUTE_POINTS_MOST ||
					b->count == ROUTE_POINTS_MOST, "seed %d", (int)seed);
			}
		plot_fini(&plot);
	}
}
END_TEST

/* ---- Folding --------------------------------------------------------------------------------- */

static int sign(int n)
{
	return (n > 0) - (n < 0);
}

/* The side of a thing at a place in half cells; 0 on the axis. */
static int side_at(const struct mirror *m, int x, int y, bool across)
{
	return across ? sign(x - m->across) : sign(y - m->down);
}

static bool is_beside(const struct mirror *m, struct place cell, struct leg l)
{
	int fx = 2 * cell.x + 1, fy = 2 * cell.y + 1, x = l.from.x + l.to.x, y = l.from.y + l.to.y;
	int across = side_at(m, x, y, true) * side_at(m, fx, fy, true);
	int down = side_at(m, x, y, false) * side_at(m, fx, fy, false);
	int turned = side_at(m, x, y, true), from = side_at(m, fx, fy, true);

	switch (m->kind) {
	case MIRROR_LEFT_RIGHT:
		return across >= 0;
	case MIRROR_TOP_BOTTOM:
		return down >= 0;
	case MIRROR_FOUR_WAY:
		return across >= 0 && down >= 0;
	case MIRROR_HALF_TURN: /* on the upright axis above is left */
		turned = turned ? turned : side_at(m, x, y, false);
		from = from ? from : side_at(m, fx, fy, false);
		return turned * from >= 0;
	case MIRROR_OFF:
		break;
	}
	return true;
}

/* A side has fence afterwards if it or an image of it had and is beside the cell. */
static void map_fold(struct map *map, const struct plot *plot, struct place cell)
{
	struct mirror mirror = mirror_of(plot);
	struct map folded = { .gates = 0 };

	for (int upright = 0; upright < 2; upright++)
		for (int y = 0; y + upright <= plot->ground.rows; y++)
			for (int x = 0; x + !upright <= plot->ground.columns; x++) {
				struct leg images[4];
				int list[1], to = side_index(upright, x, y);
				int n = images_of(&mirror, leg(x, y, x + !upright, y + upright),
					images);

				for (; n > 0; n--) {
					sides_of(&plot->ground, images[n - 1], list);
					if (list[0] >= 0 && map->fence[list[0]] &&
						is_beside(&mirror, cell, images[n - 1]))
						folded.fence[to] = 1;
				}
			}
	*map = folded;
}

START_TEST(folding_copies_one_side_over_the_others)
{
	int folds = 0;

	for (uint64_t seed = 0; seed < 400; seed++) {
		struct random random = { seed };
		struct map map = { .gates = 0 };
		struct plot plot;
		struct fence *fence, *matching;
		struct mirror mirror;
		struct place cell;

		start(&plot, &random, MIRROR_OFF);
		fence_from(&plot, "", NULL);
		fence_from(&plot, "", NULL);
		fence = &plot.details.fences[0];
		matching = &plot.details.fences[1];
		for (int i = random_between(&random, 1, 10); i > 0; i--)
			act(&plot, fence, &map, 0, leg_at_random(&plot.ground, &random));
		block_set(&plot.details.head, HEAD_MIRROR,
			(struct value){ .set = true, .as.number = _i });
		mirror = mirror_of(&plot);
		cell = (struct place){ random_below(&random, plot.ground.columns),
			random_below(&random, plot.ground.rows) };
		if (mirror_has_side(&mirror, cell.x, cell.y)) {
			fence_fold(&plot, fence, cell);
			map_fold(&map, &plot, cell);
			check_map(&map, &plot, fence, "folding");
			folds++;
		}
		/* What was drawn in the mirror matches: folding leaves it, in whatever way it is
		 * written. */
		if (!block_value(&plot.details.head, HEAD_AXIS)->set &&
			mirror_has_side(&mirror, cell.x, cell.y)) {
			struct fence was;

			for (int i = random_between(&random, 1, 10); i > 0; i--)
				fence_lay(&plot, matching, leg_at_random(&plot.ground, &random));
			for (int i = random_between(&random, 1, 10); i > 0; i--)
				fence_set_gate(&plot, matching,
					leg_at_random(&plot.ground, &random));
			was = fence_copy(matching);
			fence_fold(&plot, matching, cell);
			ck_assert_msg(fence_equal(&was, matching), "seed %d", (int)seed);
			fence_fini(&was);
		}
		plot_fini(&plot);
	}
	ck_assert_int_gt(folds, 200);
}
END_TEST

START_TEST(a_fence_that_matches_stays_as_it_is_written)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fence = fence_from(&plot, "8,0 4,0 0,0; 6,2 8,2; 2,2 0,2", "7,0 6,0; 2,0 1,0");
	fence_fold(&plot, fence, (struct place){ 7, 0 });
	fence_is(fence, "8,0 4,0 0,0; 6,2 8,2; 2,2 0,2", "7,0 6,0; 2,0 1,0");
	plot_fini(&plot);
}
END_TEST

START_TEST(a_gate_across_the_axis_stays_one_gate)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fence = fence_from(&plot, "0,0 8,0; 0,4 8,4", "1,0 2,0; 3,0 7,0; 5,4 6,4");
	fence_fold(&plot, fence, (struct place){ 0, 0 });
	fence_is(fence, "0,0 8,0; 0,4 8,4", "1,0 2,0; 3,0 5,0; 6,0 7,0");
	fence_fini(fence);
	plot.details.fence_count = 0;
	fence = fence_from(&plot, "0,0 4,0", "2,0 4,0");
	fence_fold(&plot, fence, (struct place){ 0, 0 });
	fence_is(fence, "0,0 8,0", "2,0 4,0; 4,0 6,0");
	fence_fini(fence);
	plot.details.fence_count = 0;
	/* through cell 3: the side over it is its own image */
	plot_set(&plot, 0, HEAD_AXIS, "7,4");
	fence = fence_from(&plot, "0,0 4,0", "2,0 4,0");
	fence_fold(&plot, fence, (struct place){ 0, 0 });
	fence_is(fence, "0,0 7,0", "2,0 5,0");
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

/* ---- With the ground ------------------------------------------------------------------------- */

START_TEST(growing_moves_a_fence_as_it_is_written)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "8,0 8,2 8,4 0,4", "2,4 1,4");
	resize_plot(&plot, &(struct margins){ 2, 3, 1, 1 });
	fence_is(fence, "10,3 10,5 10,7 2,7", "4,7 3,7");
	plot_check(&plot);
	plot_fini(&plot);
}
END_TEST

START_TEST(cropping_cuts_legs_and_takes_gates_that_are_cut)
{
	struct plot plot;
	struct fence *fence;
	const struct margins margins = { -2, 0, 0, -1 };
	struct fence_loss loss;

	yard(&plot);
	fence = fence_from(&plot, "0,0 8,0 8,4 0,4 0,0", "1,0 3,0; 4,0 6,0; 8,1 8,3; 8,3 8,4");
	loss = resize_fence_loss(&plot, &margins);
	ck_assert_int_eq(loss.sides, 2 + 1 + 8 + 4);
	ck_assert_int_eq(loss.gates, 2);
	resize_plot(&plot, &margins);
	fence_is(fence, "0,0 6,0 6,3", "2,0 4,0; 6,1 6,3");
	plot_check(&plot);
	loss = resize_fence_loss(&plot, &(struct margins){ 1, 1, 1, 1 });
	ck_assert_int_eq(loss.sides + loss.gates, 0);
	plot_fini(&plot);
}
END_TEST

START_TEST(cropping_leaves_just_the_sides_within)
{
	for (uint64_t seed = 0; seed < 400; seed++) {
		struct random random = { seed };
		struct map map = { .gates = 0 }, cropped = { .gates = 0 };
		struct margins m;
		struct plot plot;
		struct fence *fence;

		start(&plot, &random, MIRROR_OFF);
		fence = fence_from(&plot, "", NULL);
		for (int i = random_between(&random, 1, 8); i > 0; i--)
			act(&plot, fence, &map, 0, leg_at_random(&plot.ground, &random));
		m = (struct margins){ -random_below(&random, 4), -random_below(&random, 4),
			-random_below(&random, 4), -random_below(&random, 4) };
		if (resize_fits(&plot.ground, &m)) {
			int64_t before = fence_length(fence);
			struct fence_loss loss = resize_fence_loss(&plot, &m);

			resize_plot(&plot, &m);
			for (int upright = 0; upright < 2; upright++)
				for (int y = 0; y + upright <= plot.ground.rows; y++)
					for (int x = 0; x + !upright <= plot.ground.columns; x++)
						cropped.fence[side_index(upright, x, y)] =
							map.fence[side_index(upright, x - m.left,
							y - m.top)];
			check_map(&cropped, &plot, fence, "cropping");
			ck_assert_int_eq(loss.sides, before - fence_length(fence));
		}
		plot_fini(&plot);
	}
}
END_TEST

static void rescale_to(struct plot *plot, nm cell)
{
	struct rescale rescale = rescale_of(plot, cell);

	rescale_plot(plot, &rescale);
	plot_check(plot);
}

START_TEST(a_fence_keeps_its_measure_where_cells_get_another_side)
{
	struct plot plot;
	struct fence *fence;

	yard(&plot);
	fence = fence_from(&plot, "0,0 8,0 8,4 0,4 0,0", "3,4 5,4");
	struct rescale halves = rescale_of(&plot, NM_PER_FOOT / 2), thirds = rescale_of(&plot,
		NM_PER_FOOT * 2 / 3);
	ck_assert(rescale_keeps_fences(&halves, &plot));
	ck_assert(!rescale_keeps_fences(&thirds, &plot)); /* the gate's ends at 36 and 60 in */
	rescale_to(&plot, NM_PER_FOOT / 2);
	fence_is(fence, "0,0 16,0 16,8 0,8 0,0", "6,8 10,8");
	rescale_to(&plot, NM_PER_FOOT);
	fence_is(fence, "0,0 8,0 8,4 0,4 0,0", "3,4 5,4");
	rescale_to(&plot, 5 * NM_PER_FOOT); /* 8 ft are 2 cells of 5; the gate is gone */
	fence_is(fence, "0,0 2,0 2,1 0,1 0,0", "");
	plot_fini(&plot);
}
END_TEST

/* On the plan's edge it stays there, whatever the cells; in a mirror it stays its own image. */
START_TEST(a_fence_round_the_plan_stays_round_it)
{
	struct random random = { (uint64_t)_i };

	for (int turn = 0; turn < 400; turn++) {
		struct plot plot;
		struct fence *fence;
		int w, h;

		start(&plot, &random, _i);
		w = plot.ground.columns;
		h = plot.ground.rows;
		if (_i != MIRROR_OFF) /* an axis beside the middle leaves one edge with no image */
			block_set(&plot.details.head, HEAD_AXIS, (struct value){ .set = false });
		fence = fence_from(&plot, "", NULL);
		fence_lay(&plot, fence, leg(0, 0, w, 0));
		fence_lay(&plot, fence, leg(0, h, w, h));
		fence_lay(&plot, fence, leg(0, 0, 0, h));
		fence_lay(&plot, fence, leg(w, 0, w, h));
		rescale_to(&plot, NM_PER_INCH * random_between(&random, 3, 30));
		w = plot.ground.columns;
		h = plot.ground.rows;
		ck_assert_int_eq(fence_length(fence), 2 * (w + h));
		ck_assert_uint_eq(fence->run_count, 1);
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(a_point_goes_to_the_nearest_one_of_the_new_grid)
{
	struct random random = { 77 };

	for (int turn = 0; turn < 2000; turn++) {
		struct plot plot;
		struct fence *fence;
		int columns = random_between(&random, 10, 40),
			x = random_between(&random, 1, columns);
		nm to = NM_PER_INCH * random_between(&random, 2, 30), off;

		plot_from_rows(&plot, (const char *const[]){ ".", NULL });
		ground_fini(&plot.ground);
		ground_init(&plot.ground, columns, 3);
		fence = fence_from(&plot, "", NULL);
		fence_lay(&plot, fence, leg(0, 0, x, 0));
		rescale_to(&plot, to);
		off = llabs((fence->run_count ? fence->runs[0].points[1].x :
			0) * to - x * NM_PER_FOOT);
		ck_assert_msg(2 * off <= to, "turn %d", turn);
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(what_matched_its_image_still_does_after_the_cells_changed)
{
	struct random random = { 90 + (uint64_t)_i };

	for (int turn = 0; turn < 500; turn++) {
		struct plot plot;
		struct fence *fence, was;
		struct mirror mirror;
		struct place cell = { 0, 0 };

		start(&plot, &random, _i);
		block_set(&plot.details.head, HEAD_AXIS, (struct value){ .set = false });
		fence = fence_from(&plot, "", NULL);
		for (int i = 0; i < 6; i++)
			fence_lay(&plot, fence, leg_at_random(&plot.ground, &random));
		rescale_to(&plot, NM_PER_INCH * random_between(&random, 3, 20));
		mirror = mirror_of(&plot);
		was = fence_copy(fence);
		/* A leg on the old axis has no place of its own where the new one goes through
		 * cells. */
		if (mirror_has_side(&mirror, 0, 0) && mirror.across % 2 == 0 &&
			mirror.down % 2 == 0) fence_fold(&plot, fence, cell);
		ck_assert_msg(fence_equal(&was, fence), "mirror %d, turn %d", _i, turn);
		fence_fini(&was);
		plot_fini(&plot);
	}
}
END_TEST

/* As read, however they run, with gates: rules hold afterwards. */
START_TEST(any_fence_keeps_its_rules_through_all_that_happens_to_a_plan)
{
	for (uint64_t seed = 0; seed < 300; seed++) {
		struct random random = { seed };
		struct plot plot;

		start(&plot, &random, (int)seed % KINDS);
		fence_at_random(&plot, &random);
		for (int i = 0; i < 12; i++) {
			struct fence *fence = &plot.details.fences[0];
			struct margins m = { random_between(&random, -2, 2),
				random_between(&random, -2, 2),
				random_between(&random, -2, 2), random_between(&random, -2, 2) };
			struct mirror mirror = mirror_of(&plot);
			struct place cell = { random_below(&random, plot.ground.columns),
				random_below(&random, plot.ground.rows) };
			struct leg l = leg_at_random(&plot.ground, &random);

			switch (random_below(&random, 6)) {
			case 0:
				if (resize_fits(&plot.ground, &m))
					resize_plot(&plot, &m);
				break;
			case 1:
				rescale_to(&plot, NM_PER_INCH * random_between(&random, 9, 16));
				break;
			case 2:
				if (mirror_has_side(&mirror, cell.x, cell.y))
					fence_fold(&plot, fence, cell);
				break;
			case 3:
				fence_take_out(&plot, fence, l);
				break;
			case 4:
				fence_set_gate(&plot, fence, l);
				break;
			default:
				fence_lay(&plot, fence, l);
				break;
			}
			plot_check(&plot);
		}
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_lay");
	TCase *hand = suite_case(suite, "by hand"), *sides = suite_case(suite, "by sides");
	TCase *folds = suite_case(suite, "folding"), *ground = suite_case(suite, "with the ground");

	tcase_add_test(hand, a_ring_drawn_in_four_legs_is_one_run);
	tcase_add_test(hand, what_is_there_already_stays);
	tcase_add_test(hand, tees_and_crossings_do_not_join_runs);
	tcase_add_test(hand, a_run_has_64_points_at_most_and_the_next_begins_where_it_ends);
	tcase_add_test(hand, lifting_splits_runs_and_takes_gates_that_lose_ground);
	tcase_add_test(hand,
		a_gate_needs_fence_all_along_and_stands_in_place_of_what_is_in_its_way);
	tcase_add_test(hand, images_that_overlap_make_one_gate);
	tcase_add_test(hand, images_outside_the_plan_are_left_out_and_told);
	tcase_add_loop_test(sides, any_acts_do_to_sides_and_gates_what_they_say_with_all_images, 0,
		KINDS);
	tcase_add_test(sides, the_same_sides_make_the_same_runs);
	tcase_add_test(sides, runs_that_meet_end_to_end_are_one);
	tcase_add_loop_test(folds, folding_copies_one_side_over_the_others, 1, KINDS);
	tcase_add_test(folds, a_fence_that_matches_stays_as_it_is_written);
	tcase_add_test(folds, a_gate_across_the_axis_stays_one_gate);
	tcase_add_test(ground, growing_moves_a_fence_as_it_is_written);
	tcase_add_test(ground, cropping_cuts_legs_and_takes_gates_that_are_cut);
	tcase_add_test(ground, cropping_leaves_just_the_sides_within);
	tcase_add_test(ground, a_fence_keeps_its_measure_where_cells_get_another_side);
	tcase_add_loop_test(ground, a_fence_round_the_plan_stays_round_it, 0, KINDS);
	tcase_add_test(ground, a_point_goes_to_the_nearest_one_of_the_new_grid);
	tcase_add_loop_test(ground, what_matched_its_image_still_does_after_the_cells_changed, 0,
		KINDS);
	tcase_add_test(ground, any_fence_keeps_its_rules_through_all_that_happens_to_a_plan);
	return suite;
}
