/* Hours of sun on a plan to scale: which cells patterns lie over, and that they need no colour. */
#include "report/svg/sunlight.h"
#include "report/svg/svg.h"
#include "report/words/sun_words.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "takeoff/sun/sun_usual.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST = 64 };

static struct garden garden;
static struct text bytes;
static struct arena arena;
static struct svg_asked asked;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	bytes = TEXT_EMPTY;
	asked = SVG_AS_FITS;
	asked.with = DRAW_SUN;
}

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	text_fini(&bytes);
	garden_fini(&garden);
}

static void draw(void)
{
	struct text why = TEXT_EMPTY;
	struct text_sink out = text_sink(&bytes);

	ck_assert_msg(svg_fits(&garden.plot, &garden.takeoff, &asked, &why), "%s", why.bytes);
	text_fini(&why);
	text_clear(&bytes);
	report_svg(&out.sink, &garden.plot, &garden.takeoff, "sun.plot", &asked);
}

static void check(const char *words, bool is_there)
{
	ck_assert_msg((strstr(bytes.bytes, words) != NULL) == is_there, "%s", words);
}

/* The number after a text, from *at on, which is then behind it. */
static double number_after(const char **at, const char *text)
{
	const char *found = strstr(*at, text);

	ck_assert_msg(found, "%s", text);
	*at = found + strlen(text);
	return strtod(*at, NULL);
}

/* Adds the class to the cells under the rectangles of its path: "M5 5H9V6H5Z". The corner of the
 * plan and a cell's side on paper are those of the group that has the ground. */
static void cells_add(int class, int cells[MOST][MOST])
{
	const char *at = bytes.bytes, *end;
	double left, top, cell;
	char id[64];

	number_after(&at, "<g id=\"ground\"");
	left = number_after(&at, "translate(");
	top = number_after(&at, " ");
	cell = number_after(&at, "scale(");
	snprintf(id, sizeof id, "<path id=\"%s\"", sun_class_words[class].key);
	at = strstr(bytes.bytes, id);
	if (!at)
		return;
	at = strstr(at, " d=\"");
	end = strstr(at, "Z\"/>");
	while ((at = strchr(at, 'M')) && at < end) {
		double x = number_after(&at, "M"), y = number_after(&at, " ");
		double to = number_after(&at, "H"), foot = number_after(&at, "V");
		int row = (int)lround((y - top) / cell);

		ck_assert_double_lt(fabs(foot - y - cell), 0.001);
		for (int i = (int)lround((x - left) / cell); i < lround((to - left) / cell); i++)
			cells[row][i] += 1 + class;
	}
}

START_TEST(each_pattern_lies_over_the_cells_of_its_class)
{
	int cells[MOST][MOST] = { { 0 } };
	const struct sun_usual *sun;

	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	asked.is_plain = _i == 1;
	draw();
	sun = sun_usual(&garden.takeoff, &arena);
	for (int class = SUN_FULL; class <= SUN_SHADE; class++)
		cells_add(class, cells);
	for (int y = 0; y < 16; y++)
		for (int x = 0; x < 24; x++) {
			int steps = sun->steps[24 * y + x];
			int class = steps == SUN_NO_STEPS ? SUN_FULL :
				(int)sun_class_of(&garden.takeoff, sun_usual_mean(steps));

			ck_assert_msg(cells[y][x] == (class == SUN_FULL ? 0 : 1 + class),
				"%d,%d: %d", x, y, cells[y][x]);
		}
}
END_TEST

START_TEST(the_ground_has_no_patterns_of_its_own_then_but_fixtures_have)
{
	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	draw();
	check("<path id=\"P1\" fill=\"none\"", true);
	check("fill=\"url(#on-p)\"", false);
	check("fill=\"url(#as-p)\"", false);
	check("fill=\"url(#on-U)\"", true);
	check("fill=\"url(#as-U)\"", true);
	asked.with = 0;
	draw();
	check("fill=\"url(#on-p)\"", true);
	check("sun-", false);
}
END_TEST

/* Lines in black, the closer the less sun: how dark a pattern is goes by that alone. */
START_TEST(patterns_need_no_colours)
{
	const char *at, *end;
	double before = INFINITY;

	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	draw();
	at = strstr(bytes.bytes, "<pattern id=\"sun-");
	for (int class = SUN_PART; class <= SUN_SHADE; class++) {
		double apart = number_after(&at, " width=\"");

		ck_assert_double_lt(apart * 1.4, before);
		before = apart;
		end = strstr(at, "</pattern>");
		for (const char *paint = at; (paint = strchr(paint, '#')) && paint < end; paint++)
			ck_assert_int_eq(strncmp(paint, "#000000", 7), 0);
	}
}
END_TEST

START_TEST(the_sheet_says_what_patterns_mean_and_what_is_taken_for_granted)
{
	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	draw();
	check(">full sun: 6 and more h of sun a day<", true);
	check(">part shade: 2 to 4 h of sun a day<", true);
	check("Latitude 51.5 north.", true);
	ck_assert_str_eq(sunlight_words(&(struct report){ .plot = &garden.plot,
		.takeoff = &garden.takeoff, .words = &arena }), "Hours of sun in the mean of days "
		"from 21 March to 21 September, under a clear sky, on level ground. Shed has no "
		"height in the plot, and casts no shade here. Classes: University of Nebraska "
		"Extension, as quoted, title and year not noted. The plot may allow others: "
		"sun-full, sun-part, sun-least.");
	plot_set(&garden.plot, 0, HEAD_SITE, "-34");
	garden_count(&garden);
	ck_assert_ptr_nonnull(strstr(sunlight_words(&(struct report){ .plot = &garden.plot,
		.takeoff = &garden.takeoff, .words = &arena }), "21 September to 21 March"));
}
END_TEST

START_TEST(without_a_latitude_it_is_refused_with_what_is_missing)
{
	struct text why = TEXT_EMPTY;

	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	ck_assert(!svg_fits(&garden.plot, &garden.takeoff, &asked, &why));
	ck_assert_str_eq(why.bytes, sun_missing_words());
	text_fini(&why);
}
END_TEST

START_TEST(it_can_be_stopped)
{
	struct stopper stopper;

	garden_file(&garden, "tests/plots/sun.plot");
	garden_count(&garden);
	for (int64_t at = 0; at < 200; at += 7) {
		struct text_sink out = text_sink(&bytes);

		stopper_begin(&stopper, at);
		report_svg(&out.sink, &garden.plot, &garden.takeoff, "sun.plot", &asked);
		stopper_end();
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sunlight");
	TCase *sunlight = suite_case(suite, "sunlight");

	tcase_add_checked_fixture(sunlight, setup, teardown);
	tcase_add_loop_test(sunlight, each_pattern_lies_over_the_cells_of_its_class, 0, 2);
	tcase_add_test(sunlight, the_ground_has_no_patterns_of_its_own_then_but_fixtures_have);
	tcase_add_test(sunlight, patterns_need_no_colours);
	tcase_add_test(sunlight,
		the_sheet_says_what_patterns_mean_and_what_is_taken_for_granted);
	tcase_add_test(sunlight, without_a_latitude_it_is_refused_with_what_is_missing);
	tcase_add_test(sunlight, it_can_be_stopped);
	return suite;
}
