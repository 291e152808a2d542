/* What is dug by hand: cases reckoned by hand, and random plots against GEOS. */
#include "base/measure.h"
#include "support/around.h"
#include "support/digging.h"
#include "support/garden.h"
#include "support/planting.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { RANDOM_PLOTS = 100 };

static const double EXACT = 1e-9, GEOS_NEAR = 1e-7;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct hand *hand_of(const char *name)
{
	const struct service_lines *lines = &garden.takeoff.services;

	for (int i = 0; i < lines->count; i++)
		if (strcmp(lines->list[i].name, name) == 0)
			return &lines->list[i].hand;
	for (int i = 0; i < lines->kept_count; i++)
		if (strcmp(lines->kept[i].name, name) == 0)
			return &lines->kept[i].hand;
	ck_abort_msg("no %s", name);
	return NULL;
}

/* NULL where there is none. */
static const struct hand_dig *dig_of(const struct hand *hand, int region, const char *part)
{
	for (int i = 0; i < hand->dig_count; i++)
		if (hand->digs[i].region == region && strcmp(hand->digs[i].part, part) == 0)
			return &hand->digs[i];
	return NULL;
}

/* Square feet, 0 where there is none. */
static double feet_of(const char *name, int region, const char *part)
{
	const struct hand_dig *dig = dig_of(hand_of(name), region, part);

	return dig ? dig->area / SQUARE_FOOT : 0;
}

static void spots_are(const struct hand_dig *dig, double left, double top, double right,
	double bottom)
{
	const double found[] = { metres(dig->from.x), metres(dig->from.y), metres(dig->to.x),
		metres(dig->to.y) }, expected[] = { left, top, right, bottom };

	for (int i = 0; i < 4; i++)
		ck_assert_double_eq_tol(found[i], 0.3048 * expected[i], EXACT);
}

/* ---- Ground ---------------------------------------------------------------------------------- */

/* 2 ft on either side of the line, over the whole path of 10 ft. */
START_TEST(a_path_is_dug_by_hand_as_far_as_it_is_near_a_line)
{
	garden_rectangle(&garden, 'p', 12, 10);
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 5,0 5,10\n");
	garden_count(&garden);

	const struct hand *hand = hand_of("Gas");
	const struct hand_dig *dig = dig_of(hand, 0, "path");

	ck_assert_double_eq_tol(hand->area, 40 * SQUARE_FOOT, EXACT);
	ck_assert_int_eq(hand->dig_count, 1);
	ck_assert_double_eq_tol(dig->area, 40 * SQUARE_FOOT, EXACT);
	ck_assert_double_eq_tol(hand->fabric, 40 * SQUARE_FOOT, EXACT);
	spots_are(dig, 3, 0, 7, 10);
	ck_assert_int_eq(dig->first.x, 3);
	ck_assert_int_eq(dig->first.y, 0);
}
END_TEST

/* Cells of 1 ft: 24 in are two of them, 25 in a part of a third. */
START_TEST(a_length_allowed_for_counts_whole_cells)
{
	static const struct { const char *near; double area; } rows[] = {
		{ "0 in", 0 }, { "1 in", 20 }, { "12 in", 20 }, { "23 in", 40 }, { "24 in", 40 },
		{ "25 in", 60 },
	};

	garden_rectangle(&garden, 'p', 12, 10);
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 5,0 5,10\n");
	plot_set(&garden.plot, 0, ALLOW_SERVICE_NEAR, rows[_i].near);
	garden_count(&garden);
	ck_assert_double_eq_tol(hand_of("Gas")->area, rows[_i].area * SQUARE_FOOT, EXACT);
}
END_TEST

/* A circle of 1 ft round a grid point is in the four cells about it. */
START_TEST(within_what_is_kept_all_that_is_worked_is_told)
{
	garden_rows(&garden, (const char *const[]){ "pppp", "pppp", "lll.", "lll.", NULL });
	around_add(&garden.plot, "keep \"Pear\" 1 ft\n  at 2,2\nkeep \"Well\"\n"
		"  from 3,2 to 9,9\n");
	garden_count(&garden);
	ck_assert_double_eq_tol(hand_of("Pear")->area, 4 * SQUARE_FOOT, EXACT);
	ck_assert_double_eq_tol(feet_of("Pear", 0, "path"), 2, EXACT);
	ck_assert_double_eq_tol(feet_of("Pear", 1, "lawn"), 2, EXACT);
	ck_assert_double_eq_tol(hand_of("Pear")->fabric, 2 * SQUARE_FOOT, EXACT);
	/* Nobody works on open ground. */
	ck_assert_double_eq_tol(hand_of("Well")->area, 2 * SQUARE_FOOT, EXACT);
	ck_assert_int_eq(hand_of("Well")->dig_count, 0);
}
END_TEST

/* 8 x 4 ft outside; a wall 8 in deep with its base 2 in past that: what lies further in is forked
 * over, 6 ft 4 in by 2 ft 4 in. */
START_TEST(ground_within_beds_is_worked_too)
{
	garden_rectangle(&garden, 'b', 8, 4);
	around_add(&garden.plot, "keep \"All\"\n  from 0,0 to 8,4\n");
	garden_count(&garden);
	ck_assert_double_eq_tol(feet_of("All", 0, "loosened"), 19.0 / 3 * 7 / 3, EXACT);
	ck_assert_double_eq_tol(feet_of("All", 0, "wall"), 32 - 19.0 / 3 * 7 / 3, EXACT);
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	garden_count(&garden);
	ck_assert_double_eq(feet_of("All", 0, "loosened"), 0);
	ck_assert_double_gt(feet_of("All", 0, "inside"), 0);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_double_eq_tol(feet_of("All", 0, "dug-over"), 32, EXACT);
	plot_set(&garden.plot, 'b', BED_PREPARE, "0 in");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("All")->dig_count, 0);
	plot_set(&garden.plot, 'b', BED_PREPARE, "6 in");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	garden_count(&garden);
	ck_assert_double_eq(feet_of("All", 0, "dug-over"), 0);
	ck_assert_double_eq_tol(feet_of("All", 0, "bed"), 32, EXACT);
}
END_TEST

/* The path's left arm begins higher than its right one and is near the line lower down. */
START_TEST(the_first_cell_by_hand_is_the_first_in_reading_order)
{
	const struct hand_dig *dig;

	garden_rows(&garden, (const char *const[]){ "p.......", "p.......", "p....p..", "p....p..",
		"p....p..", "p....p..", "p....p..", "pppppp..", NULL });
	plot_set(&garden.plot, 0, ALLOW_SERVICE_NEAR, "6 in");
	around_add(&garden.plot, "service gas \"G\" existing\n  line 0,5 0,6\n  line 6,3 6,4\n");
	garden_count(&garden);
	dig = dig_of(hand_of("G"), 0, "path");
	ck_assert_ptr_nonnull(dig);
	ck_assert_int_eq(dig->first.x, 5);
	ck_assert_int_eq(dig->first.y, 2);
}
END_TEST

/* Open ground is worked where it is cut or filled to its finish, not where it stays as it is. */
START_TEST(open_ground_that_is_graded_is_worked_too)
{
	garden_rectangle(&garden, '.', 4, 4);
	around_add(&garden.plot, "keep \"Pear\" 1 ft\n  at 2,2\n");
	plot_add_lines(&garden.plot, "levels 4 ft\n  6 in, 6 in\n  6 in, 6 in\n"
		"finish 0,0 6 in\n");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("Pear")->dig_count, 0);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_KEEP_DUG, 0));
	garden.plot.details.finish.drop = 5 * NM_PER_INCH;
	garden_count(&garden);
	ck_assert_double_eq_tol(feet_of("Pear", NO_REGION, "graded"), 4, EXACT);
	ck_assert_int_eq(garden_snag(&garden, SNAG_KEEP_DUG, 0)->kind, HAND_GROUND);
	ck_assert_int_eq(garden_snag(&garden, SNAG_KEEP_DUG, 0)->region, NO_REGION);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_KEEP_DUG, 1));
}
END_TEST

/* A trench 6 in wide across a line: 4 ft of it are near; what is to lay is near nothing itself. */
START_TEST(a_trench_is_dug_by_hand_where_it_crosses_a_line)
{
	garden_rows(&garden, (const char *const[]){ "..........", "..........", "..........",
		"..........", NULL });
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 5,0 5,4\n"
		"service power \"Lamp\" to-lay\n  line 0,2 10,2\n");
	garden_count(&garden);

	const struct hand_dig *dig = dig_of(hand_of("Gas"), NO_REGION, "trench");

	ck_assert_double_eq_tol(dig->area, 4 * 0.5 * SQUARE_FOOT, EXACT);
	ck_assert_str_eq(dig->line, "Lamp");
	spots_are(dig, 3, 1.75, 7, 2.25);
	ck_assert_double_eq(hand_of("Lamp")->area, 0);
	ck_assert_int_eq(hand_of("Lamp")->dig_count, 0);
}
END_TEST

/* 6 ft of header straight down to the bed, 6 in wide; cells down to 4 ft are near the gas. Half of
 * its first 6 in lies outside the plan. */
START_TEST(the_trench_of_the_header_is_dug_by_hand_where_it_crosses_a_line)
{
	const struct hand_dig *dig;

	garden_rows(&garden, (const char *const[]){ ".........", ".........", ".........",
		".........", ".........", ".........", "....bbbb.", "....bbbb.", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 0,2 9,2\n"
		"keep \"Pear\" 1 ft\n  at 5,5\ntap 5,0\n");
	garden_count(&garden);
	dig = dig_of(hand_of("Gas"), NO_REGION, "header-trench");
	ck_assert_ptr_nonnull(dig);
	ck_assert_int_eq(dig->kind, HAND_HEADER);
	ck_assert_double_eq_tol(dig->area, 4 * 0.5 * SQUARE_FOOT, EXACT);
	spots_are(dig, 4.75, 0, 5.25, 4);
	/* It goes on for its half width past its end. */
	ck_assert_double_eq_tol(feet_of("Pear", NO_REGION, "header-trench"), 2 * 0.5, EXACT);
	plot_set(&garden.plot, 'b', BED_WATER, "none");
	garden_count(&garden);
	ck_assert_ptr_null(dig_of(hand_of("Gas"), NO_REGION, "header-trench"));
}
END_TEST

/* ---- Holes and spikes ------------------------------------------------------------------------ */

/* Cells of 1 in, holes 10 in across: near when their middle is less than 24 + 5 in from the
 * line. */
START_TEST(a_hole_is_near_by_its_edge)
{
	char lines[160];

	garden_rectangle(&garden, 'p', 120, 80);
	plot_set(&garden.plot, 0, HEAD_CELL, "1 in");
	snprintf(lines, sizeof lines, "fence \"F\"\n  section 2 ft\n  hole 10 in\n"
		"  run 12,10 60,10\nservice gas \"Gas\" existing\n  line 0,%d 36,%d\n", 38 + _i,
		38 + _i);
	around_add(&garden.plot, lines);
	garden_count(&garden);

	const struct hand *hand = hand_of("Gas");

	/* Posts at 12, 36 and 60 in; the line ends below the second. */
	ck_assert_int_eq(garden.takeoff.fences.list[0].post_count, 3);
	ck_assert_int_eq(hand->post_count, _i == 0 ? 2 : 0);
	for (int i = 0; i < hand->post_count; i++) {
		ck_assert_int_eq(hand->posts[i].number, i + 1);
		ck_assert_str_eq(hand->posts[i].name, "F");
	}
}
END_TEST

/* A gas line along the upper edge: a hole comes nearer than 24 in to it where the plant's middle is
 * nearer than that and half the hole. A pot of 24 in has one 6 ft wide, no pot the 12 in that the
 * plant is apart from the next. */
START_TEST(a_plants_hole_is_near_by_its_edge)
{
	static const struct { const char *plant; int count; } rows[] = {
		{ "pot 24 in\n  at 1,4", 1 }, { "pot 24 in\n  at 1,5", 0 }, { "at 1,1", 1 },
		{ "at 1,2", 0 },
	};

	garden_rectangle(&garden, '.', 4, 8);
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 0,0 4,0\n");
	planting_add(&garden, rows[_i].plant);
	garden_count(&garden);

	const struct hand *hand = hand_of("Gas");

	ck_assert_int_eq(hand->plant_count, rows[_i].count);
	for (int i = 0; i < hand->plant_count; i++) {
		ck_assert_int_eq(hand->plants[i].region, NO_REGION);
		ck_assert_int_eq(hand->plants[i].at.x, 3 * NM_PER_FOOT / 2);
	}
}
END_TEST

/* Where ground is worked as a whole it is told as that; a path is planted by nobody. */
START_TEST(plants_have_holes_of_their_own_where_nobody_else_works)
{
	garden_rows(&garden, (const char *const[]){ "bbbb.llpp", "bbbb.llpp", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_PREPARE, "0 in");
	around_add(&garden.plot, "keep \"All\"\n  from 0,0 to 9,2\n");
	planting_add(&garden, "drift b whole\n  pattern square\n  at 4,0\n  at 5,0\n  at 7,0");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("All")->plant_count, 8 + 1 + 1);
	for (int i = 0; i < 8; i++)
		ck_assert_int_eq(hand_of("All")->plants[i].region, 0);
	ck_assert_int_eq(hand_of("All")->plants[9].region, NO_REGION);
	plot_set(&garden.plot, 'b', BED_PREPARE, "6 in");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("All")->plant_count, 2);
	plot_set(&garden.plot, 'b', BED_PREPARE, "0 in");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("All")->plant_count, 2);
	plot_set(&garden.plot, 'b', BED_BUILD, "raised");
	garden_count(&garden);
	ck_assert_int_eq(hand_of("All")->plant_count, 2);
}
END_TEST

/* A path of 3 by 8 ft has edging along all sides: runs of 8 ft with a spike each 2 ft, runs of
 * 3 ft with one each 18 in. */
START_TEST(spikes_are_counted_where_they_stand)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".pppppppp.", ".pppppppp.",
		".pppppppp.", "..........", NULL });
	around_add(&garden.plot, "keep \"Left\"\n  from 0,0 to 4,5\n"
		"service gas \"Gas\" existing\n  line 10,0 10,5\n"
		"keep \"All\"\n  from 0,0 to 10,5\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.edging.spikes, 2 * 5 + 2 * 3);
	ck_assert_int_eq(hand_of("All")->spikes, 16);
	/* At 1 and 3 ft of both long runs, and all three of the left one. */
	ck_assert_int_eq(hand_of("Left")->spikes, 2 * 2 + 3);
	/* The right edge is 1 ft off; 7 ft across is 3 ft off. */
	ck_assert_int_eq(hand_of("Gas")->spikes, 2 + 3);
}
END_TEST

/* On a rectangle's edge nothing is in it: of a path of 4 by 1 ft along the plan's lower edge the
 * three spikes there, and the lower ones of its two ends. */
START_TEST(spikes_along_the_edge_of_the_plan_stand_there)
{
	garden_rows(&garden, (const char *const[]){ "....", "....", "....", "pppp", NULL });
	around_add(&garden.plot, "keep \"Low\"\n  from -1,3 to 5,5\n"
		"keep \"High\"\n  from -1,-1 to 5,1\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.edging.spikes, 2 * 3 + 2 * 2);
	ck_assert_int_eq(hand_of("Low")->spikes, 3 + 2);
	ck_assert_int_eq(hand_of("High")->spikes, 0);
}
END_TEST

/* ---- GEOS ------------------------------------------------------------------------------------ */

/* In metres. */
static GEOSGeometry *line_shape(GEOSContextHandle_t geos, struct place from, struct place to)
{
	double cell = metres(garden.takeoff.survey.cell);
	GEOSCoordSequence *points = GEOSCoordSeq_create_r(geos, 2, 2);

	GEOSCoordSeq_setXY_r(geos, points, 0, from.x * cell, from.y * cell);
	GEOSCoordSeq_setXY_r(geos, points, 1, to.x * cell, to.y * cell);
	return GEOSGeom_createLineString_r(geos, points);
}

/* Whether the cell is nearer than that to any leg; of a circle the leg has no length. */
static bool is_near(GEOSContextHandle_t geos, const GEOSGeometry *cell, const struct legs *legs,
	double around)
{
	bool near = false;

	for (size_t i = 0; i < legs->count && !near; i++) {
		GEOSGeometry *leg = line_shape(geos, legs->items[i].from, legs->items[i].to);
		double distance;

		ck_assert_int_eq(GEOSDistance_r(geos, cell, leg, &distance), 1);
		near = distance < around - 1e-9;
		geos_free(geos, leg);
	}
	return near;
}

/* All cells that are near, as one shape. */
static GEOSGeometry *near_shape(GEOSContextHandle_t geos, const struct legs *legs, double around)
{
	const struct survey *survey = &garden.takeoff.survey;
	double side = metres(survey->cell);
	struct geos_box *boxes = calloc((size_t)(survey->columns * survey->rows),
		sizeof *boxes);
	size_t count = 0;
	GEOSGeometry *shape;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++) {
			struct geos_box box = { x * side, y * side, (x + 1) * side,
				(y + 1) * side };
			GEOSGeometry *cell = geos_union(geos, &box, 1);

			if (is_near(geos, cell, legs, around))
				boxes[count++] = box;
			geos_free(geos, cell);
		}
	shape = geos_union(geos, boxes, count);
	free(boxes);
	return shape;
}

/* What is around ground that a dig has, but for a hair: sides that only touch do not count. */
static void check_around(const struct hand_dig *dig, GEOSContextHandle_t geos,
	const GEOSGeometry *near, const GEOSGeometry *shape, int seed)
{
	GEOSGeometry *within = geos_offset(geos, near, -GEOS_NEAR / 10);
	GEOSGeometry *ground = GEOSIntersection_r(geos, within, shape);
	const double found[] = { metres(dig->from.x), metres(dig->from.y), metres(dig->to.x),
		metres(dig->to.y) };
	double expected[4];

	GEOSGeom_getXMin_r(geos, ground, &expected[0]);
	GEOSGeom_getYMin_r(geos, ground, &expected[1]);
	GEOSGeom_getXMax_r(geos, ground, &expected[2]);
	GEOSGeom_getYMax_r(geos, ground, &expected[3]);
	for (int i = 0; i < 4; i++)
		ck_assert_msg(fabs(found[i] - expected[i]) < GEOS_NEAR, "seed %d: %g, expected %g",
			seed, found[i], expected[i]);
	geos_free(geos, within);
	geos_free(geos, ground);
}

/* Each dig of a zone is what GEOS digs there of the cells that GEOS finds near. */
static void check_digs(struct diggings *diggings, const struct hand *hand, const struct legs *legs,
	double around, int seed)
{
	GEOSGeometry *near = near_shape(diggings->geos, legs, around);

	ck_assert_double_eq_tol(hand->area, geos_area(diggings->geos, near), GEOS_NEAR);
	for (int i = 0; i < diggings->count; i++) {
		const struct digging *digging = &diggings->list[i];
		const struct hand_dig *dig = dig_of(hand, digging->region,
			dig_words[digging->part].key);
		double expected = geos_common(diggings->geos, near, digging->shape);

		ck_assert_msg(fabs((dig ? dig->area : 0) - expected) < GEOS_NEAR,
			"seed %d: region %d %s: %g, expected %g", seed, digging->region,
			dig_words[digging->part].key, dig ? dig->area : 0, expected);
		if (dig)
			check_around(dig, diggings->geos, near, digging->shape, seed);
	}
	geos_free(diggings->geos, near);
}

static void check_service(struct diggings *diggings, const struct service_line *line, int seed)
{
	nm near = block_length(garden.takeoff.allow, ALLOW_SERVICE_NEAR);
	struct legs legs = LEGS_EMPTY;

	for (size_t i = 0; i < line->service->routes.count; i++)
		route_legs(&line->service->routes.items[i], &legs);
	if (line->state == LINE_EXISTING)
		check_digs(diggings, &line->hand, &legs, metres(near), seed);
	legs_fini(&legs);
}

START_TEST(what_is_dug_by_hand_is_what_geos_digs_of_cells_near_a_line_or_a_circle)
{
	struct random random = { (uint64_t)_i };
	const struct service_lines *lines = &garden.takeoff.services;

	diggings_plot(&garden.plot, &random);
	services_at_random(&garden.plot, &random);
	garden_count(&garden);

	GEOSContextHandle_t geos = geos_start();
	struct diggings diggings = diggings_find(geos, &garden.takeoff);

	for (int i = 0; i < lines->count; i++)
		check_service(&diggings, &lines->list[i], _i);
	for (int i = 0; i < lines->kept_count; i++) {
		const struct kept *kept = &lines->kept[i];
		struct leg point = { kept->obstacle->at, kept->obstacle->at };

		if (kept->radius > 0)
			check_digs(&diggings, &kept->hand, &(struct legs){ &point, 1, 1 },
				metres(kept->radius), _i);
	}
	diggings_free(&diggings);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("by hand");
	TCase *ground = suite_case(suite, "ground"), *points = suite_case(suite, "points");
	TCase *random = suite_case(suite, "random");

	tcase_add_checked_fixture(ground, NULL, teardown);
	tcase_add_test(ground, a_path_is_dug_by_hand_as_far_as_it_is_near_a_line);
	tcase_add_loop_test(ground, a_length_allowed_for_counts_whole_cells, 0, 6);
	tcase_add_test(ground, within_what_is_kept_all_that_is_worked_is_told);
	tcase_add_test(ground, ground_within_beds_is_worked_too);
	tcase_add_test(ground, open_ground_that_is_graded_is_worked_too);
	tcase_add_test(ground, the_first_cell_by_hand_is_the_first_in_reading_order);
	tcase_add_test(ground, a_trench_is_dug_by_hand_where_it_crosses_a_line);
	tcase_add_test(ground, the_trench_of_the_header_is_dug_by_hand_where_it_crosses_a_line);
	tcase_add_checked_fixture(points, NULL, teardown);
	tcase_add_loop_test(points, a_plants_hole_is_near_by_its_edge, 0, 4);
	tcase_add_test(points, plants_have_holes_of_their_own_where_nobody_else_works);
	tcase_add_loop_test(points, a_hole_is_near_by_its_edge, 0, 2);
	tcase_add_test(points, spikes_are_counted_where_they_stand);
	tcase_add_test(points, spikes_along_the_edge_of_the_plan_stand_there);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_loop_test(random,
		what_is_dug_by_hand_is_what_geos_digs_of_cells_near_a_line_or_a_circle, 0,
		RANDOM_PLOTS);
	return suite;
}
