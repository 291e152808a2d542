/* The picture's colours: what is written can be read on every ground, and grounds are told apart
 * by all kinds of colour vision. */

#include "base/text.h"
#include "screen/colour.h"
#include "support/golden.h"
#include "support/runner.h"

#include <math.h>

struct colour {
	double red, green, blue; /* 0 to 1, as they are sent */
};

/* The 256 colours from 16 on: a cube of 6 x 6 x 6 and 24 greys. From memory: what xterm and most
 * terminals since have there. */
static struct colour fine_colour(int number)
{
	static const double levels[] = { 0, 95, 135, 175, 215, 255 };
	double grey = 8 + 10 * (number - 232);

	if (number >= 232)
		return (struct colour){ grey / 255, grey / 255, grey / 255 };
	number -= 16;
	return (struct colour){ levels[number / 36] / 255, levels[number / 6 % 6] / 255,
		levels[number % 6] / 255 };
}

/* Eight colours, then the same in bold. From memory: the defaults of xterm and of the Linux
 * console. */
static const unsigned palettes[][16] = {
	{ 0x000000, 0xcd0000, 0x00cd00, 0xcdcd00, 0x0000ee, 0xcd00cd, 0x00cdcd, 0xe5e5e5,
		0x7f7f7f, 0xff0000, 0x00ff00, 0xffff00, 0x5c5cff, 0xff00ff, 0x00ffff, 0xffffff },
	{ 0x000000, 0xaa0000, 0x00aa00, 0xaa5500, 0x0000aa, 0xaa00aa, 0x00aaaa, 0xaaaaaa,
		0x555555, 0xff5555, 0x55ff55, 0xffff55, 0x5555ff, 0xff55ff, 0x55ffff, 0xffffff },
};
enum { PALETTES = sizeof palettes / sizeof *palettes };

static struct colour basic_colour(int palette, int number)
{
	unsigned mixed = palettes[palette][number];

	return (struct colour){ (mixed >> 16) / 255.0, (mixed >> 8 & 255) / 255.0,
		(mixed & 255) / 255.0 };
}

/* World Wide Web Consortium: Web Content Accessibility Guidelines (WCAG) 2.1, 2018, "relative
 * luminance" and "contrast ratio"; success criterion 1.4.3 asks for 4.5 : 1. */
static double linear(double value)
{
	return value <= 0.03928 ? value / 12.92 : pow((value + 0.055) / 1.055, 2.4);
}

static double luminance(struct colour c)
{
	return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
}

static double contrast(struct colour a, struct colour b)
{
	double one = luminance(a), other = luminance(b);

	return (fmax(one, other) + 0.05) / (fmin(one, other) + 0.05);
}

static const double legible = 4.5;

enum { BLACK = 16, WHITE = 231 };

/* Black or white is written on it, whichever has the greater contrast. */
static void check_fine(struct paint paint)
{
	double in_black, in_white, ratio;

	ck_assert_int_ge(paint.ground, 16);
	in_black = contrast(fine_colour(paint.ground), fine_colour(BLACK));
	in_white = contrast(fine_colour(paint.ground), fine_colour(WHITE));
	ck_assert_int_eq(paint.ink, in_white > in_black ? WHITE : BLACK);
	ratio = fmax(in_black, in_white);
	ck_assert_msg(ratio >= legible, "%d on %d: %.2f", paint.ink, paint.ground, ratio);
}

static void check_basic(struct paint paint)
{
	ck_assert_int_lt(paint.ground, 8);
	for (int i = 0; i < PALETTES; i++) {
		double ratio = contrast(basic_colour(i, paint.ground), basic_colour(i, paint.ink));

		ck_assert_msg(ratio >= legible, "%d on %d: %.2f", paint.ink, paint.ground, ratio);
	}
}

START_TEST(what_is_written_can_be_read_on_every_ground)
{
	for (enum plot_class class = CLASS_BED; class < CLASS_OPEN; class++)
		for (int rank = 0; rank < COLOUR_SHADES; rank++) {
			check_fine(colour_of(COLOUR_FINE, class, rank));
			check_basic(colour_of(COLOUR_BASIC, class, rank));
		}
	for (int depth = 0; depth < COLOUR_DEPTHS; depth++)
		check_fine(colour_depth(depth));
	for (int light = 0; light < COLOUR_LIGHTS; light++)
		check_fine(colour_light(light));
	check_fine(colour_cursor(COLOUR_FINE));
	check_basic(colour_cursor(COLOUR_BASIC));
	check_fine(colour_outline(COLOUR_FINE));
	check_basic(colour_outline(COLOUR_BASIC));
}
END_TEST

/* ---- Told apart ------------------------------------------------------------------------------ */

/* How colours look with normal vision, and without cones for long, middle and short waves: Machado,
 * Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision
 * Deficiency", IEEE Transactions on Visualization and Computer Graphics, 2009, severity 1. From
 * memory. */
static const double visions[][3][3] = {
	{ { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } },
	{ { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 },
		{ -0.003882, -0.048116, 1.051998 } },
	{ { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 },
		{ -0.011820, 0.042940, 0.968881 } },
	{ { 1.255528, -0.076749, -0.178779 }, { -0.078411, 0.930809, 0.147602 },
		{ 0.004733, 0.691367, 0.303900 } },
};
enum { VISIONS = sizeof visions / sizeof *visions };

struct lab {
	double l, a, b;
};

static double curve(double t)
{
	return t > 216.0 / 24389 ? cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}

/* International Commission on Illumination: CIE 15, Colorimetry, L*a*b* under D65, with the
 * primaries of IEC 61966-2-1 (sRGB). From memory. */
static struct lab lab_of(struct colour c, int vision)
{
	double rgb[3] = { linear(c.red), linear(c.green), linear(c.blue) }, seen[3], x, y, z;

	for (int i = 0; i < 3; i++) {
		const double *row = visions[vision][i];

		seen[i] = fmin(1, fmax(0, row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2]));
	}
	x = curve((0.4124564 * seen[0] + 0.3575761 * seen[1] + 0.1804375 * seen[2]) / 0.95047);
	y = curve(0.2126729 * seen[0] + 0.7151522 * seen[1] + 0.0721750 * seen[2]);
	z = curve((0.0193339 * seen[0] + 0.1191920 * seen[1] + 0.9503041 * seen[2]) / 1.08883);
	return (struct lab){ 116 * y - 16, 500 * (x - y), 200 * (y - z) };
}

/* The distance of 1976, for the vision that sees least of it. */
static double apart(int one, int other)
{
	double least = INFINITY;

	for (int vision = 0; vision < VISIONS; vision++) {
		struct lab p = lab_of(fine_colour(one), vision);
		struct lab q = lab_of(fine_colour(other), vision);

		least = fmin(least, hypot(hypot(p.l - q.l, p.a - q.a), p.b - q.b));
	}
	return least;
}

static int shade(enum plot_class class, int rank)
{
	return colour_of(COLOUR_FINE, class, rank).ground;
}

START_TEST(the_first_grounds_are_told_apart_by_all_kinds_of_colour_vision)
{
	static const double far_apart = 25; /* ours: some ten times what is just noticed */

	for (enum plot_class one = CLASS_BED; one < CLASS_OPEN; one++)
		for (enum plot_class other = CLASS_BED; other < one; other++)
			ck_assert_msg(apart(shade(one, 0), shade(other, 0)) >= far_apart,
				"%d and %d: %.1f", shade(one, 0), shade(other, 0),
				apart(shade(one, 0), shade(other, 0)));
}
END_TEST

START_TEST(the_second_of_a_class_is_no_other_classs_first)
{
	static const double seen_apart = 6; /* ours */

	for (enum plot_class one = CLASS_BED; one < CLASS_OPEN; one++)
		for (enum plot_class other = CLASS_BED; other < CLASS_OPEN; other++)
			for (int rank = 0; rank < 2; rank++)
				if (one != other || rank == 0)
					ck_assert_msg(apart(shade(one, 1), shade(other, rank)) >=
						seen_apart, "%d and %d", shade(one, 1),
						shade(other, rank));
}
END_TEST

START_TEST(shades_of_a_class_differ_in_lightness)
{
	for (enum plot_class class = CLASS_BED; class < CLASS_OPEN; class++)
		for (int one = 0; one < COLOUR_SHADES; one++)
			for (int other = 0; other < one; other++)
				ck_assert_double_gt(fabs(
					lab_of(fine_colour(shade(class, one)), 0).l -
					lab_of(fine_colour(shade(class, other)), 0).l), 3);
}
END_TEST

/* Green and blue alike, and red no more than they are: one hue, cyan. */
START_TEST(depths_are_of_one_hue_two_to_a_shade_and_the_deeper_the_darker_for_all)
{
	static const double well_apart = 10; /* ours */

	for (int depth = 0; depth < COLOUR_DEPTHS; depth++) {
		int ground = colour_depth(depth).ground;
		struct colour colour = fine_colour(ground);

		ck_assert_double_eq(colour.green, colour.blue);
		ck_assert_double_lt(colour.red, colour.green);
		if (depth % 2) {
			ck_assert_int_eq(ground, colour_depth(depth - 1).ground);
			continue;
		}
		for (int vision = 0; depth && vision < VISIONS; vision++)
			ck_assert_double_gt(
				lab_of(fine_colour(colour_depth(depth - 1).ground), vision).l -
				lab_of(colour, vision).l, well_apart);
	}
}
END_TEST

START_TEST(the_less_sun_the_darker_for_all_kinds_of_colour_vision)
{
	static const double well_apart = 15; /* ours */

	for (int light = 1; light < COLOUR_LIGHTS; light++)
		for (int vision = 0; vision < VISIONS; vision++)
			ck_assert_double_gt(
				lab_of(fine_colour(colour_light(light - 1).ground), vision).l -
				lab_of(fine_colour(colour_light(light).ground), vision).l,
				well_apart);
}
END_TEST

START_TEST(cursor_outline_and_fence_are_like_no_light)
{
	for (int light = 0; light < COLOUR_LIGHTS; light++) {
		int ground = colour_light(light).ground;

		ck_assert_double_gt(apart(colour_cursor(COLOUR_FINE).ground, ground), 20);
		ck_assert_double_gt(apart(colour_outline(COLOUR_FINE).ground, ground), 20);
		ck_assert_double_gt(apart(colour_fence(COLOUR_FINE), ground), 14);
	}
}
END_TEST

START_TEST(cursor_and_outline_are_like_no_depth)
{
	int cursor = colour_cursor(COLOUR_FINE).ground;
	int outline = colour_outline(COLOUR_FINE).ground;

	for (int depth = 0; depth < COLOUR_DEPTHS; depth++) {
		ck_assert_double_gt(apart(cursor, colour_depth(depth).ground), 20);
		ck_assert_double_gt(apart(outline, colour_depth(depth).ground), 20);
	}
}
END_TEST

START_TEST(cursor_outline_and_fence_are_like_no_ground)
{
	int cursor = colour_cursor(COLOUR_FINE).ground;
	int outline = colour_outline(COLOUR_FINE).ground, fence = colour_fence(COLOUR_FINE);

	for (enum plot_class class = CLASS_BED; class < CLASS_OPEN; class++) {
		struct paint basic = colour_of(COLOUR_BASIC, class, 0);

		ck_assert_int_ne(basic.ground, colour_cursor(COLOUR_BASIC).ground);
		ck_assert_int_ne(basic.ground, colour_outline(COLOUR_BASIC).ground);
		ck_assert_int_ne(basic.ground, colour_fence(COLOUR_BASIC));
		for (int rank = 0; rank < COLOUR_SHADES; rank++) {
			ck_assert_double_gt(apart(cursor, shade(class, rank)), 12);
			ck_assert_double_gt(apart(outline, shade(class, rank)), 20);
			ck_assert_double_gt(apart(fence, shade(class, rank)), rank ? 14 : 25);
		}
	}
	ck_assert_double_gt(apart(cursor, outline), 40);
	ck_assert_double_gt(apart(cursor, fence), 12);
	ck_assert_double_gt(apart(outline, fence), 20);
}
END_TEST

START_TEST(of_eight_colours_every_second_entry_has_a_pattern_and_without_any_none_has)
{
	ck_assert(!colour_is_hatched(COLOUR_BASIC, CLASS_BED, 0));
	ck_assert(colour_is_hatched(COLOUR_BASIC, CLASS_BED, 1));
	ck_assert(!colour_is_hatched(COLOUR_BASIC, CLASS_OPEN, 1));
	ck_assert(!colour_is_hatched(COLOUR_FINE, CLASS_BED, 1));
	ck_assert(!colour_is_hatched(COLOUR_NONE, CLASS_BED, 1));
	ck_assert_int_eq(colour_of(COLOUR_NONE, CLASS_BED, 0).ground, COLOUR_DEFAULT);
	ck_assert_int_eq(colour_of(COLOUR_FINE, CLASS_OPEN, 0).ground, COLOUR_DEFAULT);
	ck_assert(colour_cursor(COLOUR_NONE).is_reversed);
	ck_assert(colour_outline(COLOUR_NONE).is_reversed);
}
END_TEST

/* ---- As they were looked at ------------------------------------------------------------------ */

static void add_paint(struct text *out, const char *what, int number, struct paint paint)
{
	text_print(out, "%s %d: %d on %d%s%s%s\n", what, number, paint.ink, paint.ground,
		paint.is_bold ? " bold" : "", paint.is_underlined ? " underlined" : "",
		paint.is_reversed ? " reversed" : "");
}

static void add_classes(struct text *out, enum colour_level level)
{
	static const char *const names[] = { [CLASS_BED] = "bed", [CLASS_PATH] = "path",
		[CLASS_LAWN] = "lawn", [CLASS_FIXTURE] = "fixture", [CLASS_OPEN] = "open" };

	for (int class = CLASS_BED; class <= CLASS_OPEN; class++)
		for (int rank = 0; rank <= COLOUR_SHADES; rank++) {
			if (colour_is_hatched(level, (enum plot_class)class, rank))
				text_add(out, "hatched ");
			add_paint(out, names[class], rank,
				colour_of(level, (enum plot_class)class, rank));
		}
}

START_TEST(all_colours_are_as_they_were_looked_at)
{
	struct text out = TEXT_EMPTY;

	for (int level = COLOUR_NONE; level <= COLOUR_FINE; level++) {
		enum colour_level of = (enum colour_level)level;

		text_print(&out, "---- level %d, %d shades, fence %d\n", level, colour_shades(of),
			colour_fence(of));
		add_classes(&out, of);
		add_paint(&out, "cursor", 0, colour_cursor(of));
		add_paint(&out, "outline", 0, colour_outline(of));
	}
	for (int depth = 0; depth < COLOUR_DEPTHS; depth++)
		add_paint(&out, "depth", depth, colour_depth(depth));
	for (int light = 0; light < COLOUR_LIGHTS; light++)
		add_paint(&out, "light", light, colour_light(light));
	golden_check("screen/colours.txt", out.bytes);
	text_fini(&out);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("colour");
	TCase *colours = suite_case(suite, "colours");

	tcase_add_test(colours, what_is_written_can_be_read_on_every_ground);
	tcase_add_test(colours, the_first_grounds_are_told_apart_by_all_kinds_of_colour_vision);
	tcase_add_test(colours, the_second_of_a_class_is_no_other_classs_first);
	tcase_add_test(colours, shades_of_a_class_differ_in_lightness);
	tcase_add_test(colours,
		depths_are_of_one_hue_two_to_a_shade_and_the_deeper_the_darker_for_all);
	tcase_add_test(colours, the_less_sun_the_darker_for_all_kinds_of_colour_vision);
	tcase_add_test(colours, cursor_outline_and_fence_are_like_no_light);
	tcase_add_test(colours, cursor_and_outline_are_like_no_depth);
	tcase_add_test(colours, cursor_outline_and_fence_are_like_no_ground);
	tcase_add_test(colours,
		of_eight_colours_every_second_entry_has_a_pattern_and_without_any_none_has);
	tcase_add_test(colours, all_colours_are_as_they_were_looked_at);
	return suite;
}
