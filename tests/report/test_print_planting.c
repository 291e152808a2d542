/* The planting as text: schedules, plans of beds, the first year. */
#include "report/text/print.h"
#include "support/golden.h"
#include "support/lines.h"
#include "support/planting.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text paper;

static void setup(void)
{
	paper = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&paper);
	garden_fini(&garden);
}

static void print(void)
{
	garden_count(&garden);
	garden_print(&garden, &paper, "planted.plot", 1u << PART_PLANTING);
}

static void check_has(const char *words)
{
	ck_assert_msg(strstr(paper.bytes, words) != NULL, "no \"%s\" in:\n%.3000s", words,
		paper.bytes);
}

START_TEST(a_planted_garden_prints_as_it_did)
{
	garden_file(&garden, "tests/plots/planted.plot");
	print();
	golden_check("planted.txt", paper.bytes);
	lines_check(paper.bytes, "planted.plot");
}
END_TEST

/* 12 characters a cell of 1 ft: a character is an inch across and two down. */
START_TEST(each_plant_stands_at_its_place_to_scale)
{
	planting_bed(&garden, 3, 2, "1 ft");
	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  at 1,0\n"
		"plant t \"Thyme\"\n  spacing 12 in\n  pattern square\n  drift b whole\n");
	print();
	check_has("   0'          1'          2'          3'\n"
		"   |           |           |           |\n"
		"0'-+-----------------------------------+\n"
		"   |                                   |\n"
		"   |                                   |\n"
		"   |     t           r           t     |\n"
		"   |                                   |\n"
		"   |                                   |\n"
		"1'-|                                   |\n"
		"   |                                   |\n"
		"   |                                   |\n"
		"   |     t           t           t     |\n"
		"   |                                   |\n"
		"   |                                   |\n"
		"2'-+-----------------------------------+\n"
		"r Rose; t Thyme. A character is 1 in across and 2 in down.\n");
}
END_TEST

/* The characters of a plan count what stands, where none is hidden. */
START_TEST(a_plan_has_as_many_letters_as_there_are_plants)
{
	int64_t letters = 0;
	const char *plan;

	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "spacing 6 in\n  drift b whole");
	print();
	plan = strstr(paper.bytes, "B1 planted");
	ck_assert_ptr_nonnull(plan);
	for (; strncmp(plan, "z Plant", 7) != 0; plan++)
		letters += *plan == 'z';
	ck_assert_int_eq(letters, planting_count(&garden));
	ck_assert_int_eq(letters, 140);
}
END_TEST

START_TEST(beds_that_are_alike_have_one_plan)
{
	garden_rows(&garden, (const char *const[]){ "bbb.bbb.bb", "bbb.bbb.bb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	planting_add(&garden, "drift b whole");
	print();
	check_has("\nB1 and B2 planted\n");
	check_has("\nB3 planted\n");
	check_has("B1 and B2   z  Plant");
}
END_TEST

static void plant_by_months(void)
{
	planting_bed(&garden, 4, 4, "1 ft");
	plot_add_lines(&garden.plot, "plant x \"Yew\"\n  plant-from november\n"
		"  plant-until january\n  at 0,0\n"
		"plant y \"Fern\"\n  plant-from may\n  at 1,1\nplant z \"Reed\"\n  at 3,3\n"
		"plant w \"Rue\"\n  plant-from april\n  plant-until may\n  at 2,0\n"
		"plant v \"Sage\"\n  plant-from april\n  plant-until may\n  at 0,2\n");
}

START_TEST(a_plant_is_listed_once_with_all_its_months)
{
	plant_by_months();
	print();
	check_has("\nApril to May: 1 Rue, 1 Sage.\nMay: 1 Fern.\nNovember to January: 1 Yew.\n"
		"No month is told: 1 Reed.\n");
}
END_TEST

START_TEST(a_year_follows_the_first_month_of_planting_by_the_season)
{
	plant_by_months();
	print();
	check_has("Yew, planted in November:\n  November: water in");
	check_has("\n  December to February of the next year: water only in drought");
	check_has("\n  March of the next year: cut out what is dead");
	check_has("\n  March to June of the next year: water once a week");
	check_has("\nReed:\n  When planted: water in");
	check_has("\n  Summer and early autumn: water each ten days");
	check_has(" The\nplot tells no latitude: seasons are those north of the equator.");
}
END_TEST

/* Beds of two letters, of which one is on drip lines: a kind that stands in both is told twice. */
START_TEST(plants_on_drip_lines_get_their_water_as_watering_tells)
{
	garden_rows(&garden, (const char *const[]){ "bbbb.ee", "bbbb.ee", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'e', BED_BUILD, "level");
	plot_add_lines(&garden.plot, "plant x \"Yew\"\n  plant-from april\n  at 0,0\n  at 5,0\n"
		"plant y \"Fern\"\n  at 1,1\nplant z \"Reed\"\n  plant-from april\n  at 6,0\n");
	print();
	check_has("Yew, Reed, planted in April, not on drip lines:\n  April: water in; then every "
		"second or third day for two weeks");
	check_has("Yew, planted in April, on drip lines:\n  April: water in by hand, then let the "
		"timer run 3 times a week, not 2, for two\n    weeks, as many minutes each time, "
		"where it does not rain; from then on by\n    the timer, each month as Watering "
		"has it, and by hand in drought where it\n    has no minutes.\n"
		"  May to June: weed.\n");
	check_has("\nFern, on drip lines:\n  When planted: water in by hand, then let the timer");
	ck_assert_ptr_null(strstr(paper.bytes, "a month without minutes"));
	check_has("\n  Summer and early autumn: weed; top up");
	check_has("\n  Autumn and winter: no feed");
	plot_set(&garden.plot, 0, ALLOW_WATER_APRIL, "0 in");
	print();
	check_has("Yew, planted in April, on drip lines:\n  April: water in; then every second or "
		"third day for two weeks where it does\n    not rain; from then on by the timer");
	check_has("\nFern, on drip lines:\n  When planted: water in by hand, then let the timer "
		"run 3 times a week, not 2,\n    for two weeks, as many minutes each time, where "
		"it does not rain, by hand as\n    often in a month without minutes; from then on "
		"by the timer");
	plot_set(&garden.plot, 0, ALLOW_WATER_WEEK, "0 in");
	text_clear(&paper);
	print();
	check_has("\nFern:\n  When planted: water in; then every second or third day for two "
		"weeks where it\n    does not rain.\n  Spring and early summer: water once a week");
	ck_assert_ptr_null(strstr(paper.bytes, "timer"));
}
END_TEST

START_TEST(south_of_the_equator_the_year_is_turned_round)
{
	plant_by_months();
	plot_set(&garden.plot, 0, HEAD_SITE, "-34");
	print();
	check_has("Yew, planted in November:\n  November: water in");
	check_has("\n  December: water once a week");
	check_has("\n  January to March of the next year: water each ten days");
	ck_assert_ptr_null(strstr(paper.bytes, "tells no latitude"));
}
END_TEST

static const char unchecked[] = "\nNot checked: whether plants have the sun they need. The plot "
	"tells no latitude.\n";

static void print_parts(unsigned int parts)
{
	garden_count(&garden);
	garden_print(&garden, &paper, "planted.plot", parts);
}

START_TEST(without_a_latitude_it_is_said_that_no_need_of_sun_is_checked)
{
	static const unsigned int parts[] = { PART_FRONT, PART_PLANTING, PART_ASSUMED };

	planting_bed(&garden, 4, 4, "1 ft");
	planting_add(&garden, "sun full\n  at 1,1");
	print_parts(1u << parts[_i]);
	check_has(unchecked);
}
END_TEST

START_TEST(where_there_is_nothing_to_check_or_it_is_checked_nothing_is_said_of_it)
{
	planting_bed(&garden, 4, 4, "1 ft");
	planting_add(&garden, _i == 0 ? "at 1,1" : _i == 1 ? "sun shade\n  at 1,1" :
		"sun full\n  at 1,1");
	if (_i == 2)
		plot_set(&garden.plot, 0, HEAD_SITE, "47");
	print_parts(1u << PART_FRONT | 1u << PART_PLANTING | 1u << PART_ASSUMED);
	ck_assert_ptr_null(strstr(paper.bytes, "Not checked"));
}
END_TEST

/* 35 cells of two characters are a sheet of 70; each row of 36 plants stands on both in part. */
START_TEST(a_bed_too_wide_for_a_sheet_is_cut_into_sheets)
{
	const char *sheet;
	int letters = 0;

	planting_bed(&garden, 36, 4, "1 ft");
	planting_add(&garden, "pattern square\n  drift b whole");
	print();
	check_has("\nSheet 1 of 2: 0 in to 35 ft across.\n");
	check_has("\nSheet 2 of 2: 35 ft to 36 ft across.\n");
	sheet = strstr(paper.bytes, "Sheet 1 of 2");
	for (const char *end = strstr(sheet, "z Plant"); sheet < end; sheet++)
		letters += *sheet == 'z';
	ck_assert_int_eq(letters, 36 * 4);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print planting");
	TCase *papers = suite_case(suite, "papers");

	tcase_add_checked_fixture(papers, setup, teardown);
	tcase_add_test(papers, a_planted_garden_prints_as_it_did);
	tcase_add_test(papers, each_plant_stands_at_its_place_to_scale);
	tcase_add_test(papers, a_plan_has_as_many_letters_as_there_are_plants);
	tcase_add_test(papers, beds_that_are_alike_have_one_plan);
	tcase_add_test(papers, a_plant_is_listed_once_with_all_its_months);
	tcase_add_test(papers, a_year_follows_the_first_month_of_planting_by_the_season);
	tcase_add_test(papers, plants_on_drip_lines_get_their_water_as_watering_tells);
	tcase_add_test(papers, south_of_the_equator_the_year_is_turned_round);
	tcase_add_loop_test(papers, without_a_latitude_it_is_said_that_no_need_of_sun_is_checked, 0,
		3);
	tcase_add_loop_test(papers,
		where_there_is_nothing_to_check_or_it_is_checked_nothing_is_said_of_it, 0, 3);
	tcase_add_test(papers, a_bed_too_wide_for_a_sheet_is_cut_into_sheets);
	return suite;
}
