/* The sun beside long walls, against hours from another library and lengths from a handbook. */
#include "support/rays.h"
#include "support/runner.h"

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

enum wall { NONE, EW_S, EW_N, NS_W };

/* Computed with PyEphem 4.1.4 (Debian's python3-ephem), pressure 0, each half minute of the 24
 * hours around noon: hours of sun at a point beside an endless upright wall, which runs east and
 * west to its south (EW_S) or north, or north and south to its west, at a distance of so many of
 * its heights. */
static const struct {
	double latitude, longitude;
	struct date date;
	enum wall wall;
	double distance, hours;
} beside_walls[] = {
	{ 40, -105, { 2024, 3, 20 }, NONE, 0, 12.025 },
	{ 40, -105, { 2024, 3, 20 }, EW_S, 0.5, 0.175 },
	{ 40, -105, { 2024, 3, 20 }, EW_S, 1, 12.025 },
	{ 40, -105, { 2024, 3, 20 }, EW_S, 2, 12.025 },
	{ 40, -105, { 2024, 3, 20 }, NS_W, 0.5, 7.408 },
	{ 40, -105, { 2024, 3, 20 }, NS_W, 2, 9.817 },
	{ 40, -105, { 2024, 5, 15 }, EW_S, 0.25, 8.308 },
	{ 40, -105, { 2024, 5, 15 }, EW_S, 0.75, 14.258 },
	{ 40, -105, { 2024, 5, 15 }, EW_S, 1.5, 14.258 },
	{ 40, -105, { 2024, 5, 15 }, EW_S, 3, 14.258 },
	{ 40, -105, { 2024, 5, 15 }, NS_W, 1, 10.300 },
	{ 40, -105, { 2024, 6, 20 }, NONE, 0, 14.850 },
	{ 40, -105, { 2024, 6, 20 }, EW_S, 0.5, 14.850 },
	{ 40, -105, { 2024, 6, 20 }, EW_S, 1, 14.850 },
	{ 40, -105, { 2024, 6, 20 }, EW_S, 2, 14.850 },
	{ 40, -105, { 2024, 6, 20 }, NS_W, 0.5, 9.317 },
	{ 40, -105, { 2024, 6, 20 }, NS_W, 2, 12.400 },
	{ 40, -105, { 2024, 12, 21 }, EW_S, 0.25, 0.000 },
	{ 40, -105, { 2024, 12, 21 }, EW_S, 0.75, 0.000 },
	{ 40, -105, { 2024, 12, 21 }, EW_S, 1.5, 0.000 },
	{ 40, -105, { 2024, 12, 21 }, EW_S, 3, 6.017 },
	{ 40, -105, { 2024, 12, 21 }, NS_W, 1, 6.225 },
	{ 51.5, 0, { 2024, 3, 20 }, NONE, 0, 12.017 },
	{ 51.5, 0, { 2024, 3, 20 }, EW_S, 0.5, 0.058 },
	{ 51.5, 0, { 2024, 3, 20 }, EW_S, 1, 0.192 },
	{ 51.5, 0, { 2024, 3, 20 }, EW_S, 2, 12.017 },
	{ 51.5, 0, { 2024, 3, 20 }, NS_W, 0.5, 7.158 },
	{ 51.5, 0, { 2024, 3, 20 }, NS_W, 2, 9.425 },
	{ 51.5, 0, { 2024, 5, 15 }, EW_S, 0.25, 7.008 },
	{ 51.5, 0, { 2024, 5, 15 }, EW_S, 0.75, 15.433 },
	{ 51.5, 0, { 2024, 5, 15 }, EW_S, 1.5, 15.433 },
	{ 51.5, 0, { 2024, 5, 15 }, EW_S, 3, 15.433 },
	{ 51.5, 0, { 2024, 5, 15 }, NS_W, 1, 10.717 },
	{ 51.5, 0, { 2024, 6, 20 }, NONE, 0, 16.400 },
	{ 51.5, 0, { 2024, 6, 20 }, EW_S, 0.5, 13.567 },
	{ 51.5, 0, { 2024, 6, 20 }, EW_S, 1, 16.400 },
	{ 51.5, 0, { 2024, 6, 20 }, EW_S, 2, 16.400 },
	{ 51.5, 0, { 2024, 6, 20 }, NS_W, 0.5, 9.975 },
	{ 51.5, 0, { 2024, 6, 20 }, NS_W, 2, 13.292 },
	{ 51.5, 0, { 2024, 12, 21 }, EW_S, 0.25, 0.000 },
	{ 51.5, 0, { 2024, 12, 21 }, EW_S, 0.75, 0.000 },
	{ 51.5, 0, { 2024, 12, 21 }, EW_S, 1.5, 0.000 },
	{ 51.5, 0, { 2024, 12, 21 }, EW_S, 3, 0.000 },
	{ 51.5, 0, { 2024, 12, 21 }, NS_W, 1, 4.808 },
	{ 28, -81, { 2024, 3, 20 }, NONE, 0, 12.008 },
	{ 28, -81, { 2024, 3, 20 }, EW_S, 0.5, 1.250 },
	{ 28, -81, { 2024, 3, 20 }, EW_S, 1, 12.008 },
	{ 28, -81, { 2024, 3, 20 }, EW_S, 2, 12.008 },
	{ 28, -81, { 2024, 3, 20 }, NS_W, 0.5, 7.592 },
	{ 28, -81, { 2024, 3, 20 }, NS_W, 2, 10.042 },
	{ 28, -81, { 2024, 5, 15 }, EW_S, 0.25, 13.417 },
	{ 28, -81, { 2024, 5, 15 }, EW_S, 0.75, 13.417 },
	{ 28, -81, { 2024, 5, 15 }, EW_S, 1.5, 13.417 },
	{ 28, -81, { 2024, 5, 15 }, EW_S, 3, 13.417 },
	{ 28, -81, { 2024, 5, 15 }, NS_W, 1, 9.942 },
	{ 28, -81, { 2024, 6, 20 }, NONE, 0, 13.783 },
	{ 28, -81, { 2024, 6, 20 }, EW_S, 0.5, 13.783 },
	{ 28, -81, { 2024, 6, 20 }, EW_S, 1, 13.783 },
	{ 28, -81, { 2024, 6, 20 }, EW_S, 2, 13.783 },
	{ 28, -81, { 2024, 6, 20 }, NS_W, 0.5, 8.833 },
	{ 28, -81, { 2024, 6, 20 }, NS_W, 2, 11.692 },
	{ 28, -81, { 2024, 12, 21 }, EW_S, 0.25, 0.000 },
	{ 28, -81, { 2024, 12, 21 }, EW_S, 0.75, 0.000 },
	{ 28, -81, { 2024, 12, 21 }, EW_S, 1.5, 4.850 },
	{ 28, -81, { 2024, 12, 21 }, EW_S, 3, 8.383 },
	{ 28, -81, { 2024, 12, 21 }, NS_W, 1, 7.292 },
	{ -34, 151, { 2024, 3, 20 }, NONE, 0, 11.992 },
	{ -34, 151, { 2024, 3, 20 }, EW_N, 0.5, 0.058 },
	{ -34, 151, { 2024, 3, 20 }, EW_N, 1, 11.967 },
	{ -34, 151, { 2024, 3, 20 }, EW_N, 2, 11.992 },
	{ -34, 151, { 2024, 3, 20 }, NS_W, 0.5, 7.500 },
	{ -34, 151, { 2024, 3, 20 }, NS_W, 2, 9.925 },
	{ -34, 151, { 2024, 5, 15 }, EW_N, 0.25, 0.000 },
	{ -34, 151, { 2024, 5, 15 }, EW_N, 0.75, 0.000 },
	{ -34, 151, { 2024, 5, 15 }, EW_N, 1.5, 4.425 },
	{ -34, 151, { 2024, 5, 15 }, EW_N, 3, 8.458 },
	{ -34, 151, { 2024, 5, 15 }, NS_W, 1, 7.183 },
	{ -34, 151, { 2024, 6, 20 }, NONE, 0, 9.733 },
	{ -34, 151, { 2024, 6, 20 }, EW_N, 0.5, 0.000 },
	{ -34, 151, { 2024, 6, 20 }, EW_N, 1, 0.000 },
	{ -34, 151, { 2024, 6, 20 }, EW_N, 2, 5.300 },
	{ -34, 151, { 2024, 6, 20 }, NS_W, 0.5, 5.942 },
	{ -34, 151, { 2024, 6, 20 }, NS_W, 2, 7.825 },
	{ -34, 151, { 2024, 12, 21 }, EW_N, 0.25, 14.267 },
	{ -34, 151, { 2024, 12, 21 }, EW_N, 0.75, 14.267 },
	{ -34, 151, { 2024, 12, 21 }, EW_N, 1.5, 14.267 },
	{ -34, 151, { 2024, 12, 21 }, EW_N, 3, 14.267 },
	{ -34, 151, { 2024, 12, 21 }, NS_W, 1, 10.492 },
};

/* Two steps of 5 minutes. */
START_TEST(hours_beside_a_long_wall_are_those_of_a_planetary_theory)
{
	const nm cell = NM_PER_M, middle = cell / 2, far = 1000000 * cell;
	nm away = (nm)(beside_walls[_i].distance * (double)cell), height = cell;
	const struct occluder walls[] = {
		[EW_S] = { -far, middle + away, far, middle + away, height, CAST_ON_ALL, 0 },
		[EW_N] = { -far, middle - away, far, middle - away, height, CAST_ON_ALL, 0 },
		[NS_W] = { middle - away, -far, middle - away, far, height, CAST_ON_ALL, 0 },
	};
	const nm ground = 0;
	struct shade_scene scene = { cell, 1, 1, NULL, &ground, 1, &walls[beside_walls[_i].wall],
		beside_walls[_i].wall != NONE };
	struct sun_day day = { beside_walls[_i].latitude,
		date_julian(beside_walls[_i].date) - beside_walls[_i].longitude / 360 };
	struct ray rays[RAYS_A_DAY];
	uint16_t lit;

	rays_count(&arena, &scene, rays, rays_of_day(&day, rays), &lit);
	ck_assert_double_eq_tol(lit / 12.0, beside_walls[_i].hours, 2 / 12.0);
}
END_TEST

/* P. R. Tregenza and S. Sharples, Daylight Algorithms, ETSU S1350, 1993: 3 m of height, the sun 28
 * degrees high at azimuth 142: 3.47 m of shade east to west, 4.45 m north to south. */
START_TEST(a_wall_throws_shade_as_far_as_a_handbook_has_it)
{
	const nm cell = 10 * NM_PER_MM, ground = 0, far = 100 * NM_PER_M, up = 3 * NM_PER_M;
	const nm side = 600 * cell;
	const struct occluder level = { -far, side, far, side, up, CAST_ON_ALL, 0 };
	const struct occluder upright = { side, -far, side, far, up, CAST_ON_ALL, 0 };
	const struct ray ray = ray_from(28, 142, 0);
	struct shade_scene scene = { cell, 1, 600, NULL, &ground, 1, &level, 1 };
	uint16_t lit[600];
	int north = 0, west = 0;

	rays_count(&arena, &scene, &ray, 1, lit);
	for (int i = 0; i < 600; i++)
		north += !lit[i];
	scene.columns = 600, scene.rows = 1, scene.occluders = &upright;
	rays_count(&arena, &scene, &ray, 1, lit);
	for (int i = 0; i < 600; i++)
		west += !lit[i];
	ck_assert_int_eq(north, 445);
	ck_assert_int_eq(west, 347);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("shade beside walls");
	TCase *walls = suite_case(suite, "walls");

	tcase_add_checked_fixture(walls, NULL, teardown);
	tcase_add_loop_test(walls, hours_beside_a_long_wall_are_those_of_a_planetary_theory, 0,
		COUNT(beside_walls));
	tcase_add_test(walls, a_wall_throws_shade_as_far_as_a_handbook_has_it);
	return suite;
}
