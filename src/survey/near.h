/* What is near a line in the ground, or within a circle or a rectangle of it. Exact: distances are
 * compared by their squares, in whole nanometres.
 *
 * A thing is a box, which may have no width, no height or neither, and how far around it ground is
 * near; what is just so far away is not. Around a box of 0 only what lies in it is near. */
#ifndef SURVEY_NEAR_H
#define SURVEY_NEAR_H

#include "plot/surroundings.h"
#include "survey/cover.h"
#include "survey/survey.h"

struct near_thing {
	nm left, top, right, bottom; /* left <= right, top <= bottom */
	nm around;                   /* 0 or more */
};

/* A leg of a service, with `around` on all sides of it. */
struct near_thing near_leg(struct leg leg, nm cell, nm around);
/* A circle or a rectangle that is kept. */
struct near_thing near_obstacle(const struct obstacle *obstacle, nm cell);

/* Whether some of a box is near: more than its edge. */
bool near_box(const struct near_thing *thing, const struct cover_box *box);
/* The same of a disc so many nm across; of a point where that is 0. */
bool near_disc(const struct near_thing *thing, nm x, nm y, nm across);

/* Whole cells of which some is near: one byte each, row by row. */
struct near_cells {
	const struct survey *survey;
	unsigned char *cells;
	struct rectangle within; /* all of them; none where right < left */
};

/* None. near_cells_end frees them. */
void near_cells_begin(struct near_cells *cells, const struct survey *survey);
/* Puts in all that are near a thing. It can be stopped (base/stop.h). Time: O(cells near it). */
void near_cells_add(struct near_cells *cells, const struct near_thing *thing);
/* None again; takes no longer than to put them in. */
void near_cells_clear(struct near_cells *cells);
/* Of a cell inside the plan. */
bool near_cells_hold(const struct near_cells *cells, int x, int y);
void near_cells_end(struct near_cells *cells);

#endif
