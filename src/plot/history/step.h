/* The one record of an edit: the letters that changed, before and after, and the rest of the plot,
 * or ground of another size, before and after where that changed. It is found by comparing, so an
 * act changes a plot as it likes and nobody writes an inverse. */
#ifndef PLOT_HISTORY_STEP_H
#define PLOT_HISTORY_STEP_H

#include "plot/plot.h"

/* Letters of one row that changed: `length` of them from x on. */
struct changed {
	int x, y, length;
};

enum { STEP_BEFORE, STEP_AFTER, STEP_SIDES };

struct step {
	struct changed *changed; /* in reading order; none where the ground has another size */
	size_t changed_count;
	char *letters;              /* of each in turn: before, after */
	struct details *details;    /* of both sides; NULL where they did not change */
	struct ground *grounds;     /* of both sides; NULL where the size did not change */
	char *name;                 /* of what was done, for history.c; NULL: none yet */
	size_t bytes;               /* of memory, the heap's share included */
	struct step *older, *newer; /* list links, for history.c */
};

/* The step from one plot to another; NULL where they are equal. step_free frees it. */
struct step *step_between(const struct plot *before, const struct plot *after);
/* Whether there is none. */
bool step_is_none(const struct plot *before, const struct plot *after);
void step_free(struct step *step);

/* Makes a plot that is at the other side of the step what it was at this one. */
void step_put(const struct step *step, struct plot *plot, int side);
/* The first cell that changed, in reading order; -1,-1 where only the details or the size did. */
struct place step_place(const struct step *step);

#endif
