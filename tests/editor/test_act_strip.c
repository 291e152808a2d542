/* Strips put in and taken out at the cursor, without a terminal. */

#include "support/desk.h"
#include "support/fences.h"
#include "support/runner.h"

#include <string.h>

#define ROWS (const char *[])

static const char *const court[] = { "bbpbb", "bbpbb", "ppppp", NULL };

/* On the court with the cursor at x, y. */
static struct desk *sit(int x, int y, const char *mirror)
{
	struct desk *b = desk_new(court);

	b->editor.cursor = (struct place){ x, y };
	desk_type(b, mirror);
	return b;
}

START_TEST(what_is_offered_first_makes_the_path_under_the_cursor_wider)
{
	struct desk *b = sit(2, 0, "");

	desk_answer(b, ROWS { "Columns here", "Width: 2 ft", "Rows here", "Depth: 1 cell", NULL });
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_str_eq(b->first, "Columns here");
	ck_assert_str_eq(b->offered, "Width: 1 ft\n");
	desk_check(b, ROWS { "bbpppbb", "bbpppbb", "ppppppp", NULL });
	desk_says_whole(b, "The plan is 7 ft x 3 ft now, 7 x 3 cells.");
	b->editor.cursor = (struct place){ 0, 2 };
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_str_eq(b->first, "Rows here");
	desk_check(b, ROWS { "bbpppbb", "bbpppbb", "ppppppp", "ppppppp", NULL });
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, court);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_path_on_the_axis_gets_wider_by_so_much_in_all)
{
	struct desk *b = sit(2, 0, "|");

	desk_answer(b, ROWS { "Columns on the axis", "Width: 1 ft", "Columns on the axis",
		"Width: 1 ft", "Columns here, and their image", "Width: 1 ft", NULL });
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_str_eq(b->first, "Columns on the axis");
	desk_check(b, ROWS { "bbppbb", "bbppbb", "pppppp", NULL });
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_str_eq(b->first, "Columns on the axis");
	desk_check(b, ROWS { "bbpppbb", "bbpppbb", "ppppppp", NULL });
	b->editor.cursor = (struct place){ 6, 0 };
	desk_do(b, ACT_STRIP_TAKE);
	ck_assert_str_eq(b->first, "Columns here, and their image");
	desk_check(b, ROWS { "bpppb", "bpppb", "ppppp", NULL });
	ck_assert_int_eq(b->editor.cursor.x, 4);
	ck_assert_int_eq(editor_faults(&b->editor), 0);
	desk_free(b);
}
END_TEST

START_TEST(what_cannot_be_is_refused_in_the_card)
{
	struct desk *b = sit(4, 0, "");

	desk_answer(b, ROWS { "Columns here", "Width: 2044 ft", "Width: 2 cells", "", NULL });
	desk_do(b, ACT_STRIP_TAKE);
	desk_asked_whole(b, "Take out columns");
	ck_assert_str_eq(b->fault, "There are not 2 columns to be taken out here.");
	desk_answer(b, ROWS { "Columns here", "Width: 2044 ft", "", NULL });
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_str_eq(b->fault, "The plan would have 2049 columns; it has at most 2048.");
	desk_check(b, court);
	desk_free(b);
}
END_TEST

START_TEST(what_happens_besides_is_said)
{
	struct desk *b = sit(0, 0, "");

	fence_from(editor_edit(&b->editor), "0,0 2,0", "0,0 2,0");
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Columns here", "Width: 15 in", NULL });
	desk_do(b, ACT_STRIP_TAKE);
	desk_says_whole(b, "The plan is 4 ft x 3 ft now, 4 x 3 cells. Rounded to whole cells: 1. "
		"1 gate had no room any more and went.");
	desk_check(b, ROWS { "bpbb", "bpbb", "pppp", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_half_turn_between_cells_takes_an_even_number_on_its_axis)
{
	struct desk *b = desk_new(ROWS { "bppb", NULL });

	b->editor.cursor = (struct place){ 1, 0 };
	desk_type(b, "%");
	desk_answer(b, ROWS { "Columns on the axis", "Width: 1 ft", "", "Columns on the axis",
		"Width: 2 ft", NULL });
	desk_do(b, ACT_STRIP_PUT);
	ck_assert_ptr_nonnull(strstr(b->fault, "an even number of cells"));
	desk_do(b, ACT_STRIP_PUT);
	desk_check(b, ROWS { "bppppb", NULL });
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_strip");
	TCase *acts = suite_case(suite, "acts");

	tcase_add_test(acts, what_is_offered_first_makes_the_path_under_the_cursor_wider);
	tcase_add_test(acts, a_path_on_the_axis_gets_wider_by_so_much_in_all);
	tcase_add_test(acts, what_cannot_be_is_refused_in_the_card);
	tcase_add_test(acts, what_happens_besides_is_said);
	tcase_add_test(acts, a_half_turn_between_cells_takes_an_even_number_on_its_axis);
	return suite;
}
