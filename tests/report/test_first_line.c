#include "support/runner.h"
#include "report/words/first_line.h"

#include <string.h>

static const char *const takeoffs[] = {
	"parterre takeoff 1",
	"parterre takeoff 1\n",
	"parterre takeoff 1\n\nTitle\n",
	"parterre takeoff 1\r\n",
	"parterre takeoff 12\nof a later version",
	"parterre plan 1\n\nTitle\n",
	"{\n  \"format\": \"parterre-takeoff\", \"version\": 1",
	"{\"format\":\"parterre-takeoff\"}",
	" \t{ \"format\"\n:\t\"parterre-takeoff\"",
	"parterre compare 1\n\nBefore",
	"parterre compare 1: nothing differs.\n",
	"{\"format\":\"parterre-compare\"}",
	"parterre snags 1\n\nNo snags.\n",
	"{\"format\":\"parterre-snags\"}",
	"parterre sun 1\n\nTitle\n",
	"{\"format\":\"parterre-sun\"}",
};

static const char *const others[] = {
	"",
	"\n",
	"parterre takeoff",
	"parterre takeoff \n",
	"parterre takeoff x\n",
	"parterre plan\n",
	"parterre plant 1\n",
	"parterre takeoff 1 of mine\n",
	"parterre takeoff 1: mine\n",
	"parterre compare\n",
	"parterre compare 1 of mine\n",
	"parterre comparison 1\n",
	"parterre snags: none\n",
	"parterre sunny 1\n",
	" parterre takeoff 1\n",
	"Parterre takeoff 1\n",
	"\nparterre takeoff 1\n",
	"parterre-plot 1\ntitle \"parterre takeoff 1\"\n",
	"{",
	"{}",
	"{\"format\":\"parterre-takeoff",
	"{\"format\":\"parterre-takeoffs\"}",
	"{\"formats\":\"parterre-takeoff\"}",
	"{\"a\": \"b\", \"format\":\"parterre-takeoff\"}",
	"[\"format\", \"parterre-takeoff\"]",
	"\"format\": \"parterre-takeoff\"",
	/* Behind the first 64 bytes. */
	"{                                              \"format\": \"parterre-takeoff\"}",
};

START_TEST(a_takeoff_is_known_by_its_beginning)
{
	ck_assert_msg(report_is_takeoff(takeoffs[_i], strlen(takeoffs[_i])), "%s", takeoffs[_i]);
}
END_TEST

START_TEST(nothing_else_is_taken_for_one)
{
	ck_assert_msg(!report_is_takeoff(others[_i], strlen(others[_i])), "%s", others[_i]);
}
END_TEST

/* The bytes end where they end: memory behind them is not looked at. */
START_TEST(a_takeoff_cut_short_is_not_known)
{
	static const char text[] = "parterre takeoff 1\n",
		json[] = "{\"format\":\"parterre-takeoff\"}";

	for (size_t length = 0; length < strlen(text) - 1; length++)
		ck_assert(!report_is_takeoff(text, length));
	for (size_t length = 0; length < strlen(json) - 1; length++)
		ck_assert(!report_is_takeoff(json, length));
	ck_assert(report_is_takeoff(json, strlen(json) - 1));
}
END_TEST

START_TEST(bytes_that_are_no_text_are_no_takeoff)
{
	static const char bytes[] = "parterre takeoff 1\0\n";

	ck_assert(!report_is_takeoff(bytes, sizeof bytes - 1));
	ck_assert(!report_is_takeoff("\0{\"format\":\"parterre-takeoff\"}", 31));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("first_line");
	TCase *known = suite_case(suite, "known");

	tcase_add_loop_test(known, a_takeoff_is_known_by_its_beginning, 0,
		sizeof takeoffs / sizeof *takeoffs);
	tcase_add_loop_test(known, nothing_else_is_taken_for_one, 0,
		sizeof others / sizeof *others);
	tcase_add_test(known, a_takeoff_cut_short_is_not_known);
	tcase_add_test(known, bytes_that_are_no_text_are_no_takeoff);
	return suite;
}
