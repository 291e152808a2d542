/* Ties on the set-out sheet, read back from it; on the panel and in JSON. */
#include "base/memory.h"
#include "report/panel/pages.h"
#include "report/text/print.h"
#include "support/garden.h"
#include "support/json.h"
#include "support/lines.h"
#include "support/runner.h"

#include <locale.h>
#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text page;
static struct pages pages;
static struct arena arena;
static struct setout setout;

static void setup(void)
{
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	page = TEXT_EMPTY;
	garden = (struct garden){ .arena = ARENA_EMPTY };
}

static void teardown(void)
{
	text_fini(&page);
	pages_fini(&pages);
	arena_clear(&arena);
	garden_fini(&garden);
}

static void set_out(void)
{
	garden_set_out(&garden, &setout, &arena);
}

static void join_lines(void)
{
	for (char *c = page.bytes; *c; c++)
		*c = *c == '\n' ? ' ' : *c;
}

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

static void has_not(const char *words)
{
	ck_assert_msg(!strstr(page.bytes, words), "%s is in\n%s", words, page.bytes);
}

static void print_part(void)
{
	text_clear(&page);
	garden_print(&garden, &page, "any.plot", 1u << PART_SETOUT);
	lines_check(page.bytes, "part");
	join_lines();
}

static void print_alone(void)
{
	struct text_sink out = text_sink(&page);

	text_clear(&page);
	report_setout(&out.sink, &garden.plot, &garden.takeoff, "any.plot");
	lines_check(page.bytes, "alone");
	join_lines();
}

static void put_tie(int x, int y, const char *name, nm length)
{
	ties_add(&garden.plot.details.around.ties, (struct place){ x, y }, memory_string(name),
		length);
}

#define FEET(feet, inches) ((12 * (feet) + (inches)) * NM_PER_INCH)

/* What is read on the sheet before and behind ` from "`. */
struct read_tie {
	nm length;
	char name[NAME_MOST + 1];
};

static nm length_before(const char *end)
{
	const char *start = end;
	struct scan s;
	struct value value;
	struct diag d;

	while (!strchr(",:;d", start[-1]))
		start--;
	start += strspn(start, " ");
	s = scan_start(start, (size_t)(end - start), 1);
	ck_assert_msg(value_scan(&s, &tie_rule, plot_units(&garden.plot), &value, &d),
		"%.20s: %s, %s", start, d.found, d.expected);
	return value.as.length;
}

/* Reads the ties of the sheet back, in their order. */
static int read_ties(struct read_tie *ties, int most)
{
	int count = 0;

	for (const char *at = page.bytes; (at = strstr(at, " from \"")); at++) {
		const char *name = at + strlen(" from \""), *end = strchr(name, '"');

		ck_assert(end && end - name <= NAME_MOST && count < most);
		ties[count].length = length_before(at);
		snprintf(ties[count++].name, NAME_MOST + 1, "%.*s", (int)(end - name), name);
	}
	return count;
}

static void check_tie(const struct read_tie *tie, nm length, const char *name)
{
	ck_assert_int_eq(tie->length, length);
	ck_assert_str_eq(tie->name, name);
}

/* A point that is held at a known place may still be turned about: common practice, no published
 * source. */
START_TEST(where_the_datum_alone_is_tied_room_is_left_for_the_base_lines_other_end)
{
	static const char turns[] = "tape the base line's other end, 8 ft across, to a fixed point "
		"too: ________ from ____________.";

	garden_rectangle(&garden, 'p', 8, 4);
	set_out();
	print_part();
	has_not("may turn");
	put_tie(0, 0, "House corner", FEET(12, 0));
	put_tie(0, 0, "Gate pier", FEET(9, 0));
	put_tie(0, 0, "Oak", FEET(7, 0));
	set_out();
	print_part();
	has(turns);
	put_tie(0, 4, "House corner", FEET(16, 0));
	set_out();
	print_part();
	has_not("may turn");
}
END_TEST

START_TEST(the_datums_ties_fill_the_room_that_is_left_for_them)
{
	struct read_tie ties[4];

	garden_rectangle(&garden, 'p', 8, 4);
	put_tie(0, 0, "House corner, north", FEET(12, 4));
	set_out();
	print_part();
	has("corner, 12 ft 4 in from \"House corner, north\" and");
	has("________ from ____________, two fixed points.");
	ck_assert_int_eq(read_ties(ties, 4), 1);
	put_tie(0, 0, "Gate pier", FEET(20, 6) + NM_PER_INCH / 8);
	set_out();
	print_alone();
	has_not("____________, two");
	has_not("Tied too");
	ck_assert_int_eq(read_ties(ties, 4), 2);
	check_tie(&ties[0], FEET(12, 4), "House corner, north");
	check_tie(&ties[1], FEET(20, 6) + NM_PER_INCH / 8, "Gate pier");
}
END_TEST

START_TEST(other_ties_stand_with_their_place)
{
	struct read_tie ties[8];

	garden_rectangle(&garden, 'p', 8, 4);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "500 mm");
	put_tie(8, 0, "Well", 4321 * NM_PER_MM);
	put_tie(0, 0, "Pier", 1234 * NM_PER_MM);
	put_tie(0, 0, "Pier", 1235 * NM_PER_MM); /* once more: not a second fixed point */
	put_tie(0, 0, "Well", 7 * NM_PER_M);
	put_tie(0, 0, "Oak", 9 * NM_PER_M);
	set_out();
	ck_assert_int_eq(setout.datum_tie_count, 2);
	ck_assert_int_eq(setout.more_tie_count, 3);
	print_part();
	has("Tied too: 4 m across, 0 mm down: ");
	has("; the datum: ");
	ck_assert_int_eq(read_ties(ties, 8), 5);
	check_tie(&ties[0], 1234 * NM_PER_MM, "Pier");
	check_tie(&ties[1], 7 * NM_PER_M, "Well");
	check_tie(&ties[2], 4321 * NM_PER_MM, "Well");
	check_tie(&ties[3], 1235 * NM_PER_MM, "Pier");
	check_tie(&ties[4], 9 * NM_PER_M, "Oak");
}
END_TEST

START_TEST(the_plans_other_corners_are_not_the_datum)
{
	garden_rectangle(&garden, 'p', 8, 4);
	put_tie(0, 4, "Pier", FEET(9, 0));
	put_tie(8, 0, "Oak", FEET(9, 0));
	set_out();
	ck_assert_int_eq(setout.datum_tie_count, 0);
	ck_assert_int_eq(setout.more_tie_count, 2);
}
END_TEST

START_TEST(without_a_tie_of_the_datum_its_room_stays_blank)
{
	garden_rectangle(&garden, 'p', 8, 4);
	put_tie(3, 2, "Well", FEET(9, 0));
	set_out();
	print_part();
	has("corner, ________ from ____________ and");
	has("Tied too: 3 ft across, 2 ft down: 9 ft from \"Well\" ____.");
}
END_TEST

START_TEST(a_takeoff_bounds_the_ties_that_setout_has_in_full)
{
	struct read_tie ties[40];
	struct text name = TEXT_EMPTY;

	garden_rectangle(&garden, 'p', 8, 4);
	for (int i = 0; i < 30; i++) {
		text_clear(&name);
		text_print(&name, "Stone %d", i);
		put_tie(1, 1, name.bytes, FEET(i + 1, 0));
	}
	set_out();
	print_part();
	has("and 10 more: parterre setout FILE");
	ck_assert_int_eq(read_ties(ties, 40), 20);
	print_alone();
	ck_assert_int_eq(read_ties(ties, 40), 30);
	for (int i = 0; i < 30; i++)
		ck_assert_int_eq(ties[i].length, FEET(i + 1, 0));
	text_fini(&name);
}
END_TEST

static const char *value_on_panel(const char *label)
{
	const struct page *panel;
	int at = 0;

	while (strcmp(page_name(at), "Set-out") != 0)
		ck_assert_int_lt(++at, pages_count());
	ck_assert(pages_make(&pages, at, &garden.takeoff, &garden.plot, NULL));
	panel = &pages.pages[at];
	for (size_t i = 0; i < panel->count; i++)
		if (strcmp(panel->lines[i].label, label) == 0)
			return panel->lines[i].value;
	ck_abort_msg("%s is not there", label);
	return NULL;
}

START_TEST(a_long_name_is_broken_and_a_plot_without_ties_has_no_key)
{
	struct read_tie ties[2];
	struct text text = TEXT_EMPTY;
	cJSON *root;

	garden_rectangle(&garden, 'p', 8, 4);
	root = json_of(&garden, &text);
	ck_assert_ptr_null(cJSON_GetObjectItem(json_get(root, "setout"), "ties"));
	cJSON_Delete(root);
	text_fini(&text);
	put_tie(0, 0, "The corner of the north wing of the house of the dyers, low",
		FEET(900, 11));
	set_out();
	print_part();
	ck_assert_int_eq(read_ties(ties, 2), 1);
	ck_assert_int_eq(ties[0].length, FEET(900, 11));
}
END_TEST

START_TEST(page_and_json_have_the_ties)
{
	struct text text = TEXT_EMPTY;
	const cJSON *ties;
	cJSON *root;

	garden_rectangle(&garden, 'p', 8, 4);
	put_tie(3, 2, "Well", FEET(9, 0));
	put_tie(0, 0, "Pier", FEET(5, 0));
	put_tie(0, 0, "Shed", FEET(7, 0));
	root = json_of(&garden, &text);
	ties = json_get(json_get(root, "setout"), "ties");
	ck_assert_int_eq(cJSON_GetArraySize(ties), 3);
	ck_assert_str_eq(json_get(cJSON_GetArrayItem(ties, 0), "to")->valuestring, "Pier");
	ck_assert_str_eq(json_get(cJSON_GetArrayItem(ties, 1), "to")->valuestring, "Shed");
	ck_assert_double_eq_tol(json_get(cJSON_GetArrayItem(ties, 0), "length_m")->valuedouble,
		5 * 0.3048, 1e-9);
	ck_assert_double_eq_tol(cJSON_GetArrayItem(json_get(cJSON_GetArrayItem(ties, 2), "at_m"),
		1)->valuedouble, 2 * 0.3048, 1e-9);
	cJSON_Delete(root);
	text_fini(&text);
	ck_assert_str_eq(value_on_panel("Datum from Pier"), "5 ft");
	value_on_panel("3 ft across, 2 ft down: 9 ft from \"Well\"");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_ties");
	TCase *ties = suite_case(suite, "ties");

	tcase_add_checked_fixture(ties, setup, teardown);
	tcase_add_test(ties,
		where_the_datum_alone_is_tied_room_is_left_for_the_base_lines_other_end);
	tcase_add_test(ties, the_datums_ties_fill_the_room_that_is_left_for_them);
	tcase_add_test(ties, other_ties_stand_with_their_place);
	tcase_add_test(ties, the_plans_other_corners_are_not_the_datum);
	tcase_add_test(ties, without_a_tie_of_the_datum_its_room_stays_blank);
	tcase_add_test(ties, a_takeoff_bounds_the_ties_that_setout_has_in_full);
	tcase_add_test(ties, a_long_name_is_broken_and_a_plot_without_ties_has_no_key);
	tcase_add_test(ties, page_and_json_have_the_ties);
	return suite;
}
