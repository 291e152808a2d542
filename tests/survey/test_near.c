/* What is near lines in the ground, circles and rectangles: cells, boxes and discs. */
#include "support/geos.h"
#include "support/random.h"
#include "support/runner.h"
#include "survey/near.h"

enum { SEEDS = 120, THINGS_MOST = 6, CELL = 10, COLUMNS_MOST = 24 };

static struct survey survey;
static struct near_cells cells;

static void begin(int columns, int rows)
{
	survey = (struct survey){ .cell = CELL, .columns = columns, .rows = rows };
	near_cells_begin(&cells, &survey);
}

static void teardown(void)
{
	near_cells_end(&cells);
}

static void cells_are(const char *const *rows)
{
	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++)
			ck_assert_msg(near_cells_hold(&cells, x, y) == (rows[y][x] == '#'),
				"%d,%d", x, y);
}

static struct near_thing leg_of(int x1, int y1, int x2, int y2, nm around)
{
	return near_leg((struct leg){ { x1, y1 }, { x2, y2 } }, CELL, around);
}

/* ---- Small ones ------------------------------------------------------------------------------ */

START_TEST(cells_just_so_far_from_a_line_are_not_near_it)
{
	static const char *const two_cells[] = { "......", "######", "######", "######", "######",
		"......" };
	static const char *const more[] = { "######", "######", "######", "######", "######",
		"######" };
	struct near_thing thing = leg_of(0, 3, 6, 3, 2 * CELL);

	begin(6, 6);
	near_cells_add(&cells, &thing);
	cells_are(two_cells);
	thing.around++;
	near_cells_add(&cells, &thing);
	cells_are(more);
}
END_TEST

/* A cell beyond the end of a line and one row on is sqrt(200) from it. */
START_TEST(beyond_its_end_a_line_is_near_in_a_circle)
{
	struct near_thing thing = leg_of(1, 2, 0, 2, 15);

	begin(3, 5);
	near_cells_add(&cells, &thing);
	cells_are((const char *const[]){ "###", "###", "###", "###", "..." });
	near_cells_clear(&cells);
	thing.around = 14;
	near_cells_add(&cells, &thing);
	cells_are((const char *const[]){ "##.", "###", "###", "##.", "..." });
}
END_TEST

START_TEST(within_a_rectangle_are_the_cells_of_it_that_are_on_the_plan)
{
	const struct obstacle wall = { .cells = { -2, 1, 1, 1 } }, beyond = { .cells =
		{ -4, 0, -1, 2 } };
	struct near_thing thing = near_obstacle(&wall, CELL);

	begin(4, 3);
	near_cells_add(&cells, &thing);
	cells_are((const char *const[]){ "....", "##..", "...." });
	ck_assert_int_eq(cells.within.right, 1);
	ck_assert_int_eq(cells.within.top, 1);
	near_cells_clear(&cells);
	thing = near_obstacle(&beyond, CELL);
	near_cells_add(&cells, &thing);
	cells_are((const char *const[]){ "....", "....", "...." });
	ck_assert_int_lt(cells.within.right, cells.within.left);
}
END_TEST

START_TEST(a_disc_is_near_by_its_edge_a_point_by_itself)
{
	struct near_thing line = leg_of(0, 0, 4, 0, 20);
	const struct obstacle wall = { .cells = { 0, 0, 3, 0 } };
	struct near_thing within = near_obstacle(&wall, CELL);

	begin(1, 1);
	ck_assert(near_disc(&line, 10, 24, 9));
	ck_assert(!near_disc(&line, 10, 24, 8));
	ck_assert(near_disc(&line, 10, 19, 0));
	ck_assert(!near_disc(&line, 10, 20, 0));
	/* Of a rectangle: half across more than how far off it is. */
	ck_assert(near_disc(&within, 10, 14, 9));
	ck_assert(!near_disc(&within, 10, 14, 8));
	ck_assert(near_disc(&within, 10, 9, 0));
	ck_assert(!near_disc(&within, 10, 10, 0));
}
END_TEST

START_TEST(an_obstacle_is_where_its_cells_or_its_middle_are)
{
	const struct obstacle tree = { .at = { 3, -5 }, .radius = 7 };
	const struct obstacle wall = { .cells = { -2, 1, 4, 3 } };
	struct near_thing thing = near_obstacle(&tree, CELL);

	begin(1, 1);
	ck_assert(thing.left == 30 && thing.top == -50 && thing.right == 30 &&
		thing.bottom == -50 && thing.around == 7);
	thing = near_obstacle(&wall, CELL);
	ck_assert(thing.left == -20 && thing.top == 10 && thing.right == 50 &&
		thing.bottom == 40 && thing.around == 0);
}
END_TEST

/* Boxes on all four sides that share an edge with a rectangle of 20 x 10, or overlap it by 1. */
START_TEST(a_box_is_near_a_rectangle_where_it_overlaps_it)
{
	static const struct cover_box beside[] = { { -9, 0, 0, 10, 0 }, { 20, 0, 29, 10, 0 },
		{ 0, -9, 20, 0, 0 }, { 0, 10, 20, 19, 0 } };
	static const int shifts[][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };
	struct near_thing thing = { 0, 0, 20, 10, 0 };

	begin(1, 1);
	for (int i = 0; i < 4; i++) {
		struct cover_box box = beside[i];

		thing.around = 0;
		ck_assert_msg(!near_box(&thing, &box), "%d", i);
		thing.around = 1;
		ck_assert_msg(near_box(&thing, &box), "%d, around", i);
		thing.around = 0;
		box.left += shifts[i][0];
		box.right += shifts[i][0];
		box.top += shifts[i][1];
		box.bottom += shifts[i][1];
		ck_assert_msg(near_box(&thing, &box), "%d, shifted", i);
		box.left -= 2 * shifts[i][0];
		box.right -= 2 * shifts[i][0];
		box.top -= 2 * shifts[i][1];
		box.bottom -= 2 * shifts[i][1];
		thing.around = 1;
		ck_assert_msg(!near_box(&thing, &box), "%d, 1 off", i);
	}
}
END_TEST

/* 10 km are 1e13 nm: their square is no 64-bit number. */
START_TEST(squares_of_the_longest_distances_are_exact)
{
	const nm far = 10000 * NM_PER_M;
	struct near_thing thing = { 0, 0, 0, 0, far + 1 };

	begin(1, 1);
	ck_assert(near_disc(&thing, far, 0, 0));
	ck_assert(near_disc(&thing, 0, -far, 0));
	thing.around = far;
	ck_assert(!near_disc(&thing, far, 0, 0));
	ck_assert(!near_disc(&thing, 0, -far, 0));
}
END_TEST

/* ---- GEOS ------------------------------------------------------------------------------------ */

/* A leg, a circle or a rectangle, which may reach beyond the plan. */
static struct near_thing thing_at_random(struct random *random)
{
	int x = random_between(random, 0, survey.columns), y = random_between(random, 0,
		survey.rows);
	int length = random_between(random, 1, 12);
	struct obstacle obstacle = { .at = { x, y }, .radius = random_between(random, 1, 90) };

	switch (random_below(random, 4)) {
	case 0:
		return near_obstacle(&obstacle, CELL);
	case 1:
		obstacle = (struct obstacle){ .cells = { x - 3, y - 2, x - 3 + length, y + 1 } };
		return near_obstacle(&obstacle, CELL);
	case 2:
		return leg_of(x, y, x + length, y, random_between(random, 1, 60));
	default:
		return leg_of(x, y + length, x, y, random_between(random, 1, 60));
	}
}

static GEOSGeometry *segment(GEOSContextHandle_t geos, const struct near_thing *thing)
{
	GEOSCoordSequence *points = GEOSCoordSeq_create_r(geos, 2, 2);

	GEOSCoordSeq_setXY_r(geos, points, 0, (double)thing->left, (double)thing->top);
	GEOSCoordSeq_setXY_r(geos, points, 1, (double)thing->right, (double)thing->bottom);
	return GEOSGeom_createLineString_r(geos, points);
}

static GEOSGeometry *box_of(GEOSContextHandle_t geos, double left, double top, double right,
	double bottom)
{
	return geos_union(geos, &(struct geos_box){ left, top, right, bottom }, 1);
}

/* The thing itself, without what is around it. */
static GEOSGeometry *shape_of(GEOSContextHandle_t geos, const struct near_thing *thing)
{
	return thing->around > 0 ? segment(geos, thing) : box_of(geos, (double)thing->left,
		(double)thing->top, (double)thing->right, (double)thing->bottom);
}

static bool is_near(GEOSContextHandle_t geos, const GEOSGeometry *shape,
	const struct near_thing *thing, int x, int y)
{
	GEOSGeometry *cell = box_of(geos, x * CELL, y * CELL, (x + 1) * CELL, (y + 1) * CELL);
	double distance;
	bool near;

	ck_assert_int_eq(GEOSDistance_r(geos, cell, shape, &distance), 1);
	near = thing->around > 0 ? distance < (double)thing->around - 1e-9 :
		geos_common(geos, cell, shape) > 0;
	geos_free(geos, cell);
	return near;
}

START_TEST(cells_are_near_where_geos_measures_less)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();
	struct near_thing things[THINGS_MOST];
	GEOSGeometry *shapes[THINGS_MOST];
	int count = random_between(&random, 1, THINGS_MOST);

	struct rectangle within = { COLUMNS_MOST, COLUMNS_MOST, -1, -1 };

	begin(random_between(&random, 1, COLUMNS_MOST), random_between(&random, 1, COLUMNS_MOST));
	for (int i = 0; i < count; i++) {
		things[i] = thing_at_random(&random);
		shapes[i] = shape_of(geos, &things[i]);
		near_cells_add(&cells, &things[i]);
	}
	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++) {
			bool near = false;

			for (int i = 0; i < count && !near; i++)
				near = is_near(geos, shapes[i], &things[i], x, y);
			ck_assert_msg(near_cells_hold(&cells, x, y) == near, "seed %d: %d,%d", _i,
				x, y);
			if (near)
				within = (struct rectangle){ x < within.left ? x : within.left,
					y < within.top ? y : within.top,
					x > within.right ? x : within.right, y };
		}
	if (within.right < 0)
		ck_assert_int_lt(cells.within.right, cells.within.left);
	else
		ck_assert_mem_eq(&cells.within, &within, sizeof within);
	for (int i = 0; i < count; i++)
		geos_free(geos, shapes[i]);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("near");
	TCase *small = suite_case(suite, "small"), *random = suite_case(suite, "random");

	tcase_add_checked_fixture(small, NULL, teardown);
	tcase_add_test(small, cells_just_so_far_from_a_line_are_not_near_it);
	tcase_add_test(small, beyond_its_end_a_line_is_near_in_a_circle);
	tcase_add_test(small, within_a_rectangle_are_the_cells_of_it_that_are_on_the_plan);
	tcase_add_test(small, a_disc_is_near_by_its_edge_a_point_by_itself);
	tcase_add_test(small, an_obstacle_is_where_its_cells_or_its_middle_are);
	tcase_add_test(small, a_box_is_near_a_rectangle_where_it_overlaps_it);
	tcase_add_test(small, squares_of_the_longest_distances_are_exact);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_loop_test(random, cells_are_near_where_geos_measures_less, 0, SEEDS);
	return suite;
}
