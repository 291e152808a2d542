/* Growing and cropping the plan on any side. */
#ifndef PLOT_EDIT_RESIZE_H
#define PLOT_EDIT_RESIZE_H

#include "plot/plot.h"

/* Columns or rows added on each side; less than 0: cropped. */
struct margins {
	int left, top, right, bottom;
};

/* True where both sides stay between 1 and SIDE_MOST. */
bool resize_fits(const struct ground *ground, const struct margins *margins);
/* Counts the cells of each class that would fall outside; returns how many are not open ground. */
int64_t resize_loss(const struct plot *plot, const struct margins *margins, int64_t lost[CLASSES]);
/* What of all fences would: sides of cells, and gates of which any part does. */
struct fence_loss {
	int64_t sides, gates;
};
struct fence_loss resize_fence_loss(const struct plot *plot, const struct margins *margins);
/* What of all that is around would: sides of cells of services, circles, ties, specimens, the
 * drop, the level of the finished ground. */
struct around_loss {
	int64_t service_sides, circles, ties, specimens;
	bool has_drop, has_level;
};
struct around_loss resize_around_loss(const struct plot *plot, const struct margins *margins);
/* Grows or crops; new ground is open. Fences move with the ground, and are cut where it is;
 * names and drifts too, and stay in their region while any of it is left, and specimens; so does
 * what is around, as surroundings_move has it, and levels are measured anew from the datum. A set
 * mirror axis moves too; one that would leave the plan is unset. resize_fits must hold. */
void resize_plot(struct plot *plot, const struct margins *margins);

#endif
