/* Rows of declared figures in JSON: of each row of a sample all keys, and no other. */

#include "support/runner.h"
#include "support/json.h"

#include <string.h>

static struct garden garden;
static struct text text;
static cJSON *root;
static int rows_seen;

static void rows_have_keys(const cJSON *array, const struct figure_table *table, const char *rows,
	int count);

static bool comes_after(const struct figure *figure)
{
	return (figure->flags & (JSON_SPACED | JSON_LINES)) != 0;
}

static bool is_absent(const struct figure *figure, const void *row)
{
	return (figure->flags & JSON_OPTIONAL) && figure_is_none(figure, row);
}

static void has_key(const cJSON *item, const char *key)
{
	ck_assert_msg(item, "no key %s", key);
	ck_assert_msg(strcmp(item->string, key) == 0, "%s, not %s", item->string, key);
}

static const cJSON *row_has_keys(const cJSON *object, const struct figure_table *table,
	const char *row);

static void value_has_keys(const cJSON *value, const struct figure *figure, const char *row)
{
	const char *rows;
	int count;

	if (figure->kind == FIGURE_OBJECT)
		ck_assert_ptr_null(row_has_keys(value, figure->table, figure_field(figure, row)));
	if (figure->kind == FIGURE_ROWS) {
		rows = figure_rows(figure, row, &count);
		rows_have_keys(value, figure->table, rows, count);
	}
	if (figure->kind != FIGURE_CUTS)
		return;
	for (const cJSON *cut = value->child; cut; cut = cut->next) {
		has_key(cut->child, "pieces_m");
		ck_assert_ptr_null(cut->child->next);
	}
}

/* The declared keys in their order, those that follow the row last; the first key after them. */
static const cJSON *row_has_keys(const cJSON *object, const struct figure_table *table,
	const char *row)
{
	const cJSON *item = object->child;

	rows_seen++;
	for (int after = 0; after < 2; after++) {
		for (int i = 0; i < table->count; i++) {
			const struct figure *figure = &table->figures[i];

			if (!figure->key || comes_after(figure) != (after == 1) ||
				is_absent(figure, row))
				continue;
			has_key(item, figure->key);
			value_has_keys(item, figure, row);
			item = item->next;
		}
	}
	return item;
}

static const cJSON *course_has_keys(const cJSON *item, const struct wall_course *course)
{
	const struct figure *runs = wall_course_table.figures;

	has_key(item, runs->key);
	value_has_keys(item, runs, (const char *)course);
	return item->next;
}

/* What of a wall is put together by hand. */
static const cJSON *wall_has_keys(const cJSON *item, const struct wall *wall)
{
	int number = 0;

	has_key(item, "courses");
	for (const cJSON *course = item->child; course; course = course->next) {
		has_key(course->child, "course");
		ck_assert_ptr_null(course_has_keys(course->child->next,
			++number % 2 ? &wall->odd : &wall->even));
	}
	ck_assert_int_eq(number, wall->courses);
	item = item->next;
	has_key(item, "cap");
	ck_assert_int_eq(cJSON_IsObject(item), wall->has_cap);
	if (wall->has_cap) {
		has_key(item->child, "block_m");
		ck_assert_ptr_null(course_has_keys(item->child->next, &wall->cap));
	}
	return item->next;
}

static void rows_have_keys(const cJSON *array, const struct figure_table *table, const char *rows,
	int count)
{
	const cJSON *object = array->child;

	for (int i = 0; i < count; i++, rows += table->row_size) {
		const cJSON *more;

		if (row_is_left_out(table, rows))
			continue;
		ck_assert(cJSON_IsObject(object));
		more = row_has_keys(object, table, rows);
		if (table == &wall_table)
			more = wall_has_keys(more, (const struct wall *)rows);
		ck_assert_msg(!more, "%s is not declared", more ? more->string : "");
		object = object->next;
	}
	ck_assert_msg(!object, "a row too many in %s", array->string);
}

static const char *const plots[] = { "plots/court.plot", "plots/elbow.plot",
	"plots/great-court.plot", "plots/growing-court.plot", "plots/ring.plot",
	"plots/rope-walk.plot", "plots/slope.plot", "plots/snags.plot", "plots/well-yard.plot",
	"tests/plots/around.plot", "tests/plots/falling.plot" };
enum { PLOTS = sizeof plots / sizeof *plots };

static void open_sample(const char *path)
{
	garden_file(&garden, path);
	if (!garden.has_book)
		garden_book(&garden, "plots/prices.json");
	root = json_of(&garden, &text);
}

static void teardown(void)
{
	cJSON_Delete(root);
	text_fini(&text);
	garden_fini(&garden);
}

START_TEST(rows_in_json_have_the_declared_keys_in_their_order)
{
	open_sample(plots[_i]);
	for (int i = 0; i < takeoff_shown_count; i++) {
		const struct shown *shown = &takeoff_shown[i];
		const cJSON *value = cJSON_GetObjectItemCaseSensitive(root, shown->key);
		int count = 0;

		if (shown->is_optional && !shown_has_any(shown, &garden.takeoff)) {
			ck_assert_msg(!value, "%s without rows", shown->key);
			continue;
		}
		ck_assert_msg(value, "no %s", shown->key);
		if (!shown->table)
			continue;
		const char *rows = shown_rows(shown, &garden.takeoff, &count);

		if (shown->is_object)
			ck_assert_ptr_null(row_has_keys(value, shown->table, rows));
		else
			rows_have_keys(value, shown->table, rows, count);
	}
	const cJSON *more = row_has_keys(cJSON_GetObjectItemCaseSensitive(root, "costs"),
		&costs_table, (const char *)&garden.takeoff.costs);

	has_key(more, "unpriced");
	ck_assert_ptr_null(more->next);
	ck_assert_int_gt(rows_seen, 20);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("json rows");
	TCase *rows = suite_case(suite, "rows");

	tcase_add_checked_fixture(rows, NULL, teardown);
	tcase_add_loop_test(rows, rows_in_json_have_the_declared_keys_in_their_order, 0, PLOTS);
	return suite;
}
