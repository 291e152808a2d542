/* In which ways a bed is its own image, and a layout of its wall can be so too.
 *
 * Never over a diagonal: there the corners on the diagonal would be their own images, and of
 * their two sides only one goes through. */
#ifndef TAKEOFF_WALLS_SYMMETRY_H
#define TAKEOFF_WALLS_SYMMETRY_H

#include "survey/image.h"

/* Turns that a layout stands, with each two of them also one after the other. */
struct symmetry {
	const struct image *images; /* TURN_NONE is left out */
	int count;
	unsigned int turns; /* bit by turn, TURN_NONE among them */
};

/* left-right with top-bottom and half-turn; the quarters with half-turn; each flip; half-turn */
enum { SYMMETRIES_MOST = 5 };

/* Lists the ways of an outline, the most images first, in the arena; returns how many. */
int symmetry_list(struct symmetry list[SYMMETRIES_MOST], struct arena *arena,
	const struct outline *outline);
/* Of the turns that bring a layout with these symmetries to where `turn` does, the first. */
enum turn symmetry_first_turn(unsigned int turns, enum turn turn);

#endif
