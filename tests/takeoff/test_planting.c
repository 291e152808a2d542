/* How many plants stand in beds, against tables of spacing, and where: against geometry by GEOS and
 * pair by pair. */
#include "base/measure.h"
#include "support/beds.h"
#include "support/planting.h"
#include "support/runner.h"
#include "plot/mirror.h"

#include <math.h>
#include <stdio.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct planting_row *row(int index)
{
	ck_assert_int_lt(index, garden.takeoff.planting.count);
	return &garden.takeoff.planting.list[index];
}

static void count_drift(int columns, int rows, const char *cell, int inches, const char *pattern)
{
	char lines[200];

	planting_bed(&garden, columns, rows, cell);
	snprintf(lines, sizeof lines, "spacing %d in\n  pattern %s\n  drift b whole", inches,
		pattern);
	planting_add(&garden, lines);
	garden_count(&garden);
}

/* ---- Counts ---------------------------------------------------------------------------------- */

/* Beds in feet. The first is a worked example: Colorado State University Extension, CMG GardenNotes
 * 713, on block style layout in raised beds, title and year not noted: a bed of 3 x 2 ft at 3 in
 * holds 12 x 8. Then what 100 plants cover and what 100 sq ft hold, in square rows: Mississippi
 * State University Extension, Ground Covers, table of spacing, year not noted. 100 plants at 24 and
 * 36 in cover 400 and 900 sq ft: University of Florida, IFAS Extension, as quoted. The rest: rows
 * with half a spacing clear at the edges, worked out by hand: common practice, no published
 * source. */
static const struct { int columns, rows, inches; const char *pattern; int count; } beds[] = {
	{ 3, 2, 3, "square", 96 },
	{ 10, 10, 6, "square", 400 }, { 10, 10, 8, "square", 225 },
	{ 10, 10, 12, "square", 100 },
	{ 10, 10, 24, "square", 25 }, { 5, 5, 6, "square", 100 }, { 15, 15, 18, "square", 100 },
	{ 20, 20, 24, "square", 100 }, { 30, 30, 36, "square", 100 },
	{ 8, 4, 6, "square", 128 }, { 8, 4, 6, "triangular", 140 },
	{ 8, 4, 8, "square", 72 }, { 8, 4, 8, "triangular", 69 },
	{ 8, 4, 9, "square", 50 }, { 8, 4, 9, "triangular", 60 },
	{ 8, 4, 12, "square", 32 }, { 8, 4, 12, "triangular", 30 },
	{ 8, 4, 18, "square", 10 }, { 8, 4, 18, "triangular", 9 },
	{ 12, 3, 12, "square", 36 }, { 12, 3, 12, "triangular", 35 },
	{ 4, 8, 12, "triangular", 30 }, { 3, 12, 12, "triangular", 35 },
};

START_TEST(small_beds_hold_what_tables_and_worked_examples_say)
{
	count_drift(beds[_i].columns, beds[_i].rows, "1 ft", beds[_i].inches, beds[_i].pattern);
	ck_assert_int_eq(planting_count(&garden), beds[_i].count);
	ck_assert_int_eq(row(0)->in_drifts, beds[_i].count);
	ck_assert_int_eq(garden.takeoff.planting.plants[0].count, beds[_i].count);
}
END_TEST

/* What the area alone says, in square rows. Mississippi State University Extension, Ground Covers,
 * as above: 100 plants at 15 in cover 156 sq ft, at 10 in 70. Per square rod, 16 1/2 ft square:
 * Weathers, Commercial Gardening, vol. 3, 1913, table of plants to a square rod: 6 in 1089, 10 in
 * 392, 12 in 272. Triangular ones take sqrt(3) / 2 of that each (geometry). */
static const struct { int columns, rows, inches; double count, within; } areas[] = {
	{ 25, 25, 15, 100, 0.5 }, { 20, 14, 10, 100, 1 }, { 33, 33, 6, 1089, 1e-9 },
	{ 33, 33, 10, 392, 0.5 }, { 33, 33, 12, 272, 0.5 },
};

START_TEST(beside_it_stands_what_the_area_alone_would_say)
{
	count_drift(areas[_i].columns, areas[_i].rows, "6 in", areas[_i].inches, "square");
	ck_assert_double_eq_tol(row(0)->by_area, areas[_i].count, areas[_i].within);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT,
		areas[_i].columns * areas[_i].rows / 4.0, 1e-9);
	garden_fini(&garden);
	count_drift(areas[_i].columns, areas[_i].rows, "6 in", areas[_i].inches, "triangular");
	ck_assert_double_eq_tol(row(0)->by_area * sqrt(3) / 2, areas[_i].count, areas[_i].within);
}
END_TEST

/* A bed of 50 to 60 spacings each way, and one whose sides are no whole number of them: there up to
 * a spacing is left at the ends. */
START_TEST(large_beds_hold_what_their_area_says_within_three_percent)
{
	int columns = 50 + _i, rows = 50 + 7 * _i % 11;

	count_drift(columns, rows, "1 ft", 12, _i % 2 ? "square" : "triangular");
	ck_assert_double_eq_tol((double)row(0)->count / row(0)->by_area, 1, 0.03);
	garden_fini(&garden);
	count_drift(2 * columns + 1, 2 * rows + 1, "6 in", 12, _i % 2 ? "square" : "triangular");
	ck_assert_double_eq_tol((double)row(0)->count / row(0)->by_area, 1, 0.04);
}
END_TEST

/* ---- Raised beds ----------------------------------------------------------------------------- */

/* Walls of 8 in leave 80 x 32 in of 8 x 4 ft: 13 and 12 a row at 6 in, 6 rows; 80 in / 6 in = 13.3,
 * (32 - 6) / 5.196 = 5.003. */
START_TEST(in_raised_beds_the_wall_takes_its_depth)
{
	garden_rectangle(&garden, 'b', 8, 4);
	planting_add(&garden, "spacing 6 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 3 * 13 + 3 * 12);
	ck_assert_double_eq_tol(row(0)->area, garden.takeoff.walls.list[0].inner_area, 1e-12);
}
END_TEST

/* At each of the inward corners the walls meet: 28 ft round 37 sq ft leave 37 - 28 x 2/3 + 4 x 4/9,
 * a corner more outward than inward for each of the four that close the way round. */
START_TEST(in_raised_beds_with_inward_corners_the_wall_takes_them_too)
{
	static const char *const elbows[][6] = {
		{ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbb....", "bbbbb...." },
		{ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "....bbbbb", "....bbbbb" },
		{ "bbbbb....", "bbbbb....", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb" },
		{ "....bbbbb", "....bbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb" },
	};

	garden_rows(&garden, elbows[_i]);
	planting_add(&garden, "spacing 6 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT, 37 - 28 * 2 / 3.0 + 4 * 4 / 9.0, 1e-9);
}
END_TEST

START_TEST(specimens_stand_in_the_middle_of_their_cells_and_drifts_leave_room_for_them)
{
	planting_bed(&garden, 8, 4, "1 ft");
	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  spacing 3 ft\n  at 3,1\n"
		"plant t \"Thyme\"\n  spacing 12 in\n  pattern square\n  drift b whole\n");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.planting.count, 2);
	ck_assert_int_eq(row(0)->specimens, 1);
	ck_assert_int_eq(row(0)->spots[0].at.x, 42 * NM_PER_INCH);
	ck_assert_int_eq(row(0)->spots[0].at.y, 18 * NM_PER_INCH);
	/* Nearer than (36 + 12) / 2 in: itself, 12 in on four sides, 17 in to four corners; at 24
	 * in they stand. */
	ck_assert_int_eq(row(1)->count, 32 - 9);
}
END_TEST

/* 100 plants in a drift and 5 %: 105; of 3 that stand alone 3. */
START_TEST(so_many_are_bought_as_stand_and_a_few_to_spare_whole)
{
	count_drift(10, 10, "1 ft", 12, "square");
	const struct item *item = garden_item(&garden, "plant");

	ck_assert_double_eq(item->laid, 100);
	ck_assert_double_eq(item->order, 105);
	ck_assert_int_eq(item->section, SECTION_PLANTS);
	ck_assert_str_eq(garden_note(&garden, item), "5 % spare of drifts");
	plot_set(&garden.plot, 0, ALLOW_PLANT_SPARE, "0 %");
	garden_count(&garden);
	ck_assert_double_eq(garden_item(&garden, "plant")->order, 100);
	garden_fini(&garden);
	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "pot 4 in\n  at 0,0\n  at 2,0\n  at 4,0");
	garden_count(&garden);
	item = garden_item(&garden, "plant");
	ck_assert_double_eq(item->order, 3);
	ck_assert_str_eq(garden_note(&garden, item), "pot 4 in across; none to spare");
	plot_add_lines(&garden.plot, "plant y \"Sage\"\n  at 0,3\n"
		"  drift b whole\n");
	garden_count(&garden);
	ck_assert_int_gt(garden.takeoff.planting.plants[1].in_drifts, 0);
	ck_assert_int_eq(garden.takeoff.planting.plants[1].order,
		1 + (int)ceil(1.05 * (double)garden.takeoff.planting.plants[1].in_drifts));
	garden_fini(&garden);
	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "pot 4 in"); /* and stands nowhere */
	garden_count(&garden);
	ck_assert_ptr_null(garden_item(&garden, "plant"));
}
END_TEST

START_TEST(a_drift_of_a_cell_is_in_the_bed_that_holds_it_alone)
{
	garden_rows(&garden, (const char *const[]){ "bbbb.bbbb.cccc", "bbbb.bbbb.cccc", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	planting_add(&garden, "pattern square\n  drift 7,1 whole");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.planting.count, 1);
	ck_assert_int_eq(row(0)->count, 8);
	ck_assert_int_eq(garden.takeoff.survey.regions[row(0)->region].left, 5);
}
END_TEST

START_TEST(a_plot_without_plants_has_no_figure_of_them)
{
	planting_bed(&garden, 8, 4, "1 ft");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.planting.count, 0);
	ck_assert_ptr_null(garden_item(&garden, "plant"));
	ck_assert(!takeoff_has(&garden.takeoff, SUBJECT_PLANTS));
}
END_TEST

/* ---- Laws, at random ------------------------------------------------------------------------- */

static const char *const bands[] = { "whole", "front", "middle", "back" };

/* Two kinds in drifts, one of specimens. */
static void plant_at_random(struct random *random)
{
	char lines[1000];
	int length = 0;

	for (int kind = 0; kind < 2; kind++) {
		length += snprintf(lines + length, sizeof lines - (size_t)length,
			"plant %c \"Plant\"\n  spacing %d/16 in\n  pattern %s\n", 'x' + kind,
			random_between(random, 40, 500), random_below(random, 2) ? "square" :
			"triangular");
		for (int drift = random_below(random, 3); drift >= 0; drift--)
			length += snprintf(lines + length, sizeof lines - (size_t)length,
				"  drift b %s\n", bands[random_below(random, 4)]);
	}
	snprintf(lines + length, sizeof lines - (size_t)length,
		"plant z \"Specimen\"\n  spacing %d in\n  at %d,%d\n",
		random_between(random, 6, 60),
		random_below(random, garden.plot.ground.columns),
		random_below(random, garden.plot.ground.rows));
	plot_add_lines(&garden.plot, lines);
}

static void garden_at_random(struct random *random)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	beds_at_random(&garden.plot, random, 5, 3);
	plot_set(&garden.plot, 'b', BED_BUILD, random_below(random, 3) ? "raised" : "level");
	plot_set(&garden.plot, 0, HEAD_CELL, random_below(random, 2) ? "6 in" : "1 ft");
	plant_at_random(random);
	garden_count(&garden);
}

static nm spacing_of(const struct planting_row *r)
{
	return garden.takeoff.planting.plants[r->kind].spacing;
}

static double apart(const struct planted_spot *a, const struct planted_spot *b)
{
	return hypot((double)(a->at.x - b->at.x), (double)(a->at.y - b->at.y));
}

/* To a hundredth of a nanometre: what hypot rounds. */
static void check_pairs(const struct planting_row *a, const struct planting_row *b, int seed)
{
	double least = (double)(spacing_of(a) + spacing_of(b)) / 2;

	for (int i = 0; i < a->spot_count; i++)
		for (int j = 0; j < b->spot_count; j++)
			if (a != b || i != j)
				ck_assert_msg(apart(&a->spots[i], &b->spots[j]) > least - 0.01,
					"seed %d: %f < %f", seed, apart(&a->spots[i],
					&b->spots[j]), least);
}

START_TEST(no_two_plants_are_closer_than_their_spacing)
{
	struct random random = { (uint64_t)_i };

	garden_at_random(&random);
	for (int i = 0; i < garden.takeoff.planting.count; i++)
		for (int j = 0; j <= i; j++)
			check_pairs(row(i), row(j), _i);
}
END_TEST

/* The bed less its wall and half a spacing, by GEOS; a hair wider, for it counts in metres. */
static void check_inside(GEOSContextHandle_t geos, const struct planting_row *r)
{
	const struct region *region = &garden.takeoff.survey.regions[r->region];
	nm half = spacing_of(r) / 2;
	double clear = metres(planting_wall(region) + half);
	GEOSGeometry *bed = beds_shape(geos, &garden.takeoff.survey, r->region);
	GEOSGeometry *inner = geos_offset(geos, bed, -clear + 1e-8);

	for (int i = (int)r->specimens; i < r->spot_count; i++) {
		double x = (double)r->spots[i].at.x / (double)NM_PER_M;
		double y = (double)r->spots[i].at.y / (double)NM_PER_M;
		GEOSGeometry *point = GEOSGeom_createPointFromXY_r(geos, x, y);

		ck_assert(GEOSContains_r(geos, inner, point));
		geos_free(geos, point);
	}
	geos_free(geos, inner);
	geos_free(geos, bed);
}

START_TEST(all_of_a_drift_stand_half_a_spacing_inside_the_inner_face)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();

	garden_at_random(&random);
	for (int i = 0; i < garden.takeoff.planting.count; i++)
		if (row(i)->in_drifts > 0)
			check_inside(geos, row(i));
	geos_end(geos);
}
END_TEST

/* Whether a plant of the kind stands there, to a nanometre: middles are rounded. */
static bool stands(int kind, double x, double y)
{
	for (int i = 0; i < garden.takeoff.planting.count; i++)
		for (int j = 0; row(i)->kind == kind && j < row(i)->spot_count; j++)
			if (fabs((double)row(i)->spots[j].at.x - x) <= 1 &&
				fabs((double)row(i)->spots[j].at.y - y) <= 1)
				return true;
	return false;
}

static void check_images(bool across, bool down)
{
	double width = garden.plot.ground.columns * (double)NM_PER_FOOT;
	double height = garden.plot.ground.rows * (double)NM_PER_FOOT;

	for (int i = 0; i < garden.takeoff.planting.count; i++)
		for (int j = 0; j < row(i)->spot_count; j++) {
			double x = (double)row(i)->spots[j].at.x;
			double y = (double)row(i)->spots[j].at.y;

			ck_assert(stands(row(i)->kind, across ? width - x : x,
				down ? height - y : y));
		}
}

/* A formal garden of quarters; beds on an axis are their own images. */
START_TEST(images_have_images)
{
	static const char *const kinds[] = { "left-right", "top-bottom", "four-way", "half-turn" };
	struct random random = { (uint64_t)_i };
	int mirror = _i % 4;
	bool across = mirror != 1, down = mirror != 0;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	beds_formal(&garden.plot, &random, 4);
	plot_set(&garden.plot, 0, HEAD_MIRROR, kinds[mirror]);
	plot_set(&garden.plot, 'b', BED_BUILD, random_below(&random, 2) ? "raised" : "level");
	plot_add_lines(&garden.plot, "plant x \"X\"\n  spacing 7 in\n  drift b front\n"
		"plant y \"Y\"\n  spacing 13 in\n  drift b middle\n  drift b whole\n");
	garden_count(&garden);
	ck_assert_int_gt(garden.takeoff.planting.count, 0);
	check_images(across, down);
	if (mirror == 2)
		check_images(true, false);
}
END_TEST

/* Rectangles and frames on the axis, of any size and spacing. */
START_TEST(a_bed_on_the_axis_is_its_own_image)
{
	static const char *const kinds[] = { "left-right", "top-bottom", "four-way", "half-turn" };
	struct random random = { (uint64_t)_i };
	int mirror = _i % 4, arm = random_between(&random, 1, 3);
	bool is_frame = random_below(&random, 2);
	struct rectangle hole = { arm, arm, random_between(&random, 2, 17) + arm,
		random_between(&random, 2, 17) + arm };
	char lines[200];

	garden_rectangle(&garden, 'b', hole.right + 1 + arm, hole.bottom + 1 + arm);
	for (int y = hole.top; is_frame && y <= hole.bottom; y++)
		for (int x = hole.left; x <= hole.right; x++)
			*ground_at(&garden.plot.ground, x, y) = '.';
	plot_set(&garden.plot, 0, HEAD_MIRROR, kinds[mirror]);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	snprintf(lines, sizeof lines, "spacing %d/8 in\n  drift b %s",
		random_between(&random, 40, 300), bands[random_below(&random, 4)]);
	planting_add(&garden, lines);
	garden_count(&garden);
	check_images(mirror != 1, mirror != 0);
	if (mirror == 2)
		check_images(true, false);
}
END_TEST

/* 13 x 13 ft, arms 2 ft wide, plants 18 in apart: 156 - 18 = 138 in hold 8 at 18 in, the arms
 * between them of 108 in 6. An L and a U alike: worked out by hand. */
static const struct { const char *rows[14]; int inches, count; } bent[] = {
	{ { "bbbbbbbbbbbbb", "bbbbbbbbbbbbb", "bb.........bb", "bb.........bb", "bb.........bb",
		"bb.........bb", "bb.........bb", "bb.........bb", "bb.........bb", "bb.........bb",
		"bb.........bb", "bbbbbbbbbbbbb", "bbbbbbbbbbbbb" }, 18, 8 + 8 + 6 + 6 },
	{ { "b.....", "b.....", "b.....", "bbbbbb" }, 12, 3 + 6 },
	{ { "b....b", "b....b", "b....b", "bbbbbb" }, 12, 3 + 3 + 6 },
};

START_TEST(arms_of_a_bed_have_rows_of_their_own)
{
	garden_rows(&garden, bent[_i].rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	char lines[100];

	snprintf(lines, sizeof lines, "spacing %d in\n  drift b whole", bent[_i].inches);
	planting_add(&garden, lines);
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, bent[_i].count);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_THIN), 0);
}
END_TEST

/* The corner of 2 x 2 ft has room for one 16 in apart, the arm of a foot for none; of area there
 * are 11 sq ft, of 1.54 sq ft each 7.1. */
START_TEST(ground_too_narrow_for_rows_is_a_snag)
{
	garden_rows(&garden, (const char *const[]){ "bbbbb....", "....bbbbb", "....b....",
		"....bb...", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, "spacing 12 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_THIN), 0);
	garden_fini(&garden);
	garden_rows(&garden, (const char *const[]){ "bbbbbbbb.", ".......bb", ".......bb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, "spacing 16 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 1);
	ck_assert_str_eq(garden_sentence(&garden, planting_snag(&garden, SNAG_DRIFT_THIN)),
		"1 of Plant have room here, 1 ft 4 in apart; by area it would be 7. Parts of the "
		"ground are too narrow for a row.");
}
END_TEST

/* Square rows 16 in apart take 1.78 sq ft of each: 7 sq ft are 3.9 plants, 8 are 4.5. */
START_TEST(of_fewer_than_four_plants_the_area_says_little)
{
	static const char *const arms[] = { "bbbbb.", "bbbbbb" };

	for (int i = 0; i < 2; i++) {
		garden_fini(&garden);
		garden_rows(&garden, (const char *const[]){ arms[i], "bb....", NULL });
		plot_set(&garden.plot, 'b', BED_BUILD, "level");
		planting_add(&garden, "spacing 16 in\n  pattern square\n  drift b whole");
		garden_count(&garden);
		ck_assert_int_eq(row(0)->count, 1);
		ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_THIN), i);
	}
}
END_TEST

/* 8 1/2 ft hold as many in shifted rows as in others: such rows are no images of themselves; 8 ft
 * hold one less. */
START_TEST(a_bed_that_is_its_own_image_has_rows_in_its_middle)
{
	planting_bed(&garden, 17, 7, "6 in");
	planting_add(&garden, "spacing 12 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 8 + 8 + 8);
	garden_fini(&garden);
	planting_bed(&garden, 16, 6, "6 in");
	planting_add(&garden, "spacing 12 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 8 + 7 + 8);
	for (int i = 0; i < row(0)->spot_count; i++) {
		const struct planted_spot *spot = &row(0)->spots[i];

		ck_assert(stands(0, 8 * (double)NM_PER_FOOT - (double)spot->at.x,
			(double)spot->at.y));
		ck_assert(stands(0, (double)spot->at.x,
			3 * (double)NM_PER_FOOT - (double)spot->at.y));
	}
}
END_TEST

/* A bed 8 ft 3 in by 4 ft 3 in that lacks 6 in square at some corners. */
enum { NOTCHED_COLUMNS = 33, NOTCHED_ROWS = 17, NOTCH = 2 };

static void notched_bed(const char *corners)
{
	char lines[NOTCHED_ROWS][NOTCHED_COLUMNS + 1] = { { 0 } };
	const char *rows[NOTCHED_ROWS + 1] = { NULL };

	for (int y = 0; y < NOTCHED_ROWS; y++) {
		for (int x = 0; x < NOTCHED_COLUMNS; x++) {
			int corner = (y >= NOTCHED_ROWS / 2 ? 2 : 0) + (x >= NOTCHED_COLUMNS / 2);
			bool is_there = (x >= NOTCH && x < NOTCHED_COLUMNS - NOTCH) ||
				(y >= NOTCH && y < NOTCHED_ROWS - NOTCH);

			lines[y][x] = is_there || corners[corner] == 'b' ? 'b' : '.';
		}
		rows[y] = lines[y];
	}
	garden_rows(&garden, rows);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
}

/* Corners from the upper left to the lower right; where the first plants stand, in inches from the
 * left and from above. Half a spacing from the side where the bed is not its own image that way or
 * turned round, else half of the 3 in left over farther in. */
static const struct { const char *corners; double across, down; } notched[] = {
	{ "bbbb", 7.5, 7.5 }, { ".bbb", 6, 6 }, { "..bb", 7.5, 6 }, { "bb..", 7.5, 6 },
	{ ".b.b", 6, 7.5 }, { "b.b.", 6, 7.5 }, { ".bb.", 7.5, 7.5 }, { "b..b", 7.5, 7.5 },
	{ "...b", 6, 6 }, { "....", 7.5, 7.5 },
};
enum { NOTCHED = sizeof notched / sizeof *notched };

START_TEST(rows_lie_in_the_middle_along_the_way_in_which_a_bed_is_its_own_image)
{
	double across = INFINITY, down = INFINITY;

	notched_bed(notched[_i].corners);
	planting_add(&garden, "spacing 12 in\n  pattern square\n  drift b whole");
	garden_count(&garden);
	for (int i = 0; i < row(0)->spot_count; i++) {
		across = fmin(across, (double)row(0)->spots[i].at.x / (double)NM_PER_INCH);
		down = fmin(down, (double)row(0)->spots[i].at.y / (double)NM_PER_INCH);
	}
	ck_assert_double_eq_tol(across, notched[_i].across, 1e-6);
	ck_assert_double_eq_tol(down, notched[_i].down, 1e-6);
}
END_TEST

/* ---- Where the rows of a band lie ------------------------------------------------------------ */

enum { DEEP = 6, ALONG = 9 };

/* A bed 6 by 9 ft that one walks up to from one side alone: its left, right, upper or lower one. */
static void open_on(int side)
{
	int columns = (side < 2 ? DEEP : ALONG) + 2, rows = (side < 2 ? ALONG : DEEP) + 2;
	const int open = side == 0 || side == 2 ? 0 : side == 1 ? columns - 1 : rows - 1;
	char lines[ALONG + 2][ALONG + 3] = { { 0 } };
	const char *all[ALONG + 3] = { NULL };

	for (int y = 0; y < rows; y++) {
		for (int x = 0; x < columns; x++)
			lines[y][x] = (side < 2 ? x : y) == open ? '.' : x == 0 || y == 0 ||
				x == columns - 1 || y == rows - 1 ? 'F' : 'b';
		all[y] = lines[y];
	}
	garden_rows(&garden, all);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
}

/* How many stand so many inches from the open side. */
static int rows_at(int side, double inches)
{
	int found = 0;

	for (int i = 0; i < row(0)->spot_count; i++) {
		struct spot at = row(0)->spots[i].at;
		double away = (double)(side < 2 ? at.x : at.y) / (double)NM_PER_INCH - 12;

		found += fabs((side == 0 || side == 2 ? away : 12 * DEEP - away) - inches) < 1e-3;
	}
	return found;
}

/* Bands are 2 ft deep. 30 in apart there is one row, in the middle of what a plant may stand on: 15
 * in off the bed's sides, within the band; 93 in of 108 hold 3. 12 in apart rows begin half a foot
 * inside the bed's side, the second one 10.39 in behind: 9 and 8 of them. */
static const struct { const char *drift; double inches; int count; } bands_rows[] = {
	{ "spacing 30 in\n  drift b front", 19.5, 3 },
	{ "spacing 30 in\n  drift b middle", 36, 3 },
	{ "spacing 30 in\n  drift b back", 52.5, 3 },
	{ "spacing 12 in\n  drift b front", 6, 9 },
	{ "spacing 12 in\n  drift b front", 16.392305, 8 },
	{ "spacing 12 in\n  drift b back", 66, 9 },
	{ "spacing 12 in\n  drift b back", 55.607695, 8 },
};

START_TEST(rows_of_a_band_begin_at_the_side_of_the_bed_or_lie_in_what_is_clear)
{
	int side = _i % 4;
	const char *drift = bands_rows[_i / 4].drift;

	open_on(side);
	planting_add(&garden, drift);
	garden_count(&garden);
	ck_assert_int_eq(rows_at(side, bands_rows[_i / 4].inches), bands_rows[_i / 4].count);
	ck_assert_int_eq(row(0)->count, strstr(drift, "30") ? 3 : 17);
}
END_TEST

START_TEST(there_are_as_many_as_one_likes_up_to_a_limit)
{
	planting_bed(&garden, 2048, 200, "1 ft");
	planting_add(&garden, "spacing 12 in\n  pattern square\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 2048 * 200);
	ck_assert(garden.takeoff.complete);
	garden_fini(&garden);
	planting_bed(&garden, 2048, 200, "1 ft");
	planting_add(&garden, "spacing 3 in\n  pattern square\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, PLACED_MOST);
	ck_assert(!garden.takeoff.complete);
	ck_assert_str_eq(garden_sentence(&garden, planting_snag(&garden, SNAG_PLANT_MANY)),
		"There are more plants than 5,000,000: the rest have no place and are not "
		"counted.");
}
END_TEST

/* ---- Drifts without plants ------------------------------------------------------------------- */

/* Of two beds of a letter one has no room for three feet. */
START_TEST(each_bed_without_room_is_told)
{
	garden_rows(&garden, (const char *const[]){ "bb.bbb.bb", "bb.bbb.bb", "bb.bbb.bb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, "spacing 3 ft\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(planting_count(&garden), 1);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_EMPTY), 2);
	ck_assert_int_eq(planting_snag(&garden, SNAG_DRIFT_EMPTY)->region, 0);
}
END_TEST

/* A house over the left half of 8 x 4 ft leaves 4 x 4. */
START_TEST(no_plant_of_a_drift_stands_under_a_house)
{
	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "spacing 12 in\n  pattern square\n  drift b whole");
	plot_add_lines(&garden.plot, "house \"House\"\n  from -2,0 to 4,4\n");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->count, 16);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT, 16, 1e-9);
	for (int i = 0; i < row(0)->spot_count; i++)
		ck_assert_int_ge(row(0)->spots[i].at.x, 54 * NM_PER_INCH);
}
END_TEST

START_TEST(ground_of_two_drifts_of_a_plant_counts_once)
{
	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "spacing 12 in\n  pattern square\n  drift b front\n"
		"  drift b whole\n  drift 1,1 whole");
	garden_count(&garden);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT, 32, 1e-9);
	ck_assert_double_eq_tol(row(0)->by_area, 32, 1e-9);
	ck_assert_int_eq(row(0)->count, 32);
}
END_TEST

/* Of two beds of a letter, the last of them: what its drifts count as its ground. */
static double last_area(const char *drifts)
{
	static const char *const rows[] = { ".............", ".bbbbb.bbbbb.", ".bbbbb.bbbbb.",
		".bbbbb.bbbbb.", ".bbbbb.bbbbb.", ".bbbbb.bbbbb.", ".............", NULL };
	double area;

	garden_rows(&garden, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, drifts);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.planting.count, 2);
	area = row(1)->area;
	garden_fini(&garden);
	return area;
}

START_TEST(in_each_bed_of_a_letter_the_ground_of_all_its_drifts_counts)
{
	double front = last_area("spacing 4 in\n  drift b front");
	double back = last_area("spacing 4 in\n  drift b back");

	ck_assert_double_gt(front, 0);
	ck_assert_double_gt(back, 0);
	ck_assert_double_eq_tol(last_area("spacing 4 in\n  drift b front\n  drift b back"),
		front + back, 1e-9);
	garden = (struct garden){ .arena = ARENA_EMPTY }; /* for the teardown */
}
END_TEST

/* Where one walks up from both sides the middles of the cells of a bed of two are all as far as
 * any: it is back as a whole. Of four cells two are in front and two in the back; a wall of 1 ft
 * takes up those in front. A band with ground that is too narrow for the spacing is another
 * matter. */
START_TEST(a_band_without_ground_is_not_one_without_room)
{
	static const struct {
		const char *row, *build, *lines, *none; /* none: of what; NULL: some stand */
	} drifts[] = {
		{ ".bb.", "level", "spacing 6 in\n  drift b front", "ground" },
		{ ".bb.", "level", "spacing 6 in\n  drift b back", NULL },
		{ ".bbbb.", "level", "spacing 6 in\n  drift b middle", "ground" },
		{ ".bbbb.", "level", "spacing 6 in\n  drift b front", NULL },
		{ ".bbbb.", "level", "spacing 50 in\n  drift b front", "room" },
		{ ".bbbb.", "raised", "spacing 6 in\n  drift b front", "ground" },
		{ ".bb.", "raised", "spacing 6 in\n  drift b whole", "room" },
	};
	const char *row = drifts[_i].row, *none = drifts[_i].none;
	const char *open = &"......"[6 - strlen(row)];
	const struct snag *snag;

	garden_rows(&garden, (const char *const[]){ open, row, row, row, row, row, row, open,
		NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, drifts[_i].build);
	plot_set(&garden.plot, 'b', BED_BLOCK, "1 ft x 1 ft x 4 in");
	planting_add(&garden, drifts[_i].lines);
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_EMPTY), none ? 1 : 0);
	if (!none)
		return;
	snag = planting_snag(&garden, SNAG_DRIFT_EMPTY);
	ck_assert_int_eq((int)snag->kind, strcmp(none, "ground") == 0 ? DRIFT_NO_BAND :
		DRIFT_NO_ROOM);
	ck_assert_int_eq(snag->region, 0);
}
END_TEST

START_TEST(a_drift_in_no_bed_or_without_room_is_a_snag)
{
	garden_rows(&garden, (const char *const[]){ "bb..", "bb..", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, "spacing 24 in\n  drift b whole");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_EMPTY), 0);
	plot_add_lines(&garden.plot, "plant y \"Lily\"\n  drift 3,1 front\n");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_EMPTY), 1);
	ck_assert_str_eq(garden_sentence(&garden, planting_snag(&garden, SNAG_DRIFT_EMPTY)),
		"This drift of Lily is in no bed.");
	ck_assert_int_eq(planting_snag(&garden, SNAG_DRIFT_EMPTY)->cell.x, 3);
	plot_add_lines(&garden.plot, "plant x \"Yew\"\n  spacing 25 in\n  drift b whole\n");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_DRIFT_EMPTY), 2);
	ck_assert_str_eq(garden_sentence(&garden, planting_snag(&garden, SNAG_DRIFT_EMPTY)),
		"Yew has no room in this drift, with half a spacing clear to the edges and to what "
		"stands there.");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("planting");
	TCase *counts = suite_case(suite, "counts"), *laws = suite_case(suite, "laws");
	TCase *many = suite_case(suite, "many");

	tcase_add_checked_fixture(counts, NULL, teardown);
	tcase_add_loop_test(counts, small_beds_hold_what_tables_and_worked_examples_say, 0,
		sizeof beds / sizeof *beds);
	tcase_add_loop_test(counts, beside_it_stands_what_the_area_alone_would_say, 0,
		sizeof areas / sizeof *areas);
	tcase_add_loop_test(counts, large_beds_hold_what_their_area_says_within_three_percent, 0,
		11);
	tcase_add_test(counts, in_raised_beds_the_wall_takes_its_depth);
	tcase_add_loop_test(counts, in_raised_beds_with_inward_corners_the_wall_takes_them_too,
		0, 4);
	tcase_add_test(counts,
		specimens_stand_in_the_middle_of_their_cells_and_drifts_leave_room_for_them);
	tcase_add_test(counts, so_many_are_bought_as_stand_and_a_few_to_spare_whole);
	tcase_add_test(counts, a_drift_of_a_cell_is_in_the_bed_that_holds_it_alone);
	tcase_add_test(counts, a_plot_without_plants_has_no_figure_of_them);
	tcase_add_loop_test(counts, a_band_without_ground_is_not_one_without_room, 0, 7);
	tcase_add_test(counts, a_drift_in_no_bed_or_without_room_is_a_snag);
	tcase_add_checked_fixture(many, NULL, teardown);
	tcase_set_timeout(many, 60);
	tcase_add_test(many, there_are_as_many_as_one_likes_up_to_a_limit);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, no_two_plants_are_closer_than_their_spacing, 0,
		runner_count(60, 1000));
	tcase_add_loop_test(laws, all_of_a_drift_stand_half_a_spacing_inside_the_inner_face, 0,
		runner_count(60, 1000));
	tcase_add_loop_test(laws, images_have_images, 0, runner_count(60, 1000));
	tcase_add_test(laws, a_bed_that_is_its_own_image_has_rows_in_its_middle);
	tcase_add_loop_test(laws,
		rows_lie_in_the_middle_along_the_way_in_which_a_bed_is_its_own_image, 0, NOTCHED);
	tcase_add_loop_test(laws, a_bed_on_the_axis_is_its_own_image, 0, runner_count(120, 2000));
	tcase_add_loop_test(counts, arms_of_a_bed_have_rows_of_their_own, 0,
		sizeof bent / sizeof *bent);
	tcase_add_loop_test(counts,
		rows_of_a_band_begin_at_the_side_of_the_bed_or_lie_in_what_is_clear, 0,
		4 * sizeof bands_rows / sizeof *bands_rows);
	tcase_add_test(counts, each_bed_without_room_is_told);
	tcase_add_test(counts, no_plant_of_a_drift_stands_under_a_house);
	tcase_add_test(counts, ground_of_two_drifts_of_a_plant_counts_once);
	tcase_add_test(counts, in_each_bed_of_a_letter_the_ground_of_all_its_drifts_counts);
	tcase_add_test(counts, ground_too_narrow_for_rows_is_a_snag);
	tcase_add_test(counts, of_fewer_than_four_plants_the_area_says_little);
	return suite;
}
