/* Watering in the papers: the part as a whole, and what it says of a supply and a tap. */
#include "report/text/print.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(unsigned parts)
{
	text_clear(&page);
	garden_count(&garden);
	garden_print(&garden, &page, "watered.plot", parts);
}

/* Wherever lines were broken. */
static void has(const char *words)
{
	struct text flat = TEXT_EMPTY;

	for (const char *c = page.bytes; *c; c++) {
		bool is_blank = *c == ' ' || *c == '\n';

		if (!is_blank || (flat.length && flat.bytes[flat.length - 1] != ' '))
			text_add_bytes(&flat, is_blank ? " " : c, 1);
	}
	ck_assert_msg(strstr(flat.bytes, words), "%s is not in\n%.3000s", words,
		page.bytes);
	text_fini(&flat);
}

static void has_not(const char *words)
{
	ck_assert_msg(!strstr(page.bytes, words), "%s is in\n%.3000s", words, page.bytes);
}

START_TEST(the_paper_of_a_watered_garden_prints_as_it_did)
{
	garden_file(&garden, "tests/plots/watered.plot");
	print(1u << PART_FRONT | 1u << PART_SHOPPING | 1u << PART_PROGRAMME |
		1u << PART_WATERING | 1u << PART_ASSUMED);
	golden_check("watered.txt", page.bytes);
}
END_TEST

static void level_bed(const char *lines)
{
	garden_rows(&garden, (const char *const[]){ "..pp..bbbbbb", "..pp..bbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, lines);
}

START_TEST(a_supply_that_nobody_measured_is_said_to_be_assumed)
{
	level_bed("");
	print(1u << PART_WATERING);
	has("240 gal/h, ASSUMED until it is measured");
	has("Its gallons times 3,600");
	plot_set(&garden.plot, 0, ALLOW_SUPPLY, "200 gal/h");
	print(1u << PART_WATERING);
	has("200 gal/h, as measured");
	has_not("ASSUMED");
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	print(1u << PART_WATERING);
	has("757 L/h, as measured");
}
END_TEST

START_TEST(without_a_tap_the_paper_says_what_is_not_counted)
{
	level_bed("");
	print(1u << PART_WATERING);
	has("The plot does not say where water comes from (tap)");
	has_not("BEFORE THE BASE");
	around_add(&garden.plot, "tap 0,1\n");
	print(1u << PART_WATERING);
	has("From the tap, 0 in across and 1 ft down, a trench of 6 ft goes to the beds: 6 in "
		"wide");
	has("BEFORE THE BASE IS LAID, under what is built and under walls: 4 ft of sleeve. "
		"Sleeves Under Across Down Long Tubes "
		"1 what is built 1 ft to 5 ft 1 ft 4 ft 1 ");
}
END_TEST

START_TEST(a_tap_at_the_bed_has_no_trench)
{
	level_bed("tap 6,1\n");
	print(1u << PART_WATERING);
	has("The tap, 6 ft across and 1 ft down, stands at what it waters: no trench. Each zone "
		"has a tube of its own, from its valve at the tap: ");
	has_not("dug and put back");
	has_not("NO WAY");
}
END_TEST

/* A house stands between them. */
START_TEST(a_bed_that_no_trench_gets_to_is_told_without_one)
{
	garden_rows(&garden, (const char *const[]){ "....bb", "....bb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, "house \"Ours\" 20 ft\n  from 1,0 to 3,2\ntap 0,1\n");
	print(1u << PART_WATERING);
	has("From the tap, 0 in across and 1 ft down, no trench is counted. Within beds lie 1 ft "
		"of header tube as laid.");
	has("NO WAY TO B1: no tube to there is counted.");
	has_not("stands at");
}
END_TEST

START_TEST(the_note_on_sleeves_says_how_long_and_how_wide_one_is)
{
	level_bed("tap 0,1\n");
	print(1u << PART_WATERING);
	has("Outside it is shorter where a sleeve of the trench already comes up to the wall.");
	has("Choose a sleeve twice as wide inside as its tubes together (common practice, no "
		"published source).");
}
END_TEST

/* Two lines of 6 emitters; 4.5 gal/h are 7 of 0.6. */
START_TEST(lines_and_zones_are_told_bed_by_bed)
{
	level_bed("");
	plot_set(&garden.plot, 0, ALLOW_SUPPLY, "6 gal/h");
	print(1u << PART_WATERING);
	has("B1: lines 1 to 2 at 6 in and 1 ft 6 in down, from 0 in to 6 ft across, 6 emitters "
		"each.");
	has("B1 (line 1)");
	has("B1 (line 2)");
}
END_TEST

static void watered_rectangle(int columns, int rows)
{
	garden_rectangle(&garden, 'b', columns, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
}

/* 15 lines along 16 ft. */
START_TEST(lines_that_lie_evenly_are_told_by_the_first_the_gap_and_the_last)
{
	watered_rectangle(16, 15);
	print(1u << PART_WATERING);
	has("B1: lines 1 to 15 at 6 in, then each 1 ft on to 14 ft 6 in down, from 0 in to 16 ft "
		"across, 16 emitters each.");
	has("o15");
	garden_fini(&garden);
	watered_rectangle(6, 3);
	print(1u << PART_WATERING);
	has("B1: lines 1 to 3 at 6 in, 1 ft 6 in and 2 ft 6 in down, from");
}
END_TEST

/* 7 ft in 11 rows: gaps that are no whole nanometres. */
START_TEST(gaps_that_were_rounded_are_even)
{
	watered_rectangle(9, 7);
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "8 in");
	print(1u << PART_WATERING);
	has("B1: lines 1 to 11 at 3 13/16 in, then each 7 5/8 in on to 6 ft 8 3/16 in down, from");
}
END_TEST

/* Arms between two lines each have one, which lie alike, but not evenly. */
START_TEST(lines_that_lie_unevenly_are_told_apart)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbbbbbbb", "bbbbbbbbbb....",
		"bbbbbbbbbb....", "bbbbbbbbbbbbbb", "bbbbbbbbbb....", "bbbbbbbbbb....",
		"bbbbbbbbbb....", "bbbbbbbbbb....", "bbbbbbbbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "3 ft");
	print(1u << PART_WATERING);
	has("; lines 4 to 5 at 6 in and 3 ft 6 in down, from 0 in to 14 ft across, 14 emitters "
		"each, where no other line reaches; line 6 at 8 ft 6 in down,");
}
END_TEST

/* Each row a cell shorter than the one before. */
START_TEST(lines_past_the_twelfth_that_differ_are_said_to_be_in_json)
{
	enum { ROWS_OF = 14 };
	char cells[ROWS_OF][ROWS_OF + 9];
	const char *rows[ROWS_OF + 1] = { NULL };

	for (int y = 0; y < ROWS_OF; y++) {
		memset(cells[y], '.', sizeof cells[y]);
		memset(cells[y], 'b', (size_t)(ROWS_OF + 8 - y));
		cells[y][ROWS_OF + 8] = '\0';
		rows[y] = cells[y];
	}
	garden_rows(&garden, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	print(1u << PART_WATERING);
	has("B1: line 1 at 6 in down, from 0 in to 22 ft across, 22 emitters; line 2 at");
	has("line 12 at 11 ft 6 in down, from 0 in to 11 ft across, 11 emitters; and 2 more: JSON "
		"has them (takeoff --json).");
}
END_TEST

/* At two characters a cell there is one behind an emitter: 10 and 11 have no room. */
START_TEST(only_numbers_that_are_drawn_are_claimed)
{
	watered_rectangle(6, 3);
	print(1u << PART_WATERING);
	has("= drip tube with its line's number; o emitter;");
	garden_fini(&garden);
	watered_rectangle(30, 11);
	print(1u << PART_WATERING);
	has("o9o");
	has_not("o10");
	has("= drip tube with its line's number where there is room; o emitter;");
	garden_fini(&garden);
	watered_rectangle(16, 30);
	print(1u << PART_WATERING);
	has(": drip tube; o emitter;");
}
END_TEST

/* Beds one below the other, each a cell longer than the one before. */
START_TEST(beds_past_the_hundredth_kind_are_said_to_be_in_json)
{
	enum { KINDS = 102 };
	char cells[2 * KINDS][KINDS + 1];
	const char *rows[2 * KINDS + 1] = { NULL };

	for (int y = 0; y < 2 * KINDS; y++) {
		memset(cells[y], '.', KINDS);
		cells[y][KINDS] = '\0';
		memset(cells[y], 'b', (size_t)(y % 2 == 0 ? y / 2 + 1 : 0));
		rows[y] = cells[y];
	}
	garden_rows(&garden, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	print(1u << PART_WATERING);
	has("And beds of 2 more kinds: JSON has their lines (takeoff --json).");
	has("No plan here of beds of 2 more kinds: JSON has their lines");
	has("B100: drip lines");
	has("B100: line 1 at");
	has_not("B101: ");
}
END_TEST

START_TEST(new_plants_have_the_timer_run_more_often_where_it_runs_seldom)
{
	level_bed("");
	print(1u << PART_WATERING);
	has("New plants: water in by hand, then let the timer run 3 times a week, not 2, for "
		"two weeks, as many minutes each time.");
	plot_set(&garden.plot, 0, ALLOW_WATER_RUNS, "1");
	print(1u << PART_WATERING);
	has("3 times a week, not once, for two weeks, half the minutes each time.");
	plot_set(&garden.plot, 0, ALLOW_WATER_RUNS, "3");
	print(1u << PART_WATERING);
	has("let the timer run 3 times a week, as ever.");
}
END_TEST

static void set_months(const char *depth)
{
	for (int month = 0; month < MONTHS; month++)
		plot_set(&garden.plot, 0, (enum attribute)(ALLOW_WATER_JANUARY + month), depth);
}

START_TEST(months_that_ask_for_the_same_are_told_so_told_or_not)
{
	level_bed("");
	print(1u << PART_WATERING);
	has("Months are not told: each asks for as much, winter too. Say which ask for less");
	set_months("1 1/4 in");
	print(1u << PART_WATERING);
	has("Months ask for the same, as they are told, winter too. Say which ask for less");
	has_not("not told");
	plot_set(&garden.plot, 0, ALLOW_WATER_JUNE, "2 in");
	print(1u << PART_WATERING);
	has_not("ask for the same");
	has_not("not told");
}
END_TEST

START_TEST(where_no_month_asks_for_water_new_plants_get_it_by_hand)
{
	level_bed("");
	plot_set(&garden.plot, 0, ALLOW_WATER_WEEK, "0 in");
	print(1u << PART_WATERING);
	has("In a week --------- No month asks for water: the timer does not run. Say which ask "
		"for some, a line each: water june 1 in. New plants: water in; then every second "
		"or third day for two weeks where it does not rain, all by hand. Depth in a week");
	has_not("by month and");
	has_not("ask for less");
	plot_set(&garden.plot, 0, ALLOW_WATER_JUNE, "1 in");
	print(1u << PART_WATERING);
	has("In a week, by month and bed");
	has("then let the timer run 3 times a week");
	has_not("does not run");
}
END_TEST

START_TEST(a_plot_without_watering_says_how_a_bed_gets_lines)
{
	level_bed("tap 0,1\n");
	plot_set(&garden.plot, 'b', BED_WATER, "none");
	print(1u << PART_WATERING);
	has("No bed is watered by drip lines. One is that says so: Watered, drip, on its card, or "
		"a line of its entry in the plot, water drip.");
	has_not("Mind");
	has_not("Supply");
}
END_TEST

START_TEST(the_plan_shows_the_tap_and_the_header)
{
	struct text_sink out = text_sink(&page);

	level_bed("tap 0,1\n");
	garden_count(&garden);
	report_plan(&out.sink, &garden.plot, &garden.takeoff, "watered.plot");
	has("@%%%");
	has("Tap: @. The header from it is %.");
	garden_fini(&garden);
	text_clear(&page);
	level_bed("");
	garden_count(&garden);
	report_plan(&out.sink, &garden.plot, &garden.takeoff, "watered.plot");
	has_not("Tap");
	has_not("%");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print water");
	TCase *paper = suite_case(suite, "paper");

	tcase_add_checked_fixture(paper, setup, teardown);
	tcase_add_test(paper, the_paper_of_a_watered_garden_prints_as_it_did);
	tcase_add_test(paper, a_supply_that_nobody_measured_is_said_to_be_assumed);
	tcase_add_test(paper, without_a_tap_the_paper_says_what_is_not_counted);
	tcase_add_test(paper, a_tap_at_the_bed_has_no_trench);
	tcase_add_test(paper, a_bed_that_no_trench_gets_to_is_told_without_one);
	tcase_add_test(paper, the_note_on_sleeves_says_how_long_and_how_wide_one_is);
	tcase_add_test(paper, lines_and_zones_are_told_bed_by_bed);
	tcase_add_test(paper, lines_that_lie_evenly_are_told_by_the_first_the_gap_and_the_last);
	tcase_add_test(paper, gaps_that_were_rounded_are_even);
	tcase_add_test(paper, lines_that_lie_unevenly_are_told_apart);
	tcase_add_test(paper, lines_past_the_twelfth_that_differ_are_said_to_be_in_json);
	tcase_add_test(paper, only_numbers_that_are_drawn_are_claimed);
	tcase_add_test(paper, beds_past_the_hundredth_kind_are_said_to_be_in_json);
	tcase_add_test(paper, new_plants_have_the_timer_run_more_often_where_it_runs_seldom);
	tcase_add_test(paper, months_that_ask_for_the_same_are_told_so_told_or_not);
	tcase_add_test(paper, where_no_month_asks_for_water_new_plants_get_it_by_hand);
	tcase_add_test(paper, a_plot_without_watering_says_how_a_bed_gets_lines);
	tcase_add_test(paper, the_plan_shows_the_tap_and_the_header);
	return suite;
}
