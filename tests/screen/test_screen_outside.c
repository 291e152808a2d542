/* What comes from outside at a terminal: the name of the plot's file, TERM. None of it works on the
 * terminal. */

#include "support/runner.h"
#include "support/table.h"

#include <stdio.h>
#include <string.h>

static const struct {
	const char *bytes, *spelled;
} evils[] = {
	{ "\033[31m", "<1B>[31m" },
	{ "\033]0;x\007", "<1B>]0;x<07>" },
	{ "\n", "<0A>" },
	{ "\177", "<7F>" },
	{ "\302\233" "7m", "<C2><9B>7m" },
	{ "\233" "7m", "<9B>7m" },
	{ "\342\200\256", "<E2><80><AE>" },
	{ "\330\234", "<D8><9C>" },
	{ "\342\200\213", "<E2><80><8B>" },
	{ "\357\273\277", "<EF><BB><BF>" },
	{ "\302\255", "<C2><AD>" },
	{ "\356\200\200", "<EE><80><80>" },
};

enum { EVILS = sizeof evils / sizeof *evils };

START_TEST(the_name_of_a_plot_is_spelled_out_in_the_first_row)
{
	struct table at;
	char name[64];

	snprintf(name, sizeof name, "a%sz", evils[_i].bytes);
	table_clear(&at, name);
	table_write(&at, "parterre-plot 1\nunits metric\ncell 30 cm\n\nground 1 x 1\n  .\n");
	table_start(&at, NULL);
	terminal_wait(at.t, "saved");
	snprintf(name, sizeof name, "a%sz", evils[_i].spelled);
	ck_assert_msg(strstr(terminal_row(at.t, 0), name), "%s", terminal_row(at.t, 0));
	table_leave(&at);
}
END_TEST

START_TEST(what_cannot_be_written_is_named_spelled_out)
{
	struct table at;
	char name[64];

	snprintf(name, sizeof name, "a%sz", evils[_i].bytes);
	table_clear(&at, name);
	table_write(&at, "spoilt\n");
	table_start(&at, NULL);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.code, 2);
	snprintf(name, sizeof name, "a%sz", evils[_i].spelled);
	ck_assert_msg(strstr(end.last, name), "%s", end.last);
	table_leave(&at);
}
END_TEST

START_TEST(term_is_spelled_out)
{
	struct table at;
	char term[64], words[64];

	snprintf(term, sizeof term, "x%sz", evils[_i].bytes);
	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .term = term });
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.code, 2);
	snprintf(words, sizeof words, "type \"x%sz\" is unknown", evils[_i].spelled);
	ck_assert_msg(strstr(end.last, words), "%s", end.last);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_outside");
	TCase *all = suite_case(suite, "outside");

	tcase_add_loop_test(all, the_name_of_a_plot_is_spelled_out_in_the_first_row, 0, EVILS);
	tcase_add_loop_test(all, what_cannot_be_written_is_named_spelled_out, 0, EVILS);
	tcase_add_loop_test(all, term_is_spelled_out, 0, EVILS);
	return suite;
}
