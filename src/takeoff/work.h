/* The order of work: for each step quantities, tools and hire, cautions, and the hours it takes
 * one person where a rate is published.
 *
 * Rates, hours per cubic metre, by New Zealand trade labour factors: digging by hand 1.20 in
 * sand, 2.20 in medium ground, 3.30 in heavy ground; loading 1.00, 1.30, 1.90; taking up to 50
 * m by barrow, spreading and levelling 1.25; a base course of 150 mm 1.00. Loam counts as
 * medium ground, clay as heavy. For dry-laid walls, fences, edging and turf no published rate
 * is known. */
#ifndef TAKEOFF_WORK_H
#define TAKEOFF_WORK_H

#include <stdint.h>

struct arena;
struct takeoff;

struct work_step {
	const char *title;   /* "Lay the walls" */
	const char *doing;   /* what to do, in a sentence or two */
	const char *tools;   /* tools and what to hire; NULL: none */
	const char *caution; /* NULL: none of its own */
	const int *items;    /* what it takes: indices into the items of the takeoff */
	int item_count;
	int64_t barrows;     /* loads of its loose goods; 0: none */
	double hours;        /* of one person; 0 where no rate is published */
	const char *rate;    /* the work that the rate is for; NULL where none is published */
};

struct work {
	const struct work_step *list; /* in the order it is done */
	int count;
};

/* Plans the work of a takeoff whose items are priced: steps for which there is nothing to do are
 * left out. */
void work_plan(struct work *out, const struct takeoff *takeoff, struct arena *arena);

/* "New Zealand trade labour factors" */
const char *work_source(void);

#endif
