#include "support/runner.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/plots.h"
#include "report/text/print.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
	garden.arena = ARENA_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(void)
{
	struct text_sink out = text_sink(&page);
	struct arena words = ARENA_EMPTY;
	const struct report report = { .out = &out.sink, .words = &words, .plot = &garden.plot,
		.takeoff = &garden.takeoff, .units = plot_units(&garden.plot) };

	garden_count(&garden);
	print_fence(&report);
	arena_clear(&words);
}

/* Pickets round three sides and across, with two gates; boards that stand alone. */
static void draw(void)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "0,0 0,24 40,24 40,0");
	fences_run(&garden.plot, "0,10 16,10");
	fences_gate(&garden.plot, "10,24 14,24");
	fences_gate(&garden.plot, "40,10 40,16");
	fences_set(&garden.plot, FENCE_LEAF_FROM, "offcut");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "5,5 12,5");
	fences_set(&garden.plot, FENCE_HEIGHT, "6 ft");
}

START_TEST(legs_gates_panels_and_posts_print_as_they_did)
{
	draw();
	print();
	golden_check("fence.txt", page.bytes);
}
END_TEST

START_TEST(a_metric_plot_has_them_in_metric)
{
	draw();
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	print();
	golden_check("fence-metric.txt", page.bytes);
}
END_TEST

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

/* A leg of 20 ft that the mirror turns onto itself, legs of 21 ft on both sides of a gate. */
START_TEST(panels_stand_in_the_order_of_their_leg)
{
	fences_ground(&garden.plot, 48, 24);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&garden.plot, "14,10 34,10");
	fences_run(&garden.plot, "1,20 47,20");
	fences_gate(&garden.plot, "22,20 26,20");
	print();
	has("20 ft  1 whole, then sawn to 44 3/8 in, then 1 whole\n");
	has("21 ft  2 whole, then sawn to 56 3/8 in\n");
	has("21 ft  sawn to 56 3/8 in, then 2 whole\n");
}
END_TEST

START_TEST(posts_of_gates_of_another_size_are_told_with_their_holes)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,10 22,10");
	fences_gate(&garden.plot, "10,10 14,10");
	print();
	ck_assert_ptr_null(strstr(page.bytes, "those at gates"));
	ck_assert_ptr_null(strstr(page.bytes, "Holes at gates"));
	text_clear(&page);
	fences_set(&garden.plot, FENCE_GATE_POST, "5 1/2 in");
	print();
	has("4 posts 3 1/2 in square, those at gates 5 1/2 in: 2 at ends, 2 at gates.");
	has("Holes 10 1/2 in across and 30 in deep");
	has("Holes at gates 16 1/2 in across and 30 in deep");
}
END_TEST

START_TEST(without_a_fence_nothing_is_printed)
{
	fences_ground(&garden.plot, 4, 4);
	print();
	ck_assert_str_eq(page.bytes, "");
}
END_TEST

START_TEST(where_nothing_fits_between_posts_it_says_so)
{
	fences_ground(&garden.plot, 40, 24);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	fences_run(&garden.plot, "10,10 11,10 11,20");
	fences_gate(&garden.plot, "11,10 11,11");
	print();
	ck_assert_ptr_nonnull(strstr(page.bytes, "1 right  2 ft 6 in"));
	ck_assert_ptr_nonnull(strstr(page.bytes, "no room for any"));
	ck_assert_ptr_nonnull(strstr(strstr(page.bytes, "Clear"), "no room for any"));
}
END_TEST

START_TEST(lines_stay_within_80_columns_whatever_a_fence_is_called)
{
	char name[NAME_MOST + 1];

	memset(name, 'W', NAME_MOST);
	name[NAME_MOST] = '\0';
	draw();
	free(garden.plot.details.fences[0].name);
	garden.plot.details.fences[0].name = memory_string(name);
	print();
	for (const char *line = page.bytes; line; line = strchr(line, '\n')) {
		line += *line == '\n';
		ck_assert_msg(strcspn(line, "\n") <= 80, "%.100s", line);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_fence");
	TCase *section = suite_case(suite, "section");

	tcase_add_checked_fixture(section, setup, teardown);
	tcase_add_test(section, legs_gates_panels_and_posts_print_as_they_did);
	tcase_add_test(section, a_metric_plot_has_them_in_metric);
	tcase_add_test(section, panels_stand_in_the_order_of_their_leg);
	tcase_add_test(section, posts_of_gates_of_another_size_are_told_with_their_holes);
	tcase_add_test(section, without_a_fence_nothing_is_printed);
	tcase_add_test(section, where_nothing_fits_between_posts_it_says_so);
	tcase_add_test(section, lines_stay_within_80_columns_whatever_a_fence_is_called);
	return suite;
}
