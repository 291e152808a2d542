/* The lie of the ground, entered drop by drop without a terminal, and what the finished ground is
 * to be. */
#include "support/desk.h"
#include "support/plot_check.h"
#include "support/runner.h"

#include "editor/here.h"

#include <string.h>

#define ROWS (const char *[])
#define IN NM_PER_INCH

/* 7 by 5 cells of a foot. */
static struct desk *sit(void)
{
	return desk_new(ROWS { "bp.....", ".......", ".......", ".......", ".......", NULL });
}

static const struct levels *levels(const struct desk *b)
{
	return &b->editor.plot->details.levels;
}

static void drops_are(const struct desk *b, const char *inches)
{
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < levels(b)->columns * levels(b)->rows; i++)
		text_print(&text, "%s%s%g", i == 0 ? "" : i % levels(b)->columns ? " " : "; ", "",
			(double)levels(b)->drops[i] / (double)IN);
	ck_assert_str_eq(text.bytes, inches);
	text_fini(&text);
}

/* Every drop of the six of a step of 5 ft. */
static void measure(struct desk *b)
{
	desk_answer(b, ROWS { "How far apart: 5 ft", "0 in across, 0 in down: 1",
		"5 ft across, 0 in down: 2 1/2", "10 ft across, 0 in down: 3 in",
		"0 in across, 5 ft down: .5", "5 ft across, 5 ft down: 1' 1",
		"10 ft across, 5 ft down: ", NULL });
	desk_do(b, ACT_LEVELS);
	desk_answered(b);
}

START_TEST(drops_are_entered_one_after_the_other_each_a_step_of_its_own)
{
	struct desk *b = sit();
	int steps;

	measure(b);
	ck_assert_int_eq(levels(b)->step, 5 * NM_PER_FOOT);
	drops_are(b, "1 2.5 3; 0.5 13 0");
	desk_says_whole(b, "6 drops, from 0 in to 13 in below the string; 1 of them 0.");
	ck_assert_int_eq(b->editor.layer, LAYER_LEVELS);
	plot_check(b->editor.plot);
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Measure levels; 5 more can be.");
	drops_are(b, "1 2.5 3; 0.5 0 0");
	for (steps = 0; editor_take_back(&b->editor); steps++)
		;
	ck_assert_int_eq(steps, 5); /* the last drop was 0 all along */
	ck_assert_int_eq(levels(b)->step, 0);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(where_it_is_left_what_was_entered_stays_and_it_goes_on_at_the_cursor)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "How far apart: 5", "0 in across, 0 in down: 4", "", NULL });
	desk_do(b, ACT_LEVELS);
	drops_are(b, "4 0 0; 0 0 0");
	ck_assert_int_eq(b->editor.cursor.x, 5);
	b->editor.cursor = (struct place){ 1, 4 };
	desk_answer(b, ROWS { "0 in across, 5 ft down: 11 ft", "5 ft across, 5 ft down: 40 ft", "",
		NULL });
	desk_do(b, ACT_LEVELS);
	ck_assert_msg(strstr(b->fault, "found 40 ft, expected"), "%s", b->fault);
	drops_are(b, "4 0 0; 132 0 0");
	desk_free(b);
}
END_TEST

START_TEST(a_step_that_makes_too_many_drops_is_refused_where_it_is_typed)
{
	struct desk *b = sit();
	char row[231];
	const char *rows[] = { row, NULL };

	desk_answer(b, ROWS { "How far apart: 1/4 in", "", NULL });
	desk_do(b, ACT_LEVELS);
	ck_assert_msg(strstr(b->fault, "found 1/4 in"), "%s", b->fault);
	ck_assert_int_eq(levels(b)->step, 0);
	desk_free(b);
	memset(row, '.', sizeof row);
	row[sizeof row - 1] = '\0';
	b = desk_new(rows);
	desk_answer(b, ROWS { "How far apart: 1 ft", "How far apart: 14 in", "", NULL });
	desk_do(b, ACT_LEVELS);
	ck_assert_int_eq(levels(b)->columns, 199); /* 230 ft are 197.1 steps */
	desk_free(b);
	b = desk_new(rows);
	desk_answer(b, ROWS { "How far apart: 1 ft", "", NULL });
	desk_do(b, ACT_LEVELS);
	ck_assert_str_eq(b->fault, "How far apart: there would be more than 200 drops in a row");
	desk_free(b);
}
END_TEST

START_TEST(another_step_measures_the_same_ground)
{
	struct desk *b = sit();

	measure(b);
	desk_answer(b, ROWS { "Levels, 5 ft apart", "How far apart: 2 ft 6 in",
		"Levels, 30 in apart", "", NULL });
	desk_type(b, "#");
	ck_assert_int_eq(levels(b)->columns, 4);
	ck_assert_int_eq(levels(b)->rows, 3);
	/* between two drops half of each; between four a quarter: bilinear */
	drops_are(b, "1 1.75 2.5 2.75; 0.75 4.25 7.75 4.625; 0.5 6.75 13 6.5");
	plot_check(b->editor.plot);
	desk_type(b, "#");
	desk_press(b, PRESS_BACKSPACE);
	drops_are(b, "1 2.5 3; 0.5 13 0");
	desk_free(b);
}
END_TEST

START_TEST(the_cell_under_the_cursor_says_how_deep_it_lies)
{
	struct desk *b = sit();
	struct text text = TEXT_EMPTY;

	desk_answer(b, ROWS { "How far apart: 1", "0 in across, 0 in down: 1",
		"1 ft across, 0 in down: 2", "", NULL });
	desk_do(b, ACT_LEVELS);
	b->editor.cursor = (struct place){ 0, 0 };
	desk_refresh(b);
	here_words(&b->editor, &text);
	ck_assert_msg(strstr(text.bytes, "Ground 3/4\302\240in below the string\n"), "%s",
		text.bytes);
	ck_assert_ptr_null(strstr(text.bytes, "Finished"));
	text_clear(&text);
	/* 2 % of 4 ft to the east is 0.96 in, and of the half cell to its middle 0.12 in */
	desk_answer(b, ROWS { "Across from the left: 0; Level there: 1; Fall: 2; "
		"It falls: towards; Bearing: 90", NULL });
	desk_do(b, ACT_FINISH);
	b->editor.cursor = (struct place){ 4, 0 };
	desk_refresh(b);
	here_words(&b->editor, &text);
	ck_assert_msg(strstr(text.bytes, "Finished ground 2\302\2401/16\302\240in below the "
		"string\n"), "%s", text.bytes);
	text_fini(&text);
	desk_free(b);
}
END_TEST

START_TEST(levels_are_shown_and_hidden_where_there_are_any)
{
	struct desk *b = sit();

	desk_do(b, ACT_SHOW_LEVELS);
	desk_says_whole(b, "No levels are measured yet: pick Measure levels from !.");
	measure(b);
	desk_do(b, ACT_SHOW_LEVELS);
	ck_assert_int_eq(b->editor.layer, LAYER_NONE);
	desk_answer(b, ROWS { "Show levels: off", NULL });
	desk_type(b, "!");
	ck_assert_int_eq(b->editor.layer, LAYER_LEVELS);
	desk_says_whole(b, "6 drops, from 0 in to 13 in below the string; 1 of them 0.");
	desk_free(b);
}
END_TEST

/* ---- The finished ground --------------------------------------------------------------------- */

static const struct {
	const char *answer;
	struct finish finish;
} finishes[] = {
	{ "Level there: 1 1/2", { .has_level = true, .at = { 2, 1 }, .drop = 3 * IN / 2 } },
	{ "Across from the left: 7 ft; Level there: 0 in", { .has_level = true, .at = { 7, 1 } } },
	{ "Fall: 1.5", { .has_fall = true, .is_away = true, .percent = 1500000 } },
	{ "Fall: 2 %; It falls: towards; Bearing: 90",
		{ .has_fall = true, .percent = 2000000, .bearing = 90000000 } },
	{ "Level there: 2; Fall: 1; It falls: towards; Bearing: 12.5", { .has_level = true,
		.at = { 2, 1 }, .drop = 2 * IN, .has_fall = true, .percent = 1000000,
		.bearing = 12500000 } },
};

START_TEST(the_finished_ground_is_set_changed_and_taken_away)
{
	struct desk *b = sit();

	b->editor.cursor = (struct place){ 2, 1 };
	desk_answer(b, ROWS { finishes[_i].answer, "The finished ground", "Fall: ; Level there: ",
		NULL });
	desk_do(b, ACT_FINISH);
	ck_assert_str_eq(b->offered, "Across from the left: 2 ft\nDown from the top: 1 ft\n"
		"Level there: \nFall: \nIt falls: away\nBearing: \n");
	ck_assert(finish_equal(&b->editor.plot->details.finish, &finishes[_i].finish));
	desk_says_whole(b, "The finished ground is set; Backspace takes it back.");
	plot_check(b->editor.plot);
	desk_type(b, "#");
	ck_assert(!b->editor.plot->details.finish.has_level);
	ck_assert(!b->editor.plot->details.finish.has_fall);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(finish_equal(&b->editor.plot->details.finish, &finishes[_i].finish));
	desk_free(b);
}
END_TEST

START_TEST(a_fall_towards_a_bearing_needs_one_and_a_card_taken_as_it_is_changes_nothing)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Fall: 3; It falls: towards", "Bearing: 360", "Bearing: 359.5",
		"Fall: 3 %", NULL });
	desk_do(b, ACT_FINISH);
	ck_assert_int_eq(b->editor.plot->details.finish.bearing, 359500000);
	desk_do(b, ACT_FINISH);
	desk_says_whole(b, "Nothing was changed.");
	ck_assert_str_eq(b->offered, "Across from the left: 0 in\nDown from the top: 0 in\n"
		"Level there: \nFall: 3 %\nIt falls: towards\nBearing: 359.5\n");
	desk_free(b);
}
END_TEST

START_TEST(levels_and_the_finished_ground_are_taken_away)
{
	struct desk *b = sit();

	measure(b);
	desk_answer(b, ROWS { "Fall: 1", "Levels, 5 ft apart", "The finished ground", NULL });
	desk_do(b, ACT_FINISH);
	desk_do(b, ACT_AROUND_OUT);
	desk_says_whole(b, "Removed: Levels, 5 ft apart; Backspace takes it back.");
	ck_assert_int_eq(levels(b)->step, 0);
	desk_do(b, ACT_AROUND_OUT);
	ck_assert(!b->editor.plot->details.finish.has_fall);
	desk_do(b, ACT_AROUND_OUT);
	desk_says_whole(b, "There is nothing around the plot yet.");
	plot_check(b->editor.plot);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_levels");
	TCase *measured = suite_case(suite, "measured"), *finished = suite_case(suite, "finished");

	tcase_add_test(measured, drops_are_entered_one_after_the_other_each_a_step_of_its_own);
	tcase_add_test(measured,
		where_it_is_left_what_was_entered_stays_and_it_goes_on_at_the_cursor);
	tcase_add_test(measured, a_step_that_makes_too_many_drops_is_refused_where_it_is_typed);
	tcase_add_test(measured, another_step_measures_the_same_ground);
	tcase_add_test(measured, the_cell_under_the_cursor_says_how_deep_it_lies);
	tcase_add_test(measured, levels_are_shown_and_hidden_where_there_are_any);
	tcase_add_loop_test(finished, the_finished_ground_is_set_changed_and_taken_away, 0,
		sizeof finishes / sizeof *finishes);
	tcase_add_test(finished,
		a_fall_towards_a_bearing_needs_one_and_a_card_taken_as_it_is_changes_nothing);
	tcase_add_test(finished, levels_and_the_finished_ground_are_taken_away);
	return suite;
}
