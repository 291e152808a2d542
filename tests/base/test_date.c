/* Days as they are typed, and as they are counted. */
#include "base/date.h"
#include "support/runner.h"

#include <libnova/julian_day.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

static struct date next(struct date date)
{
	static const int days[] = { 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31 };
	int last = days[date.month - 1] + (date.month == 2 && date.year % 4 == 0);

	if (date.day < last)
		return (struct date){ date.year, date.month, date.day + 1 };
	if (date.month < 12)
		return (struct date){ date.year, date.month + 1, 1 };
	return (struct date){ date.year + 1, 1, 1 };
}

static bool is_same(struct date a, struct date b)
{
	return a.year == b.year && a.month == b.month && a.day == b.day;
}

/* Each is one more than that before; libnova has the first, the last and some between. */
START_TEST(every_day_is_written_read_and_counted)
{
	struct date date = { YEAR_LEAST, 1, 1 }, read = { 0, 0, 0 };
	int julian = date_julian(date);

	for (; date.year <= YEAR_MOST; date = next(date), julian++) {
		char text[DATE_SIZE];

		ck_assert_int_eq(date_julian(date), julian);
		date_write(date, text);
		ck_assert_msg(date_read(text, &read), "%s", text);
		ck_assert(is_same(date, read));
		if (date.day % 9 == 0 || julian == 2451545) {
			struct ln_date noon = { date.year, date.month, date.day, 12, 0, 0 };

			ck_assert_double_eq(ln_get_julian_day(&noon), julian);
		}
	}
	ck_assert_int_eq(julian - date_julian((struct date){ YEAR_LEAST, 1, 1 }),
		199 * 365 + 199 / 4);
}
END_TEST

/* Jean Meeus, Astronomical Algorithms, 2nd ed., 1998, chapter 7: 2000 January 1.5 is 2451545.0;
 * 1987 June 19.5 is 2446966.0. */
START_TEST(days_have_the_julian_days_of_a_handbook)
{
	ck_assert_int_eq(date_julian((struct date){ 2000, 1, 1 }), 2451545);
	ck_assert_int_eq(date_julian((struct date){ 1987, 6, 19 }), 2446966);
}
END_TEST

static const char *const refused[] = { "", "2026", "2026-6-21", "2026-06-1", "2026-06-21 ",
	" 2026-06-21", "26-06-21", "2026/06/21", "2026-06/21", "1900-12-31", "2100-01-01",
	"2026-00-10", "2026-13-10", "2026-06-00", "2026-06-31", "2026-02-29", "2024-02-30",
	"2026-04-31", "20a6-06-21", "2026-+6-21", "2026-06--1" };

START_TEST(what_is_no_day_is_refused)
{
	struct date date = { 1, 2, 3 };

	ck_assert_msg(!date_read(refused[_i], &date), "%s", refused[_i]);
	ck_assert(is_same(date, (struct date){ 1, 2, 3 }));
}
END_TEST

START_TEST(a_leap_day_is_a_day)
{
	struct date date;

	ck_assert(date_read("2024-02-29", &date));
	ck_assert_int_eq(date.day, 29);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("date");
	TCase *days = suite_case(suite, "days");

	tcase_add_test(days, every_day_is_written_read_and_counted);
	tcase_add_test(days, days_have_the_julian_days_of_a_handbook);
	tcase_add_loop_test(days, what_is_no_day_is_refused, 0, COUNT(refused));
	tcase_add_test(days, a_leap_day_is_a_day);
	return suite;
}
