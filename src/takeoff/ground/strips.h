/* Ground covered by parallel strips from a roll.
 *
 * The first strip lies with its outer edge on the ground's own edge, each other one `lap` over
 * the one before. This divides the ground into rows: the first as wide as the roll, all others
 * as wide as the roll less the lap. In a row, each longest unbroken part that has ground anywhere
 * across the row takes one piece; so does one in which gaps without ground are all shorter than
 * `bridge`, since nobody cuts a strip for so little. Rows do not overlap; a piece is as wide as the
 * roll, so it reaches one lap into the row before. */
#ifndef TAKEOFF_GROUND_STRIPS_H
#define TAKEOFF_GROUND_STRIPS_H

#include "survey/cover.h"

#include <stdbool.h>

/* The ground, as boxes that do not overlap, and the roll. */
struct strips {
	const struct cover_box *boxes; /* none empty */
	size_t count;
	nm width, lap; /* 0 <= lap <= width / 2, so that a point is under two strips at most */
	nm bridge;     /* a shorter gap is run through; 0: none is */
};

/* Level strips run from left to right, the first at the top; upright ones from top to bottom,
 * the first at the left. Turned: the first at the bottom or at the right. */
struct strips_way {
	bool is_upright, is_turned;
};

/* Receives the strips as they are laid. */
struct strips_sink {
	/* A piece and where it lies, row by row; its owner is the number of the strip, from 0. */
	void (*piece)(struct strips_sink *sink, const struct cover_box *piece);
	/* A long edge: along the outer side of the first and of the last strip, and along each
	 * lap. It continues as long as there is a piece on either side of it. */
	void (*edge)(struct strips_sink *sink, nm length);
};

/* Lays the strips. Takes time proportional to the boxes in each row, summed over the rows, and
 * to rows times the distinct ends of boxes along the strips. */
void strips_lay(const struct strips *strips, struct strips_way way, struct strips_sink *sink);

#endif
