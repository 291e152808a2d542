/* Two takeoffs compared: a pair of plans whole, and laws on plans at random. */

#include "report/compare/bought.h"
#include "report/compare/compare.h"
#include "report/compare/leaf.h"
#include "report/json/json.h"
#include "support/around.h"
#include "support/details.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/json.h"
#include "support/runner.h"
#include "support/tables.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { TRIALS_FEW = 40, TRIALS_MANY = 2000, SIDE_MOST_HERE = 10 };

static struct garden gardens[VERSIONS];
static struct arena arena, words;

static void teardown(void)
{
	arena_clear(&arena);
	arena_clear(&words);
	for (int i = 0; i < VERSIONS; i++)
		garden_fini(&gardens[i]);
}

static void compare(struct comparison *comparison, const struct garden *old,
	const struct garden *new)
{
	comparison_make(comparison, &arena, &words, (struct compared[]){
		{ &old->plot, &old->takeoff, "old.plot" },
		{ &new->plot, &new->takeoff, "new.plot" } });
}

static void print_text(struct text *out, struct comparison *comparison)
{
	struct text_sink sink = text_sink(out);

	compare_text(&sink.sink, comparison);
}

static void print_json(struct text *out, struct comparison *comparison)
{
	struct text_sink sink = text_sink(out);

	compare_json(&sink.sink, comparison);
}

static cJSON *json_of_comparison(struct comparison *comparison)
{
	struct text text = TEXT_EMPTY;
	cJSON *json;

	print_json(&text, comparison);
	json = cJSON_Parse(text.bytes);
	ck_assert_msg(json != NULL, "no JSON: %.300s", text.bytes);
	text_fini(&text);
	return json;
}

/* ---- A pair of plans ------------------------------------------------------------------------- */

static void take(const char *old, const char *new)
{
	garden_file(&gardens[OLD], old);
	garden_file(&gardens[NEW], new);
	garden_count(&gardens[OLD]);
	garden_count(&gardens[NEW]);
}

START_TEST(two_plans_are_compared_in_full)
{
	struct comparison comparison;
	struct text text = TEXT_EMPTY;

	take("tests/plots/compare-old.plot", "tests/plots/compare-new.plot");
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	print_text(&text, &comparison);
	golden_check("compare.txt", text.bytes);
	text_clear(&text);
	print_json(&text, &comparison);
	golden_check("compare.json", text.bytes);
	text_fini(&text);
}
END_TEST

/* However many of them a pair of plans differs in. */
START_TEST(a_comparison_has_room_for_every_table)
{
	struct comparison comparison;
	const struct named_table *tables;
	int count;

	take("tests/plots/compare-old.plot", "tests/plots/compare-new.plot");
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	tables = tables_all(&count);
	for (int turn = 0; turn < 2; turn++)
		for (int i = 0; i < count; i++)
			ck_assert_ptr_eq(leaves_of(&comparison, tables[i].table)->table,
				tables[i].table);
	ck_assert_int_lt(comparison.leaves_count, TABLES_MOST);
}
END_TEST

/* What a row says nothing about is not in its title; a net below 0 is in the unit of its size. */
START_TEST(titles_leave_out_what_is_not_told_and_nets_have_the_unit_of_their_size)
{
	static const char *const rows[] = { "..........", ".pppp.lll.", ".pppp.lll.", NULL };
	static const char around[] = "levels 10 ft\n  %s, %s\n  %s, %s\nfinish 0,0 0 in\n"
		"keep \"Pear\" %s\n  at 7,2\n";
	static const char *const deep[VERSIONS] = { "12 in", "24 in" };
	static const char *const wide[VERSIONS] = { "1 ft", "2 ft" };
	struct comparison comparison;
	struct text text = TEXT_EMPTY, lines = TEXT_EMPTY;

	for (int i = 0; i < VERSIONS; i++) {
		text_clear(&lines);
		text_print(&lines, around, deep[i], deep[i], deep[i], deep[i], wide[i]);
		garden_rows(&gardens[i], rows);
		around_add(&gardens[i].plot, lines.bytes);
		garden_count(&gardens[i]);
	}
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	print_text(&text, &comparison);
	ck_assert_msg(strstr(text.bytes, "\nPear, By hand L1 l, lawn  ") != NULL, "%s", text.bytes);
	ck_assert_msg(!strstr(text.bytes, ", -"), "%s", text.bytes);
	/* 30 sq ft filled by 1 ft, then 2 ft */
	ck_assert_msg(strstr(text.bytes, "-1.11 cu yd  -2.22 cu yd  -1.11 cu yd") != NULL, "%s",
		text.bytes);
	text_fini(&text);
	text_fini(&lines);
}
END_TEST

/* A leg of 330 3/4 in from middle to middle of its end posts: three sections of 110 1/4 in. */
START_TEST(where_no_panel_is_cut_none_is_told)
{
	static const char *const rows[] = { "..............................", NULL };
	static const char *const sections[VERSIONS] = { "5 ft", "110 1/4 in" };
	struct text text = TEXT_EMPTY;
	struct comparison comparison;

	for (int i = 0; i < VERSIONS; i++) {
		garden_rows(&gardens[i], rows);
		text_clear(&text);
		text_print(&text, "fence \"Pickets\"\n  section %s\n  run 0,0 28,0\n",
			sections[i]);
		around_add(&gardens[i].plot, text.bytes);
		garden_count(&gardens[i]);
	}
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	text_clear(&text);
	print_text(&text, &comparison);
	ck_assert_msg(strstr(text.bytes, " Cut              1 of 30 3/4 in  -\n") != NULL, "%s",
		text.bytes);
	text_fini(&text);
}
END_TEST

static bool says(const struct text *text, const char *sentence)
{
	struct text line = TEXT_EMPTY;
	bool found;

	text_add(&line, text->bytes);
	for (char *c = line.bytes; *c; c++)
		*c = *c == '\n' ? ' ' : *c;
	found = strstr(line.bytes, sentence) != NULL;
	text_fini(&line);
	return found;
}

START_TEST(of_other_units_all_is_in_those_of_the_new_plot)
{
	struct comparison comparison;
	struct text text = TEXT_EMPTY;

	take("plots/court.plot", "plots/elbow.plot");
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	print_text(&text, &comparison);
	ck_assert(says(&text, " The plot before is in feet and inches; here all is in metres. "));
	ck_assert(strstr(text.bytes, " sq ft") == NULL);
	text_clear(&text);
	compare(&comparison, &gardens[NEW], &gardens[OLD]);
	print_text(&text, &comparison);
	ck_assert(says(&text, " The plot before is in metres; here all is in feet and inches. "));
	text_fini(&text);
}
END_TEST

/* 2 and 4 sq ft of lawn of 4 in of soil, all of it dug there: with 15 % settlement. */
START_TEST(what_is_dug_here_is_compared_too)
{
	static const char *const rows[VERSIONS][3] = { [OLD] = { "ll..", NULL },
		[NEW] = { "llll", NULL } };
	struct comparison comparison;
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < VERSIONS; i++) {
		garden_rows(&gardens[i], rows[i]);
		plot_set(&gardens[i].plot, 0, ALLOW_TOPSOIL, "6 in");
		garden_count(&gardens[i]);
	}
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	print_text(&text, &comparison);
	ck_assert(strstr(text.bytes, "Dug here"));
	text_fini(&text);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* Other ground here and there, and now and then another attribute. */
static void change_at_random(struct plot *plot, struct random *random)
{
	int changes = random_below(random, 6);

	for (int i = 0; i < changes; i++) {
		size_t at = (size_t)random_below(random,
			plot->ground.columns * plot->ground.rows);
		size_t letter = (size_t)random_below(random, (int)plot->details.legend_count + 1);

		plot->ground.cells[at] = letter == plot->details.legend_count ? OPEN_GROUND :
			plot->details.legend[letter].letter;
	}
}

/* Two plans, the new one the old one changed; each seventh another altogether. */
static void gardens_at_random(int seed)
{
	for (int i = 0; i < VERSIONS; i++) {
		struct random random = { (uint64_t)(seed % 7 == 0 ? 2 * seed + i : seed) };

		gardens[i] = (struct garden){ .has_book = false };
		plot_init(&gardens[i].plot);
		whole_plot_at_random(&gardens[i].plot, &random, SIDE_MOST_HERE);
		if (i == NEW)
			change_at_random(&gardens[i].plot, &random);
		garden_count(&gardens[i]);
	}
}

#define EACH_PAIR \
	for (int seed = 1; seed <= runner_count(TRIALS_FEW, TRIALS_MANY); seed++, teardown())

START_TEST(of_a_plan_and_itself_nothing_differs)
{
	EACH_PAIR {
		struct comparison comparison;
		struct text text = TEXT_EMPTY;

		gardens_at_random(seed);
		compare(&comparison, &gardens[NEW], &gardens[NEW]);
		print_text(&text, &comparison);
		ck_assert_msg(compare_is_same(&comparison), "seed %d", seed);
		ck_assert_str_eq(text.bytes, "parterre compare 1: nothing differs.\n");
		text_fini(&text);
	}
}
END_TEST

static char *json_text_of(const struct garden *garden)
{
	struct text text = TEXT_EMPTY;
	struct text_sink sink = text_sink(&text);

	report_json(&sink.sink, &garden->plot, &garden->takeoff);
	return text_take(&text);
}

/* With one title and one set of values, what JSON has tells them apart. */
START_TEST(nothing_differs_only_where_the_takeoffs_are_the_same)
{
	EACH_PAIR {
		struct comparison comparison;
		char *old, *new;

		if (seed % 7 == 0)
			continue;
		gardens_at_random(seed);
		compare(&comparison, &gardens[OLD], &gardens[NEW]);
		old = json_text_of(&gardens[OLD]);
		new = json_text_of(&gardens[NEW]);
		ck_assert_msg(compare_is_same(&comparison) == (strcmp(old, new) == 0), "seed %d",
			seed);
		free(old);
		free(new);
	}
}
END_TEST

/* Takes so many differences and wants no more. */
struct taking {
	struct differing differing; /* first */
	int count, most;
};

static void take_one(struct differing *differing, const struct difference *difference)
{
	struct taking *taking = (struct taking *)differing;

	(void)difference;
	differing->is_done = ++taking->count == taking->most;
}

static int count_taken(struct comparison *comparison, int most)
{
	struct taking taking = { .differing.found = take_one, .most = most };

	for (int i = 0; i < takeoff_shown_count; i++)
		differences_of(comparison, &taking.differing, &takeoff_shown[i]);
	return taking.count;
}

START_TEST(whoever_wants_no_more_differences_is_given_none)
{
	EACH_PAIR {
		struct comparison comparison;
		int all;

		gardens_at_random(seed);
		compare(&comparison, &gardens[OLD], &gardens[NEW]);
		all = count_taken(&comparison, 0);
		for (int most = 1; most <= all; most += 1 + all / 10)
			ck_assert_int_eq(count_taken(&comparison, most), most);
	}
}
END_TEST

static const char *word_of(const cJSON *row, const char *key)
{
	const cJSON *value = json_get(row, key);

	return cJSON_IsString(value) ? value->valuestring : "";
}

static double number_of(const cJSON *row, const char *key)
{
	return json_get(row, key)->valuedouble;
}

/* Every row of one list is in the other with its ends changed about. */
static void check_swapped(const cJSON *rows, const cJSON *others, const char *const *keys, int seed)
{
	const cJSON *row, *other;

	ck_assert_msg(cJSON_GetArraySize(rows) == cJSON_GetArraySize(others), "seed %d", seed);
	cJSON_ArrayForEach(row, rows) {
		bool is_found = false;

		cJSON_ArrayForEach(other, others) {
			bool is_this = cJSON_Compare(json_get(row, "old"), json_get(other, "new"),
				true) && cJSON_Compare(json_get(row, "new"),
				json_get(other, "old"), true);

			for (int i = 0; keys[i]; i++)
				is_this = is_this &&
					strcmp(word_of(row, keys[i]), word_of(other, keys[i])) == 0;
			is_found = is_found || is_this;
		}
		ck_assert_msg(is_found, "seed %d: %s", seed, cJSON_PrintUnformatted(row));
	}
}

/* Titles are those of the new version: a row's part and key have to do. */
START_TEST(the_other_way_round_more_is_left_over_and_old_is_new)
{
	static const char *const bought[] = { "id", "name", "unit", "packs", NULL };
	static const char *const figure[] = { "part", "key", NULL };

	EACH_PAIR {
		struct comparison there, back;
		cJSON *one, *other;

		gardens_at_random(seed);
		if (plot_units(&gardens[OLD].plot) != plot_units(&gardens[NEW].plot))
			continue;
		compare(&there, &gardens[OLD], &gardens[NEW]);
		compare(&back, &gardens[NEW], &gardens[OLD]);
		one = json_of_comparison(&there);
		other = json_of_comparison(&back);
		check_swapped(json_get(one, "more"), json_get(other, "left_over"), bought, seed);
		check_swapped(json_get(one, "left_over"), json_get(other, "more"), bought, seed);
		check_swapped(json_get(one, "figures"), json_get(other, "figures"), figure, seed);
		cJSON_Delete(one);
		cJSON_Delete(other);
	}
}
END_TEST

/* All of a good that a takeoff orders, whatever its size. */
static double ordered(const struct garden *garden, const char *id)
{
	double sum = 0;

	for (size_t i = 0; i < garden->takeoff.items.count; i++) {
		const struct item *item = &garden->takeoff.items.list[i];
		struct text own = TEXT_EMPTY;

		good_add_id(&own, item->good, item->name);
		sum += strcmp(own.bytes, id) == 0 ? item->order : 0;
		text_fini(&own);
	}
	return sum;
}

static double changed(const cJSON *rows, const char *id)
{
	const cJSON *row;
	double sum = 0;

	cJSON_ArrayForEach(row, rows)
		sum += strcmp(word_of(row, "id"), id) == 0 ? number_of(row, "amount") : 0;
	return sum;
}

START_TEST(what_is_ordered_now_is_the_old_order_with_more_and_without_what_is_left_over)
{
	EACH_PAIR {
		struct comparison comparison;
		cJSON *json;

		gardens_at_random(seed);
		compare(&comparison, &gardens[OLD], &gardens[NEW]);
		json = json_of_comparison(&comparison);
		for (int version = 0; version < VERSIONS; version++) {
			const struct item_list *items = &gardens[version].takeoff.items;

			for (size_t i = 0; i < items->count; i++) {
				struct text id = TEXT_EMPTY;
				double change;

				good_add_id(&id, items->list[i].good, items->list[i].name);
				change = ordered(&gardens[NEW], id.bytes) -
					ordered(&gardens[OLD], id.bytes);
				ck_assert_msg(fabs(changed(json_get(json, "more"), id.bytes) -
					changed(json_get(json, "left_over"), id.bytes) - change) <
					1e-6, "seed %d: %s", seed, id.bytes);
				text_fini(&id);
			}
		}
		cJSON_Delete(json);
	}
}
END_TEST

/* Kilograms are not taken from square metres. */
START_TEST(an_extra_of_another_unit_is_another_good)
{
	static const struct amount amounts[VERSIONS] = {
		{ 12 * MILLION, AMOUNT_GOODS_KG }, { 4 * MILLION, AMOUNT_GOODS_M2 } };
	struct comparison comparison;
	cJSON *json;

	for (int i = 0; i < VERSIONS; i++) {
		garden_file(&gardens[i], "plots/court.plot");
		details_add_extra(&gardens[i].plot.details, memory_string("Pebbles"),
			amounts[i]);
		garden_count(&gardens[i]);
	}
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	json = json_of_comparison(&comparison);
	ck_assert_double_eq(changed(json_get(json, "left_over"), "extra"), 12);
	ck_assert_double_eq(changed(json_get(json, "more"), "extra"), 4);
	cJSON_Delete(json);
}
END_TEST

/* ---- Text and JSON --------------------------------------------------------------------------- */

/* A heading of the text, underlined. */
static bool has_heading(const struct text *text, const char *heading)
{
	struct text line = TEXT_EMPTY;
	bool has;

	text_print(&line, "\n\n%s\n--", heading);
	has = strstr(text->bytes, line.bytes) != NULL;
	text_fini(&line);
	return has;
}

static bool has_part(const cJSON *figures, const char *key)
{
	const cJSON *row;

	cJSON_ArrayForEach(row, figures)
		if (strcmp(word_of(row, "part"), key) == 0)
			return true;
	return false;
}

static void check_parts(const struct text *text, const cJSON *figures, int seed)
{
	for (int i = 0; i < takeoff_shown_count; i++) {
		struct text heading = TEXT_EMPTY;

		text_add(&heading, takeoff_shown[i].key);
		heading.bytes[0] = (char)(heading.bytes[0] - 'a' + 'A');
		for (char *c = heading.bytes; *c; c++)
			*c = *c == '_' ? ' ' : *c;
		ck_assert_msg(has_heading(text, heading.bytes) ==
			has_part(figures, takeoff_shown[i].key), "seed %d: %s", seed,
			heading.bytes);
		text_fini(&heading);
	}
}

START_TEST(text_and_json_tell_the_same_parts)
{
	EACH_PAIR {
		struct comparison comparison;
		struct text text = TEXT_EMPTY;
		cJSON *json;

		gardens_at_random(seed);
		compare(&comparison, &gardens[OLD], &gardens[NEW]);
		print_text(&text, &comparison);
		json = json_of_comparison(&comparison);
		ck_assert(json_get(json, "old") && json_get(json, "new"));
		check_parts(&text, json_get(json, "figures"), seed);
		ck_assert_int_eq(has_heading(&text, "More to buy and to haul"),
			cJSON_GetArraySize(json_get(json, "more")) > 0);
		ck_assert_int_eq(has_heading(&text, "Left over, or less to haul"),
			cJSON_GetArraySize(json_get(json, "left_over")) > 0);
		ck_assert_int_eq(has_heading(&text, "In all"),
			cJSON_GetArraySize(json_get(json, "sums")) > 0);
		text_fini(&text);
		cJSON_Delete(json);
	}
}
END_TEST

/* ---- Trades ---------------------------------------------------------------------------------- */

START_TEST(each_part_of_a_takeoff_has_rows_that_go_together_by_a_key)
{
	struct comparison comparison;

	take("plots/court.plot", "plots/court.plot");
	compare(&comparison, &gardens[OLD], &gardens[NEW]);
	for (int i = 0; i < takeoff_shown_count; i++) {
		const struct shown *shown = &takeoff_shown[i];
		const struct figure_table *table = shown->table ? shown->table :
			hand_rows(&arena, &comparison.versions[NEW], shown->key).table;
		const struct leaves *leaves;
		bool has_key = false;

		ck_assert_msg(table != NULL, "%s has no rows", shown->key);
		leaves = leaves_of(&comparison, table);
		for (int j = 0; j < leaves->count; j++)
			has_key = has_key || (leaves->list[j].figure.flags & ROW_KEY);
		ck_assert_msg(has_key || shown->count == 1 || strcmp(shown->key, "costs") == 0,
			"no ROW_KEY among the figures of %s", shown->key);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("compare");
	TCase *all = suite_case(suite, "compare");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_test(all, two_plans_are_compared_in_full);
	tcase_add_test(all, a_comparison_has_room_for_every_table);
	tcase_add_test(all, titles_leave_out_what_is_not_told_and_nets_have_the_unit_of_their_size);
	tcase_add_test(all, where_no_panel_is_cut_none_is_told);
	tcase_add_test(all, of_other_units_all_is_in_those_of_the_new_plot);
	tcase_add_test(all, what_is_dug_here_is_compared_too);
	tcase_add_test(all, of_a_plan_and_itself_nothing_differs);
	tcase_add_test(all, nothing_differs_only_where_the_takeoffs_are_the_same);
	tcase_add_test(all, whoever_wants_no_more_differences_is_given_none);
	tcase_add_test(all, the_other_way_round_more_is_left_over_and_old_is_new);
	tcase_add_test(all,
		what_is_ordered_now_is_the_old_order_with_more_and_without_what_is_left_over);
	tcase_add_test(all, an_extra_of_another_unit_is_another_good);
	tcase_add_test(all, text_and_json_tell_the_same_parts);
	tcase_add_test(all, each_part_of_a_takeoff_has_rows_that_go_together_by_a_key);
	return suite;
}
