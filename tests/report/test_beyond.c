/* What shades a plan to scale from beyond its edges, and houses and shade as they are drawn. */
#include "report/svg/beyond.h"
#include "report/svg/svg.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct arena arena;
static struct text bytes;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	bytes = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&bytes);
	arena_clear(&arena);
	garden_fini(&garden);
}

/* 8 by 4 cells of a foot. */
static void given(const char *lines)
{
	garden_rectangle(&garden, 'p', 8, 4);
	plot_add_lines(&garden.plot, lines);
	garden_count(&garden);
}

/* The lines of all remarks, a blank between them. */
static struct text remarks(void)
{
	struct remark_list list = { .arena = &arena };
	struct text words = TEXT_EMPTY;

	beyond_add(&list, &(struct report){ .plot = &garden.plot, .takeoff = &garden.takeoff,
		.words = &arena, .units = plot_units(&garden.plot), .wording = WORDING_TEXT });
	for (size_t i = 0; i < list.count; i++)
		for (int j = 0; j < list.items[i].line_count; j++)
			text_print(&words, "%s%s", words.length ? " " : "",
				list.items[i].lines[j]);
	return words;
}

static const struct { const char *at, *words; } places[] = {
	{ "11,0 to 15,9", "3 ft right of it." },
	{ "8,0 to 9,3", "at its right edge." },
	{ "-5,1 to -2,3", "2 ft left of it." },
	{ "2,-9 to 3,-6", "6 ft above it." },
	{ "2,10 to 30,20", "6 ft below it." },
	{ "-4,-3 to -1,-2", "1 ft left of it, 2 ft above it." },
	{ "9,4 to 12,6", "1 ft right of it, at its lower edge." },
};
enum { PLACES = sizeof places / sizeof *places };

/* From edge to edge, counted on squared paper. */
START_TEST(it_says_how_far_and_which_way)
{
	struct text lines = TEXT_EMPTY, words;

	text_print(&lines, "shade \"Limes\" 36 ft\n  from %s\n", places[_i].at);
	given(lines.bytes);
	words = remarks();
	ck_assert_int_eq(strncmp(words.bytes, "Shades the plan: Limes, 36 ft high, ", 36), 0);
	ck_assert_str_eq(words.bytes + 36, places[_i].words);
	text_fini(&words);
	text_fini(&lines);
}
END_TEST

START_TEST(what_is_partly_on_the_plan_or_has_no_height_is_not_listed)
{
	struct text words;

	given("house \"One\" 20 ft\n  from 7,0 to 20,9\nhouse \"Two\"\n  from 20,0 to 30,9\n"
		"house \"Three\" 12 ft\n  from 0,5 to 3,6\n");
	words = remarks();
	ck_assert_str_eq(words.bytes, "Shades the plan: Three, 12 ft high, 1 ft below it.");
	text_fini(&words);
}
END_TEST

START_TEST(houses_and_shade_are_drawn_with_their_heights)
{
	const struct svg_asked asked = SVG_AS_FITS;
	struct text_sink out = text_sink(&bytes);

	given("house \"One\" 20 ft\n  from 1,0 to 6,1\nhouse \"Two\"\n  from 0,3 to 7,4\n"
		"shade \"Limes\" 36 ft\n  from 8,0 to 9,3\n");
	report_svg(&out.sink, &garden.plot, &garden.takeoff, "a.plot", &asked);
	ck_assert_ptr_nonnull(strstr(bytes.bytes, ">house: One, 20 ft high<"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, ">house: Two<"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, ">shade: Limes, 36 ft high<"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, ">what casts shade besides: trees,"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, ">Shades the plan: Limes, 36 ft high,"));
}
END_TEST

/* What comes after a text. */
static const char *after(const char *at, const char *text)
{
	at = strstr(at, text);
	ck_assert_msg(at, "%s", text);
	return at + strlen(text);
}

static double number_after(const char *at, const char *text)
{
	return strtod(after(at, text), NULL);
}

/* By the corner of the plan and a cell's side on paper, as the group of the ground has them. */
START_TEST(what_is_beyond_the_plan_is_drawn_to_scale)
{
	const struct svg_asked asked = SVG_AS_FITS;
	struct text_sink out = text_sink(&bytes);
	const char *ground, *shade;
	double cell, left, top;

	given("shade \"Limes\" 36 ft\n  from 9,-1 to 10,3\n");
	report_svg(&out.sink, &garden.plot, &garden.takeoff, "a.plot", &asked);
	ground = after(bytes.bytes, "<g id=\"ground\"");
	shade = after(bytes.bytes, "stroke-dasharray=\"0.5,0.9\"");
	cell = number_after(ground, "scale(");
	left = number_after(ground, "translate(");
	top = number_after(after(ground, "translate("), " ");
	ck_assert_double_eq_tol(number_after(shade, " x=\""), left + 9 * cell, 0.001);
	ck_assert_double_eq_tol(number_after(shade, " y=\""), top - cell, 0.001);
	ck_assert_double_eq_tol(number_after(shade, " width=\""), cell, 0.001);
	ck_assert_double_eq_tol(number_after(shade, " height=\""), 4 * cell, 0.001);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("beyond");
	TCase *beyond = suite_case(suite, "beyond");

	tcase_add_checked_fixture(beyond, setup, teardown);
	tcase_add_loop_test(beyond, it_says_how_far_and_which_way, 0, PLACES);
	tcase_add_test(beyond, what_is_partly_on_the_plan_or_has_no_height_is_not_listed);
	tcase_add_test(beyond, what_is_beyond_the_plan_is_drawn_to_scale);
	tcase_add_test(beyond, houses_and_shade_are_drawn_with_their_heights);
	return suite;
}
