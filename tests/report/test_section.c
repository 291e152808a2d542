/* Sections of walls: what they say and how they are drawn. */
#include "report/svg/svg.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text bytes;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	bytes = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&bytes);
	garden_fini(&garden);
}

/* The drawing from the first section's title on. */
static const char *section(void)
{
	static const struct svg_asked asked = { PAPER_A3, TURN_LANDSCAPE, 0, 1, 0, true };
	struct text_sink sink = text_sink(&bytes);
	const char *at;

	report_svg(&sink.sink, &garden.plot, &garden.takeoff, "a.plot", &asked);
	at = strstr(bytes.bytes, "Section of the wall");
	ck_assert(at);
	return at;
}

/* All that stands there, with a blank after each line of words. */
static const char *words_of(const char *at)
{
	static char words[1 << 14];
	size_t length = 0;

	while ((at = strstr(at, "<text")) != NULL) {
		size_t count;

		at = strchr(at, '>') + 1;
		count = strcspn(at, "<");
		memcpy(words + length, at, count);
		length += count;
		words[length++] = ' ';
	}
	words[length] = '\0';
	return words;
}

/* A wall of 3 courses of 16 in x 8 in x 6 in, of which 2 in are below ground (embed), on a base of
 * 4 in; 1 1/2 in are left free, then 2 in of mulch. The bed is filled from the ground as it is: 18
 * in - 2 in - 1 1/2 in - 2 in = 12 1/2 in of soil; where it is dug out, 2 in more. Worked by
 * hand. */
START_TEST(it_says_what_the_wall_is_made_of)
{
	static const struct {
		const char *inside, *cap, *said;
	} rows[] = {
		{ "undug", "none", "left free 1 1/2 in mulch 2 in soil 12 1/2 in 3 courses of "
			"block 16 in x 8 in x 6 in, 18 in high, 16 in of it above ground finished "
			"ground embed 2 in base 4 in, 6 in past the outer face, 2 in past the "
			"inner one " },
		{ "filled", "none", " soil 14 1/2 in " },
		{ "base", "none", " soil 14 1/2 in " },
		{ "base", "none", " 2 in past the inner one, and all over the inside " },
		{ "undug", "16 in x 8 in x 2 in", " cap 16 in x 8 in x 2 in left free 1 1/2 in " },
	};
	const char *words;

	garden_rectangle(&garden, 'b', 9, 6);
	plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 8 in x 6 in");
	plot_set(&garden.plot, 'b', BED_INSIDE, rows[_i].inside);
	plot_set(&garden.plot, 'b', BED_CAP, rows[_i].cap);
	garden_count(&garden);
	words = words_of(section());
	ck_assert_msg(strstr(words, rows[_i].said), "%s", words);
}
END_TEST

/* The heights of boxes that were drawn with the fill and this width of line. */
static int count_boxes(const char *at, const char *pen, double *heights, int most)
{
	int count = 0;

	while ((at = strstr(at, pen)) != NULL && count < most) {
		const char *box = strstr(at, "<rect"), *high = strstr(box, "height=\"");

		heights[count++] = strtod(high + strlen("height=\""), NULL);
		at = high;
	}
	return count;
}

/* At 1:20 a course of 150 mm is 7.5 mm high, a base of 100 mm 5 mm. */
START_TEST(it_is_drawn_to_its_scale)
{
	double heights[16];
	const char *at;

	garden_file(&garden, "plots/elbow.plot");
	garden_count(&garden);
	at = section();
	ck_assert(strstr(at, "1:20"));
	ck_assert_int_eq(count_boxes(at, "fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"0.3\"",
		heights, 16), 3);
	for (int i = 0; i < 3; i++)
		ck_assert_double_eq_tol(heights[i], 7.5, 1e-9);
	ck_assert_int_eq(count_boxes(at, "fill=\"#bdbdbd\"", heights, 16), 1);
	ck_assert_double_eq_tol(heights[0], 5, 1e-9);
}
END_TEST

START_TEST(a_wall_of_forty_courses_has_room)
{
	garden_rectangle(&garden, 'b', 40, 40);
	plot_set(&garden.plot, 'b', BED_BLOCK, "2 m x 500 mm x 500 mm");
	plot_set(&garden.plot, 'b', BED_COURSES, "40");
	garden_count(&garden);
	ck_assert(strstr(section(), "40 courses"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("section");
	TCase *walls = suite_case(suite, "walls");

	tcase_add_checked_fixture(walls, setup, teardown);
	tcase_add_loop_test(walls, it_says_what_the_wall_is_made_of, 0, 5);
	tcase_add_test(walls, it_is_drawn_to_its_scale);
	tcase_add_test(walls, a_wall_of_forty_courses_has_room);
	return suite;
}
