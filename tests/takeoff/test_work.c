/* The order of work: which steps come up, what they take, how long they last. */
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct work_step *step(const char *title)
{
	for (int i = 0; i < garden.takeoff.work.count; i++)
		if (strcmp(garden.takeoff.work.list[i].title, title) == 0)
			return &garden.takeoff.work.list[i];
	return NULL;
}

static const struct work_step *need(const char *title)
{
	const struct work_step *found = step(title);

	if (!found)
		ck_abort_msg("no step \"%s\"", title);
	return found;
}

static bool is_item(const struct item *item, const char *id)
{
	return strcmp(garden_id(&garden, item), id) == 0;
}

static void takes(const char *title, const char *id)
{
	const struct work_step *found = need(title);

	for (int i = 0; i < found->item_count; i++)
		if (is_item(&garden.takeoff.items.list[found->items[i]], id))
			return;
	ck_abort_msg("\"%s\" does not take %s", title, id);
}

static const char *const court[] = { "bbbbbbpppllll", "bbbbbbpppllll", "bbbbbbpppllll",
	"bbbbbbpppllll", "bbbbbbppSllll", NULL };

START_TEST(work_begins_with_marked_services_and_ends_with_mulch)
{
	static const char *const order[] = { "Have services marked", "Strip the sod", "Set out",
		"Dig",
		"Haul the spoil", "Lay lines and sleeves", "Tamp the formation",
		"Lay the fabric", "Lay the base", "Cut the blocks", "Lay the walls",
		"Line and fill the beds", "Set the edging",
		"Lay the surface", "Lay the lawn", "Mulch the beds" };

	garden_rows(&garden, court);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.work.count, (int)(sizeof order / sizeof *order));
	for (int i = 0; i < garden.takeoff.work.count; i++)
		ck_assert_str_eq(garden.takeoff.work.list[i].title, order[i]);
}
END_TEST

START_TEST(an_empty_plan_has_only_what_always_comes_first)
{
	garden_rows(&garden, (const char *[]){ "....", NULL });
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.work.count, 3);
	ck_assert(need("Have services marked") < need("Set out"));
	ck_assert_ptr_null(step("Dig"));
}
END_TEST

/* Every item is for some step, or nobody would be told what it is for. */
START_TEST(every_item_is_taken_by_a_step)
{
	garden_rows(&garden, court);
	plot_set(&garden.plot, 'b', BED_CAP, "1 ft x 8 in x 2 in");
	garden_count(&garden);
	takes("Lay the walls", "block.wall");
	takes("Lay the walls", "block.cap");
	takes("Lay the walls", "adhesive.cartridge");
	takes("Lay the base", "stone.base");
	takes("Mulch the beds", "mulch");
	ck_assert_int_eq(need("Tamp the formation")->item_count, 0);
	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct work_step *work = garden.takeoff.work.list;
		bool is_taken = garden.takeoff.items.list[i].order <= 0;

		for (int j = 0; j < garden.takeoff.work.count; j++)
			for (int k = 0; k < work[j].item_count; k++)
				is_taken = is_taken || work[j].items[k] == (int)i;
		ck_assert_msg(is_taken, "nothing is done with %s",
			garden_id(&garden, &garden.takeoff.items.list[i]));
	}
}
END_TEST

/* New Zealand trade labour factors, hours a cubic metre: hand digging sand 1.20, medium 2.20,
 * heavy 3.30; loading 1.00, 1.30, 1.90. */
static const struct {
	const char *subsoil;
	double digging, loading;
} grounds[] = { { "sand", 1.20, 1.00 }, { "loam", 2.20, 1.30 }, { "clay", 3.30, 1.90 } };

START_TEST(digging_and_loading_take_as_long_as_the_ground_is_heavy)
{
	garden_rows(&garden, court);
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, grounds[_i].subsoil);
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	garden_count(&garden);
	const struct earthwork *digging = &garden.takeoff.earthwork;

	ck_assert_double_gt(digging->bank.topsoil, 0);
	ck_assert_double_eq_tol(need("Strip the sod")->hours,
		grounds[_i].digging * digging->bank.sod, 1e-9);
	ck_assert_double_eq_tol(need("Dig")->hours,
		grounds[_i].digging * (digging->bank.topsoil + digging->bank.subsoil), 1e-9);
	ck_assert_double_eq_tol(need("Haul the spoil")->hours, grounds[_i].loading * digging->spoil,
		1e-9);
	ck_assert_str_eq(need("Dig")->rate, "digging by hand");
}
END_TEST

/* The same source: barrow up to 50 m, spread and level 1.25; a 150 mm base course 1.00. */
START_TEST(barrowing_and_the_base_have_rates_walls_and_lawns_none)
{
	garden_rows(&garden, court);
	garden_count(&garden);
	ck_assert_double_eq_tol(need("Mulch the beds")->hours,
		1.25 * garden_item(&garden, "mulch")->order, 1e-9);
	ck_assert_double_eq_tol(need("Lay the base")->hours,
		garden.takeoff.stones.totals[STONE_KIND_BASE].compacted, 1e-9);
	ck_assert_double_eq_tol(need("Line and fill the beds")->hours, 1.25 *
		(garden_item(&garden, "soil.topsoil")->order + garden_item(&garden,
		"soil.compost")->order), 1e-9);
	ck_assert_ptr_null(need("Lay the walls")->rate);
	ck_assert_double_eq(need("Lay the walls")->hours, 0);
	ck_assert_ptr_null(need("Lay the lawn")->rate);
}
END_TEST

START_TEST(blocks_are_cut_only_where_some_are)
{
	/* block as long as two depths, sides whole depths: no cut */
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_ptr_null(step("Cut the blocks"));
	ck_assert(need("Lay the walls")->item_count > 0);
}
END_TEST

/* 6 cu ft or 300 lb: soil of 2,000 lb/cu yd fills a barrow by weight at 4.05 cu ft, compost by
 * volume. */
START_TEST(loose_material_goes_by_the_barrow_each_by_itself)
{
	garden_rectangle(&garden, 'b', 12, 6);
	garden_count(&garden);
	double soil = garden_item(&garden, "soil.topsoil")->order / CUBIC_FOOT;
	double compost = garden_item(&garden, "soil.compost")->order / CUBIC_FOOT;
	double mulch = garden_item(&garden, "mulch")->order / CUBIC_FOOT;

	ck_assert_double_gt(soil, 8.1);
	ck_assert_int_eq(need("Line and fill the beds")->barrows,
		(int64_t)ceil(soil / (300 / (2000 / 27.0))) + (int64_t)ceil(compost / 6));
	ck_assert_int_eq(need("Mulch the beds")->barrows, (int64_t)ceil(mulch / 6));
	ck_assert_int_eq(need("Lay the walls")->barrows, 0);
}
END_TEST

START_TEST(every_step_says_what_to_do_with_what)
{
	garden_rows(&garden, court);
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.work.count; i++) {
		const struct work_step *work = &garden.takeoff.work.list[i];

		ck_assert_int_eq(work->doing[strlen(work->doing) - 1], '.');
		ck_assert_ptr_nonnull(work->tools);
		ck_assert((work->rate != NULL) == (work->hours > 0));
	}
	ck_assert_ptr_nonnull(strstr(need("Have services marked")->caution, "leave, call"));
	ck_assert_ptr_nonnull(strstr(need("Cut the blocks")->caution, "Silica"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("work");
	TCase *order = suite_case(suite, "order"), *hours = suite_case(suite, "hours");

	tcase_add_checked_fixture(order, NULL, teardown);
	tcase_add_checked_fixture(hours, NULL, teardown);
	tcase_add_test(order, work_begins_with_marked_services_and_ends_with_mulch);
	tcase_add_test(order, an_empty_plan_has_only_what_always_comes_first);
	tcase_add_test(order, every_item_is_taken_by_a_step);
	tcase_add_test(order, blocks_are_cut_only_where_some_are);
	tcase_add_test(order, loose_material_goes_by_the_barrow_each_by_itself);
	tcase_add_test(order, every_step_says_what_to_do_with_what);
	tcase_add_loop_test(hours, digging_and_loading_take_as_long_as_the_ground_is_heavy, 0,
		sizeof grounds / sizeof *grounds);
	tcase_add_test(hours, barrowing_and_the_base_have_rates_walls_and_lawns_none);
	return suite;
}
