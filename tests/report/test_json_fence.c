#include "support/runner.h"
#include "support/fencing.h"
#include "support/golden.h"
#include "support/json.h"

#include <math.h>
#include <string.h>

static struct garden garden;
static struct text json;
static cJSON *root;

static void setup(void)
{
	json = TEXT_EMPTY;
	root = NULL;
	garden.arena = ARENA_EMPTY;
}

static void teardown(void)
{
	cJSON_Delete(root);
	text_fini(&json);
	garden_fini(&garden);
}

static void read_back(void)
{
	cJSON_Delete(root);
	root = json_of(&garden, &json);
}

static void length_is(const cJSON *value, nm expected)
{
	ck_assert_int_eq(llround(value->valuedouble * 1e9), expected);
}

static void count_is(const cJSON *object, const char *key, int64_t expected)
{
	ck_assert_double_eq(json_get(object, key)->valuedouble, (double)expected);
}

static void amount_is(const cJSON *object, const char *key, double expected)
{
	ck_assert_double_eq_tol(json_get(object, key)->valuedouble, expected, 5.1e-10);
}

static void spot_is(const cJSON *array, struct spot spot)
{
	ck_assert_int_eq(cJSON_GetArraySize(array), 2);
	length_is(array->child, spot.x);
	length_is(array->child->next, spot.y);
}

static void place_is(const cJSON *array, struct place place)
{
	ck_assert_int_eq(cJSON_GetArraySize(array), 2);
	ck_assert_int_eq(array->child->valueint, place.x);
	ck_assert_int_eq(array->child->next->valueint, place.y);
}

static void legs_are(const cJSON *rows, const struct fencing *fencing)
{
	ck_assert_int_eq(cJSON_GetArraySize(rows), fencing->leg_count);
	for (int i = 0; i < fencing->leg_count; i++) {
		const struct fence_leg *leg = &fencing->legs[i];
		const cJSON *row = cJSON_GetArrayItem(rows, i);

		place_is(json_get(row, "from"), leg->on.from);
		place_is(json_get(row, "to"), leg->on.to);
		spot_is(json_get(row, "from_m"), leg->from);
		spot_is(json_get(row, "to_m"), leg->to);
		length_is(json_get(row, "length_m"), leg->length);
		count_is(row, "whole", leg->whole);
		ck_assert_int_eq(cJSON_GetArraySize(json_get(row, "cut_m")), leg->cut_count);
		for (int j = 0; j < leg->cut_count; j++)
			length_is(cJSON_GetArrayItem(json_get(row, "cut_m"), j), leg->cut[j]);
	}
}

static void gates_are(const cJSON *rows, const struct fencing *fencing)
{
	ck_assert_int_eq(cJSON_GetArraySize(rows), fencing->gate_count);
	for (int i = 0; i < fencing->gate_count; i++) {
		const struct fence_gate *gate = &fencing->gates[i];
		const cJSON *row = cJSON_GetArrayItem(rows, i);

		place_is(json_get(row, "from"), gate->on.from);
		spot_is(json_get(row, "to_m"), gate->to);
		length_is(json_get(row, "length_m"), gate->length);
		length_is(json_get(row, "clear_m"), gate->clear);
		length_is(json_get(row, "leaf_m"), gate->leaf);
		count_is(row, "leaves", gate->leaves);
	}
}

static void posts_are(const cJSON *rows, const struct fencing *fencing)
{
	ck_assert_int_eq(cJSON_GetArraySize(rows), fencing->post_count);
	for (int i = 0; i < fencing->post_count; i++) {
		const cJSON *row = cJSON_GetArrayItem(rows, i);

		ck_assert_str_eq(json_get(row, "kind")->valuestring,
			post_words[fencing->posts[i].kind].key);
		spot_is(json_get(row, "at_m"), fencing->posts[i].at);
	}
}

static void rest_is(const cJSON *row, const struct fencing *fencing)
{
	const cJSON *hole = json_get(row, "hole"), *panels = json_get(row, "panels");

	length_is(json_get(row, "length_m"), fencing->length);
	length_is(json_get(row, "post_length_m"), fencing->post_length);
	length_is(json_get(row, "post_stock_m"), fencing->post_stock);
	length_is(json_get(hole, "across_m"), fencing->hole.across);
	length_is(json_get(hole, "depth_m"), fencing->hole.depth);
	length_is(json_get(hole, "in_ground_m"), fencing->hole.in_ground);
	amount_is(hole, "concrete_m3", fencing->hole.concrete);
	amount_is(hole, "bags", fencing->hole.bags);
	amount_is(hole, "gravel_m3", fencing->hole.gravel);
	amount_is(hole, "spoil_m3", fencing->hole.spoil);
	length_is(json_get(panels, "width_m"), fencing->panel);
	count_is(panels, "whole", fencing->panels_whole);
	count_is(panels, "narrower", fencing->panel_pieces);
	count_is(panels, "cut_up", fencing->panels_cut);
	count_is(panels, "bought", fencing->panels_whole + fencing->panels_cut);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(row, "cuts")), fencing->panels_cut);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(row, "leaves")), fencing->leaves_count);
	for (int i = 0; i < fencing->leaves_count; i++) {
		const cJSON *leaves = cJSON_GetArrayItem(json_get(row, "leaves"), i);

		length_is(json_get(leaves, "width_m"), fencing->leaves[i].width);
		count_is(leaves, "count", fencing->leaves[i].count);
		count_is(leaves, "from_offcuts", fencing->leaves[i].from_offcuts);
	}
}

static void check(void)
{
	read_back();
	ck_assert_int_eq(cJSON_GetArraySize(json_get(root, "fence")), garden.takeoff.fences.count);
	for (int i = 0; i < garden.takeoff.fences.count; i++) {
		const struct fencing *fencing = &garden.takeoff.fences.list[i];
		const cJSON *row = cJSON_GetArrayItem(json_get(root, "fence"), i);

		ck_assert_str_eq(json_get(row, "name")->valuestring, fencing->fence->name);
		legs_are(json_get(row, "legs"), fencing);
		gates_are(json_get(row, "gates"), fencing);
		posts_are(json_get(row, "posts"), fencing);
		rest_is(row, fencing);
	}
}

START_TEST(fences_are_those_of_the_takeoff)
{
	struct random random = { 23 };

	for (int round = 0; round < 40; round++) {
		fences_ground(&garden.plot, random_between(&random, 3, 40),
			random_between(&random, 3, 40));
		fences_at_random(&garden.plot, &random);
		fences_at_random(&garden.plot, &random);
		check();
		garden_fini(&garden);
		garden.arena = ARENA_EMPTY;
	}
	fences_ground(&garden.plot, 1, 1);
}
END_TEST

START_TEST(a_fence_prints_as_it_did)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "0,0 0,24 40,24 40,0");
	fences_run(&garden.plot, "0,10 16,10");
	fences_gate(&garden.plot, "10,24 14,24");
	fences_gate(&garden.plot, "40,10 40,16");
	read_back();
	golden_check("fence.json", json.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("json_fence");
	TCase *rows = suite_case(suite, "rows");

	tcase_add_checked_fixture(rows, setup, teardown);
	tcase_add_test(rows, fences_are_those_of_the_takeoff);
	tcase_add_test(rows, a_fence_prints_as_it_did);
	return suite;
}
