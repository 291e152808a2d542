/* What is on a plot and around it, as the plan under it changes. */
#ifndef PLOT_EDIT_SURROUNDINGS_MOVE_H
#define PLOT_EDIT_SURROUNDINGS_MOVE_H

#include "plot/plot.h"

/* How grid points move. */
struct points_way {
	const struct ground *size; /* the plan as it will be; it needs no cells */
	/* Where a grid point goes, or a corner beyond the plan: what is on one line of the grid
	 * stays on one. */
	struct place (*point)(const void *how, struct place point);
	const void *how;
};

/* Of services what then lies outside the plan is cut off: a route may become several, or none. A
 * tie, a circle or the drop is gone where its grid point is outside. Rectangles stay, at least a
 * cell in size and as far off as their corners may be. */
void surroundings_move(struct surroundings *around, const struct points_way *way);
/* The level is gone where its grid point is outside; a fall stays. */
void finish_move(struct finish *finish, const struct points_way *way);

/* Whether a test holds for each grid point and each corner of all this. */
bool surroundings_all(const struct surroundings *around, const struct finish *finish,
	bool (*holds)(const void *how, struct place point), const void *how);

#endif
