/* Images of a region: its shape turned, or flipped over, in one of eight ways; and which side of
 * one outline then lies on which of another. */
#ifndef SURVEY_IMAGE_H
#define SURVEY_IMAGE_H

#include "survey/outline.h"

enum turn {
	TURN_NONE,
	TURN_LEFT_RIGHT,   /* left for right */
	TURN_TOP_BOTTOM,   /* top for bottom */
	TURN_HALF,
	TURN_QUARTER,      /* a quarter clockwise */
	TURN_QUARTER_BACK,
	TURN_FALLING,      /* over the diagonal that falls from the left to the right */
	TURN_RISING,       /* over the other */
	TURNS
};

/* True where left and right hand change: a loop is then walked the other way round. */
bool turn_is_flip(enum turn turn);
/* One after the other. */
enum turn turn_then(enum turn first, enum turn next);

/* Where a loop lies: its side i on side `first` + i of that loop, where flipped `first` - i, all
 * counted round the loop. */
struct loop_image {
	int loop, first;
};

struct image {
	enum turn turn;
	const struct loop_image *loops; /* by loop */
};

/* True where the outline, turned, is the other one, wherever they lie on the plan; then *out
 * says how, in the arena. O(corners), with the log of the holes. */
bool image_find(struct image *out, struct arena *arena, const struct outline *outline,
	const struct outline *other, enum turn turn);
/* The side on which a side of the outline lies, and the corner on which its first corner does; of
 * a loop with so many sides. */
int image_side(const struct image *image, int loop, int side, int sides);
int image_corner(const struct image *image, int loop, int corner, int sides);

#endif
