#ifndef SUPPORT_BEDS_H
#define SUPPORT_BEDS_H

/* Raised beds for tests: at random, and with their walls laid. */

#include "support/geos.h"
#include "support/random.h"
#include "takeoff/takeoff.h"

/* A plot and what the trades under test make of it. */
struct beds {
	struct plot plot;
	struct arena arena;
	struct takeoff takeoff;
};

/* Surveys beds->plot, lays its walls, plans the cutting and sorts the snags. */
void beds_lay(struct beds *beds);
void beds_fini(struct beds *beds);

/* One bed `b` of so many cells. */
void beds_rectangle(struct plot *plot, int columns, int rows);
/* Sets the block of every bed. */
void beds_set_block(struct plot *plot, nm along, nm across, nm up);
void beds_set_courses(struct plot *plot, int courses);
void beds_set_cell(struct plot *plot, nm cell);

/* A block of a size in use, or of any size in 1/16 in or mm. */
struct size beds_random_block(struct random *random);

/* One or several beds `b` of joined rectangles, each at least `least` cells wide and high and at
 * most twice that and 6 more, in up to `most` by `most` of them; with holes and pinches now and
 * then. Most have a wall that can be laid if a wall takes at most half of `least`. */
void beds_at_random(struct plot *plot, struct random *random, int least, int most);

/* A formal garden: four quarters in mirror symmetry about both middles, each a rectangle, an
 * ell, a tee, a frame or two rectangles, with paths between them; all sides multiples of `step`
 * cells. */
void beds_formal(struct plot *plot, struct random *random, int step);

/* A region cell by cell, in metres, as GEOS joins them. */
GEOSGeometry *beds_shape(GEOSContextHandle_t geos, const struct survey *survey, int region);

/* How many snags have the code. */
int beds_snags(const struct beds *beds, enum snag_code code);

#endif
