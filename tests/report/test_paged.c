/* The takeoff on pages for a printer. */
#include "report/text/paged.h"
#include "report/text/print.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"

#include <string.h>

static struct garden garden;
static struct text plain, paged;

static void print(struct text *text, unsigned parts)
{
	garden_print(&garden, text, "garden.plot", parts);
}

static void setup(void)
{
	plain = paged = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&plain);
	text_fini(&paged);
	garden_fini(&garden);
}

/* A line of a page that goes on with a part. */
static bool is_page_rule(const char *line, size_t length)
{
	const char *page = strstr(line, ", page ");

	return page && page < line + length && strstr(page, "garden.plot") &&
		strstr(page, "garden.plot") < line + length;
}

/* Lines that say something, without heads of pages that go on: blank ones may fall away where a
 * page turns. */
static void add_said(struct text *out, const char *text)
{
	for (const char *line = text; *line; line += strcspn(line, "\n") + 1) {
		size_t length = strcspn(line, "\n");
		bool turns = *line == '\f';
		const char *from = line + turns;

		if (length > (size_t)turns && !is_page_rule(from, length - turns))
			text_print(out, "%.*s\n", (int)(length - turns), from);
	}
}

static int longest_page(const char *text)
{
	int longest = 0, lines = 0;

	for (const char *c = text; *c; c++) {
		lines = *c == '\f' ? 0 : lines + (*c == '\n');
		longest = lines > longest ? lines : longest;
	}
	return longest;
}

/* What has no blank line within it and has room on a page: rows of a plan, say. */
static void check_none_is_cut(void)
{
	for (const char *from = plain.bytes, *end; (end = strstr(from, "\n\n")); from = end + 2) {
		struct text block = TEXT_EMPTY;
		int lines = 0;

		text_print(&block, "%.*s\n", (int)(end - from), from);
		for (const char *c = block.bytes; *c; c++)
			lines += *c == '\n';
		ck_assert_msg(lines >= PAGE_LINES_MOST - 2 || strstr(paged.bytes, block.bytes),
			"cut: %.200s", block.bytes);
		text_fini(&block);
	}
}

static void check_pages(void)
{
	struct text said = TEXT_EMPTY, said_paged = TEXT_EMPTY;

	garden_count(&garden);
	text_clear(&plain);
	text_clear(&paged);
	print(&plain, PARTS_ALL);
	print(&paged, PARTS_ALL | PARTS_PAGED);
	add_said(&said, plain.bytes);
	add_said(&said_paged, paged.bytes);
	ck_assert_str_eq(said.bytes, said_paged.bytes);
	ck_assert_int_le(longest_page(paged.bytes), PAGE_LINES);
	check_none_is_cut();
	text_fini(&said);
	text_fini(&said_paged);
}


/* 66 lines, 11 in at 6 lines to the inch, are a sheet: common practice, no published source. */
START_TEST(pages_of_the_samples_say_all_and_fit_a_sheet)
{
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	garden_file(&garden, path);
	check_pages();
	ck_assert_int_ge(longest_page(paged.bytes), PAGE_LINES / 2);
}
END_TEST

START_TEST(pages_of_random_plots_say_all_and_fit_a_sheet)
{
	for (int seed = 1; seed <= runner_count(30, 300); seed++) {
		struct random random = { (uint64_t)seed };

		garden = (struct garden){ .arena = ARENA_EMPTY };
		plot_at_random(&garden.plot, &random, 30, "abbcd.pplS");
		check_pages();
		garden_fini(&garden);
	}
	garden = (struct garden){ .arena = ARENA_EMPTY };
	garden_rows(&garden, (const char *[]){ ".", NULL });
}
END_TEST

/* The first line of each page but the first is blank, the second the rule of a part. */
START_TEST(each_part_begins_a_page_and_a_page_that_goes_on_says_so)
{
	garden_file(&garden, "plots/court.plot");
	check_pages();
	ck_assert_ptr_nonnull(strstr(paged.bytes, "\f\nFront, page 2 ---"));
	ck_assert_ptr_nonnull(strstr(paged.bytes, "\f\nShopping ---"));
	ck_assert_ptr_nonnull(strstr(paged.bytes, "\f\nAssumed ---"));
	text_clear(&paged);
	print(&paged, 1u << PART_WALLS | PARTS_PAGED);
	ck_assert_int_eq(strncmp(paged.bytes, "parterre takeoff 1\n\nWalls ---", 29), 0);
}
END_TEST

/* From the 54th line on a blank line ends a page, and falls away; without one the 62nd does. */
START_TEST(a_page_ends_at_a_blank_line_or_where_it_must)
{
	struct text text = TEXT_EMPTY;
	struct text_sink to = text_sink(&text);
	struct paged_sink sink = paged_sink(&to.sink);

	paged_part(&sink, "Walls", "court.plot");
	for (int i = 1; i <= 53; i++)
		sink_print(&sink.sink, "%d\n", i);
	sink_add(&sink.sink, "\n\nafter");
	sink_add(&sink.sink, "wards\n");
	for (int i = 1; i <= 61; i++)
		sink_print(&sink.sink, "%d\n", i);
	ck_assert_ptr_nonnull(strstr(text.bytes, "\n53\n\n\f\nWalls, page 2 ---"));
	ck_assert_ptr_nonnull(strstr(text.bytes, "--- court.plot\nafterwards\n1\n"));
	ck_assert_ptr_nonnull(strstr(text.bytes, "\n59\n\f\nWalls, page 3 ---"));
	paged_fini(&sink);
	ck_assert_ptr_nonnull(strstr(text.bytes, "--- court.plot\n60\n61\n"));
	text_fini(&text);
}
END_TEST

/* 40 lines leave 22: a plan of 30 goes to the next page, one of 20 stays. One of 61 has room on
 * none, and begins where it is. */
START_TEST(a_plan_is_not_cut_where_a_page_has_room_for_it)
{
	static const struct {
		int lines, page;
	} plans[] = { { 20, 1 }, { 30, 2 }, { 60, 2 }, { 61, 1 } };
	struct text text = TEXT_EMPTY;
	struct text_sink to = text_sink(&text);
	struct paged_sink sink = paged_sink(&to.sink);
	const char *first, *turn;

	paged_part(&sink, "Planting", "court.plot");
	for (int i = 1; i <= 40; i++)
		sink_print(&sink.sink, "%d\n", i);
	sink_add(&sink.sink, "\nfirst\n");
	for (int i = 1; i < plans[_i].lines; i++)
		sink_print(&sink.sink, "|\n");
	paged_fini(&sink);
	first = strstr(text.bytes, "first\n");
	turn = strchr(text.bytes, '\f');
	ck_assert_ptr_nonnull(first);
	ck_assert_int_eq(turn && turn < first ? 2 : 1, plans[_i].page);
	ck_assert((turn && strchr(turn + 1, '\f')) == false);
	text_fini(&text);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("paged");
	TCase *pages = suite_case(suite, "pages");

	tcase_add_checked_fixture(pages, setup, teardown);
	tcase_add_loop_test(pages, pages_of_the_samples_say_all_and_fit_a_sheet, 0,
		SAMPLE_GARDENS);
	tcase_add_test(pages, pages_of_random_plots_say_all_and_fit_a_sheet);
	tcase_add_test(pages, each_part_begins_a_page_and_a_page_that_goes_on_says_so);
	tcase_add_loop_test(pages, a_plan_is_not_cut_where_a_page_has_room_for_it, 0, 4);
	tcase_add_test(pages, a_page_ends_at_a_blank_line_or_where_it_must);
	return suite;
}
