/* The order of work, its hours and extra goods as JSON. */
#include "base/memory.h"
#include "support/runner.h"
#include "support/json.h"

#include <string.h>

static struct garden garden;
static struct text text;
static cJSON *root;

static void setup(void)
{
	text = TEXT_EMPTY;
	root = NULL;
}

static void teardown(void)
{
	cJSON_Delete(root);
	text_fini(&text);
	garden_fini(&garden);
}

static const cJSON *step(const char *id)
{
	const cJSON *row;

	cJSON_ArrayForEach(row, json_get(root, "work"))
		if (strcmp(json_get(row, "id")->valuestring, id) == 0)
			return row;
	ck_abort_msg("no step %s", id);
}

static const cJSON *labour(const char *id, const char *kind)
{
	const cJSON *row;

	cJSON_ArrayForEach(row, json_get(step(id), "labour"))
		if (strcmp(json_get(row, "kind")->valuestring, kind) == 0)
			return row;
	ck_abort_msg("no %s in %s", kind, id);
}

static void rate(enum attribute kind, int64_t millionths, enum amount_unit unit)
{
	block_set(&garden.plot.details.rates, kind, (struct value){ .set = true,
		.as.amount = { millionths, unit } });
}

/* 10 x 10 ft of path, 9.290304 m2; tamped at 1 h per m2, its base at the usual hour per m3. */
START_TEST(each_step_has_its_labour_with_rate_and_hours)
{
	const cJSON *tamp, *base, *fabric;

	garden_rectangle(&garden, 'p', 10, 10);
	rate(RATE_TAMP, MILLION, AMOUNT_H_M2);
	root = json_of(&garden, &text);
	tamp = labour("tamp", "tamp");
	ck_assert_str_eq(json_get(tamp, "unit")->valuestring, "m2");
	ck_assert_double_eq_tol(json_get(tamp, "quantity")->valuedouble, 9.290304, 1e-9);
	ck_assert_double_eq_tol(json_get(tamp, "hours")->valuedouble, 9.290304, 1e-9);
	ck_assert_str_eq(json_get(tamp, "rate_from")->valuestring, "plot");
	ck_assert_double_eq_tol(json_get(step("tamp"), "hours")->valuedouble, 9.290304, 1e-9);
	base = labour("base", "base");
	ck_assert_str_eq(json_get(base, "unit")->valuestring, "m3");
	ck_assert_str_eq(json_get(base, "rate_from")->valuestring, "usual");
	ck_assert_double_eq_tol(json_get(base, "hours")->valuedouble, 9.290304 * 0.1016, 1e-9);
	fabric = labour("fabric", "fabric");
	ck_assert(cJSON_IsNull(json_get(fabric, "hours")));
	ck_assert(cJSON_IsNull(json_get(fabric, "rate_from")));
	ck_assert(cJSON_IsNull(json_get(step("fabric"), "hours")));
	ck_assert_str_eq(json_get(step("fabric"), "step")->valuestring, "Lay the fabric");
	ck_assert_str_eq(json_get(labour("edging", "edging"), "unit")->valuestring, "m");
}
END_TEST

/* The path is 1 to 6 cells of a foot from the drop. */
START_TEST(with_a_drop_there_are_ways_of_a_barrow)
{
	const cJSON *ways;

	garden_rows(&garden, (const char *const[]){ "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb",
		"pppppp", NULL });
	root = json_of(&garden, &text);
	ck_assert_ptr_null(cJSON_GetObjectItem(root, "barrow_ways"));
	ck_assert_ptr_null(cJSON_GetObjectItem(step("base"), "barrow_m"));
	cJSON_Delete(root);
	garden.plot.details.around.has_drop = true;
	garden.plot.details.around.drop = (struct place){ 0, 5 };
	root = json_of(&garden, &text);
	ways = json_get(root, "barrow_ways");
	ck_assert_int_eq(cJSON_GetArraySize(ways), 2);
	ck_assert_str_eq(json_get(cJSON_GetArrayItem(ways, 1), "region")->valuestring, "P1");
	ck_assert_ptr_null(cJSON_GetObjectItem(root, "barrow_ways_to_fences"));
	ck_assert_double_eq_tol(json_get(cJSON_GetArrayItem(ways, 1), "length_m")->valuedouble,
		3.5 * 0.3048, 1e-9);
	ck_assert_double_eq_tol(json_get(step("surface"), "barrow_m")->valuedouble, 3.5 * 0.3048,
		1e-9);
	ck_assert_str_eq(json_get(labour("haul", "barrow"), "unit")->valuestring, "m");
	ck_assert_ptr_null(cJSON_GetObjectItem(step("tamp"), "barrow_m"));
}
END_TEST

START_TEST(things_are_counted_in_pieces)
{
	garden_rectangle(&garden, 'b', 8, 4);
	root = json_of(&garden, &text);
	ck_assert_str_eq(json_get(labour("walls", "block"), "unit")->valuestring, "each");
	ck_assert_double_eq(json_get(labour("walls", "block"), "quantity")->valuedouble, 48);
}
END_TEST

START_TEST(the_hours_of_all_steps_are_summed_for_the_crew)
{
	const cJSON *sums;
	double hours = 0;
	const cJSON *row;

	garden_rectangle(&garden, 'p', 10, 10);
	plot_set(&garden.plot, 0, ALLOW_CREW, "3");
	plot_set(&garden.plot, 0, ALLOW_DAY, "7.5");
	root = json_of(&garden, &text);
	sums = json_get(root, "work_sums");
	cJSON_ArrayForEach(row, json_get(root, "work"))
		hours += cJSON_IsNull(json_get(row, "hours")) ? 0 :
			json_get(row, "hours")->valuedouble;
	ck_assert_double_eq_tol(json_get(sums, "hours")->valuedouble, hours, 1e-7);
	ck_assert_int_eq(json_get(sums, "unrated")->valueint, 3);
	ck_assert_int_eq(json_get(sums, "crew")->valueint, 3);
	ck_assert_double_eq(json_get(sums, "day_hours")->valuedouble, 7.5);
	ck_assert_double_eq_tol(json_get(sums, "days")->valuedouble, hours / 22.5, 1e-7);
}
END_TEST

START_TEST(an_empty_plan_has_no_step_and_no_hours)
{
	garden_rows(&garden, (const char *const[]){ "..", NULL });
	root = json_of(&garden, &text);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(root, "work")), 0);
	ck_assert_double_eq(json_get(json_get(root, "work_sums"), "hours")->valuedouble, 0);
}
END_TEST

/* A foot is 0.3048 m, a pound 0.45359237 kg, exactly. What is bought is weighed: whole pounds, and
 * 24 kg are 52.9 of them. */
static const struct { enum amount_unit unit; const char *word; double of_one, pounds; } units[] = {
	{ AMOUNT_GOODS_EACH, "each", 1, 0 }, { AMOUNT_GOODS_FT, "m", 0.3048, 0 },
	{ AMOUNT_GOODS_M, "m", 1, 0 }, { AMOUNT_GOODS_SQ_FT, "m2", 0.09290304, 0 },
	{ AMOUNT_GOODS_M2, "m2", 1, 0 }, { AMOUNT_GOODS_CU_FT, "m3", 0.028316846592, 0 },
	{ AMOUNT_GOODS_M3, "m3", 1, 0 }, { AMOUNT_GOODS_LB, "kg", 0.45359237, 24 },
	{ AMOUNT_GOODS_KG, "kg", 1, 53 },
};

START_TEST(extra_goods_are_items_by_their_name_and_unit)
{
	const cJSON *row, *items;

	garden_rows(&garden, (const char *const[]){ "..", NULL });
	details_add_extra(&garden.plot.details, memory_string("Batter boards, \"long\""),
		(struct amount){ 24 * MILLION, units[_i].unit });
	root = json_of(&garden, &text);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(root, "items")), 1);
	row = cJSON_GetArrayItem(json_get(root, "items"), 0);
	ck_assert_str_eq(json_get(row, "id")->valuestring, "extra");
	ck_assert_str_eq(json_get(row, "section")->valuestring, "other");
	ck_assert_str_eq(json_get(row, "name")->valuestring, "Batter boards, \"long\"");
	ck_assert_str_eq(json_get(row, "unit")->valuestring, units[_i].word);
	ck_assert_double_eq_tol(json_get(row, "laid")->valuedouble, 24 * units[_i].of_one, 1e-9);
	ck_assert_double_eq(json_get(row, "spare")->valuedouble, 0);
	ck_assert_double_eq_tol(json_get(row, "order")->valuedouble, 24 * units[_i].of_one, 1e-9);
	ck_assert_int_eq(cJSON_HasObjectItem(row, "weight_kg"), units[_i].pounds > 0);
	if (units[_i].pounds > 0)
		ck_assert_double_eq_tol(json_get(row, "weight_kg")->valuedouble,
			units[_i].pounds * 0.45359237, 1e-9);
	items = json_get(step("services"), "items");
	ck_assert_int_eq(cJSON_GetArraySize(items), 1);
	ck_assert_str_eq(cJSON_GetArrayItem(items, 0)->valuestring, "extra");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("json work");
	TCase *all = suite_case(suite, "work");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_test(all, each_step_has_its_labour_with_rate_and_hours);
	tcase_add_test(all, with_a_drop_there_are_ways_of_a_barrow);
	tcase_add_test(all, things_are_counted_in_pieces);
	tcase_add_test(all, the_hours_of_all_steps_are_summed_for_the_crew);
	tcase_add_test(all, an_empty_plan_has_no_step_and_no_hours);
	tcase_add_loop_test(all, extra_goods_are_items_by_their_name_and_unit, 0,
		sizeof units / sizeof *units);
	return suite;
}
