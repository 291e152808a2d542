/* Where ground of a class is narrow, letters of the class taken together: where a square of whole
 * cells does not get to, however it is moved about in it; and necks, where squares get to both
 * sides, but none from one to the other, over whatever way. A bay is not narrow: ground that opens
 * on one side only, to ground that a square gets to, and is smaller than the square both ways;
 * nobody needs to pass there.
 *
 * Time: O(cells). */
#ifndef SURVEY_NARROW_H
#define SURVEY_NARROW_H

#include "plot/mirror.h"
#include "survey/survey.h"

/* Joined cells. */
struct narrow {
	struct place first;     /* in reading order */
	struct rectangle cells; /* around them */
};

struct narrow_search {
	int columns, rows, side;
	int at;     /* the cell looked at next */
	unsigned char *marks;
	const struct narrow_search *within; /* NULL: none */
	int *waiting; /* cells of the narrow ground being gone over */
	size_t waiting_count, waiting_capacity;
};

/* side: of the square, in cells, at least 1. */
void narrow_begin(struct narrow_search *out, const struct survey *survey, enum plot_class class,
	int side);
/* The next in reading order of their first cells; false where there is none, or it is stopped
 * (base/stop.h). Where there is a search `within`, of the same ground by a smaller square, what
 * that one has found all of is left out. */
bool narrow_next(struct narrow_search *search, struct narrow *found);
void narrow_end(struct narrow_search *search);

#endif
