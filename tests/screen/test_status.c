/* The first row: what is said of snags beside the mirror, in the room there is; the last: how far
 * arrows go. */
#include "support/runner.h"
#include "support/shapes.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct table at;

static void teardown(void)
{
	table_leave(&at);
}

static bool says(const char *words)
{
	return strstr(terminal_row(at.t, 0), words) != NULL;
}

/* A plot of 9 by 3 cells with such ground, and a fixture S that is too high. */
static void sit(const char *ground)
{
	struct text plot = TEXT_EMPTY;

	text_print(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nfixture S \"Pillar\"\n"
		"  height 9 ft\n\nground 9 x 3\n  .........\n  .........\n  %s\n", ground);
	table_clear(&at, "pillars.plot");
	table_write(&at, plot.bytes);
	table_start(&at, &(struct launch){ .rows = 50, .columns = 80 });
	text_fini(&plot);
}

/* ---- How many -------------------------------------------------------------------------------- */

/* At the right of a line of the page. */
static int count_of(const char *label)
{
	int row = terminal_find(at.t, label);

	ck_assert_int_ge(row, 0);
	return atoi(strstr(terminal_row(at.t, row), label) + strlen(label));
}

START_TEST(as_many_snags_as_the_page_has_stand_beside_the_mirror)
{
	sit("S.S.S....");
	terminal_until(at.t, says(" 6 snags   mirror off"));
	page_turn_to(at.t, "Snags");
	terminal_wait(at.t, "Fixture no path");
	ck_assert_int_eq(count_of("Fixture tall") + count_of("Fixture no path"), 6);
	ck_assert(says(" 6 snags   mirror off"));
}
END_TEST

START_TEST(they_are_strong_and_so_are_faults)
{
	int column;

	table_sit(&at, "court.plot", 24, 80);
	terminal_until(at.t, says("10 snags"));
	column = (int)(strstr(terminal_row(at.t, 0), "10 snags") - terminal_row(at.t, 0));
	ck_assert(terminal_cell(at.t, 0, column).bold);
	ck_assert(terminal_cell(at.t, 0, column + 3).bold);
	ck_assert(!terminal_cell(at.t, 0, column - 1).bold);
}
END_TEST

START_TEST(where_the_last_is_cured_none_is_said)
{
	sit("S........");
	terminal_until(at.t, says(" 2 snags   mirror off"));
	terminal_keys(at.t, "down down delete");
	terminal_until(at.t, says("not saved") && says("mirror off"));
	ck_assert(!says("snag") && !says("\u25b2"));
	terminal_keys(at.t, "backspace");
	terminal_until(at.t, says(" 2 snags   mirror off"));
}
END_TEST

START_TEST(a_single_one_is_no_snags)
{
	table_clear(&at, "urn.plot");
	table_write(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nfixture S \"Urn\"\n\n"
		"ground 5 x 1\n  ..S..\n");
	table_start(&at, NULL);
	terminal_until(at.t, says(" 1 snag   mirror off"));
}
END_TEST

START_TEST(none_are_said_before_they_are_counted)
{
	table_clear(&at, "large.plot");
	shape_write(shape_named("snags"), runner_count(1024, 2048), at.plot);
	table_start(&at, NULL);
	terminal_wait(at.t, "ounting ...");
	ck_assert(!says("snag") && !says("\u25b2"));
	terminal_until(at.t, says(" snags"));
	ck_assert(!terminal_shows(at.t, "ounting ..."));
}
END_TEST

/* ---- In little room -------------------------------------------------------------------------- */

static const struct {
	int rows, columns;
	const char *locale, *row; /* the first row, with one blank for several */
} rooms[] = {
	{ 18, 60, "LC_ALL=C.UTF-8",
		"Drawing court.plot, saved b Raised bed \u25b210 left-right \u22601" },
	{ 18, 60, "LC_ALL=C", "Drawing court.plot, saved b Raised bed s10 left-right x1" },
	{ 24, 80, "LC_ALL=C.UTF-8",
		"Drawing court.plot, saved hand b Raised bed 10 snags left-right, 1 fault" },
	{ 24, 80, "LC_ALL=C",
		"Drawing court.plot, saved hand b Raised bed 10 snags left-right, 1 fault" },
	{ 40, 120, "LC_ALL=C.UTF-8",
		"Drawing court.plot, saved hand b Raised bed 10 snags mirror left-right, 1 fault" },
};
enum { ROOMS = sizeof rooms / sizeof *rooms };

/* Several blanks in a row become one; those at the end go. */
static const char *squeezed(const char *row, char *out)
{
	size_t length = 0;

	for (; *row; row++)
		if (*row != ' ' || (length && out[length - 1] != ' '))
			out[length++] = *row;
	while (length && out[length - 1] == ' ')
		length--;
	out[length] = '\0';
	return out;
}

START_TEST(words_give_way_and_names_stay_whole)
{
	char shown[500];

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .rows = rooms[_i].rows, .columns = rooms[_i].columns,
		.env = (const char *[]){ rooms[_i].locale, NULL } });
	terminal_until(at.t, strcmp(squeezed(terminal_row(at.t, 0), shown), rooms[_i].row) == 0);
}
END_TEST

/* ---- The step of the arrows ------------------------------------------------------------------ */

START_TEST(a_step_of_more_than_a_cell_is_told_with_the_arrows)
{
	static const char *const steps[] = { "2", "3" };
	char told[60];

	table_sit(&at, "court.plot", 24, 80);
	terminal_wait(at.t, "arrows move  Space");
	terminal_keys(at.t, "! S e t space h o w enter");
	terminal_wait(at.t, "Each step 1 ft");
	terminal_keys(at.t, "backspace x4");
	terminal_type(at.t, steps[_i]);
	terminal_keys(at.t, "enter");
	snprintf(told, sizeof told, "arrows move %s ft  Space", steps[_i]);
	terminal_wait(at.t, told);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("status");
	TCase *snags = suite_case(suite, "snags"), *room = suite_case(suite, "room");
	TCase *step = suite_case(suite, "step");

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_test(snags, as_many_snags_as_the_page_has_stand_beside_the_mirror);
	tcase_add_test(snags, they_are_strong_and_so_are_faults);
	tcase_add_test(snags, where_the_last_is_cured_none_is_said);
	tcase_add_test(snags, a_single_one_is_no_snags);
	tcase_add_test(snags, none_are_said_before_they_are_counted);
	tcase_add_checked_fixture(room, NULL, teardown);
	tcase_add_loop_test(room, words_give_way_and_names_stay_whole, 0, ROOMS);
	tcase_add_checked_fixture(step, NULL, teardown);
	tcase_add_loop_test(step, a_step_of_more_than_a_cell_is_told_with_the_arrows, 0, 2);
	return suite;
}
