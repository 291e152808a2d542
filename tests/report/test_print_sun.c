/* Hours of sun as they are printed: a page as a whole, and what it says of other plots. */
#include "report/text/print_sun.h"
#include "base/utf8.h"
#include "report/words/first_line.h"
#include "report/words/page.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
	garden = (struct garden){ .arena = ARENA_EMPTY };
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print_days(const struct date *days, int count)
{
	struct text_sink out = text_sink(&page);

	text_clear(&page);
	report_sun(&out.sink, &garden.plot, &garden.takeoff, "sun.plot", days, count);
}

static void print(void)
{
	struct date days[SUN_USUAL_DAYS];

	garden_count(&garden);
	sun_usual_days(sun_latitude(&garden.takeoff), days);
	print_days(days, SUN_USUAL_DAYS);
}

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

static void has_not(const char *words)
{
	ck_assert_msg(!strstr(page.bytes, words), "%s is in\n%s", words, page.bytes);
}

START_TEST(a_garden_prints_as_it_did)
{
	garden_file(&garden, "tests/plots/sun.plot");
	print();
	golden_check("sun.txt", page.bytes);
	ck_assert(report_is_takeoff(page.bytes, page.length));
}
END_TEST

START_TEST(a_plot_in_the_south_has_its_own_season_and_noon_line)
{
	garden_file(&garden, "tests/plots/sun.plot");
	plot_set(&garden.plot, 0, HEAD_SITE, "-34");
	print();
	has("Latitude 34 south.");
	has("\n2026-09-21 ");
	has("\n2027-03-21 ");
	has("Its noon line points to true south;");
	has("are to the right of");
}
END_TEST

START_TEST(on_the_equator_a_level_dial_has_no_lines)
{
	garden_file(&garden, "tests/plots/sun.plot");
	plot_set(&garden.plot, 0, HEAD_SITE, "0");
	print();
	has("Latitude 0.");
	has_not("hour lines");
}
END_TEST

/* Usual are 6, 4 and 2. */
static const struct { enum attribute bound; const char *value, *told; } bounds[] = {
	{ ALLOW_SUN_FULL, "5", "full sun    5 and more" }, { ALLOW_SUN_PART, "3", "3 to 6" },
	{ ALLOW_SUN_LEAST, "1.5", "under 1.5" }, { ALLOW_SUN_LEAST, "1", "1 to 4" },
};

START_TEST(each_other_bound_is_said)
{
	garden_file(&garden, "tests/plots/sun.plot");
	plot_set(&garden.plot, 0, bounds[_i].bound, bounds[_i].value);
	print();
	has(bounds[_i].told);
	has("that the plot or the price book allows");
	has_not("Nebraska");
}
END_TEST

START_TEST(a_fixture_that_is_no_dial_has_no_lines_and_other_bounds_are_said)
{
	garden_file(&garden, "tests/plots/sun.plot");
	plot_set(&garden.plot, 'S', FIXTURE_DIAL, "no");
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, "7.5");
	print();
	has_not("hour lines");
	has("full sun    7.5 and more");
	has("part sun    4 to 7.5");
	has("that the plot or the price book allows");
	has_not("Nebraska");
}
END_TEST

START_TEST(a_day_is_as_long_as_from_its_sunrise_to_its_sunset)
{
	const struct date days[] = { { 2026, 12, 21 } };
	int rise[2], set[2], length[2];
	char latitude[16];
	const char *row;

	garden_file(&garden, "tests/plots/sun.plot");
	snprintf(latitude, sizeof latitude, "%d.%d", 50 + _i / 10, _i % 10);
	plot_set(&garden.plot, 0, HEAD_SITE, latitude);
	garden_count(&garden);
	print_days(days, 1);
	row = strstr(page.bytes, "\n2026-12-21 ");
	ck_assert_ptr_nonnull(row);
	ck_assert_int_eq(sscanf(row, " 2026-12-21 %d:%d %d:%d %d:%d", &rise[0], &rise[1], &set[0],
		&set[1], &length[0], &length[1]), 6);
	ck_assert_int_eq(60 * (set[0] - rise[0]) + set[1] - rise[1], 60 * length[0] + length[1]);
}
END_TEST

START_TEST(a_plot_that_does_not_say_where_north_is_has_it_up)
{
	garden_rows(&garden, (const char *const[]){ "bb", NULL });
	plot_set(&garden.plot, 0, HEAD_SITE, "51.5");
	print();
	has("up is taken for it.");
	plot_set(&garden.plot, 0, HEAD_NORTH, "0");
	print();
	has("North is up.");
	has_not("is taken for it");
}
END_TEST

START_TEST(a_latitude_is_never_told_by_an_exponent)
{
	garden_file(&garden, "tests/plots/sun.plot");
	plot_set(&garden.plot, 0, HEAD_SITE, "0.000001");
	print();
	has("Latitude 0.000001 north.");
}
END_TEST

/* Two tables of seven days at most, means and classes in the last. */
START_TEST(more_days_take_more_tables)
{
	struct date days[9];

	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	for (int i = 0; i < 9; i++)
		days[i] = (struct date){ 2026, 1 + i, 15 };
	print_days(days, 9);
	has("Bed, lawn  01-15  02-15  03-15  04-15  05-15  06-15  07-15\n");
	has("Bed, lawn  08-15  09-15  Mean  Class\n");
}
END_TEST

static void check_lines(void)
{
	for (const char *line = page.bytes; *line;) {
		size_t length = strcspn(line, "\n");

		ck_assert_msg(utf8_count(line, length) <= PAGE_COLUMNS, "%.*s", (int)length, line);
		ck_assert_msg(length == 0 || line[length - 1] != ' ', "%.*s|", (int)length, line);
		line += length + (line[length] == '\n');
	}
}

/* A plan of 200 columns in strips: each cell's sign is there once. */
START_TEST(a_wide_plan_is_printed_in_strips)
{
	const char *at;
	int signs = 0;

	garden_rectangle(&garden, 'S', 200, 9);
	plot_set(&garden.plot, 0, HEAD_SITE, "-45.25");
	print();
	check_lines();
	for (at = strstr(page.bytes, "0'-"); *at; at++)
		signs += *at == '#';
	ck_assert_int_eq(signs, 200 * 9 + 1); /* and the one that is explained */
	has("Latitude 45.25 south.");
	has_not("Bed, lawn");
}
END_TEST

START_TEST(any_garden_keeps_to_the_page)
{
	for (int seed = 0; seed < runner_count(20, 200); seed++) {
		struct random random = { (uint64_t)seed };

		garden = (struct garden){ .arena = ARENA_EMPTY };
		plot_init(&garden.plot);
		plot_at_random(&garden.plot, &random, 90, "bcplS.");
		plot_set(&garden.plot, 0, HEAD_SITE, "45");
		print();
		check_lines();
		garden_fini(&garden);
	}
	garden = (struct garden){ .arena = ARENA_EMPTY };
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print sun");
	TCase *pages = suite_case(suite, "pages");

	tcase_add_checked_fixture(pages, setup, teardown);
	tcase_add_test(pages, a_garden_prints_as_it_did);
	tcase_add_test(pages, a_plot_in_the_south_has_its_own_season_and_noon_line);
	tcase_add_test(pages, on_the_equator_a_level_dial_has_no_lines);
	tcase_add_test(pages, a_fixture_that_is_no_dial_has_no_lines_and_other_bounds_are_said);
	tcase_add_loop_test(pages, each_other_bound_is_said, 0, 4);
	tcase_add_loop_test(pages, a_day_is_as_long_as_from_its_sunrise_to_its_sunset, 0, 160);
	tcase_add_test(pages, a_plot_that_does_not_say_where_north_is_has_it_up);
	tcase_add_test(pages, a_latitude_is_never_told_by_an_exponent);
	tcase_add_test(pages, more_days_take_more_tables);
	tcase_add_test(pages, a_wide_plan_is_printed_in_strips);
	tcase_add_test(pages, any_garden_keeps_to_the_page);
	return suite;
}
