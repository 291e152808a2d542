#include "screen/colour.h"
#include "screen/curses.h"

#include <stdlib.h>

enum { FINE_COLOURS = 256 };
#define GROUNDS CLASS_OPEN /* classes before it have colours */

struct shade {
	short ground, ink; /* black or white, whichever has the greater contrast */
};

/* Soil, crushed stone, turf, slate and water. Those of one class differ in lightness; the first of
 * each are told apart by every kind of colour vision. */
static const struct shade fine[GROUNDS][COLOUR_SHADES] = {
	[CLASS_BED] = { { 94, 231 }, { 52, 231 }, { 180, 16 }, { 137, 16 }, { 131, 16 },
		{ 173, 16 } },
	[CLASS_PATH] = { { 254, 16 }, { 248, 16 }, { 187, 16 }, { 244, 16 }, { 250, 16 },
		{ 246, 16 } },
	[CLASS_LAWN] = { { 71, 16 }, { 150, 16 }, { 22, 231 }, { 192, 16 }, { 28, 231 },
		{ 41, 16 } },
	[CLASS_FIXTURE] = { { 17, 231 }, { 110, 16 }, { 25, 231 }, { 153, 16 }, { 20, 231 },
		{ 61, 231 } },
};

enum { DEPTHS_PER_SHADE = 2 };
/* One hue that no class of ground has, in steps of lightness that are alike. */
static const struct shade depths[COLOUR_DEPTHS / DEPTHS_PER_SHADE] = { { 195, 16 }, { 152, 16 },
	{ 109, 16 }, { 66, 16 }, { 23, 231 } };

/* From the light of day to dusk, in steps of lightness that every kind of colour vision sees. */
static const struct shade lights[COLOUR_LIGHTS] = { { 195, 16 }, { 180, 16 }, { 96, 231 },
	{ 17, 231 } };

enum { BRIGHT_WHITE = 15 };
static const struct shade basic[GROUNDS] = {
	[CLASS_BED] = { COLOR_RED, BRIGHT_WHITE }, [CLASS_PATH] = { COLOR_WHITE, COLOR_BLACK },
	[CLASS_LAWN] = { COLOR_GREEN, COLOR_BLACK },
	[CLASS_FIXTURE] = { COLOR_BLUE, BRIGHT_WHITE },
};

static struct paint paint_of(struct shade shade)
{
	return (struct paint){ .ink = shade.ink, .ground = shade.ground };
}

static const struct paint plain = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT };
static const struct paint reversed = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT,
	.is_reversed = true };

struct paint colour_of(enum colour_level level, enum plot_class class, int rank)
{
	if (class >= GROUNDS || level == COLOUR_NONE)
		return plain;
	return paint_of(level == COLOUR_BASIC ? basic[class] : fine[class][rank % COLOUR_SHADES]);
}

bool colour_is_hatched(enum colour_level level, enum plot_class class, int rank)
{
	return level == COLOUR_BASIC && class < GROUNDS && rank % COLOUR_BASIC_SHADES;
}

int colour_shades(enum colour_level level)
{
	return level == COLOUR_NONE ? 0 : level == COLOUR_BASIC ? COLOUR_BASIC_SHADES :
		COLOUR_SHADES;
}

struct paint colour_depth(int depth)
{
	return paint_of(depths[depth / DEPTHS_PER_SHADE]);
}

struct paint colour_light(int light)
{
	return paint_of(lights[light]);
}

struct paint colour_cursor(enum colour_level level)
{
	struct paint paint = level == COLOUR_NONE ? reversed : level == COLOUR_BASIC ?
		paint_of((struct shade){ COLOR_CYAN, COLOR_BLACK }) :
		paint_of((struct shade){ 226, 16 });

	paint.is_bold = level == COLOUR_NONE;
	paint.is_underlined = paint.is_bold; /* on an outline it would not be seen */
	return paint;
}

struct paint colour_outline(enum colour_level level)
{
	return level == COLOUR_NONE ? reversed : level == COLOUR_BASIC ?
		paint_of((struct shade){ COLOR_MAGENTA, BRIGHT_WHITE }) :
		paint_of((struct shade){ 201, 16 });
}

short colour_fence(enum colour_level level)
{
	return level == COLOUR_FINE ? 208 : COLOR_YELLOW;
}

static enum colour_level opened;

void colour_open(void)
{
	const char *no_colour = getenv("NO_COLOR");

	if ((no_colour && *no_colour) || !has_colors())
		return;
	start_color();
	if (COLORS < BASIC_COLOURS)
		return;
	use_default_colors();
	/* More than 256 means that a number is a mix of red, green and blue; its first eight are
	 * the basic ones all the same. */
	opened = COLORS == FINE_COLOURS ? COLOUR_FINE : COLOUR_BASIC;
}

enum colour_level colour_level(void)
{
	return opened;
}
