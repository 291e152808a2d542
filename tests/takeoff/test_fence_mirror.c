/* Fences in mirrored plots: panels, posts and gates are images of one another. */

#include "takeoff/fence/fences.h"

#include "plot/edit/fence_lay.h"
#include "plot/mirror.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "takeoff/fence/panels.h"

#include <stdlib.h>

#define FOOT NM_PER_FOOT

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void ground(int columns, int rows, const char *mirror)
{
	fences_ground(&garden.plot, columns, rows);
	garden.arena = ARENA_EMPTY;
	plot_set(&garden.plot, 0, HEAD_MIRROR, mirror);
}

static const struct fencing *only_fence(void)
{
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 1);
	return &garden.takeoff.fences.list[0];
}

/* ---- By hand --------------------------------------------------------------------------------- */

static void leg_is(const struct fence_leg *leg, enum cut_at cut_at, int whole, nm cut)
{
	ck_assert_int_eq(leg->cut_at, cut_at);
	ck_assert_int_eq(leg->whole, whole);
	ck_assert_int_eq(leg->cut[0], cut);
}

/* Legs of 13 ft: 8 and 5. Both were drawn from left to right, and both begin whole at the end
 * farther from the axis. */
START_TEST(a_leg_and_its_image_begin_at_the_ends_that_are_images)
{
	ground(40, 20, "left-right");
	fences_run(&garden.plot, "3,10 16,10");
	fences_run(&garden.plot, "24,10 37,10");
	leg_is(&only_fence()->legs[0], CUT_LAST, 1, 5 * FOOT);
	leg_is(&only_fence()->legs[1], CUT_FIRST, 1, 5 * FOOT);
}
END_TEST

START_TEST(without_the_mirror_each_begins_where_it_was_drawn_from)
{
	ground(40, 20, "off");
	fences_run(&garden.plot, "3,10 16,10");
	fences_run(&garden.plot, "24,10 37,10");
	leg_is(&only_fence()->legs[0], CUT_LAST, 1, 5 * FOOT);
	leg_is(&only_fence()->legs[1], CUT_LAST, 1, 5 * FOOT);
}
END_TEST

/* 20 ft across the axis: a rest of 4 ft between two whole ones. 18 ft: 5 ft at each end. */
START_TEST(a_leg_across_the_axis_is_the_same_from_both_ends)
{
	ground(40, 20, "left-right");
	fences_run(&garden.plot, "10,10 30,10");
	fences_run(&garden.plot, "29,5 11,5");
	leg_is(&only_fence()->legs[0], CUT_MIDDLE, 2, 4 * FOOT);
	leg_is(&only_fence()->legs[1], CUT_ENDS, 1, 5 * FOOT);
}
END_TEST

START_TEST(a_leg_across_an_axis_between_cells_is_the_same_from_both_ends)
{
	ground(41, 20, "left-right");
	fences_run(&garden.plot, "12,10 29,10");
	leg_is(&only_fence()->legs[0], CUT_ENDS, 1, FOOT * 9 / 2);
	ck_assert_int_eq(only_fence()->legs[0].cut[1], FOOT * 9 / 2);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* Something on the ground between two spots, of a kind. */
struct piece {
	struct spot low, high;
	int64_t kind;
};

struct pieces_found {
	struct piece list[8192];
	int count;
};

static int order_of(int64_t a, int64_t b)
{
	return (a > b) - (a < b);
}

static int spots_compare(struct spot a, struct spot b)
{
	return a.y != b.y ? order_of(a.y, b.y) : order_of(a.x, b.x);
}

static int pieces_compare(const void *a, const void *b)
{
	const struct piece *one = a, *other = b;
	int order = spots_compare(one->low, other->low);

	order = order ? order : spots_compare(one->high, other->high);
	return order ? order : order_of(one->kind, other->kind);
}

static void add(struct pieces_found *found, struct spot a, struct spot b, int64_t kind)
{
	bool is_turned = spots_compare(a, b) > 0;

	ck_assert_int_lt(found->count, (int)(sizeof found->list / sizeof *found->list));
	found->list[found->count++] = (struct piece){ is_turned ? b : a, is_turned ? a : b, kind };
}

static struct spot on_leg(const struct fence_leg *leg, nm off)
{
	return (struct spot){
		leg->from.x + off * order_of(leg->to.x, leg->from.x),
		leg->from.y + off * order_of(leg->to.y, leg->from.y) };
}

static void add_panels(struct pieces_found *found, const struct fencing *fencing,
	const struct fence_leg *leg)
{
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, fencing->section, groups);
	nm off = leg->at_gate[0] ? (fencing->gate_post - fencing->post) / 2 : 0;

	for (int i = 0; i < count; i++)
		for (int64_t j = 0; j < groups[i].count; j++) {
			add(found, on_leg(leg, off), on_leg(leg, off + groups[i].place),
				groups[i].place);
			off += groups[i].place;
		}
}

static void find_pieces(struct pieces_found *found, const struct fencing *fencing)
{
	found->count = 0;
	for (int i = 0; i < fencing->leg_count; i++)
		add_panels(found, fencing, &fencing->legs[i]);
	for (int i = 0; i < fencing->gate_count; i++)
		add(found, fencing->gates[i].from, fencing->gates[i].to, -fencing->gates[i].leaf);
	for (int i = 0; i < fencing->post_count; i++)
		add(found, fencing->posts[i].at, fencing->posts[i].at, fencing->posts[i].kind);
	qsort(found->list, (size_t)found->count, sizeof *found->list, pieces_compare);
}

static struct spot image_of(struct spot at, bool across, bool down)
{
	const struct ground *plan = &garden.plot.ground;
	nm cell = garden.takeoff.survey.cell;

	return (struct spot){ across ? plan->columns * cell - at.x : at.x,
		down ? plan->rows * cell - at.y : at.y };
}

/* Fails unless what is found, reflected, is what is found. */
static void check_image(const struct pieces_found *found, bool across, bool down)
{
	static struct pieces_found images;

	images.count = 0;
	for (int i = 0; i < found->count; i++)
		add(&images, image_of(found->list[i].low, across, down),
			image_of(found->list[i].high, across, down), found->list[i].kind);
	qsort(images.list, (size_t)images.count, sizeof *images.list, pieces_compare);
	for (int i = 0; i < found->count; i++)
		ck_assert_int_eq(pieces_compare(&found->list[i], &images.list[i]), 0);
}

static struct leg leg_at_random(struct random *random)
{
	const struct ground *plan = &garden.plot.ground;
	bool is_upright = random_below(random, 2);
	struct leg leg = { .from = { random_between(random, 0, plan->columns),
		random_between(random, 0, plan->rows) } };

	leg.to = leg.from;
	do {
		*(is_upright ? &leg.to.y : &leg.to.x) =
			random_between(random, 0, is_upright ? plan->rows : plan->columns);
	} while (place_equal(leg.from, leg.to));
	return leg;
}

/* A run says nothing of what is built but where it begins. */
static void turn_some_runs(struct fence *fence, struct random *random)
{
	for (size_t i = 0; i < fence->run_count; i++) {
		struct route *run = &fence->runs[i];
		int half = random_below(random, 2) * run->count / 2;

		for (int j = 0; j < half; j++) {
			struct place kept = run->points[j];

			run->points[j] = run->points[run->count - 1 - j];
			run->points[run->count - 1 - j] = kept;
		}
	}
}

static void draw_at_random(struct random *random)
{
	struct fence *fence = details_add_fence(&garden.plot.details, memory_string("Pickets"));

	for (int i = random_between(random, 1, 5); i > 0; i--)
		fence_lay(&garden.plot, fence, leg_at_random(random));
	for (int i = random_below(random, 6); i > 0; i--) {
		struct leg gate = leg_at_random(random);

		*(leg_is_upright(gate) ? &gate.to.y : &gate.to.x) =
			(leg_is_upright(gate) ? gate.from.y : gate.from.x) +
			random_between(random, 1, 5);
		if (gate.to.x <= garden.plot.ground.columns && gate.to.y <=
			garden.plot.ground.rows)
			fence_set_gate(&garden.plot, fence, gate);
	}
	turn_some_runs(fence, random);
}

static const char *const mirrors[] = { "left-right", "top-bottom", "four-way", "half-turn" };

/* With sizes of an even number of nanometres all halves are exact. */
START_TEST(panels_posts_and_gates_of_a_mirrored_fence_are_mirrored)
{
	static struct pieces_found found;
	static const char *const sections[] = { "8 ft", "6 ft", "30 in" };
	struct random random = { (uint64_t)_i + 40 };
	int panels = 0;

	for (int round = 0; round < runner_count(150, 1500); round++) {
		const struct fencing *fencing;
		int kind = _i;

		ground(random_between(&random, 1, 41), random_between(&random, 1, 41),
			mirrors[kind]);
		draw_at_random(&random);
		fences_set(&garden.plot, FENCE_SECTION, sections[random_below(&random, 3)]);
		if (random_below(&random, 2))
			fences_set(&garden.plot, FENCE_GATE_POST, "5 1/2 in");
		fencing = only_fence();
		find_pieces(&found, fencing);
		if (kind == 0 || kind == 2)
			check_image(&found, true, false);
		if (kind == 1 || kind == 2)
			check_image(&found, false, true);
		if (kind >= 2)
			check_image(&found, true, true);
		panels += (int)fencing->panels_whole;
		garden_fini(&garden);
	}
	ck_assert_int_gt(panels, 100);
	ground(1, 1, "off");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_mirror");
	TCase *hand = suite_case(suite, "hand");
	TCase *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_test(hand, a_leg_and_its_image_begin_at_the_ends_that_are_images);
	tcase_add_test(hand, without_the_mirror_each_begins_where_it_was_drawn_from);
	tcase_add_test(hand, a_leg_across_the_axis_is_the_same_from_both_ends);
	tcase_add_test(hand, a_leg_across_an_axis_between_cells_is_the_same_from_both_ends);

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, panels_posts_and_gates_of_a_mirrored_fence_are_mirrored, 0,
		sizeof mirrors / sizeof *mirrors);
	return suite;
}
