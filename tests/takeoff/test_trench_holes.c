/* Holes of posts in trenches of lines to lay and of the header: cases by hand, and all holes
 * against all legs. */
#include "takeoff/services/trench_holes.h"
#include "support/around.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "takeoff/services/service_values.h"

static struct garden garden;

static const char *const open_ground[] = { "........", "........", "........", "........",
	"........", "........", NULL };

static void teardown(void)
{
	garden_fini(&garden);
}

/* How many there are, counted anew. */
static int count(void)
{
	int number = 0;

	garden_count(&garden);
	while (garden_snag(&garden, SNAG_TRENCH_HOLE, number))
		number++;
	return number;
}

static void open(const char *lines)
{
	garden_rows(&garden, open_ground);
	around_add(&garden.plot, lines);
}

/* Posts at 2 ft and 6 ft across, 3 ft down, with holes 10 1/2 in across; a line of power has 6 in
 * of trench. */
#define FENCE "fence \"Pickets\"\n  run 2,3 6,3\n"

START_TEST(a_post_in_the_trench_of_a_line_to_lay_is_told_with_both_names)
{
	const struct snag *snag;

	open(FENCE "service power \"Lamp\" to-lay\n  line 6,0 6,6\n");
	ck_assert_int_eq(count(), 1);
	snag = garden_snag(&garden, SNAG_TRENCH_HOLE, 0);
	ck_assert_int_eq(snag->region, NO_REGION);
	ck_assert_int_eq(snag->kind, TRENCH_OF_LINE);
	ck_assert_int_eq(snag->cell.x, 5);
	ck_assert_int_eq(snag->cell.y, 2);
	ck_assert_int_eq(snag->box.right, 6);
	ck_assert_int_eq(snag->box.bottom, 3);
	ck_assert_str_eq(garden_sentence(&garden, snag), "Post 2 of Pickets: its hole goes through "
		"the trench of Lamp, a line to lay. Move the line or the post: 8 1/4 in or more "
		"from the line to the middle of the post.");
}
END_TEST

START_TEST(a_line_that_is_there_has_no_trench)
{
	open(FENCE "service power \"Lamp\" existing\n  line 6,0 6,6\n");
	ck_assert_int_eq(count(), 0);
}
END_TEST

START_TEST(without_posts_no_trench_is_looked_along_for_long)
{
	open("service power \"Lamp\" to-lay\n  line 0,0 0,6 8,6\n");
	ck_assert_int_eq(count(), 0);
}
END_TEST

/* 12 in from line to post, less 5 1/4 of the hole, leave 6 3/4 for half a trench; past the end of a
 * line its trench goes on by half its width. */
static const struct { const char *line, *trench; int snags; } edges[] = {
	{ "7,0 7,6", "13 1/2 in", 0 }, { "7,0 7,6", "13 33/64 in", 1 },
	{ "0,2 8,2", "13 1/2 in", 0 }, { "0,2 8,2", "13 33/64 in", 2 },
	{ "6,0 6,2", "13 1/2 in", 0 }, { "6,0 6,2", "13 33/64 in", 1 },
	/* the trench's corner is sqrt 2 x (12 - half of it) off: 5.30 and 5.24 in */
	{ "7,2 8,2", "16 1/2 in", 0 }, { "7,2 8,2", "16 19/32 in", 1 },
};

START_TEST(a_hole_may_touch_the_edge_of_a_trench)
{
	char lines[160];

	snprintf(lines, sizeof lines, FENCE "service power \"Lamp\" to-lay\n  trench %s\n"
		"  line %s\n", edges[_i].trench, edges[_i].line);
	open(lines);
	ck_assert_int_eq(count(), edges[_i].snags);
}
END_TEST

START_TEST(a_post_is_told_once_of_each_line_and_by_its_own_fence)
{
	const struct snag *snag;

	open("fence \"Nowhere\"\n" FENCE "fence \"Rails\"\n  run 4,5 8,5\n"
		"service gas \"Old\" existing\n  line 0,0 1,0\n"
		"service power \"Lamp\" to-lay\n  line 2,0 2,3 0,3\n  line 2,4 2,3\n"
		"service drain \"Gully\" to-lay\n  line 0,3 2,3\n"
		"service water \"Tap\" to-lay\n  line 4,4 4,6\n");
	ck_assert_int_eq(count(), 3);
	snag = garden_snag(&garden, SNAG_TRENCH_HOLE, 2);
	ck_assert_int_eq(snag->figures[0], 2);
	ck_assert_int_eq(snag->figures[1], 1);
	ck_assert_int_eq(snag->figures[2], 3);
	ck_assert_int_eq(garden_snag(&garden, SNAG_TRENCH_HOLE, 0)->figures[0], 1);
}
END_TEST

/* ---- A law ----------------------------------------------------------------------------------- */

/* Whether the hole meets the trench of a leg, by halves of a nanometre. */
static bool meets(struct leg leg, nm cell, nm width, struct spot at, nm across)
{
	struct leg f = leg_forward(leg);
	nm half_width = width / 2;
	double half = (double)half_width;
	double left = (double)(f.from.x * cell) - half, right = (double)(f.to.x * cell) + half;
	double top = (double)(f.from.y * cell) - half, bottom = (double)(f.to.y * cell) + half;
	double x = (double)at.x, y = (double)at.y;
	double dx = x < left ? left - x : x > right ? x - right : 0;
	double dy = y < top ? top - y : y > bottom ? y - bottom : 0;

	return 4 * (dx * dx + dy * dy) < (double)across * (double)across;
}

static int met_by(const struct legs *legs, nm width, const struct fencing *fencing)
{
	int met = 0;

	for (int i = 0; i < fencing->post_count; i++) {
		const struct fence_post *post = &fencing->posts[i];
		bool is_met = false;

		for (size_t j = 0; j < legs->count; j++)
			is_met |= meets(legs->items[j], garden.takeoff.survey.cell, width,
				post->at, fencing_hole(fencing, post->kind)->across);
		met += is_met;
	}
	return met;
}

START_TEST(a_hole_is_told_just_where_it_meets_a_trench)
{
	static const char *const cells[] = { "1 ft", "5 in", "3 ft" };
	struct random random = { 31 };
	int of_lines = 0, of_headers = 0;

	for (int round = 0; round < runner_count(200, 2000); round++) {
		const struct takeoff *takeoff = &garden.takeoff;
		const struct services *services;
		int met = 0, snags;

		plot_at_random(&garden.plot, &random, 25, ".pb");
		garden.arena = ARENA_EMPTY;
		plot_set(&garden.plot, 0, HEAD_CELL, cells[random_below(&random, 3)]);
		plot_set(&garden.plot, 'b', BED_WATER, "drip");
		plot_set(&garden.plot, 'b', BED_BUILD, "level");
		garden.plot.details.around.has_tap = true;
		fences_at_random(&garden.plot, &random);
		services_at_random(&garden.plot, &random);
		snags = count();
		services = &takeoff->plot.details.around.services;
		for (size_t i = 0; i < services->count; i++) {
			struct legs legs = LEGS_EMPTY;

			if (!services->items[i].is_to_lay)
				continue;
			routes_legs(&services->items[i].routes, &legs);
			met += met_by(&legs, service_trench(&takeoff->plot, &services->items[i]),
				&takeoff->fences.list[0]);
			legs_fini(&legs);
		}
		of_lines += met;
		ck_assert_int_le(met, snags);
		of_headers += snags - met;
		met += met_by(&takeoff->watering.legs, takeoff->watering.trench_width,
			&takeoff->fences.list[0]);
		ck_assert_int_eq(snags, met);
		garden_fini(&garden);
	}
	ck_assert(of_lines > 50 && of_headers > 20);
	fences_ground(&garden.plot, 1, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("trench holes");
	TCase *cases = suite_case(suite, "cases");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, a_post_in_the_trench_of_a_line_to_lay_is_told_with_both_names);
	tcase_add_test(cases, a_line_that_is_there_has_no_trench);
	tcase_add_test(cases, without_posts_no_trench_is_looked_along_for_long);
	tcase_add_loop_test(cases, a_hole_may_touch_the_edge_of_a_trench, 0,
		sizeof edges / sizeof *edges);
	tcase_add_test(cases, a_post_is_told_once_of_each_line_and_by_its_own_fence);
	tcase_add_test(cases, a_hole_is_told_just_where_it_meets_a_trench);
	return suite;
}
