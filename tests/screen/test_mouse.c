/* Reports of a mouse, as "XTerm Control Sequences" (T. Dickey, section Mouse Tracking) spells
 * them. */

#include "screen/mouse.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

struct text_report {
	const char *text;
	bool is_read;
	enum point_kind kind;
	int row, column;
};

static const struct text_report texts[] = {
	{ "0;1;1M", true, POINT_PRESS, 0, 0 },
	{ "0;1;1m", true, POINT_RELEASE, 0, 0 },
	{ "0;300;60M", true, POINT_PRESS, 59, 299 },     /* beyond what one byte can say */
	{ "32;12;7M", true, POINT_DRAG, 6, 11 },
	{ "64;12;7M", true, POINT_WHEEL_UP, 6, 11 },
	{ "65;12;7M", true, POINT_WHEEL_DOWN, 6, 11 },
	{ "16;12;7M", true, POINT_PRESS, 6, 11 },        /* with Ctrl */
	{ "36;12;7M", true, POINT_DRAG, 6, 11 },         /* with Shift */
	{ "1;12;7M", false, 0, 0, 0 },                   /* the middle and the right button */
	{ "2;12;7M", false, 0, 0, 0 },
	{ "34;12;7M", false, 0, 0, 0 },
	{ "2;12;7m", false, 0, 0, 0 },                   /* let go of the right, of the wheel */
	{ "64;12;7m", false, 0, 0, 0 },
	{ "66;12;7M", false, 0, 0, 0 },                  /* a wheel that goes sideways */
	{ "35;12;7M", false, 0, 0, 0 },                  /* moved without a button */
	{ "", false, 0, 0, 0 },
	{ "0;12M", false, 0, 0, 0 },
	{ "0;0;7M", false, 0, 0, 0 },
	{ "0;12;0M", false, 0, 0, 0 },
	{ "0;9999;7M", true, POINT_PRESS, 6, 9998 },
	{ "0;10000;7M", false, 0, 0, 0 },
	{ "0;12;", false, 0, 0, 0 },
	{ "0;", false, 0, 0, 0 },
	{ "-1;12;7M", false, 0, 0, 0 },
	{ "0;12;7", false, 0, 0, 0 },
	{ "0;12;7x", false, 0, 0, 0 },
	{ "0;12;7M ", false, 0, 0, 0 },
	{ "99999999999;12;7M", false, 0, 0, 0 },
	{ "0;99999999999;7M", false, 0, 0, 0 },
};

START_TEST(a_report_in_digits_is_read_or_let_go)
{
	const struct text_report *report = &texts[_i];
	struct point point = { .kind = POINT_WHEEL_DOWN };
	bool is_read = mouse_read_text(report->text, &point);

	ck_assert_msg(is_read == report->is_read, "%s", report->text);
	if (!is_read)
		return;
	ck_assert_msg(point.kind == report->kind, "%s", report->text);
	ck_assert_int_eq(point.row, report->row);
	ck_assert_int_eq(point.column, report->column);
}
END_TEST

struct byte_report {
	const char *bytes;
	bool is_read;
	enum point_kind kind;
	int row, column;
};

static const struct byte_report bytes[] = {
	{ " !!", true, POINT_PRESS, 0, 0 },
	{ "#!!", true, POINT_RELEASE, 0, 0 },            /* it does not say of which button */
	{ "@,'", true, POINT_DRAG, 6, 11 },
	{ "`,'", true, POINT_WHEEL_UP, 6, 11 },
	{ "a,'", true, POINT_WHEEL_DOWN, 6, 11 },
	{ " \377'", true, POINT_PRESS, 6, 222 },
	{ "!,'", false, 0, 0, 0 },
	{ "\",'", false, 0, 0, 0 },
	{ "\037,'", false, 0, 0, 0 },
	{ "  '", false, 0, 0, 0 },
	{ " , ", false, 0, 0, 0 },
};

START_TEST(a_report_in_three_bytes_is_read_or_let_go)
{
	const struct byte_report *report = &bytes[_i];
	struct point point = { 0 };
	bool is_read = mouse_read_bytes((const unsigned char *)report->bytes, &point);

	ck_assert_msg(is_read == report->is_read, "row %d", _i);
	if (!is_read)
		return;
	ck_assert_msg(point.kind == report->kind, "row %d", _i);
	ck_assert_int_eq(point.row, report->row);
	ck_assert_int_eq(point.column, report->column);
}
END_TEST

START_TEST(both_kinds_of_reports_say_the_same)
{
	struct random r = { 61 };

	for (int i = 0; i < 5000; i++) {
		int button = random_below(&r, 96), column = random_between(&r, 1, 223);
		int row = random_between(&r, 1, 223);
		const unsigned char three[] = { (unsigned char)(button + 32),
			(unsigned char)(column + 32), (unsigned char)(row + 32) };
		struct point a = { 0 }, b = { 0 };
		char text[32];
		bool is_a, is_b;

		if ((button & 3) == 3)
			continue; /* in three bytes alone this lets a button go */
		snprintf(text, sizeof text, "%d;%d;%dM", button, column, row);
		is_a = mouse_read_text(text, &a);
		is_b = mouse_read_bytes(three, &b);
		ck_assert_msg(is_a == is_b, "%s", text);
		ck_assert_msg(!is_a || (a.kind == b.kind && a.row == b.row && a.column == b.column),
			"%s", text);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("mouse");
	TCase *reports = suite_case(suite, "reports");

	tcase_add_loop_test(reports, a_report_in_digits_is_read_or_let_go, 0,
		(int)(sizeof texts / sizeof *texts));
	tcase_add_loop_test(reports, a_report_in_three_bytes_is_read_or_let_go, 0,
		(int)(sizeof bytes / sizeof *bytes));
	tcase_add_test(reports, both_kinds_of_reports_say_the_same);
	return suite;
}
