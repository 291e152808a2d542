/* Whether one can get about in the garden and reach what grows there:
 *
 *	path-narrow      a path is less wide than is allowed for
 *	path-barrow      the same for a barrow; where that is all along, it alone is told
 *	path-cut-off     nobody gets to a path from outside the plan, over path, lawn and open
 *	                 ground and through gates; or it touches no gate, fixture, bed, lawn, house
 *	                 or boundary. Paths that touch are one
 *	bed-reach        ground of a bed is out of an arm's reach (survey/reach.h); once a bed
 *	lawn-narrow      a lawn is less wide than is allowed for
 *	fixture-tall     a fixture is higher than its narrower way allows for
 *	fixture-no-path  no path touches a fixture, without a fence between. One that stands in a
 *	                 bed, with nothing but beds round it, needs none
 *	house-...        houses.h
 *
 * Widths are those of survey/narrow.h: posts and panels of a fence beside a path are not taken off.
 * A length of 0 allowed for asks nothing. */
#ifndef TAKEOFF_WALKS_WALKS_H
#define TAKEOFF_WALKS_WALKS_H

#include "takeoff/walks/barrow_ways.h"

/* Also finds the ways of a barrow, whose snags are in barrow_ways.h. */
void walks_find(struct barrow_ways *out, const struct basis *basis);

#endif
