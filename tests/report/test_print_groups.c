/* Beds that are alike, few and many. */
#include "support/garden.h"
#include "support/runner.h"
#include "support/shapes.h"
#include "report/text/print.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(void (*draw)(struct plot *plot, int size), int size)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	draw(&garden.plot, size);
	garden_count(&garden);
	garden_print(&garden, &page, "many.plot", PARTS_ALL);
	/* Where lines are broken does not matter here. */
	for (char *c = page.bytes; *c; c++)
		if (strncmp(c, "\n  ", 3) == 0)
			memmove(c, c + 2, strlen(c + 1));
	for (char *c = page.bytes; *c; c++)
		*c = *c == '\n' ? ' ' : *c;
}

static void shows(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "\"%s\" is not there", words);
}

static void shows_not(const char *words)
{
	ck_assert_msg(!strstr(page.bytes, words), "\"%s\" is there", words);
}

START_TEST(up_to_100_beds_alike_have_one_row_and_are_named_with_their_places)
{
	print(shape_small_beds, 256);
	ck_assert_int_eq(garden.takeoff.walls.count, NAMED_MOST);
	shows("B1   b  0 in, 0 in");
	shows(" As B1: B2 at 24 ft, 0 in; B3 at ");
	shows("; B99 at 192 ft, 216 ft; B100 at 216 ft, 216 ft. ");
	shows_not("B2   b");
	shows("B98, B99 and B100: 100 beds alike, of each: Soil");
	shows_not("stands for");
}
END_TEST

START_TEST(more_beds_alike_stand_in_the_text_once_with_their_count_and_names)
{
	print(shape_small_beds, 280);
	ck_assert_int_eq(garden.takeoff.walls.count, 121);
	shows("B1   b  0 in, 0 in");
	shows("B1 stands for 121 beds alike in all but their place: B1 to B121. ");
	shows("B1 to B121: 121 beds, alike piece for piece ");
	shows("B1 to B121: 121 beds alike, of each: Soil");
	shows_not("B2   b");
	shows_not("B121 b");
}
END_TEST

START_TEST(of_many_ranges_the_first_are_named)
{
	print(shape_checkerboard, 20);
	shows("B1 stands for 200 beds alike in all but their place: B1, B3, B5, B7, B9, B11, B13, "
		"B15, B17, B19 and 190 more. ");
	shows("B2 stands for 200 beds alike in all but their place: B2, B4,");
	shows("B1 to B400: not laid out, about 3 blocks each");
}
END_TEST

START_TEST(beds_of_one_size_and_another_shape_keep_rows_of_their_own)
{
	print(shape_small_beds, 280);
	*ground_at(&garden.plot.ground, 24, 0) = OPEN_GROUND;
	*ground_at(&garden.plot.ground, 25, 0) = OPEN_GROUND;
	*ground_at(&garden.plot.ground, 48, 0) = OPEN_GROUND;
	*ground_at(&garden.plot.ground, 48, 1) = OPEN_GROUND;
	garden_count(&garden);
	text_clear(&page);
	garden_print(&garden, &page, "many.plot", PARTS_ALL);
	shows("B1   b  0 in, 0 in");
	shows("B2   b  26 ft, 0 in");
	shows("B3   b  49 ft, 0 in");
	shows("B1 stands for 119 beds alike in all but their place: B1 and B4 to B121.\n");
}
END_TEST

/* Lawn touches one of them, whose wall stands 3 in deep for it and not 2. */
START_TEST(beds_of_one_shape_that_stand_deeper_keep_rows_of_their_own)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	shape_small_beds(&garden.plot, 280);
	details_add_entry(&garden.plot.details, CLASS_LAWN, 'l', memory_string("Lawn"));
	*ground_at(&garden.plot.ground, 24 + 16, 0) = 'l';
	garden_count(&garden);
	garden_print(&garden, &page, "many.plot", PARTS_ALL);
	shows("B1   b  0 in, 0 in");
	shows("  16 in       2 in  97.8 sq ft  12 1/2 in\n");
	shows("B2   b  24 ft, 0 in");
	shows("  15 in       3 in  97.8 sq ft  11 1/2 in\n");
	shows("B1 stands for 120 beds alike in all but their place: B1 and B3 to B121.\n");
	shows_not("B3   b");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_groups");
	TCase *alike = suite_case(suite, "alike");

	tcase_add_checked_fixture(alike, NULL, teardown);
	tcase_add_test(alike, up_to_100_beds_alike_have_one_row_and_are_named_with_their_places);
	tcase_add_test(alike, more_beds_alike_stand_in_the_text_once_with_their_count_and_names);
	tcase_add_test(alike, of_many_ranges_the_first_are_named);
	tcase_add_test(alike, beds_of_one_size_and_another_shape_keep_rows_of_their_own);
	tcase_add_test(alike, beds_of_one_shape_that_stand_deeper_keep_rows_of_their_own);
	return suite;
}
