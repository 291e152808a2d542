/* The program at a terminal: marked ground, runs and frames, the axis, faults, the plan's size;
 * each act by its key and some by name. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <string.h>

/* The colour of a fence from afar. */
enum { FENCE_FAR = 208 };

/* Marks the left bed, 5 by 3 cells from 1,1. */
/* By their names in the list of acts. */
#define AXIS "! A x i s enter "
#define GROW "! G r o w enter "
#define MARK "right down enter right x4 down x2 enter M a r k enter "

struct pressing {
	const char *keys;
	const char *shown[2]; /* what stands somewhere on the screen */
};

static const struct pressing pressings[] = {
	{ MARK, { "Marked: 5 ft x 3 ft.", "1 ft across, 1 ft down" } },
	{ MARK "}", { "Turned a quarter clockwise: 3 ft x 5 ft.", "carried 3 ft x 5 ft" } },
	{ MARK "[", { "Flipped, left for right", "carried 5 ft x 3 ft" } },
	{ MARK "]", { "Flipped, top for bottom", "carried 5 ft x 3 ft" } },
	{ MARK "delete", { "Lifted, and still carried", "b Raised bed          0.0" } },
	{ MARK "down x4 space", { "Stamped; it is still carried", "b Raised bed         60.0" } },
	{ MARK "down x4 enter enter", { "Moved; Backspace takes it back.", "Drawing" } },
	{ MARK "right x12 space", { "Stamped as far as the plan reaches", "Marked" } },
	{ MARK "right x12 enter enter", { "over the plan's edge, and lose cells", "Marked" } },
	{ MARK "escape", { "The mark is dropped", "Drawing" } },
	{ MARK "right", { "Marked: 5 ft x 3 ft, 15.0 sq ft.", "Space stamp" } },
	{ MARK "enter", { "Lift it             Delete", "Carried, 5 ft x 3 ft:" } },
	{ "right down enter right x4 down x2 ! M a r k enter",
		{ "Marked: 5 ft x 3 ft.", "Marked" } },
	{ MARK "! S t a m p enter", { "It lies there already", "Marked" } },
	{ MARK "! T u r n enter", { "Turned a quarter", "3 ft x 5 ft" } },
	{ "}", { "Nothing is marked", "Drawing" } },
	{ "'", { "1 fault, here: p Crushed stone; its image at 12 ft across, 4 ft down",
		"1 ft across, 4 ft down" } },
	{ "! N e x t space f enter", { "1 fault, here", "1 ft across, 4 ft down" } },
	{ "right x6 " AXIS "enter", { "The upright axis stands here. Now ", "not saved" } },
	{ "right x6 " AXIS "t h r o u g h enter", { "The upright axis stands here. Now ",
		"not saved" } },
	{ "right x6 " AXIS "enter " AXIS "m i d d l e enter",
		{ "Both axes stand in the plan's middle. Now 1 cell", "1 fault" } },
	{ AXIS "enter", { "cannot stand on the plan's edge: go right by a cell.", "saved" } },
	{ "down x4 " GROW "b e l o w enter C r o p enter", { "The plan is 14 ft x 5 ft now",
		"l Turf                0.0" } },
	{ "down x4 " GROW "b e l o w enter L e a v e enter", { "The plan is left as it is.",
		"l Turf               20.0" } },
	{ MARK GROW "m a r k enter C r o p enter", { "The plan is 5 ft x 3 ft now, 5 x 3 cells.",
		"Drawing" } },
	{ MARK "! C r o p space t o enter", { "15 cells of bed, 17 of",
		"Crop it all the same" } },
};

START_TEST(each_key_does_what_it_says)
{
	const struct pressing *pressing = &pressings[_i];
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, pressing->keys);
	for (int i = 0; i < 2; i++)
		if (pressing->shown[i])
			terminal_wait(at.t, pressing->shown[i]);
	table_leave(&at);
}
END_TEST

START_TEST(the_plan_shows_what_is_marked_and_what_a_stamp_would_lay)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, MARK "right right down x4");
	terminal_until(at.t, shown_on_cell(at.t, 3, 5));
	for (int y = 1; y <= 3; y++)
		for (int x = 1; x <= 5; x++)
			ck_assert_int_eq(shown_ground(at.t, x, y) == SHOWN_OUTLINE,
				x == 1 || x == 5 || y == 1 || y == 3);
	ck_assert(shown_mark(at.t, 1, 1, "\u25c6") && shown_mark(at.t, 5, 1, "\u25c6"));
	ck_assert(shown_mark(at.t, 1, 3, "\u25c6") && shown_mark(at.t, 5, 3, "\u25c6"));
	ck_assert_int_eq(shown_letter(at.t, 1, 1), 'b');
	ck_assert(shown_mark(at.t, 10, 5, "\u25c7")); /* the cursor's image */
	ck_assert_int_eq(shown_ground(at.t, 3, 5), SHOWN_CURSOR);
	for (int y = 5; y < 8; y++)
		for (int x = 3; x < 8; x++)
			ck_assert_int_eq(shown_letter(at.t, x, y), 'b');
	ck_assert_int_eq(shown_letter(at.t, 8, 5), 'l');
	ck_assert(strstr(terminal_row(at.t, 23), "} turn"));
	ck_assert(strstr(terminal_row(at.t, 23), "Esc drop"));
	table_leave(&at);
}
END_TEST

START_TEST(in_one_column_a_cell_what_is_marked_has_its_outline_and_letters_too)
{
	struct table at;

	/* 30 by 20 cells: row 0 is open, row 1 of p from column 1 */
	table_sit(&at, "rope-walk.plot", 24, 80);
	terminal_keys(at.t, "down enter right x4 up enter M a r k enter end /");
	terminal_wait(at.t, "One column a cell");
	for (int x = 0; x < 6; x++)
		for (int y = 0; y < 2; y++)
			ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP + y, PLAN_LEFT + x).ground ==
				SHOWN_OUTLINE, x < 5);
	for (int x = 1; x < 4; x++)
		ck_assert_int_eq(shown_character(at.t, 1, x), 'p');
	table_leave(&at);
}
END_TEST

/* The ring is 16 by 16 cells with fence all round, a gate at the top and one below, both from 6 to
 * 10. */
START_TEST(a_fence_round_the_plan_is_lines_on_the_rulers_and_in_the_last_cells)
{
	struct table at;

	table_sit(&at, "ring.plot", 24, 80);
	terminal_keys(at.t, "right x2 down x3");
	terminal_wait(at.t, "600 mm across, 900 mm");
	for (int x = 0; x < 32; x++) {
		struct cell above = terminal_cell(at.t, PLAN_TOP - 1, PLAN_LEFT + x);

		ck_assert_int_eq(above.underline || strcmp(above.text, "\u2582") == 0,
			(x < 12 || x >= 20) && (x / 2 != 2 || !above.underline));
		ck_assert_int_eq(above.reverse, x / 2 == 2);
	}
	for (int y = 0; y < 16; y++) {
		struct cell left = terminal_cell(at.t, PLAN_TOP + y, PLAN_LEFT - 1);

		ck_assert_str_eq(left.text, "\u2503");
		ck_assert_int_eq(left.reverse, y == 3);
	}
	for (int x = 0; x < 15; x++)
		ck_assert_int_eq(shown_mark(at.t, x, 15, "\u2582"), x < 6 || x >= 10);
	ck_assert(shown_mark(at.t, 15, 4, "\u2503"));
	ck_assert(shown_mark(at.t, 14, 4, " "));
	table_leave(&at);
}
END_TEST

/* There a character stands for a cell and the one below it; the fence is in the outermost dots. */
START_TEST(from_afar_a_fence_is_dots_along_it)
{
	struct table at;

	table_sit(&at, "ring.plot", 18, 60);
	terminal_keys(at.t, "right x3 down x5 _");
	terminal_wait(at.t, "A character stands for 1 x 2 cells");
	for (int x = 1; x < 15; x++) {
		struct cell first = terminal_cell(at.t, PLAN_TOP, PLAN_LEFT + x);
		struct cell last = terminal_cell(at.t, PLAN_TOP + 7, PLAN_LEFT + x);

		ck_assert_int_eq(first.ink == FENCE_FAR, x < 6 || x >= 10);
		ck_assert_int_eq(last.ground == FENCE_FAR || last.ink == FENCE_FAR,
			x < 6 || x >= 10);
	}
	for (int y = 0; y < 8; y++) {
		ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP + y, PLAN_LEFT).ground, FENCE_FAR);
		ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP + y, PLAN_LEFT + 15).ground,
			FENCE_FAR);
	}
	ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP + 2, PLAN_LEFT + 3).ground, SHOWN_CURSOR);
	table_leave(&at);
}
END_TEST

/* Two fences that are images of each other, ten cells from the sides of 40. */
START_TEST(fences_that_are_images_are_dots_that_are)
{
	struct text bytes = TEXT_EMPTY;
	struct table at;
	int found = 0;

	table_clear(&at, "fences.plot");
	text_add(&bytes, "parterre-plot 1\nunits imperial\ncell 1 ft\nmirror left-right\n\n"
		"lawn l \"Turf\"\n\nground 40 x 36\n");
	for (int y = 0; y < 36; y++)
		text_add(&bytes, "  llllllllllllllllllllllllllllllllllllllll\n");
	text_add(&bytes, "\nfence \"Pickets\"\n  run 10,4 10,32\n  run 30,4 30,32\n");
	table_write(&at, bytes.bytes);
	text_fini(&bytes);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "A character stands for 1 x 2 cells");
	for (int x = 0; x < 40; x++) {
		struct cell one = terminal_cell(at.t, PLAN_TOP + 9, PLAN_LEFT + x);
		struct cell image = terminal_cell(at.t, PLAN_TOP + 9, PLAN_LEFT + 39 - x);

		ck_assert_int_eq(one.ground, image.ground);
		found += one.ground == FENCE_FAR;
	}
	ck_assert_int_eq(found, 2);
	table_leave(&at);
}
END_TEST

START_TEST(a_fence_is_drawn_saved_and_taken_back)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "down enter right x3 enter end up enter");
	terminal_wait(at.t, "Along the rectangle, 4 ft");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "All round");
	terminal_keys(at.t, "B o t t o m enter");
	terminal_wait(at.t, "Pickets: 8 ft laid; Backspace takes it back.");
	ck_assert(shown_mark(at.t, 2, 1, "\u2582"));
	ck_assert(shown_mark(at.t, 11, 1, "\u2582")); /* its image */
	ck_assert(!shown_mark(at.t, 4, 1, "\u2582"));
	table_check_saved(&at, "\n  run 0,0 0,8 14,8 14,0\n  run 0,2 4,2\n  run 10,2 14,2\n  gate "
		"6,8 8,8\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back");
	terminal_until(at.t, !shown_mark(at.t, 2, 1, "\u2582"));
	table_leave(&at);
}
END_TEST

START_TEST(a_frame_and_a_run_are_asked_for_their_thickness_and_width)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "p right down enter right x4 down x3 enter F r a m e enter");
	terminal_wait(at.t, "Thickness");
	terminal_keys(at.t, "2 enter");
	terminal_wait(at.t, "A thickness of 2 ft: 2 cells.");
	terminal_wait(at.t, "b Raised bed          0.0");
	terminal_keys(at.t, "backspace l home pageup enter end enter S t r a i g h t enter");
	terminal_wait(at.t, "Width");
	terminal_keys(at.t, "2 0 space i n enter");
	terminal_wait(at.t, "A width of 2 ft, which is rounded to whole cells: 2.");
	table_check_saved(&at, "\n  llllllllllllll\n  llllllllllllll\n  .bbbbbppbbbbb.\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_stamp_is_in_the_file_as_it_is_on_the_plan)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, MARK "} right x4 space > >");
	terminal_wait(at.t, "Saved in");
	table_check_file(&at, "\n  ..............\n  .bbbbbbbbbbbb.\n  .bbbbbbbbbbbb.\n"
		"  .bbbbbbbbbbbb.\n  .ppppbbbbppp..\n  .llllbbbbllll.\n"
		"  .lllllSSlllll.\n  ..............\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back");
	table_leave(&at);
}
END_TEST

START_TEST(the_size_is_typed_side_by_side_at_60_columns_too)
{
	struct table at;

	table_sit(&at, "court.plot", 18, 60);
	terminal_keys(at.t, "! G r o w enter enter");
	terminal_wait(at.t, "[as it is]");
	terminal_keys(at.t, "2 space f t enter - 1 space c e l l enter enter enter");
	terminal_wait(at.t, "2 ft of fence would go.");
	terminal_keys(at.t, "C r o p enter");
	terminal_wait(at.t, "The plan is 16 ft x 7 ft now, 16 x 7 cells.");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back");
	terminal_wait(at.t, "court.plot, saved");
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_marks");
	TCase *keys = suite_case(suite, "keys"), *plan = suite_case(suite, "plan");

	tcase_add_loop_test(keys, each_key_does_what_it_says, 0,
		sizeof pressings / sizeof *pressings);
	tcase_add_test(plan, the_plan_shows_what_is_marked_and_what_a_stamp_would_lay);
	tcase_add_test(plan,
		in_one_column_a_cell_what_is_marked_has_its_outline_and_letters_too);
	tcase_add_test(plan, a_fence_round_the_plan_is_lines_on_the_rulers_and_in_the_last_cells);
	tcase_add_test(plan, from_afar_a_fence_is_dots_along_it);
	tcase_add_test(plan, fences_that_are_images_are_dots_that_are);
	tcase_add_test(plan, a_fence_is_drawn_saved_and_taken_back);
	tcase_add_test(plan, a_frame_and_a_run_are_asked_for_their_thickness_and_width);
	tcase_add_test(plan, a_stamp_is_in_the_file_as_it_is_on_the_plan);
	tcase_add_test(plan, the_size_is_typed_side_by_side_at_60_columns_too);
	return suite;
}
