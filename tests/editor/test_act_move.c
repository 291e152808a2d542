/* Arrows, with a number before them and without, the step, and on to where the ground changes. */
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

#define ROWS (const char *[])

static struct desk *b;

static void start(void)
{
	b = desk_new(ROWS {
		"pppbbbpp....",
		"p.......p...",
		"p...........",
		"l...........", NULL });
	desk_refresh(b);
}

static void end(void)
{
	desk_free(b);
}

static void check_cursor(int x, int y)
{
	ck_assert_int_eq(b->editor.cursor.x, x);
	ck_assert_int_eq(b->editor.cursor.y, y);
}

/* ---- Arrows ---------------------------------------------------------------------------------- */

START_TEST(an_arrow_goes_one_step_and_stops_at_the_edges)
{
	desk_press(b, PRESS_RIGHT);
	check_cursor(1, 0);
	desk_press(b, PRESS_DOWN);
	check_cursor(1, 1);
	desk_press(b, PRESS_LEFT);
	desk_press(b, PRESS_LEFT);
	check_cursor(0, 1);
	desk_press(b, PRESS_UP);
	desk_press(b, PRESS_UP);
	check_cursor(0, 0);
	ck_assert(editor_is_saved(&b->editor));
}
END_TEST

START_TEST(digits_gather_to_the_steps_of_the_next_arrow_alone)
{
	desk_type(b, "1");
	desk_says_whole(b, "An arrow goes 1 step from here: 1 ft.");
	desk_type(b, "0");
	desk_says_whole(b, "An arrow goes 10 steps from here: 10 ft.");
	desk_press(b, PRESS_RIGHT);
	check_cursor(10, 0);
	desk_press(b, PRESS_LEFT);
	check_cursor(9, 0);
	desk_type(b, "2048");
	desk_press(b, PRESS_DOWN);
	check_cursor(9, 3);
}
END_TEST

START_TEST(what_is_no_move_drops_the_number)
{
	desk_type(b, "3.");
	desk_press(b, PRESS_RIGHT);
	check_cursor(1, 0);
	desk_type(b, "3");
	desk_do(b, ACT_MEASURE);
	ck_assert_int_eq(b->editor.steps, 0);
}
END_TEST

START_TEST(backspace_takes_back_a_digit_and_esc_the_number)
{
	desk_type(b, "l 12");
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_RIGHT);
	check_cursor(1, 0);
	ck_assert(!editor_is_saved(&b->editor)); /* the stroke before stays */
	desk_press(b, PRESS_ENTER);
	desk_type(b, "12");
	desk_press(b, PRESS_ESCAPE);
	ck_assert_int_eq(b->editor.steps, 0);
	ck_assert(b->editor.is_pegged);
	desk_press(b, PRESS_ESCAPE);
	ck_assert(!b->editor.is_pegged);
}
END_TEST

START_TEST(no_number_goes_beyond_the_largest_plan_or_begins_with_nought)
{
	desk_type(b, "0");
	desk_says_whole(b, "A number of steps begins with 1 to 9.");
	ck_assert_int_eq(b->editor.steps, 0);
	desk_type(b, "2048");
	ck_assert_int_eq(b->editor.steps, 2048);
	desk_type(b, "0");
	desk_says_whole(b, "No move goes on for more than 2048 steps.");
	ck_assert_int_eq(b->editor.steps, 2048);
	desk_press(b, PRESS_ESCAPE);
	desk_type(b, "2049");
	ck_assert_int_eq(b->editor.steps, 204);
}
END_TEST

START_TEST(a_trail_is_laid_on_the_way)
{
	desk_press(b, PRESS_DOWN);
	desk_type(b, "b=4");
	desk_press(b, PRESS_RIGHT);
	desk_check(b, ROWS { "pppbbbpp....", "bbbbb...p...", "p...........", "l...........",
		NULL });
}
END_TEST

/* ---- The step -------------------------------------------------------------------------------- */

START_TEST(the_step_lasts_and_is_what_a_number_counts)
{
	static const char *const answers[] = { "Each step: 2 ft", NULL };

	desk_answer(b, answers);
	desk_do(b, ACT_STEP);
	desk_answer(b, NULL);
	desk_says_whole(b, "A step is 2 ft now.");
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_RIGHT);
	check_cursor(4, 0);
	desk_type(b, "3");
	desk_says_whole(b, "An arrow goes 3 steps from here: 6 ft.");
	desk_press(b, PRESS_RIGHT);
	check_cursor(10, 0);
	desk_press(b, PRESS_LEFT);
	check_cursor(8, 0);
}
END_TEST

/* ---- On to other ground ---------------------------------------------------------------------- */

START_TEST(on_goes_to_the_first_cell_of_other_ground)
{
	static const int across[] = { 3, 6, 8, 11, 11 };

	for (size_t i = 0; i < sizeof across / sizeof *across; i++) {
		desk_press(b, PRESS_ON_RIGHT);
		check_cursor(across[i], 0);
	}
	desk_press(b, PRESS_ON_LEFT);
	check_cursor(7, 0);
	desk_press(b, PRESS_ON_DOWN);
	check_cursor(7, 1);
	desk_press(b, PRESS_ON_UP);
	check_cursor(7, 0);
	desk_press(b, PRESS_HOME);
	desk_press(b, PRESS_ON_DOWN);
	check_cursor(0, 3);
}
END_TEST

START_TEST(a_number_goes_on_so_many_times)
{
	desk_type(b, "2");
	desk_press(b, PRESS_ON_RIGHT);
	check_cursor(6, 0);
	desk_press(b, PRESS_ON_RIGHT);
	check_cursor(8, 0);
}
END_TEST

START_TEST(the_card_of_a_place_begins_with_that_of_the_cursor)
{
	static const char *const answers[] = { "Down from the top: 1 ft", NULL };

	b->editor.cursor = (struct place){ 3, 2 };
	desk_answer(b, answers);
	desk_do(b, ACT_PLACE);
	ck_assert_str_eq(b->offered, "Across from the left: 3 ft\nDown from the top: 2 ft\n");
	check_cursor(3, 1);
	desk_says_whole(b, "3 ft across, 1 ft down.");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_move");
	TCase *arrows = suite_case(suite, "arrows"), *on = suite_case(suite, "on");

	tcase_add_checked_fixture(arrows, start, end);
	tcase_add_test(arrows, an_arrow_goes_one_step_and_stops_at_the_edges);
	tcase_add_test(arrows, the_card_of_a_place_begins_with_that_of_the_cursor);
	tcase_add_test(arrows, digits_gather_to_the_steps_of_the_next_arrow_alone);
	tcase_add_test(arrows, what_is_no_move_drops_the_number);
	tcase_add_test(arrows, backspace_takes_back_a_digit_and_esc_the_number);
	tcase_add_test(arrows, no_number_goes_beyond_the_largest_plan_or_begins_with_nought);
	tcase_add_test(arrows, a_trail_is_laid_on_the_way);
	tcase_add_test(arrows, the_step_lasts_and_is_what_a_number_counts);
	tcase_add_checked_fixture(on, start, end);
	tcase_add_test(on, on_goes_to_the_first_cell_of_other_ground);
	tcase_add_test(on, a_number_goes_on_so_many_times);
	return suite;
}
