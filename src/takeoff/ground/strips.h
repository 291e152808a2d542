/* Ground covered by parallel strips from a roll.
 *
 * The first strip lies with its outer edge on the ground's own edge, each other one `lap` over
 * the one before. So the ground falls into rows, the first as wide as the roll, all others as
 * wide as the roll less the lap: what of it is in a row is what that row's strip has to cover,
 * and within the strip there is a piece for each maximal stretch along it in which there is any
 * ground in the row. Every point lies in one row, so the pieces cover all of it, and two pieces
 * side by side lap. */
#ifndef TAKEOFF_GROUND_STRIPS_H
#define TAKEOFF_GROUND_STRIPS_H

#include "survey/cover.h"

#include <stdbool.h>

/* The ground, as boxes that do not overlap, and the roll. */
struct strips {
	const struct cover_box *boxes; /* none empty */
	size_t count;
	nm width, lap; /* 0 <= lap <= width / 2, so that a place is in two rows at most */
};

/* Level strips run from left to right, the first at the top; upright ones from top to bottom,
 * the first at the left. Turned round the first is at the bottom or at the right. */
struct strips_way {
	bool is_upright, is_turned;
};

/* What is told of the strips as they are laid. */
struct strips_sink {
	/* A piece and where it lies, row by row; its owner is the number of the strip, from 0. */
	void (*piece)(struct strips_sink *sink, const struct cover_box *piece);
	/* A long edge: along the first strip's outer side, along each lap, along the last one's
	 * outer side. Where pieces on either side of it go on, it goes on. */
	void (*edge)(struct strips_sink *sink, nm length);
};

/* Lays the strips. Time goes with the boxes in each row, all rows added up, and with the rows
 * times the different places at which boxes begin and end. */
void strips_lay(const struct strips *strips, struct strips_way way, struct strips_sink *sink);

#endif
