/* The part on services, the notice of digging at the front, and lines on the plan. */
#include "report/text/print.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text paper;

static void teardown(void)
{
	text_fini(&paper);
	garden_fini(&garden);
}

static const char *const path_and_lawn[] = { "..........", ".pppp.lll.", ".pppp.lll.",
	".pppp.lll.", "..........", NULL };

static void open(const char *lines)
{
	garden_rows(&garden, path_and_lawn);
	around_add(&garden.plot, lines);
}

static const char *printed(unsigned parts)
{
	text_clear(&paper);
	garden_count(&garden);
	garden_print(&garden, &paper, "yard.plot", parts);
	return paper.bytes;
}

static void shows(const char *words)
{
	ck_assert_msg(strstr(paper.bytes, words), "no %s in\n%.3000s", words, paper.bytes);
}

/* The same of sentences, wherever their lines end. */
static void says(const char *words)
{
	struct text all = TEXT_EMPTY;
	bool found;

	for (const char *c = paper.bytes; *c; c++)
		if (*c != '\n' && (*c != ' ' || (c[-1] != ' ' && c[-1] != '\n')))
			text_add_bytes(&all, c, 1);
		else if (*c == '\n')
			text_add(&all, " ");
	found = strstr(all.bytes, words);
	text_fini(&all);
	ck_assert_msg(found, "no %s in\n%.3000s", words, paper.bytes);
}

static void shows_not(const char *words)
{
	ck_assert_msg(!strstr(paper.bytes, words), "%s in\n%.3000s", words, paper.bytes);
}

/* ---- The part -------------------------------------------------------------------------------- */

START_TEST(a_plot_without_services_has_no_line)
{
	open("");
	ck_assert_ptr_nonnull(strstr(printed(1u << PART_SERVICES),
		"\nNo line in the ground is told, nor what is kept: "));
}
END_TEST

START_TEST(what_is_dug_by_hand_is_listed_by_line_and_place)
{
	open("service gas \"Gas\" existing\n  line 5,0 5,5\nkeep \"Pear\" 1 ft\n  at 7,2\n"
		"keep \"Shed\"\n  from 9,0 to 10,5\n");
	printed(1u << PART_SERVICES);
	says("Near Gas (gas), from 5 ft across, 0 in down, to 5 ft down: 20.0 sq ft of ground, of "
		"which:");
	shows("  P1 path  6.0 sq ft  3 ft to 5 ft  1 ft to 4 ft\n");
	shows("  L1 lawn  3.0 sq ft  6 ft to 7 ft  1 ft to 4 ft\n");
	says("of edging. The pins of 6.0 sq ft of fabric.");
	shows("Within Pear, 1 ft round 7 ft across, 2 ft down: 4.0 sq ft of ground, of which:\n");
	shows("Within Shed, 9 ft to 10 ft across, 0 in to 5 ft down: nothing is worked there.\n");
	shows_not("To lay");
}
END_TEST

START_TEST(holes_are_named_as_on_the_plan)
{
	open("fence \"A\"\n  run 0,0 8,0\nfence \"B\"\n  run 0,5 8,5 8,4\n"
		"service gas \"Gas\" existing\n  line 8,0 8,5\n");
	printed(1u << PART_SERVICES);
	shows("Post holes 2, 2.2 and 2.3, never by auger.");
}
END_TEST

/* So many beds of a cell along a gas line, plants beside them and posts; so many paths over a line
 * to lay, too far apart for their sleeves to meet. */
static void lay_many(int count)
{
	struct text lines = TEXT_EMPTY;
	char rows[6][4 * NAMED_MOST + 8];
	const char *list[7] = { NULL };

	for (int y = 0; y < 6; y++) {
		memset(rows[y], '.', (size_t)(4 * count));
		rows[y][4 * count] = '\0';
		for (int i = 0; i < count; i++)
			rows[y][4 * i] = y == 0 ? 'b' : y > 3 ? 'p' : '.';
		list[y] = rows[y];
	}
	garden_rows(&garden, list);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	text_print(&lines, "plant r \"Rose\"\n  spacing 6 in\n");
	for (int i = 0; i < count; i++)
		text_print(&lines, "  at %d,0\n", 4 * i + 2);
	text_print(&lines, "fence \"Rail\"\n  section 2 ft\n  run 0,1 %d,1\n", 2 * (count - 1));
	plot_add_lines(&garden.plot, lines.bytes);
	text_clear(&lines);
	text_print(&lines, "service gas \"Gas\" existing\n  line 0,0 %d,0\n"
		"service power \"Lamp\" to-lay\n  line 0,5 %d,5\n", 4 * count, 4 * count);
	around_add(&garden.plot, lines.bytes);
	text_fini(&lines);
	printed(1u << PART_SERVICES);
}

START_TEST(a_hundred_of_each_are_named_and_how_many_more_there_are)
{
	lay_many(NAMED_MOST);
	says("Post holes 1, 2, 3,");
	says(", 99 and 100, never by auger.");
	says("398 ft 6 in across, 6 in down. ");
	says("100 sleeves: ");
	shows_not(" more");
	garden_fini(&garden);
	lay_many(NAMED_MOST + 1);
	says(", 99, 100 and 1 more, never by auger.");
	says("398 ft 6 in across, 6 in down; and 1 more. ");
	says("101 sleeves: ");
	says("; and 1 more. ");
	shows("and 1 more.\n");
	shows_not("B101");
	shows_not("399 ft to");
}
END_TEST

START_TEST(a_line_to_lay_has_its_trench_and_its_sleeves)
{
	open("service power \"Lamp\" to-lay\n  line 0,2 6,2\nservice drain \"Gully\" to-lay\n"
		"  line 0,5 6,5\n");
	printed(1u << PART_SERVICES);
	says("Lamp (power), from 0 in across, 2 ft down, to 6 ft across: trench 6 ft long, 6 in "
		"wide and 28 in deep, 7.0 cu ft dug and put back; the line's top 24 in down. "
		"1 sleeve: 6 ft (0 in to 6 ft across, 2 ft "
		"down).");
	says("It runs under nothing that is built.");
	shows_not("finished ground");
	says("Table 300.5, as quoted: direct burial cable 24 in,");
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	printed(1u << PART_SERVICES);
	says("150 mm wide and 700 mm deep");
	shows_not("24 in");
}
END_TEST

/* However many corners and lines it has. */
START_TEST(a_line_is_told_from_point_to_point)
{
	open("service water \"Pipe\" to-lay\n  line 0,2 6,2 6,4 3,4\n  line 8,0 8,5\n"
		"finish 0,0 1 in\n");
	printed(1u << PART_SERVICES);
	says("Pipe (water), from 0 in across, 2 ft down, to 6 ft across, to 4 ft down, to 3 ft "
		"across; from 8 ft across, 0 in down, to 5 ft down: trench 16 ft long");
	says("Depths are below the finished ground.");
}
END_TEST

START_TEST(ground_that_is_graded_is_told_by_hand_too)
{
	open("keep \"Pear\" 1 ft\n  at 1,5\n");
	plot_add_lines(&garden.plot, "levels 10 ft\n  0 in, 0 in\n  0 in, 0 in\n"
		"finish 0,0 1 in\n");
	printed(1u << PART_SERVICES);
	says("other ground, graded 2.0 sq ft 0 in to 2 ft 4 ft to 5 ft");
}
END_TEST

/* Where no power is laid the table for it is not quoted; local code is asked all the same. */
START_TEST(depths_defer_to_local_code)
{
	open("service drain \"Gully\" to-lay\n  line 0,5 6,5\n");
	printed(1u << PART_SERVICES);
	says("matter of local code and licensed practice.");
	shows_not("NFPA");
}
END_TEST

/* ---- The notice ------------------------------------------------------------------------------ */

static const struct { const char *number, *end, *row; } notices[] = {
	{ NULL, NULL, "Notice   ____________________, ends ____________________\n" },
	{ "\"2231\"", NULL, "Notice   2231, ends ____________________\n" },
	{ "\"2231\"", "\"14 May\"", "Notice   2231, ends 14 May\n" },
};

START_TEST(the_notice_stands_at_the_front_or_a_line_to_write_it_on)
{
	open("service gas \"Gas\" existing\n  line 5,0 5,5\n");
	if (notices[_i].number)
		plot_set(&garden.plot, 0, HEAD_NOTICE, notices[_i].number);
	if (notices[_i].end)
		plot_set(&garden.plot, 0, HEAD_NOTICE_END, notices[_i].end);
	printed(1u << PART_FRONT);
	shows(notices[_i].row);
}
END_TEST

START_TEST(the_first_step_of_the_work_names_the_notice)
{
	open("");
	printed(1u << PART_PROGRAMME);
	shows_not("Notice of digging");
	printed(1u << PART_FRONT);
	shows_not("Notice ");
	plot_set(&garden.plot, 0, HEAD_NOTICE, "\"2231\"");
	printed(1u << PART_PROGRAMME);
	shows("Notice of digging 2231.");
	plot_set(&garden.plot, 0, HEAD_NOTICE_END, "\"14 May\"");
	printed(1u << PART_PROGRAMME);
	says("Notice of digging 2231 ends 14 May.");
	printed(1u << PART_FRONT);
	shows("Notice   2231, ends 14 May\n");
}
END_TEST

/* ---- The plan -------------------------------------------------------------------------------- */

/* At 4 characters and 2 rows a cell; lines stand where nothing else does. */
START_TEST(lines_and_ground_dug_by_hand_stand_on_the_plan)
{
	garden_rows(&garden, (const char *const[]){ "....", "....", "....", NULL });
	around_add(&garden.plot, "service gas \"Gas\" existing\n  line 1,0 1,3\n"
		"service power \"Lamp\" to-lay\n  line 3,0 3,2 4,2\n");
	plot_set(&garden.plot, 0, ALLOW_SERVICE_NEAR, "1 ft");
	printed(1u << PART_FRONT);
	shows("\n0'-. . * . . . ~ . .\n"
		"   :   *       ~   :\n"
		"   : / * /     ~   :\n");
}
END_TEST

START_TEST(the_plan_says_what_its_signs_of_services_mean)
{
	open("service gas \"Gas\" existing\n  line 5,0 5,5\n");
	printed(1u << PART_FRONT);
	says("A line in the ground is * where");
	says("dug by hand (--only services).");
	shows_not("A line to lay is ~.");
	garden_fini(&garden);
	open("service gas \"Gas\" to-lay\n  line 5,0 5,5\n");
	printed(1u << PART_FRONT);
	says("A line to lay is ~.");
	/* Over the dots along the path's edge. */
	shows("\n   :   :               ~   :           :   :\n");
	shows_not("A line in the ground is *");
	shows_not("(--only services)");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print services");
	TCase *part = suite_case(suite, "part"), *notice = suite_case(suite, "notice");
	TCase *plan = suite_case(suite, "plan");

	tcase_add_checked_fixture(part, NULL, teardown);
	tcase_add_test(part, a_plot_without_services_has_no_line);
	tcase_add_test(part, what_is_dug_by_hand_is_listed_by_line_and_place);
	tcase_add_test(part, holes_are_named_as_on_the_plan);
	tcase_add_test(part, a_hundred_of_each_are_named_and_how_many_more_there_are);
	tcase_add_test(part, a_line_to_lay_has_its_trench_and_its_sleeves);
	tcase_add_test(part, depths_defer_to_local_code);
	tcase_add_test(part, a_line_is_told_from_point_to_point);
	tcase_add_test(part, ground_that_is_graded_is_told_by_hand_too);
	tcase_add_checked_fixture(notice, NULL, teardown);
	tcase_add_loop_test(notice, the_notice_stands_at_the_front_or_a_line_to_write_it_on, 0, 3);
	tcase_add_test(notice, the_first_step_of_the_work_names_the_notice);
	tcase_add_checked_fixture(plan, NULL, teardown);
	tcase_add_test(plan, lines_and_ground_dug_by_hand_stand_on_the_plan);
	tcase_add_test(plan, the_plan_says_what_its_signs_of_services_mean);
	return suite;
}
