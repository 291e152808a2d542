/* The colours of the picture: what each kind of ground is painted with, and what is written on it.
 * Numbers are those of the terminal's palette; with eight colours, 8 to 15 are the first eight in
 * bold. Every cell brings its own ground, so that nothing depends on the terminal being dark or
 * light. Pure, but for what follows colour_open. */
#ifndef SCREEN_COLOUR_H
#define SCREEN_COLOUR_H

#include "plot/plot.h"

enum colour_level { COLOUR_NONE, COLOUR_BASIC, COLOUR_FINE };
enum { COLOUR_DEFAULT = -1, BASIC_COLOURS = 8, COLOUR_SHADES = 6,
	COLOUR_BASIC_SHADES = 2, COLOUR_DEPTHS = 10, COLOUR_LIGHTS = 4 };

struct paint {
	short ink, ground;
	bool is_bold, is_reversed, is_underlined;
};

/* Of the entry that is number `rank` of its class in the legend, from 0; open ground is the
 * terminal's own. Where there are no more shades they begin anew: the letter tells. */
struct paint colour_of(enum colour_level level, enum plot_class class, int rank);
/* Whether the shade is the one before it under a pattern. */
bool colour_is_hatched(enum colour_level level, enum plot_class class, int rank);
/* How many entries of a class have shades of their own, with their patterns. */
int colour_shades(enum colour_level level);
/* Of ground that lies so deep, from 0, the highest, to COLOUR_DEPTHS - 1, the lowest: the deeper
 * the darker, two depths to a shade. Of 256 colours alone. */
struct paint colour_depth(int depth);
/* Of ground with so much sun, from 0, full, to COLOUR_LIGHTS - 1, shade: the less the darker. Of
 * 256 colours alone. */
struct paint colour_light(int light);
/* The cursor's cell; what is pegged or marked. Without colours: reversed. */
struct paint colour_cursor(enum colour_level level);
struct paint colour_outline(enum colour_level level);
/* A fence from afar. */
short colour_fence(enum colour_level level);

/* As many colours as the terminal has and NO_COLOR allows; curses is up. */
void colour_open(void);
enum colour_level colour_level(void);

#endif
