/* How a fence stands on falling ground, on paper. */
#include "report/text/print.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

/* Ground that falls by 1/2 in per ft to the right, from 0; tests/takeoff/test_fence_levels.c has
 * the sums. */
static void draw(void)
{
	struct levels *levels = &garden.plot.details.levels;

	fences_ground(&garden.plot, 24, 8);
	fences_run(&garden.plot, "2,4 18,4");
	fences_gate(&garden.plot, "10,4 14,4");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	levels_init(levels, 8 * NM_PER_FOOT, 4, 2);
	for (int i = 0; i < 8; i++)
		levels->drops[i] = i % 4 * 4 * NM_PER_INCH;
}

static void print(void (*section)(const struct report *report))
{
	struct text_sink out = text_sink(&page);
	struct report report;

	garden_count(&garden);
	report = garden_report(&garden, &out.sink);
	section(&report);
}

static void first_fence(const struct report *report)
{
	print_fence_levels(report, 0);
}

static void second_fence(const struct report *report)
{
	print_fence_levels(report, 1);
}

#define MANNER \
	"  Panels hang level, leg by leg: bottom of the panels and ground at each post as\n" \
	"  a staff reads them, down from the level string line (with a minus, up from\n" \
	"  it); gap below the panels; top of the panels over the ground.\n"

START_TEST(each_post_has_its_ground_gap_and_height)
{
	draw();
	print(first_fence);
	ck_assert_str_eq(page.bytes, MANNER
		"  Leg  Bottom  Post  Ground   Gap  Height\n"
		"  1     -1 in     1    1 in  2 in   38 in\n"
		"                  2    5 in  6 in   42 in\n"
		"  G1     3 in     2    5 in  2 in   38 in\n"
		"                  3    7 in  4 in   40 in\n"
		"  2      5 in     3    7 in  2 in   38 in\n"
		"                  4    9 in  4 in   40 in\n"
		"  Gaps over 4 in, to fill up, or to step the panels: leg 1 up to 6 in.\n"
		"\n");
}
END_TEST

START_TEST(gates_that_leave_too_wide_a_gap_are_named)
{
	draw();
	plot_set(&garden.plot, 0, ALLOW_FENCE_GAP, "3 1/2 in");
	print(first_fence);
	ck_assert_ptr_nonnull(strstr(page.bytes, "  Gaps over 3 1/2 in, to fill up, or to step the "
		"panels: leg 1 up to 6 in,\n  gate G1 up to 4 in, leg 2 up to 4 in.\n"));
}
END_TEST

START_TEST(names_are_those_of_the_second_fence)
{
	draw();
	plot_set(&garden.plot, 0, ALLOW_FENCE_GAP, "3 in");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "2,2 10,2");
	fences_gate(&garden.plot, "2,2 10,2");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	print(second_fence);
	ck_assert_str_eq(page.bytes, MANNER
		"  Leg   Bottom  Post  Ground   Gap  Height\n"
		"  G2.1   -1 in   2.1    1 in  2 in   38 in\n"
		"                 2.2    5 in  6 in   42 in\n"
		"  Gaps over 3 in, to fill up, or to step the panels: gate G2.1 up to 6 in.\n"
		"\n");
}
END_TEST

/* 38, 42, 40 and 40 in over the ground, 24 in in it. */
START_TEST(the_lengths_of_posts_are_told)
{
	draw();
	plot_set(&garden.plot, 0, ALLOW_POST_STOCK, "2 in");
	print(print_fence);
	ck_assert_ptr_nonnull(strstr(page.bytes, "They are 5 ft 2 in to\n  5 ft 6 in long, as the "
		"ground falls, 24 in of it in the ground; bought\n  1 of 5 ft 2 in, "
		"2 of 5 ft 4 in, 1 of 5 ft 6 in: saw tops off level, never the\n  buried end.\n"));
}
END_TEST

START_TEST(without_levels_nothing_is_said)
{
	draw();
	levels_fini(&garden.plot.details.levels);
	print(first_fence);
	ck_assert_uint_eq(page.length, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_fence_levels");
	TCase *paper = suite_case(suite, "paper");

	tcase_add_checked_fixture(paper, setup, teardown);
	tcase_add_test(paper, each_post_has_its_ground_gap_and_height);
	tcase_add_test(paper, gates_that_leave_too_wide_a_gap_are_named);
	tcase_add_test(paper, names_are_those_of_the_second_fence);
	tcase_add_test(paper, the_lengths_of_posts_are_told);
	tcase_add_test(paper, without_levels_nothing_is_said);
	return suite;
}
