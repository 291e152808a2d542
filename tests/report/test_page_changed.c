/* The page of what has changed since a plot was saved: a pair of plans by hand, and laws on plans
 * at random beside what the comparison says as JSON. */

#include "report/panel/page_changed.h"
#include "report/compare/compare.h"
#include "support/changes.h"
#include "support/details.h"
#include "support/garden.h"
#include "support/json.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <string.h>

#define ROWS (const char *[])

enum { TRIALS_FEW = 40, TRIALS_MANY = 1000, SIDE_MOST_HERE = 10 };

static struct garden gardens[VERSIONS];
static struct pages pages;
static int changed_at;

static void teardown(void)
{
	pages_fini(&pages);
	for (int i = 0; i < VERSIONS; i++)
		garden_fini(&gardens[i]);
}

static void setup(void)
{
	changed_at = pages_count() - 1;
	ck_assert_str_eq(page_name(changed_at), "Changed");
}

/* The new garden's page, made anew beside the old one, with a note where there is one. */
static bool make(const char *note)
{
	const struct compared old = { &gardens[OLD].plot, &gardens[OLD].takeoff, NULL };
	const struct saved saved = { &old, note };

	return pages_make(&pages, changed_at, &gardens[NEW].takeoff, &gardens[NEW].plot, &saved);
}

static const struct page *page(void)
{
	return &pages.pages[changed_at];
}

static void take(const char *const *old, const char *const *new)
{
	garden_rows(&gardens[OLD], old);
	garden_rows(&gardens[NEW], new);
	garden_count(&gardens[OLD]);
	garden_count(&gardens[NEW]);
}

/* The line of a kind under a heading ("": none), NULL where there is none. */
static const struct line *find(enum line_kind kind, const char *under, const char *label)
{
	for (size_t i = 0; i < page()->count; i++) {
		const struct line *line = &page()->lines[i];

		if (line->kind == kind && strcmp(line->under, under) == 0 &&
			strcmp(line->label, label) == 0)
			return line;
	}
	return NULL;
}

static const struct line *heading(const char *label)
{
	for (size_t i = 0; i < page()->count; i++)
		if (page()->lines[i].kind == LINE_HEADING &&
			strcmp(page()->lines[i].label, label) == 0)
			return &page()->lines[i];
	return NULL;
}

static void check(const char *under, const char *label, const char *value)
{
	const struct line *line = find(LINE_FIGURE, under, label);

	ck_assert_msg(line != NULL, "no %s under %s", label, under);
	ck_assert_str_eq(line->value, value);
}

/* ---- By hand --------------------------------------------------------------------------------- */

/* The lawn of 4 cells of 1 ft becomes a path of 2; the other bed has gone. Areas by counting. */
START_TEST(what_came_went_and_grew_is_told_by_how_much)
{
	take(ROWS { "bb..ll", "bb..ll", "......", "bb....", NULL },
		ROWS { "bb....", "bb....", "....pp", "......", NULL });
	ck_assert(make(NULL));
	check("Areas: l l", "Area", "-4.0 sq ft");
	check("Areas: p p", "Area", "+2.0 sq ft");
	check("Areas: b b", "Cells", "-2");
	check("Areas: . open ground", "Cells", "+4");
	check("Regions: P1 p", "Perimeter", "+6 ft");
	check("Regions: B2 b", "Cells", "-2");
	ck_assert_ptr_null(heading("Regions: B1 b"));
	ck_assert_ptr_nonnull(find(LINE_NOTE, "Plan",
		"The plan has the same size, 6 ft x 4 ft, 6 x 4 cells of 1 ft. New: P1 p. "
		"Gone: L1 l; B2 b."));
}
END_TEST

START_TEST(a_row_without_a_figure_is_told_as_new_or_gone)
{
	const char *const *lawn = ROWS { "..ll", "..ll", NULL };
	const char *const *path = ROWS { "..pp", "..pp", NULL };

	take(lawn, path);
	ck_assert(make(NULL));
	ck_assert_ptr_nonnull(find(LINE_NOTE, "Work: edging", "New."));
	teardown();
	take(path, lawn);
	ck_assert(make(NULL));
	ck_assert_ptr_nonnull(find(LINE_NOTE, "Work: edging", "Gone."));
}
END_TEST

/* As many regions of the same kinds, one of them another. */
START_TEST(a_bed_that_has_moved_is_another_plan)
{
	take(ROWS { "bb..", "....", NULL }, ROWS { ".bb.", "....", NULL });
	ck_assert(make(NULL));
	ck_assert_ptr_nonnull(heading("Plan"));
}
END_TEST

START_TEST(what_is_bought_stands_first_then_the_sums)
{
	const struct line *line;

	take(ROWS { "llll", "llll", "....", NULL }, ROWS { "llll", "....", "pppp", NULL });
	ck_assert(make(NULL));
	ck_assert_str_eq(page()->lines[0].label, "More to buy and to haul");
	ck_assert_ptr_nonnull(find(LINE_FIGURE, "More to buy and to haul", "Base stone"));
	line = find(LINE_FIGURE, "Left over, or less to haul", "Turf");
	ck_assert_ptr_nonnull(line);
	ck_assert_ptr_nonnull(heading("In all"));
	ck_assert(line < heading("In all"));
	ck_assert(heading("In all") < heading("Plan"));
	ck_assert(heading("Plan") < heading("Areas: p p"));
}
END_TEST

/* A region leads to its first cell in the new plan; what has gone leads nowhere. */
START_TEST(a_row_of_a_region_leads_there)
{
	take(ROWS { "bb..ll", "......", NULL }, ROWS { "bb....", "..bb..", NULL });
	ck_assert(make(NULL));
	ck_assert_int_eq(heading("Regions: B2 b")->at.x, 2);
	ck_assert_int_eq(heading("Regions: B2 b")->at.y, 1);
	ck_assert_int_eq(heading("Regions: L1 l")->at.x, -1);
	ck_assert_int_eq(heading("Areas: b b")->at.x, -1);
}
END_TEST

START_TEST(what_is_no_number_is_told_before_and_now)
{
	garden_rows(&gardens[OLD], ROWS { "bb..", "bb..", NULL });
	garden_rows(&gardens[NEW], ROWS { "..bb", "..bb", NULL });
	garden_count(&gardens[OLD]);
	garden_count(&gardens[NEW]);
	ck_assert(make(NULL));
	ck_assert_ptr_nonnull(find(LINE_NOTE, "Regions: B1 b",
		"First cell: before 0 in, 0 in, now 2 ft, 0 in"));
}
END_TEST

START_TEST(a_note_stands_above_all_and_alone_where_nothing_is_to_be_compared)
{
	const struct saved none = { .note = "It is not saved yet." };

	take(ROWS { "bb", "..", NULL }, ROWS { "bb", "pp", NULL });
	ck_assert(make("Somebody else has changed it."));
	ck_assert_int_eq(page()->lines[0].kind, LINE_NOTE);
	ck_assert_str_eq(page()->lines[0].label, "Somebody else has changed it.");
	ck_assert_uint_gt(page()->count, 1);
	pages_drop_saved(&pages);
	ck_assert(!page()->is_made);
	ck_assert(pages_make(&pages, changed_at, &gardens[NEW].takeoff, &gardens[NEW].plot,
		&none));
	ck_assert_uint_eq(page()->count, 1);
	ck_assert_str_eq(page()->lines[0].label, none.note);
}
END_TEST

/* A wall of blocks 8 in deep does not go round a bed of 1 ft; 4 ft by 4 ft are laid. */
START_TEST(a_bed_that_is_not_laid_out_is_told_above_what_seems_left_over)
{
	static const char *const laid[] = { "bbbb..", "bbbb..", "bbbb..", "bbbb..", NULL };
	static const char *const spoilt[] = { "bbbbb.", "bbbb..", "bbbb..", "bbbb..", NULL };

	take(laid, spoilt);
	ck_assert(make(NULL));
	ck_assert_str_eq(page()->lines[0].label,
		"INCOMPLETE now: beds that are not laid out are in no total.");
	ck_assert_str_eq(page()->lines[1].label, "Left over, or less to haul");
	teardown();
	take(spoilt, laid);
	ck_assert(make(NULL));
	ck_assert_str_eq(page()->lines[0].label,
		"INCOMPLETE as saved: beds that are not laid out are in no total.");
	ck_assert_str_eq(page()->lines[1].label, "More to buy and to haul");
}
END_TEST

START_TEST(of_two_alike_no_figure_has_changed)
{
	take(ROWS { "bbp", NULL }, ROWS { "bbp", NULL });
	ck_assert(make("Above."));
	ck_assert_uint_eq(page()->count, 2);
	ck_assert_str_eq(page()->lines[1].label, "No figure has changed since it was saved.");
}
END_TEST

/* Only that page is dropped, and stars tell what the last stroke changed of it. */
START_TEST(stars_compare_with_the_page_before)
{
	take(ROWS { "l...", NULL }, ROWS { "ll..", NULL });
	ck_assert(make(NULL));
	ck_assert(pages_make(&pages, 0, &gardens[NEW].takeoff, &gardens[NEW].plot, NULL));
	check("Areas: l l", "Area", "+1.0 sq ft");
	garden_fini(&gardens[NEW]);
	garden_rows(&gardens[NEW], ROWS { "ll.p", NULL });
	garden_count(&gardens[NEW]);
	pages_renew(&pages);
	ck_assert(make(NULL));
	ck_assert(!find(LINE_FIGURE, "Areas: l l", "Area")->is_changed);
	ck_assert(find(LINE_FIGURE, "Areas: p p", "Area")->is_changed);
	ck_assert(find(LINE_FIGURE, "Areas: . open ground", "Area")->is_changed);
	ck_assert(pages_make(&pages, 0, &gardens[NEW].takeoff, &gardens[NEW].plot, NULL));
	pages_drop_saved(&pages);
	ck_assert(pages.pages[0].is_made && !page()->is_made);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

static void gardens_at_random(int seed)
{
	for (int i = 0; i < VERSIONS; i++) {
		struct random random = { (uint64_t)seed };

		plot_init(&gardens[i].plot);
		whole_plot_at_random(&gardens[i].plot, &random, SIDE_MOST_HERE);
		for (int j = 0; i == NEW && j < seed % 4; j++)
			change_at_random(&gardens[i].plot, &random);
		garden_count(&gardens[i]);
	}
}

#define EACH_PAIR \
	for (int seed = 1; seed <= runner_count(TRIALS_FEW, TRIALS_MANY); seed++, teardown())

/* The same comparison as a program would read it. */
static cJSON *json_comparison(void)
{
	struct arena arena = ARENA_EMPTY, words = ARENA_EMPTY;
	struct comparison comparison;
	struct text text = TEXT_EMPTY;
	struct text_sink sink = text_sink(&text);
	cJSON *json;

	comparison_make(&comparison, &arena, &words, (struct compared[]){
		{ &gardens[OLD].plot, &gardens[OLD].takeoff, "old" },
		{ &gardens[NEW].plot, &gardens[NEW].takeoff, "new" } });
	compare_json(&sink.sink, &comparison);
	json = cJSON_Parse(text.bytes);
	text_fini(&text);
	arena_clear(&words);
	arena_clear(&arena);
	return json;
}

static void check_bought(const cJSON *json, const char *key, const char *under)
{
	const cJSON *rows = json_get(json, key), *row;
	int lines = 0;

	for (size_t i = 0; i < page()->count; i++)
		lines += page()->lines[i].kind == LINE_FIGURE &&
			strcmp(page()->lines[i].under, under) == 0;
	ck_assert_int_eq(lines, cJSON_GetArraySize(rows));
	cJSON_ArrayForEach(row, rows) {
		const char *name = json_get(row, "name")->valuestring;

		ck_assert_ptr_nonnull(find(LINE_FIGURE, under, name));
	}
}

/* Lines below the first heading that is not of what is bought, those of the plan left out. */
static int count_told(void)
{
	int count = 0;

	for (size_t i = 0; i < page()->count; i++) {
		const struct line *line = &page()->lines[i];

		count += line->kind != LINE_HEADING && strcmp(line->under, "") != 0 &&
			strcmp(line->under, "Plan") != 0 &&
			strcmp(line->under, "More to buy and to haul") != 0 &&
			strcmp(line->under, "Left over, or less to haul") != 0;
	}
	return count;
}

static bool is_cut(void)
{
	return strncmp(page()->lines[page()->count - 1].label, "and more.", 9) == 0;
}

START_TEST(it_tells_what_the_comparison_tells_as_far_as_it_goes)
{
	int cut = 0, whole = 0, same = 0;

	EACH_PAIR {
		cJSON *json = (gardens_at_random(seed), json_comparison());
		int all = cJSON_GetArraySize(json_get(json, "sums")) +
			cJSON_GetArraySize(json_get(json, "figures"));

		ck_assert(make(NULL));
		check_bought(json, "more", "More to buy and to haul");
		check_bought(json, "left_over", "Left over, or less to haul");
		ck_assert_int_eq(count_told() - is_cut(), all < CHANGED_MOST ? all : CHANGED_MOST);
		ck_assert_int_eq(is_cut(), all > CHANGED_MOST);
		ck_assert_int_eq(cJSON_IsTrue(json_get(json, "same")), page()->count == 1 &&
			strncmp(page()->lines[0].label, "No figure", 9) == 0);
		cut += is_cut();
		same += page()->count == 1;
		whole += page()->count > 1 && !is_cut();
		cJSON_Delete(json);
	}
	ck_assert(cut > 0 && whole > 0 && same > 0);
}
END_TEST

START_TEST(its_lines_are_plain_words_without_ties)
{
	EACH_PAIR {
		gardens_at_random(seed);
		ck_assert(make(NULL));
		for (size_t i = 0; i < page()->count; i++) {
			ck_assert_ptr_null(strchr(page()->lines[i].label, '\t'));
			ck_assert_ptr_null(strchr(page()->lines[i].value, '\t'));
		}
	}
}
END_TEST

START_TEST(no_heading_stands_twice_over_figures_of_one_row)
{
	EACH_PAIR {
		const char *last = "";

		gardens_at_random(seed);
		ck_assert(make(NULL));
		for (size_t i = 0; i < page()->count; i++) {
			const struct line *line = &page()->lines[i];

			if (line->kind != LINE_HEADING)
				continue;
			ck_assert_str_ne(line->label, last);
			last = line->label;
		}
	}
}
END_TEST

START_TEST(it_can_be_stopped_at_any_ask)
{
	struct stopper stopper;
	int64_t asks;

	gardens_at_random(3);
	stopper_begin(&stopper, 0);
	ck_assert(make(NULL));
	asks = stopper.asks;
	ck_assert_int_gt(asks, 100);
	for (int64_t at = 1; at <= asks; at++) {
		pages_drop_saved(&pages);
		stopper_begin(&stopper, at);
		ck_assert(!make(NULL));
		ck_assert(!page()->is_made);
		ck_assert_uint_eq(page()->count, 0);
	}
	stopper_end();
	ck_assert(make(NULL));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("page_changed");
	TCase *hand = suite_case(suite, "by hand"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(hand, setup, teardown);
	tcase_add_test(hand, what_came_went_and_grew_is_told_by_how_much);
	tcase_add_test(hand, a_row_without_a_figure_is_told_as_new_or_gone);
	tcase_add_test(hand, a_bed_that_has_moved_is_another_plan);
	tcase_add_test(hand, what_is_bought_stands_first_then_the_sums);
	tcase_add_test(hand, a_row_of_a_region_leads_there);
	tcase_add_test(hand, what_is_no_number_is_told_before_and_now);
	tcase_add_test(hand, a_note_stands_above_all_and_alone_where_nothing_is_to_be_compared);
	tcase_add_test(hand,
		a_bed_that_is_not_laid_out_is_told_above_what_seems_left_over);
	tcase_add_test(hand, of_two_alike_no_figure_has_changed);
	tcase_add_test(hand, stars_compare_with_the_page_before);
	tcase_add_checked_fixture(laws, setup, teardown);
	tcase_add_test(laws, it_tells_what_the_comparison_tells_as_far_as_it_goes);
	tcase_add_test(laws, no_heading_stands_twice_over_figures_of_one_row);
	tcase_add_test(laws, its_lines_are_plain_words_without_ties);
	tcase_add_test(laws, it_can_be_stopped_at_any_ask);
	return suite;
}
