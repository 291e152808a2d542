/* The order of work: which steps come up, what they take, what is said of the plot. */
#include "base/memory.h"
#include "support/details.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct planned_step *step(enum work_step which)
{
	const struct work *work = &garden.takeoff.work;

	for (int i = 0; i < work->count; i++)
		if (work->list[i].step == which)
			return &work->list[i];
	return NULL;
}

static const struct planned_step *need(enum work_step which)
{
	const struct planned_step *found = step(which);

	if (!found)
		ck_abort_msg("no step \"%s\"", work_step_word(which));
	return found;
}

/* "services strip set-out": the steps that come up. */
static void steps_are(const char *expected)
{
	const struct work *work = &garden.takeoff.work;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < work->count; i++)
		text_print(&words, "%s%s", i ? " " : "", work_step_word(work->list[i].step));
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

static void takes(enum work_step which, const char *id)
{
	const struct planned_step *found = need(which);

	for (int i = 0; i < found->item_count; i++)
		if (strcmp(garden_id(&garden, &garden.takeoff.items.list[found->items[i]]), id) ==
			0)
			return;
	ck_abort_msg("\"%s\" does not take %s", work_step_word(which), id);
}

static void has(uint64_t facts)
{
	ck_assert_msg((garden.takeoff.work.facts & facts) == facts, "%llx of %llx",
		(unsigned long long)(garden.takeoff.work.facts & facts),
		(unsigned long long)facts);
}

static void lacks(uint64_t facts)
{
	ck_assert_msg((garden.takeoff.work.facts & facts) == 0, "%llx",
		(unsigned long long)(garden.takeoff.work.facts & facts));
}

/* ---- The sequence ---------------------------------------------------------------------------- */

static const char *const court[] = { "bbbbbbpppllll", "bbbbbbpppllll", "bbSbbbpppllll",
	"bbbbbbpppllll", "bbbbbbppTllll", NULL };

static void lay_court(void)
{
	garden_rows(&garden, court);
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	fences_run(&garden.plot, "0,0 13,0");
	fences_gate(&garden.plot, "6,0 9,0");
	details_add_extra(&garden.plot.details, memory_string("Paint"),
		(struct amount){ 2 * MILLION, AMOUNT_GOODS_EACH });
	garden_count(&garden);
}

START_TEST(all_of_it_is_done_in_the_one_order)
{
	lay_court();
	steps_are("services strip set-out dig posts sleeves set-aside haul tamp fabric base "
		"fixtures-inside walls backfill fill fixtures edging surface panels mulch lawn "
		"clear-up");
	/* level ground, nothing around, no plants, no water */
	lacks(FACT(LEVELS) | FACT(LOW) | FACT(DEEP) | FACT(LINES) | FACT(KEPT) | FACT(LAID) |
		FACT(WATER) | FACT(HEADER) | FACT(PLANTS));
}
END_TEST

START_TEST(an_empty_plan_is_no_work)
{
	garden_rows(&garden, (const char *const[]){ "....", NULL });
	garden_count(&garden);
	steps_are("");
	ck_assert_double_eq(garden.takeoff.work.sum.hours, 0);
}
END_TEST

START_TEST(extra_goods_alone_are_only_to_be_got)
{
	garden_rows(&garden, (const char *const[]){ "....", NULL });
	details_add_extra(&garden.plot.details, memory_string("Paint"),
		(struct amount){ 2 * MILLION, AMOUNT_GOODS_EACH });
	garden_count(&garden);
	steps_are("services");
	takes(WORK_SERVICES, "extra");
	has(FACT(EXTRAS));
	lacks(FACT(CORE));
}
END_TEST

/* Each alone, by default and changed: no step has nothing to do. */
static const struct {
	char letter;
	enum attribute attribute;
	const char *value, *steps;
} alone[] = {
	{ 'p', PATH_SURFACE, "2 in", "services strip set-out dig sleeves haul tamp fabric base "
		"edging surface clear-up" },
	{ 'p', PATH_FABRIC, "no", "services strip set-out dig sleeves haul tamp base edging "
		"surface clear-up" },
	{ 'p', PATH_EDGING, "no", "services strip set-out dig sleeves haul tamp fabric base "
		"surface clear-up" },
	{ 'p', PATH_SURFACE, "0 in", "services strip set-out dig sleeves haul tamp fabric base "
		"edging clear-up" },
	{ 'l', LAWN_COVER, "turf", "services strip set-out dig haul lawn clear-up" },
	{ 'l', LAWN_COVER, "none", "" },
	{ 'S', FIXTURE_HEIGHT, "3 ft", "services strip set-out dig haul tamp fabric base fixtures "
		"clear-up" },
	{ 'b', BED_MULCH, "2 in", "services strip set-out dig sleeves haul tamp fabric base walls "
		"backfill fill mulch clear-up" },
	{ 'b', BED_MULCH, "0 in", "services strip set-out dig sleeves haul tamp fabric base walls "
		"backfill fill clear-up" },
	{ 'b', BED_BUILD, "level", "services set-out backfill fill edging mulch clear-up" },
	{ 'b', BED_INSIDE, "filled", "services strip set-out dig sleeves haul tamp fabric base "
		"walls fill mulch clear-up" },
};

START_TEST(a_step_that_has_nothing_to_do_is_left_out)
{
	garden_rectangle(&garden, alone[_i].letter, 8, 4);
	plot_set(&garden.plot, alone[_i].letter, alone[_i].attribute, alone[_i].value);
	garden_count(&garden);
	steps_are(alone[_i].steps);
}
END_TEST

START_TEST(a_fence_alone_is_dug_set_and_hung)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 26,5");
	garden_count(&garden);
	steps_are("services set-out dig posts haul panels clear-up");
}
END_TEST

START_TEST(without_sod_nothing_is_stripped)
{
	garden_rectangle(&garden, 'p', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	garden_count(&garden);
	ck_assert_ptr_null(step(WORK_STRIP));
	ck_assert_ptr_nonnull(step(WORK_DIG));
	lacks(FACT(SOD));
}
END_TEST

/* Topsoil is set aside where beds take it; dug without a use it leaves with the rest. */
START_TEST(topsoil_is_set_aside_only_for_a_use)
{
	garden_rows(&garden, (const char *const[]){ "pppppppp", "pppppppp", NULL });
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	garden_count(&garden);
	has(FACT(TOPSOIL) | FACT(SPOIL));
	lacks(FACT(REUSED) | FACT(BACKFILL));
	ck_assert_ptr_null(step(WORK_SET_ASIDE));
}
END_TEST

/* ---- Goods ----------------------------------------------------------------------------------- */

START_TEST(goods_are_taken_where_they_are_used)
{
	lay_court();
	takes(WORK_SERVICES, "extra");
	takes(WORK_POSTS, "fence.concrete");
	takes(WORK_HAUL, "spoil");
	takes(WORK_FABRIC, "fabric.pin");
	takes(WORK_BASE, "stone.base");
	takes(WORK_WALLS, "block.wall");
	takes(WORK_WALLS, "adhesive.cartridge");
	takes(WORK_FILL, "soil.compost");
	takes(WORK_EDGING, "edging.spike");
	takes(WORK_SURFACE, "stone.surface.fines");
	takes(WORK_PANELS, "fence.latch");
	takes(WORK_MULCH, "mulch");
	takes(WORK_LAWN, "turf");
	ck_assert_int_eq(need(WORK_TAMP)->item_count, 0);
	ck_assert_int_eq(need(WORK_FIXTURES_INSIDE)->labour_count, 1);
	ck_assert_double_eq(need(WORK_FIXTURES_INSIDE)->labour->quantity, 1);
	ck_assert_double_eq(need(WORK_FIXTURES)->labour->quantity, 1);
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
	ck_assert_int_eq(need(WORK_FILL)->barrow.loads,
		(int64_t)ceil(soil / (300 / (2000 / 27.0))) + (int64_t)ceil(compost / 6));
	ck_assert_int_eq(need(WORK_MULCH)->barrow.loads, (int64_t)ceil(mulch / 6));
	ck_assert_int_eq(need(WORK_WALLS)->barrow.loads, 0);
}
END_TEST

/* ---- Hours ----------------------------------------------------------------------------------- */

START_TEST(a_step_has_the_hours_of_its_labour)
{
	garden_rectangle(&garden, 'l', 10, 10);
	garden_count(&garden);
	const struct planned_step *lawn = need(WORK_LAWN);

	ck_assert_int_eq(lawn->labour_count, 2); /* topsoil has a usual rate, turf none */
	ck_assert_int_eq(lawn->labour[0].kind, RATE_TOPSOIL);
	ck_assert_int_eq(lawn->labour[1].kind, RATE_TURF);
	ck_assert(lawn->has_hours);
	ck_assert_double_gt(lawn->hours, 0);
	ck_assert_double_eq(lawn->hours, lawn->labour[0].hours);
	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert(!need(WORK_WALLS)->has_hours);
	ck_assert_double_eq(need(WORK_WALLS)->hours, 0);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* Beds of either build, all stones and covers, fixtures, fences, rates, extra goods. */
static void plan_at_random(struct random *random)
{
	plot_at_random(&garden.plot, random, 24, "aabbd.pqlmST");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, random_below(random, 2) ? "3 in" : "0 in");
	plot_set(&garden.plot, 'd', BED_BUILD, "level");
	plot_set(&garden.plot, 'q', PATH_STONE, "clean");
	plot_set(&garden.plot, 'm', LAWN_COVER, random_below(random, 2) ? "seed" : "none");
	if (random_below(random, 2))
		fences_at_random(&garden.plot, random);
	for (int i = random_below(random, 3); i > 0; i--)
		details_add_extra(&garden.plot.details, text_at_random(random, 1, 9),
			(struct amount){ i * MILLION, AMOUNT_GOODS_LB });
	for (enum attribute a = RATE_STRIP; a <= RATE_SEED; a++)
		if (random_below(random, 3) == 0)
			block_set(&garden.plot.details.rates, a,
				value_at_random(random, a, &garden.plot.ground));
}

static void each_good_is_taken_once_by_its_step(int seed)
{
	const struct work *work = &garden.takeoff.work;

	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];
		int taken = 0;

		for (int j = 0; j < work->count; j++)
			for (int k = 0; k < work->list[j].item_count; k++) {
				if (work->list[j].items[k] != (int)i)
					continue;
				taken++;
				ck_assert_int_eq(work->list[j].step, work_step_of_good(item->good));
			}
		ck_assert_msg(taken == (item->order > 0), "seed %d: %s is taken %d times", seed,
			garden_id(&garden, item), taken);
	}
}

static void steps_are_in_order_and_have_something_to_do(int seed)
{
	const struct work *work = &garden.takeoff.work;

	for (int i = 0; i < work->count; i++) {
		const struct planned_step *planned = &work->list[i];
		bool is_frame = planned->step == WORK_SERVICES || planned->step == WORK_SET_OUT ||
			planned->step == WORK_SLEEVES || planned->step == WORK_SET_ASIDE ||
			planned->step == WORK_CLEAR_UP;

		ck_assert_msg(i == 0 || planned->step > work->list[i - 1].step, "seed %d", seed);
		ck_assert_msg(is_frame || planned->item_count + planned->labour_count > 0,
			"seed %d: %s", seed, work_step_word(planned->step));
	}
}

static void hours_add_up(int seed)
{
	const struct work *work = &garden.takeoff.work;
	double hours = 0;
	int rows = 0, unrated = 0;

	for (int i = 0; i < work->count; i++) {
		double of_step = 0;

		for (int j = 0; j < work->list[i].labour_count; j++) {
			const struct labour *labour = &work->list[i].labour[j];

			ck_assert_int_eq(labour->step, work->list[i].step);
			ck_assert_double_gt(labour->quantity, 0);
			ck_assert((labour->hours > 0) == (labour->source != RATE_UNKNOWN));
			of_step += labour->hours;
			unrated += labour->source == RATE_UNKNOWN;
			rows++;
		}
		ck_assert_msg(fabs(of_step - work->list[i].hours) < 1e-9, "seed %d", seed);
		hours += of_step;
	}
	ck_assert_msg(rows == work->labours.count, "seed %d: some work is in no step", seed);
	ck_assert_int_eq(unrated, work->sum.unrated);
	ck_assert_msg(fabs(hours - work->sum.hours) < 1e-9 * (1 + hours), "seed %d", seed);
}

static void over_plans(void (*law)(int seed))
{
	int plans = runner_count(150, 1500);

	for (int seed = 0; seed < plans; seed++) {
		struct random random = { (uint64_t)seed };

		garden = (struct garden){ .arena = ARENA_EMPTY };
		plan_at_random(&random);
		garden_count(&garden);
		law(seed);
		garden_fini(&garden);
	}
	garden = (struct garden){ .arena = ARENA_EMPTY };
}

START_TEST(each_good_of_a_takeoff_is_taken_by_exactly_one_step)
{
	over_plans(each_good_is_taken_once_by_its_step);
}
END_TEST

START_TEST(steps_come_in_their_order_and_none_is_idle)
{
	over_plans(steps_are_in_order_and_have_something_to_do);
}
END_TEST

START_TEST(hours_of_labour_steps_and_all_agree)
{
	over_plans(hours_add_up);
}
END_TEST

/* ---- What the plot has ----------------------------------------------------------------------- */

static const struct {
	const char *rows[4];
	uint64_t has, lacks;
} plans[] = {
	{ { "pppp", "pppp", NULL }, FACT(CORE) | FACT(ZONES) | FACT(SOD) | FACT(SPOIL) |
		FACT(PATHS) | FACT(BASE) | FACT(PLATE) | FACT(FINES) | FACT(FABRIC) | FACT(EDGING),
		FACT(HOLES) | FACT(DEEP) | FACT(TOPSOIL) | FACT(REUSED) | FACT(LOOSENED) |
		FACT(PREPARED) | FACT(WALLS) | FACT(CUTS) | FACT(ADHESIVE) | FACT(LINER) |
		FACT(BEDS) | FACT(MULCH) | FACT(POSTS) | FACT(CONCRETE) | FACT(PANELS) |
		FACT(GATES) | FACT(FIXTURES) | FACT(LAWN_SOIL) | FACT(TURF) | FACT(SEED) |
		FACT(EXTRAS) | FACT(CAPS) | FACT(GRAVEL) | FACT(FIXTURES_INSIDE) },
	{ { "llll", "llll", NULL }, FACT(ZONES) | FACT(LAWN_SOIL) | FACT(TURF),
		FACT(PATHS) | FACT(BASE) | FACT(SEED) | FACT(BEDS) | FACT(FINES) | FACT(FABRIC) },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL }, FACT(WALLS) | FACT(ADHESIVE) |
		FACT(LINER) | FACT(RAISED) | FACT(MIX) | FACT(BEDS) | FACT(MULCH) | FACT(LOOSENED) |
		FACT(BASE), FACT(PATHS) | FACT(CAPS) | FACT(REPLACED) | FACT(AMENDED) |
		FACT(PREPARED) | FACT(FINES) | FACT(EDGING) | FACT(POSTS) },
	/* too narrow for a wall: it is a matter of caution all the same */
	{ { "bbbb", NULL }, FACT(WALLS) | FACT(BEDS), FACT(BASE) | FACT(ADHESIVE) | FACT(RAISED) },
	{ { "SS..", NULL }, FACT(FIXTURES) | FACT(BASE), FACT(FIXTURES_INSIDE) | FACT(PATHS) },
};

START_TEST(a_plot_has_what_it_has)
{
	garden_rows(&garden, plans[_i].rows);
	garden_count(&garden);
	has(plans[_i].has);
	lacks(plans[_i].lacks);
}
END_TEST

START_TEST(what_is_set_changes_what_a_plot_has)
{
	garden_rectangle(&garden, 'b', 9, 5);
	plot_set(&garden.plot, 0, ALLOW_TAMPER, "hand");
	plot_set(&garden.plot, 'b', BED_CAP, "16 in x 8 in x 2 in");
	plot_set(&garden.plot, 'b', BED_MIX, "topsoil 1");
	plot_set(&garden.plot, 'b', BED_LINER, "no");
	plot_set(&garden.plot, 'b', BED_BASE, "4 ft");
	garden_count(&garden);
	has(FACT(CAPS) | FACT(CUTS) | FACT(DEEP));
	lacks(FACT(PLATE) | FACT(MIX) | FACT(LINER));
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	/* of topsoil alone there is nothing to dig in */
	has(FACT(PREPARED) | FACT(BEDS));
	lacks(FACT(WALLS) | FACT(AMENDED) | FACT(DEEP));
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1");
	garden_count(&garden);
	has(FACT(AMENDED));
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	garden_count(&garden);
	has(FACT(REPLACED) | FACT(ZONES));
	lacks(FACT(PREPARED) | FACT(AMENDED));
}
END_TEST

START_TEST(a_fence_has_holes_and_concrete_in_them)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 22,5");
	fences_gate(&garden.plot, "10,5 14,5");
	garden_count(&garden);
	has(FACT(HOLES) | FACT(POSTS) | FACT(CONCRETE) | FACT(GRAVEL) | FACT(PANELS) |
		FACT(GATES));
	lacks(FACT(ZONES) | FACT(SOD) | FACT(WALLS) | FACT(BASE));
	fences_set(&garden.plot, FENCE_GRAVEL, "0 in");
	fences_set(&garden.plot, FENCE_DEPTH, "5 ft");
	garden_count(&garden);
	has(FACT(DEEP));
	lacks(FACT(GRAVEL));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("work");
	TCase *order = suite_case(suite, "order"), *laws = suite_case(suite, "laws");
	TCase *facts = suite_case(suite, "facts");

	tcase_add_checked_fixture(order, NULL, teardown);
	tcase_add_checked_fixture(facts, NULL, teardown);
	tcase_add_test(order, all_of_it_is_done_in_the_one_order);
	tcase_add_test(order, an_empty_plan_is_no_work);
	tcase_add_test(order, extra_goods_alone_are_only_to_be_got);
	tcase_add_loop_test(order, a_step_that_has_nothing_to_do_is_left_out, 0,
		sizeof alone / sizeof *alone);
	tcase_add_test(order, a_fence_alone_is_dug_set_and_hung);
	tcase_add_test(order, without_sod_nothing_is_stripped);
	tcase_add_test(order, topsoil_is_set_aside_only_for_a_use);
	tcase_add_test(order, goods_are_taken_where_they_are_used);
	tcase_add_test(order, loose_material_goes_by_the_barrow_each_by_itself);
	tcase_add_test(order, a_step_has_the_hours_of_its_labour);
	tcase_add_test(laws, each_good_of_a_takeoff_is_taken_by_exactly_one_step);
	tcase_add_test(laws, steps_come_in_their_order_and_none_is_idle);
	tcase_add_test(laws, hours_of_labour_steps_and_all_agree);
	tcase_add_loop_test(facts, a_plot_has_what_it_has, 0, sizeof plans / sizeof *plans);
	tcase_add_test(facts, what_is_set_changes_what_a_plot_has);
	tcase_add_test(facts, a_fence_has_holes_and_concrete_in_them);
	return suite;
}
