/* The plan at a terminal while a list or a card is in front of it: moved aside so that what is
 * being done stays in view, and afterwards as it was. */
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <string.h>

#define LIST "!"
/* Leaves the panel's columns to the plan, so that short lists are in front of it too. */
#define HIDE LIST " P a n e l enter " LIST " P a n e l enter"
#define PLACE LIST " G o space t o space a enter"
/* How titles begin. */
#define ACTS "All that can be done"
#define RECTANGLE "Square bed, a r"
#define PEG_SIGN "\u25C6"

static void sit(struct table *at, int rows, int columns)
{
	table_sit(at, "great-court.plot", rows, columns);
}

/* The column that a list or a card with this title begins in. */
static int column_of(struct terminal *t, const char *title)
{
	int row = terminal_find(t, title), length = (int)strlen(title);

	ck_assert_int_ge(row, 0);
	for (int column = 0;; column++) {
		int same = 0;

		while (same < length &&
		       terminal_cell(t, row, column + same).text[0] == title[same])
			same++;
		if (same == length)
			return column;
	}
}

/* In how many characters of the plan, left of that column, a ground is seen, or a sign. */
static int count_ground(struct terminal *t, int ground, int rows, int end)
{
	int count = 0;

	for (int row = PLAN_TOP; row < rows - 2; row++)
		for (int column = PLAN_LEFT; column < end; column++)
			count += terminal_cell(t, row, column).ground == ground;
	return count;
}

static int count_sign(struct terminal *t, const char *sign, int rows, int end)
{
	int count = 0;

	for (int row = PLAN_TOP; row < rows - 2; row++)
		for (int column = PLAN_LEFT; column < end; column++)
			count += strcmp(terminal_cell(t, row, column).text, sign) == 0;
	return count;
}

static const struct in_front {
	int rows, columns;
	const char *before, *here; /* the cursor or the peg far to the right in the end */
	const char *keys, *title;
	int cursor, signs;  /* characters of the cursor's ground, signs of pegs to be seen */
	int beside;         /* columns right of the cursor that are to be seen too */
} fronts[] = {
	/* A list in front of a plan with a hidden panel: peg and cursor; or the cursor alone. */
	{ 24, 80, HIDE " 2 4 right enter 1 2 right 5 down", "36 ft across", "enter", RECTANGLE, 2,
		1, 0 },
	{ 24, 80, HIDE " 3 6 right enter 1 2 left 5 down", "24 ft across", "enter", RECTANGLE, 2, 1,
		0 },
	{ 24, 80, HIDE " enter 3 6 right 1 2 down", "36 ft across", "enter", RECTANGLE, 2, 0, 0 },
	/* With a bend, which is the farthest. */
	{ 24, 80, HIDE " 2 4 right enter 1 2 right 7 down enter B e n d enter 7 left "
		"5 right 5 down",
		"34 ft across", "enter", RECTANGLE, 2, 2, 0 },
	/* Marked: all of the place where a stamp would lie, of 12 x 2 cells from the cursor on. */
	{ 24, 80, HIDE " enter 1 2 right left down enter M a r k enter 7 right 5 down "
		"1 5 right",
		"22 ft across", LIST, ACTS, 2, 0, 22 },
	/* The list of acts and a card, also where the ground ends. */
	{ 24, 80, "2 4 right 1 2 down", "24 ft across", LIST, ACTS, 2, 0, 0 },
	{ 24, 80, "2 4 right 1 2 down", "24 ft across", PLACE, "Go to a place", 2, 0, 0 },
	{ 24, 80, "end pagedown", "199 ft across", LIST, ACTS, 2, 0, 0 },
	{ 18, 60, "1 2 right 1 2 down", "12 ft across", LIST, ACTS, 2, 0, 0 },
	{ 18, 60, "end pagedown", "199 ft across", PLACE, "Go to a place", 2, 0, 0 },
	{ 40, 120, HIDE " 4 8 right 2 4 down", "48 ft across", LIST, ACTS, 2, 0, 0 },
	{ 60, 200, HIDE " end pagedown", "199 ft across", LIST, ACTS, 2, 0, 0 },
	/* In one column a cell, from afar, and nearest. */
	{ 24, 80, LIST " F a r t h e r enter end down", "199 ft across", LIST, ACTS, 1, 0, 0 },
	{ 24, 80, LIST " O v e r v i e w enter end", "199 ft across", LIST, ACTS, 1, 0, 0 },
	{ 24, 80, LIST " N e a r e r enter 1 0 right", "10 ft across", LIST, ACTS, 8, 0, 0 },
};

enum { FRONTS = sizeof fronts / sizeof *fronts };

START_TEST(what_is_done_stays_in_view_and_the_plan_is_then_as_it_was)
{
	const struct in_front *front = &fronts[_i];
	struct text before;
	struct table at;
	int end;

	sit(&at, front->rows, front->columns);
	terminal_keys(at.t, front->before);
	terminal_wait(at.t, front->here);
	shown_wait_counted(at.t);
	before = shown_picture(at.t, 0, front->rows, front->columns);
	terminal_keys(at.t, front->keys);
	terminal_wait(at.t, front->title);
	terminal_settle(at.t);
	end = column_of(at.t, front->title) - 2;
	ck_assert_int_eq(count_ground(at.t, SHOWN_CURSOR, front->rows, end - front->beside),
		front->cursor);
	ck_assert_int_eq(count_sign(at.t, PEG_SIGN, front->rows, end), front->signs);
	terminal_keys(at.t, "escape");
	terminal_until(at.t, shown_is(at.t, &before, 0, front->rows, front->columns));
	text_fini(&before);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("aside");
	TCase *fronts_case = suite_case(suite, "fronts");

	tcase_add_loop_test(fronts_case,
		what_is_done_stays_in_view_and_the_plan_is_then_as_it_was, 0, FRONTS);
	return suite;
}
