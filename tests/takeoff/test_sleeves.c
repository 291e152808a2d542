/* Sleeves under paths, fixtures and the bases of walls: cases reckoned by hand, and laws on random
 * plots. */
#include "base/measure.h"
#include "survey/near.h"
#include "support/around.h"
#include "support/digging.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>

enum { RANDOM_PLOTS = 100 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* The plan has a path in columns 3 to 5; the line of the only service. */
static const struct service_line *line_of(const char *lines)
{
	garden_rows(&garden, (const char *const[]){ "...ppp....", "...ppp....", "...ppp....",
		"...ppp....", NULL });
	around_add(&garden.plot, lines);
	garden_count(&garden);
	return garden.takeoff.services.list;
}

static void sleeve_is(const struct service_line *line, int at, double x1, double y1, double x2,
	double y2)
{
	const struct sleeve *sleeve = &line->sleeves[at];

	ck_assert_int_lt(at, line->sleeve_count);
	ck_assert_double_eq_tol(metres(sleeve->from.x), 0.3048 * x1, EXACT);
	ck_assert_double_eq_tol(metres(sleeve->from.y), 0.3048 * y1, EXACT);
	ck_assert_double_eq_tol(metres(sleeve->to.x), 0.3048 * x2, EXACT);
	ck_assert_double_eq_tol(metres(sleeve->to.y), 0.3048 * y2, EXACT);
	ck_assert_double_eq_tol(metres(sleeve->length), 0.3048 * (x2 - x1 + y2 - y1), EXACT);
}

/* 3 ft of path and 12 in past either side. */
START_TEST(a_sleeve_goes_under_the_path_and_on_past_either_side)
{
	const struct service_line *line = line_of("service power \"L\" to-lay\n  line 9,2 0,2\n");

	ck_assert_int_eq(line->sleeve_count, 1);
	sleeve_is(line, 0, 2, 2, 7, 2);
	ck_assert_int_eq(line->sleeve_length, 5 * NM_PER_FOOT);
	ck_assert_double_eq_tol(garden_item(&garden, "sleeve")->order, 5 * 0.3048, EXACT);
	garden_fini(&garden);
	garden_rows(&garden, (const char *const[]){ "..........", "...ppp....", "...ppp....",
		"..........", NULL });
	plot_set(&garden.plot, 0, ALLOW_SLEEVE_PAST, "3 in");
	around_add(&garden.plot, "service power \"L\" to-lay\n  line 4,0 4,4\n");
	garden_count(&garden);
	sleeve_is(garden.takeoff.services.list, 0, 4, 0.75, 4, 3.25);
}
END_TEST

START_TEST(sleeves_of_all_lines_are_bought)
{
	line_of("service power \"L\" to-lay\n  line 0,1 9,1\n"
		"service water \"W\" to-lay\n  line 0,3 5,3\n");
	ck_assert_int_eq(garden.takeoff.services.sleeves, (5 + 3) * NM_PER_FOOT);
	ck_assert_double_eq_tol(garden_item(&garden, "sleeve")->order, 8 * 0.3048, EXACT);
}
END_TEST

START_TEST(a_fixture_without_base_is_built_on_too)
{
	garden_rows(&garden, (const char *const[]){ "...SSS....", "...SSS....", NULL });
	plot_set(&garden.plot, 'S', FIXTURE_BASE, "0 in");
	around_add(&garden.plot, "service power \"L\" to-lay\n  line 0,1 9,1\n");
	garden_count(&garden);
	sleeve_is(garden.takeoff.services.list, 0, 2, 1, 7, 1);
}
END_TEST

START_TEST(a_sleeve_ends_where_its_leg_does)
{
	const struct service_line *line = line_of("service power \"L\" to-lay\n"
		"  line 2,2 4,2 4,4\n  line 5,1 5,2\n");

	ck_assert_int_eq(line->sleeve_count, 3);
	sleeve_is(line, 0, 2, 2, 4, 2);
	sleeve_is(line, 1, 4, 2, 4, 4);
	sleeve_is(line, 2, 5, 1, 5, 2);
}
END_TEST

/* Along its edge, and along the plan's, nothing lies over it. */
START_TEST(a_line_along_the_edge_of_a_path_runs_beside_it)
{
	const struct service_line *line = line_of("service power \"L\" to-lay\n"
		"  line 3,0 3,4\n  line 6,4 6,0\n  line 0,0 9,0\n  line 0,4 9,4\n");

	ck_assert_int_eq(line->sleeve_count, 0);
	ck_assert_ptr_null(garden_item(&garden, "sleeve"));
}
END_TEST

/* One of 1 ft, 2 ft apart from the next: with 12 in past either side they meet. */
START_TEST(sleeves_that_would_meet_are_one)
{
	static const struct { const char *row; int sleeves; double length; } rows[] = {
		{ ".p..p......", 1, 6 }, { "..p...p....", 2, 6 }, { "..pq.......", 1, 4 },
		{ "..pS.......", 1, 4 }, { "..pl.......", 1, 3 },
	};

	garden_rows(&garden, (const char *const[]){ rows[_i].row, rows[_i].row, NULL });
	around_add(&garden.plot, "service power \"L\" to-lay\n  line 0,1 11,1\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.services.list[0].sleeve_count, rows[_i].sleeves);
	ck_assert_double_eq_tol(metres(garden.takeoff.services.sleeves),
		0.3048 * rows[_i].length, EXACT);
}
END_TEST

/* A bed of 8 x 8 ft from 3 ft on: base from 6 in outside it to 10 in inside, then 6 ft 4 in of
 * ground. */
START_TEST(a_line_through_a_bed_has_a_sleeve_under_each_wall)
{
	garden_rows(&garden, (const char *const[]){ "..............", "...bbbbbbbb...",
		"...bbbbbbbb...", "...bbbbbbbb...", "...bbbbbbbb...", "...bbbbbbbb...",
		"...bbbbbbbb...", "...bbbbbbbb...", "...bbbbbbbb...", "..............", NULL });
	around_add(&garden.plot, "service power \"L\" to-lay\n  line 0,5 14,5\n");
	garden_count(&garden);

	const struct service_line *line = garden.takeoff.services.list;

	ck_assert_int_eq(line->sleeve_count, 2);
	sleeve_is(line, 0, 1.5, 5, 3 + 10.0 / 12 + 1, 5);
	sleeve_is(line, 1, 11 - 10.0 / 12 - 1, 5, 12.5, 5);
}
END_TEST

START_TEST(what_is_there_has_no_sleeves)
{
	ck_assert_int_eq(line_of("service gas \"G\" existing\n  line 0,2 9,2\n")->sleeve_count, 0);
}
END_TEST

/* ---- GEOS ------------------------------------------------------------------------------------ */

/* With nothing past their sides sleeves lie where GEOS finds what is built on both sides of the
 * line: in a strip of a hair on each. */
static double strip_under(GEOSContextHandle_t geos, const GEOSGeometry *built, struct leg leg,
	double by)
{
	double cell = metres(garden.takeoff.survey.cell);
	struct leg f = leg_forward(leg);
	bool is_upright = leg_is_upright(leg);
	double x1 = f.from.x * cell, y1 = f.from.y * cell, x2 = f.to.x * cell, y2 = f.to.y * cell;
	struct geos_box box = { is_upright ? fmin(x1, x1 + by) : x1,
		is_upright ? y1 : fmin(y1, y1 + by), is_upright ? fmax(x1, x1 + by) : x2,
		is_upright ? y2 : fmax(y1, y1 + by) };
	GEOSGeometry *strip = geos_union(geos, &box, 1);
	double length = geos_common(geos, built, strip) / fabs(by);

	geos_free(geos, strip);
	return length;
}

static GEOSGeometry *built_shape(struct diggings *diggings)
{
	GEOSGeometry *built = geos_union(diggings->geos, NULL, 0);

	for (int i = 0; i < diggings->count; i++) {
		const struct digging *digging = &diggings->list[i];
		struct zone zone = { .region = digging->region, .part = digging->part };
		GEOSGeometry *more;

		if (digging->part != DIG_PATH && digging->part != DIG_PAD &&
			zone_base(&garden.takeoff.survey, &zone) == 0)
			continue;
		more = GEOSUnion_r(diggings->geos, built, digging->shape);
		geos_free(diggings->geos, built);
		built = more;
	}
	return built;
}

static struct routes *add_line(void)
{
	return &services_add(&garden.plot.details.around.services, SERVICE_WATER, true,
		memory_string("W"))->routes;
}

static void add_leg(struct routes *routes, struct leg leg)
{
	struct route *route = routes_add(routes);

	route_add(route, leg.from);
	route_add(route, leg.to);
}

/* A line of many legs: several on one line of the grid, some on the plan's edges. Returns them
 * joined. */
static struct legs line_at_random(struct random *random)
{
	int columns = garden.plot.ground.columns, rows = garden.plot.ground.rows;
	struct routes *routes = add_line();
	struct legs legs = LEGS_EMPTY;

	for (int i = random_between(random, 1, columns + rows); i > 0; i--) {
		bool is_upright = random_below(random, 2);
		struct leg leg = { { random_between(random, 0, columns - !is_upright),
			random_between(random, 0, rows - is_upright) }, { 0, 0 } };

		leg.to = leg.from;
		if (is_upright)
			leg.to.y = random_between(random, leg.from.y + 1, rows);
		else
			leg.to.x = random_between(random, leg.from.x + 1, columns);
		add_leg(routes, leg);
	}
	routes_legs(routes, &legs);
	legs_join(&legs);
	return legs;
}

static double sleeved_along(const struct service_line *line, struct leg leg)
{
	struct near_thing along = near_leg(leg, garden.takeoff.survey.cell, 0);
	nm length = 0;

	for (int i = 0; i < line->sleeve_count; i++) {
		const struct sleeve *sleeve = &line->sleeves[i];

		if (sleeve->from.x >= along.left && sleeve->to.x <= along.right &&
			sleeve->from.y >= along.top && sleeve->to.y <= along.bottom)
			length += sleeve->length;
	}
	return metres(length);
}

static void geos_agrees(const struct diggings *diggings, const GEOSGeometry *built, struct leg leg,
	int seed)
{
	double above = strip_under(diggings->geos, built, leg, -1e-4);
	double below = strip_under(diggings->geos, built, leg, 1e-4);
	double whole = metres(leg_length(leg) * garden.takeoff.survey.cell);
	double found = sleeved_along(garden.takeoff.services.list, leg);

	ck_assert_msg(found <= fmin(above, below) + 1e-6, "seed %d: %g", seed, found);
	ck_assert_msg(found >= above + below - whole - 1e-6, "seed %d: %g", seed, found);
}

START_TEST(sleeves_are_no_longer_than_what_geos_finds_built_on_either_side)
{
	struct random random = { (uint64_t)_i };
	struct legs legs;

	diggings_plot(&garden.plot, &random);
	plot_set(&garden.plot, 0, ALLOW_SLEEVE_PAST, "0 in");
	legs = line_at_random(&random);
	garden_count(&garden);

	GEOSContextHandle_t geos = geos_start();
	struct diggings diggings = diggings_find(geos, &garden.takeoff);
	GEOSGeometry *built = built_shape(&diggings);

	for (size_t i = 0; i < legs.count; i++)
		geos_agrees(&diggings, built, legs.items[i], _i);
	geos_free(diggings.geos, built);
	diggings_free(&diggings);
	geos_end(geos);
	legs_fini(&legs);
}
END_TEST

START_TEST(each_leg_of_a_line_has_the_sleeves_that_it_has_alone)
{
	struct random random = { (uint64_t)_i };
	const struct service_line *line;
	struct legs legs;
	int at = 0;

	diggings_plot(&garden.plot, &random);
	legs = line_at_random(&random);
	for (size_t i = 0; i < legs.count; i++)
		add_leg(add_line(), legs.items[i]);
	garden_count(&garden);
	line = garden.takeoff.services.list;
	for (size_t i = 1; i <= legs.count; i++)
		for (int j = 0; j < line[i].sleeve_count; j++, at++) {
			const struct sleeve *alone = &line[i].sleeves[j];

			ck_assert_int_lt(at, line->sleeve_count);
			ck_assert_mem_eq(&line->sleeves[at], alone, sizeof *alone);
		}
	ck_assert_int_eq(line->sleeve_count, at);
	legs_fini(&legs);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sleeves");
	TCase *cases = suite_case(suite, "cases"), *random = suite_case(suite, "random");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, a_sleeve_goes_under_the_path_and_on_past_either_side);
	tcase_add_test(cases, sleeves_of_all_lines_are_bought);
	tcase_add_test(cases, a_fixture_without_base_is_built_on_too);
	tcase_add_test(cases, a_sleeve_ends_where_its_leg_does);
	tcase_add_test(cases, a_line_along_the_edge_of_a_path_runs_beside_it);
	tcase_add_loop_test(cases, sleeves_that_would_meet_are_one, 0, 5);
	tcase_add_test(cases, a_line_through_a_bed_has_a_sleeve_under_each_wall);
	tcase_add_test(cases, what_is_there_has_no_sleeves);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_loop_test(random,
		sleeves_are_no_longer_than_what_geos_finds_built_on_either_side, 0, RANDOM_PLOTS);
	tcase_add_loop_test(random, each_leg_of_a_line_has_the_sleeves_that_it_has_alone, 0,
		RANDOM_PLOTS);
	return suite;
}
