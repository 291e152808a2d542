/* The set-out as it is shown: as a paper, on its plan, on the panel and as JSON. */
#include "base/show.h"
#include "base/utf8.h"
#include "report/drawing/drawing.h"
#include "report/json/json.h"
#include "report/panel/pages.h"
#include "report/text/print.h"
#include "report/words/first_line.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/json.h"
#include "support/lines.h"
#include "support/runner.h"

#include <ctype.h>
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ROWS (const char *const[])

enum { TRIES = 40, MOST = 30 };

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

static void at_random(int seed)
{
	static const char *const cells[] = { "1 ft", "7 in", "5 3/16 in", "355 mm" };
	struct random random = { (uint64_t)seed };

	plot_at_random(&garden.plot, &random, MOST, "bcdpl.FG");
	plot_set(&garden.plot, 0, HEAD_UNITS, seed % 4 == 3 ? "metric" : "imperial");
	plot_set(&garden.plot, 0, HEAD_CELL, cells[seed % 4]);
	for (int i = 0; i < seed % 3; i++)
		fences_at_random(&garden.plot, &random);
	set_out();
}

/* The part alone, with what explains it. */
static void print_part(void)
{
	text_clear(&page);
	garden_print(&garden, &page, "any.plot", 1u << PART_SETOUT);
}

static void print_alone(void)
{
	struct text_sink out = text_sink(&page);

	text_clear(&page);
	report_setout(&out.sink, &garden.plot, &garden.takeoff, "any.plot");
}

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

static void has_not(const char *words)
{
	ck_assert_msg(!strstr(page.bytes, words), "%s is in\n%s", words, page.bytes);
}

static int count_lines(void)
{
	int count = 0;

	for (const char *c = page.bytes; *c; c++)
		count += *c == '\n';
	return count;
}

/* ---- The paper ------------------------------------------------------------------------------- */

/* A page has 66 lines. */
START_TEST(a_court_takes_about_a_page)
{
	garden_file(&garden, "plots/court.plot");
	set_out();
	print_part();
	ck_assert_int_le(count_lines(), 72);
	has("\nSet-out ----");
	has("Datum: the plan's top left corner, ________ from ____________ and\n");
	has("3-4-5: 16 ft across, 12 ft down, 20 ft between.");
	has("\n            0 in down  base line\n");
	has("\n            1 ft down  B1, P1, B2: 1 at 2 ft ____, 2 at 6 ft ____,\n"
		"                       3 at 10 ft ____, 4 at 14 ft ____\n");
	has("\n               across  2 ft: B1; 6 ft: B1, P1; 10 ft: P1, B2; 14 ft: B2, P1\n");
	has("gate G1 at 6 ft to 10 ft ____");
	has("\n4 ft x 4 ft     5 ft 7 7/8 in  B1 ____ ____, B2 ____ ____\n");
	has("inner faces lie inside by 8 in (b Raised bed).");
	has("Common practice");
}
END_TEST

START_TEST(lines_are_within_80_columns)
{
	at_random(_i);
	print_part();
	lines_check(page.bytes, "part");
	print_alone();
	lines_check(page.bytes, "alone");
	ck_assert(report_is_takeoff(page.bytes, page.length));
}
END_TEST

/* Rounded by hand: to the nearest 1/8 in or mm, once. */
static void add_offset(struct text *words, nm at)
{
	bool is_metric = plot_units(&garden.plot) == UNITS_METRIC;
	nm unit = is_metric ? NM_PER_MM : NM_PER_INCH / 8;
	nm whole = at / unit + (at % unit * 2 >= unit);

	show_length(words, whole * unit, plot_units(&garden.plot));
}

/* Without line breaks and what indents. */
static void unfold(void)
{
	size_t kept = 0;

	for (size_t i = 0; i < page.length; i++) {
		bool is_blank = page.bytes[i] == ' ' || page.bytes[i] == '\n';

		if (!is_blank || (kept > 0 && page.bytes[kept - 1] != ' '))
			page.bytes[kept++] = is_blank ? ' ' : page.bytes[i];
	}
	text_cut(&page, kept);
}

/* Each point stands once with its own offset, in the order of the walk. */
START_TEST(each_corner_stands_with_its_offset_rounded_once)
{
	const char *at;

	at_random(_i);
	print_alone();
	unfold();
	at = page.bytes;
	for (int i = 0; i < setout.string_count; i++) {
		struct setout_walk walk = setout_along(&setout, &setout.strings[i]);
		struct setout_point point;

		while (setout_next(&walk, &point)) {
			struct text words = TEXT_EMPTY;

			if (point.kind != SETOUT_CORNER)
				continue;
			text_print(&words, " %d at ", point.number);
			add_offset(&words, point.at.x);
			text_add(&words, " ____");
			at = strstr(at, words.bytes);
			ck_assert_msg(at, "seed %d: %s", _i, words.bytes);
			text_fini(&words);
		}
	}
}
END_TEST

START_TEST(posts_and_gates_have_the_numbers_of_the_fence)
{
	garden_rows(&garden, ROWS { "..........", "..........", "..........", NULL });
	fences_run(&garden.plot, "0,1 10,1");
	fences_gate(&garden.plot, "3,1 7,1");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	fences_at_random(&garden.plot, &(struct random){ 3 });
	set_out();
	print_part();
	unfold();
	has("Pickets");
	has("post 1 at 0 in ____");
	has("gate G1 at 3 ft to 7 ft ____");
	has("post 2.1 at");
}
END_TEST

/* 100 beds apart from each other, in a plan of 61 lines of edges each way. */
START_TEST(a_takeoff_bounds_what_setout_has_in_full)
{
	char number[32];

	garden_rectangle(&garden, '.', 62, 62);
	details_add_entry(&garden.plot.details, CLASS_PATH, 'p', memory_string("Path"));
	for (int i = 0; i < 61; i += 2)
		for (int j = 0; j < 61; j += 2)
			*ground_at(&garden.plot.ground, j, i) = 'p';
	set_out();
	ck_assert_int_gt(setout.string_count, 60);
	print_part();
	unfold();
	has(" more strings: parterre setout FILE has them all.");
	print_alone();
	unfold();
	has_not(" more strings");
	snprintf(number, sizeof number, " %d at ", setout.corner_count);
	has(number);
}
END_TEST

START_TEST(an_empty_plan_has_no_paper_but_its_frame_alone)
{
	garden_rows(&garden, ROWS { "...", "...", NULL });
	set_out();
	print_part();
	has("\nThere is nothing to set out: all ground is open.\n");
	print_alone();
	has("square it.\n\n   0'      2'\n   |       |\n");
	has("base line");
	has("too small for a 3-4-5");
}
END_TEST

START_TEST(boards_and_stakes_are_told)
{
	garden_rectangle(&garden, '.', 40, 12);
	details_add_entry(&garden.plot.details, CLASS_PATH, 'p', memory_string("Path"));
	for (int x = 10; x < 30; x++)
		*ground_at(&garden.plot.ground, x, 5) = 'p';
	set_out();
	print_part();
	unfold();
	has("from boards 6 ft across to boards 34 ft across;");
	has("from boards 1 ft down to boards 10 ft down.");
	has_not("Stakes stand inside");
	*ground_at(&garden.plot.ground, 1, 5) = 'p';
	set_out();
	print_part();
	unfold();
	has("from stakes 1 ft across to boards 34 ft across, 1 stake under each;");
	has("Stakes stand inside where boards would leave the plan");
}
END_TEST

/* ---- Its plan -------------------------------------------------------------------------------- */

/* "2.14o", a post of the second fence: "2", and where what follows it begins. */
static bool is_fence_before_post(const struct points *points, const char *number, int column,
	int row)
{
	int fence = atoi(number), end = column + 1;

	while (isdigit((unsigned char)points_at(points, end, row)))
		end++;
	return fence >= 2 && fence <= garden.takeoff.fences.count && end > column + 1 &&
		points_at(points, column, row) == '.' && points_at(points, end, row) == 'o';
}

static bool stands_at(const struct points *points, int column, int row, const char *number)
{
	int count = (int)strlen(number);

	for (int i = 0; i < count; i++)
		if (points_at(points, column + i, row) != number[i])
			return false;
	return !points_is_word(points_at(points, column - 1, row)) &&
		!points_is_word(points_at(points, column + count, row)) &&
		!is_fence_before_post(points, number, column + count, row);
}

START_TEST(numbers_stand_on_their_corners_or_are_counted)
{
	struct cuts cuts;
	struct drawing drawing;
	int found = 0;

	at_random(_i);
	cuts = cuts_of(setout.survey->columns, setout.survey->rows, 5);
	drawing_make(&drawing, &arena, &garden.takeoff, &cuts, &setout);
	for (int i = 0; i < setout.string_count; i++) {
		struct setout_walk walk = setout_along(&setout, &setout.strings[i]);
		struct setout_point point;

		while (setout_next(&walk, &point)) {
			int x = (int)(point.at.x / setout.survey->cell) * cuts.across;
			int y = (int)(point.at.y / setout.survey->cell) * cuts.down;
			char number[16];
			int digits = snprintf(number, sizeof number, "%d", point.number);

			found += point.kind == SETOUT_CORNER &&
				(stands_at(&drawing.points, x, y, number) ||
				stands_at(&drawing.points, x - digits + 1, y, number));
		}
	}
	ck_assert_int_eq(found, setout.corner_count - drawing.unnumbered);
}
END_TEST

START_TEST(a_courts_plan_has_its_numbers)
{
	garden_file(&garden, "plots/court.plot");
	set_out();
	print_part();
	has("    #   1-------2 . . . 3-------4   #\n");
	has(" 5'-# 5 6-------7 p   p 8-------9 10#\n");
	/* 14 ends on its corner, so that 15 might stand beside it. */
	has("    o 11. . . . . 12--13. . . .14 .7o\n");
	has("A number at a corner is that of its point");
}
END_TEST

/* ---- The panel ------------------------------------------------------------------------------- */

static const struct page *panel_page(void)
{
	int at = 0;

	while (strcmp(page_name(at), "Set-out") != 0)
		ck_assert_int_lt(++at, pages_count());
	ck_assert(pages_make(&pages, at, &garden.takeoff, &garden.plot, NULL));
	return &pages.pages[at];
}

static const struct line *line_of(const struct page *panel, const char *under, const char *label)
{
	for (size_t i = 0; i < panel->count; i++)
		if (strcmp(panel->lines[i].label, label) == 0 &&
		    strcmp(panel->lines[i].under, under) == 0)
			return &panel->lines[i];
	ck_abort_msg("%s under %s is not there", label, under);
}

START_TEST(the_page_has_each_string_with_its_points)
{
	const struct page *panel;

	garden_file(&garden, "plots/court.plot");
	set_out();
	panel = panel_page();
	ck_assert_str_eq(line_of(panel, "", "Base line")->value, "16 ft");
	ck_assert_str_eq(line_of(panel, "1 ft down", "3")->value, "10 ft");
	ck_assert_str_eq(line_of(panel, "5 1/4 in across", "Post 2")->value, "8 ft 5 1/4 in");
	ck_assert_str_eq(line_of(panel, "12 ft 6 3/4 in down", "Gate G1")->value,
		"6 ft to 10 ft");
	line_of(panel, "1 ft down", "B1, P1, B2");
	ck_assert_int_eq(line_of(panel, "15 ft 6 3/4 in across", "1 ft down")->at.y, 1);
}
END_TEST

START_TEST(an_empty_plan_has_a_page_that_says_so)
{
	garden_rows(&garden, ROWS { "...", NULL });
	set_out();
	ck_assert_str_eq(panel_page()->lines[0].label, "Nothing to set out yet.");
}
END_TEST

START_TEST(a_bed_a_fence_or_both_are_set_out_on_the_page)
{
	for (int i = 1; i < 4; i++) {
		garden_rows(&garden, ROWS { i & 1 ? ".bb...." : ".......", ".......", NULL });
		if (i & 2)
			fences_run(&garden.plot, "0,2 7,2");
		set_out();
		line_of(panel_page(), "", "From the plan's top left corner, in the order of "
			"pulling.");
		pages_fini(&pages);
		arena_clear(&arena);
		garden_fini(&garden);
	}
}
END_TEST

/* ---- JSON ------------------------------------------------------------------------------------ */

static void is_length(const cJSON *number, nm length)
{
	ck_assert_double_eq_tol(number->valuedouble, (double)length * 1e-9, 5.1e-10);
}

static void is_spot(const cJSON *pair, struct spot at)
{
	ck_assert_int_eq(cJSON_GetArraySize(pair), 2);
	is_length(cJSON_GetArrayItem(pair, 0), at.x);
	is_length(cJSON_GetArrayItem(pair, 1), at.y);
}

static void is_point(const cJSON *row, const struct setout_point *point)
{
	static const char *const keys[] = { [SETOUT_CORNER] = "point", [SETOUT_POST] = "post",
		[SETOUT_GATE] = "gate" };
	int number = point->kind == SETOUT_CORNER ? point->number : point->mark.index + 1;

	is_spot(json_get(row, "at_m"), point->at);
	ck_assert_int_eq(json_get(row, keys[point->kind])->valueint, number);
	if (point->kind == SETOUT_CORNER)
		ck_assert_int_eq(cJSON_GetArraySize(json_get(row, "regions")),
			point->region_count);
	else
		ck_assert_str_eq(json_get(row, "fence")->valuestring,
			garden.takeoff.fences.list[point->mark.fence].name);
	if (point->kind == SETOUT_GATE)
		is_spot(json_get(row, "to_m"), point->to);
}

static void is_string(const cJSON *row, const struct setout_string *string)
{
	struct setout_walk walk = setout_along(&setout, string);
	struct setout_point point;
	const cJSON *points = json_get(row, "points");
	int count = 0;

	ck_assert_str_eq(json_get(row, "is")->valuestring,
		string->is_upright ? "across" : "down");
	is_length(json_get(row, "offset_m"), string->at);
	is_spot(json_get(row, "from_m"), string->from);
	is_spot(json_get(row, "to_m"), string->to);
	ck_assert_int_eq(json_get(row, "guided")->valueint, string->guide_count);
	for (; setout_next(&walk, &point); count++)
		is_point(cJSON_GetArrayItem(points, count), &point);
	ck_assert_int_eq(cJSON_GetArraySize(points), count);
}

START_TEST(json_has_all_strings_and_points)
{
	struct text_sink out = text_sink(&page);
	cJSON *root;
	const cJSON *found, *strings;

	at_random(_i);
	report_json(&out.sink, &garden.plot, &garden.takeoff);
	root = cJSON_Parse(page.bytes);
	ck_assert_ptr_nonnull(root);
	found = json_get(root, "setout");
	is_length(json_get(found, "base_m"), setout.width);
	is_length(json_get(found, "diagonal_m"), setout.diagonal);
	is_length(json_get(json_get(json_get(found, "ends"), "right"), "offset_m"),
		setout.ends[SETOUT_RIGHT].at);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(found, "rectangles")),
		setout.rectangle_count);
	strings = json_get(found, "strings");
	ck_assert_int_eq(cJSON_GetArraySize(strings), setout.string_count);
	for (int i = 0; i < setout.string_count; i++)
		is_string(cJSON_GetArrayItem(strings, i), &setout.strings[i]);
	cJSON_Delete(root);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_setout");
	TCase *paper = suite_case(suite, "paper"), *shown = suite_case(suite, "shown");
	int tries = runner_count(TRIES, 10 * TRIES);

	tcase_add_checked_fixture(paper, setup, teardown);
	tcase_add_test(paper, a_court_takes_about_a_page);
	tcase_add_loop_test(paper, lines_are_within_80_columns, 0, tries);
	tcase_add_loop_test(paper, each_corner_stands_with_its_offset_rounded_once, 0, tries);
	tcase_add_test(paper, posts_and_gates_have_the_numbers_of_the_fence);
	tcase_add_test(paper, a_takeoff_bounds_what_setout_has_in_full);
	tcase_add_test(paper, an_empty_plan_has_no_paper_but_its_frame_alone);
	tcase_add_test(paper, boards_and_stakes_are_told);
	tcase_add_checked_fixture(shown, setup, teardown);
	tcase_add_loop_test(shown, numbers_stand_on_their_corners_or_are_counted, 0, tries);
	tcase_add_test(shown, a_courts_plan_has_its_numbers);
	tcase_add_test(shown, the_page_has_each_string_with_its_points);
	tcase_add_test(shown, an_empty_plan_has_a_page_that_says_so);
	tcase_add_test(shown, a_bed_a_fence_or_both_are_set_out_on_the_page);
	tcase_add_loop_test(shown, json_has_all_strings_and_points, 0, tries);
	return suite;
}
