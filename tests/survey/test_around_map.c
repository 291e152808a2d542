/* Which cells what is around lies on. Circles are held against GEOS, the geometry library of Debian
 * 12 (libgeos 3.11): the distance of a cell from the middle. */
#include "base/memory.h"
#include "survey/around_map.h"
#include "support/beds.h"
#include "support/details.h"
#include "support/geos.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#define ROWS (const char *[])
#define CASES runner_count(200, 5000)

static void line_add(struct plot *plot, bool is_to_lay, struct place from, struct place to)
{
	struct service *service = services_add(&plot->details.around.services, SERVICE_GAS,
		is_to_lay, memory_string("Pipe"));
	struct route *route = routes_add(&service->routes);

	route_add(route, from);
	route_add(route, to);
}

START_TEST(lines_lie_right_of_cells_and_below_them_on_the_edges_too)
{
	struct arena arena = ARENA_EMPTY;
	struct around_map map;
	struct plot plot;

	plot_from_rows(&plot, ROWS { "...", "...", NULL });
	line_add(&plot, false, (struct place){ 0, 2 }, (struct place){ 0, 0 });
	line_add(&plot, true, (struct place){ 1, 1 }, (struct place){ 3, 1 });
	line_add(&plot, true, (struct place){ 0, 0 }, (struct place){ 1, 0 });
	line_add(&plot, false, (struct place){ 3, 1 }, (struct place){ 3, 2 });
	map = around_map_of(&plot, &arena);
	ck_assert_int_eq(around_map_at(&map, -1, 0), EXISTING_RIGHT);
	ck_assert_int_eq(around_map_at(&map, -1, 1), EXISTING_RIGHT);
	ck_assert_int_eq(around_map_at(&map, 0, -1), TO_LAY_BELOW);
	ck_assert_int_eq(around_map_at(&map, 0, 0), 0);
	ck_assert_int_eq(around_map_at(&map, 1, 0), TO_LAY_BELOW);
	ck_assert_int_eq(around_map_at(&map, 2, 0), TO_LAY_BELOW);
	ck_assert_int_eq(around_map_at(&map, 2, 1), EXISTING_RIGHT);
	arena_clear(&arena);
	plot_fini(&plot);
}
END_TEST

START_TEST(nothing_around_takes_no_map)
{
	struct arena arena = ARENA_EMPTY;
	struct around_map map;
	struct plot plot;

	plot_from_rows(&plot, ROWS { "..", NULL });
	plot.details.around.has_drop = true;
	plants_add(&plot.details.plants, 'r', memory_string("Rose")); /* which stands nowhere */
	map = around_map_of(&plot, &arena);
	ck_assert_ptr_null(map.cells);
	ck_assert_int_eq(around_map_at(&map, 1, 0), 0);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_specimen_is_in_its_cell)
{
	struct arena arena = ARENA_EMPTY;
	struct around_map map;
	struct plot plot;

	plot_from_rows(&plot, ROWS { "b..", "...", NULL });
	plant_add_specimen(plants_add(&plot.details.plants, 'r', memory_string("Rose")),
		(struct place){ 2, 1 });
	map = around_map_of(&plot, &arena);
	for (int y = 0; y < 2; y++)
		for (int x = 0; x < 3; x++)
			ck_assert_int_eq(around_map_at(&map, x, y),
				x == 2 && y == 1 ? CELL_PLANT : 0);
	arena_clear(&arena);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_house_is_on_what_of_it_is_in_the_plan)
{
	struct arena arena = ARENA_EMPTY;
	struct around_map map;
	struct plot plot;

	plot_from_rows(&plot, ROWS { "...", "...", "...", NULL });
	obstacles_add(&plot.details.around.houses, memory_string("Number 4"))->cells =
		(struct rectangle){ -4, -4, 1, 0 };
	obstacles_add(&plot.details.around.kept, memory_string("Wall"))->cells =
		(struct rectangle){ 1, 0, 1, CORNER_MOST - 1 };
	map = around_map_of(&plot, &arena);
	for (int y = 0; y < 3; y++)
		for (int x = 0; x < 3; x++)
			ck_assert_int_eq(around_map_at(&map, x, y),
				(x <= 1 && y == 0 ? CELL_HOUSE : 0) | (x == 1 ? CELL_KEPT : 0));
	arena_clear(&arena);
	plot_fini(&plot);
}
END_TEST

/* In cells from the middle to the nearest of a cell. */
static double distance(GEOSContextHandle_t geos, struct place middle, int x, int y)
{
	const struct geos_box box = { x, y, x + 1, y + 1 };
	GEOSGeometry *cell = geos_union(geos, &box, 1);
	GEOSGeometry *point = GEOSGeom_createPointFromXY_r(geos, middle.x, middle.y);
	double far = -1;

	ck_assert_int_eq(GEOSDistance_r(geos, point, cell, &far), 1);
	geos_free(geos, cell);
	geos_free(geos, point);
	return far;
}

START_TEST(a_circle_is_on_the_cells_that_some_of_it_is_in)
{
	GEOSContextHandle_t geos = geos_start();
	struct random random = { 5 };

	for (int i = 0; i < CASES; i++) {
		const nm cell = NM_PER_FOOT;
		/* no whole cells, whose far edges GEOS may see on either side */
		const struct obstacle circle = { .at = { random_below(&random, 12),
			random_below(&random, 12) },
			.radius = cell * random_below(&random, 9) +
				cell * random_between(&random, 1, 7) / 8 };
		int x = random_below(&random, 12), y = random_below(&random, 12);
		double far = distance(geos, circle.at, x, y);

		ck_assert_msg(obstacle_touches(&circle, cell, x, y) ==
			(far * (double)cell < (double)circle.radius), "case %d", i);
	}
	geos_end(geos);
}
END_TEST

/* With half a cell more than whole ones, so that the outermost cells are no more than touched. */
START_TEST(a_circle_is_marked_as_far_as_it_reaches)
{
	enum { AT = 7, SIDE = 2 * AT };
	struct arena arena = ARENA_EMPTY;
	struct obstacle *tree;
	struct around_map map;
	struct plot plot;

	beds_rectangle(&plot, SIDE, SIDE);
	tree = obstacles_add(&plot.details.around.kept, memory_string("Oak"));
	tree->at = (struct place){ AT, AT };
	tree->radius = plot_cell(&plot) * _i + plot_cell(&plot) / 2;
	map = around_map_of(&plot, &arena);
	for (int y = 0; y < SIDE; y++)
		for (int x = 0; x < SIDE; x++)
			ck_assert_msg((around_map_at(&map, x, y) == CELL_KEPT) ==
				obstacle_touches(tree, plot_cell(&plot), x, y), "%d,%d", x, y);
	ck_assert_int_eq(around_map_at(&map, AT - 1 - _i, AT), CELL_KEPT);
	ck_assert_int_eq(around_map_at(&map, AT, AT + _i), CELL_KEPT);
	arena_clear(&arena);
	plot_fini(&plot);
}
END_TEST

START_TEST(the_map_has_all_cells_of_circles_and_no_others)
{
	struct random random = { 6 };

	for (int i = 0; i < CASES / 10; i++) {
		struct arena arena = ARENA_EMPTY;
		struct around_map map;
		struct plot plot;

		whole_plot_at_random(&plot, &random, 14);
		map = around_map_of(&plot, &arena);
		for (int y = 0; y < plot.ground.rows; y++)
			for (int x = 0; x < plot.ground.columns; x++) {
				const struct obstacles *kept = &plot.details.around.kept;
				bool is_kept = false;

				for (size_t j = 0; j < kept->count; j++)
					is_kept |= obstacle_touches(&kept->items[j],
						plot_cell(&plot), x, y);
				ck_assert_int_eq((around_map_at(&map, x, y) & CELL_KEPT) != 0,
					is_kept);
			}
		arena_clear(&arena);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("around_map");
	TCase *maps = suite_case(suite, "maps");

	tcase_add_test(maps, lines_lie_right_of_cells_and_below_them_on_the_edges_too);
	tcase_add_test(maps, nothing_around_takes_no_map);
	tcase_add_test(maps, a_specimen_is_in_its_cell);
	tcase_add_test(maps, a_house_is_on_what_of_it_is_in_the_plan);
	tcase_add_test(maps, a_circle_is_on_the_cells_that_some_of_it_is_in);
	tcase_add_loop_test(maps, a_circle_is_marked_as_far_as_it_reaches, 0, 7);
	tcase_add_test(maps, the_map_has_all_cells_of_circles_and_no_others);
	return suite;
}
