/* Levels, as the plan under them changes. */
#ifndef PLOT_EDIT_LEVELS_MOVE_H
#define PLOT_EDIT_LEVELS_MOVE_H

#include "plot/plot.h"

/* How spots of the ground move, one direction at a time. */
struct spots_way {
	const struct ground *size; /* the plan as it will be; it needs no cells */
	nm cell;                   /* the side of its cells */
	/* Where from the old datum the ground was that will be `at` from the new one: to the right,
	 * or down where is_down. */
	nm (*old)(const void *how, bool is_down, nm at);
	const void *how;
};

/* Levels are measured again at the same step from the new datum, off the ground as it was: between
 * old drops bilinear, beyond the outermost as those. A step that the new plan has too many of is
 * doubled until it has not. */
void levels_move(struct levels *levels, const struct spots_way *way);
/* The same where the plan keeps its datum and gets another size, or other cells. */
void levels_cover(struct levels *levels, const struct ground *size, nm cell);
/* Measures at another step, off the ground as it was measured so far; where it was not, all of it
 * is as high as the string. A step that the plan has too many of is doubled. */
void levels_set_step(struct levels *levels, nm step, const struct ground *size, nm cell);

#endif
