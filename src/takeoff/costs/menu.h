/* All ways of buying one good that may be part of the cheapest mix.
 *
 * They are found offer by offer. A label is a way of having decided on the offers so far: what it
 * costs, what is left to be bought, what is aboard each lane. From each label come those for every
 * number of steps of the next offer that makes sense. A label is dropped where another one is as
 * good in all of that, or where it must come to more than a limit: what it costs, drops counted as
 * if a part of one could be paid for, and what is left at the price of the cheapest offer to come.
 * A lane that nothing else comes by is closed with its last offer: its drops are whole from then
 * on. */
#ifndef TAKEOFF_COSTS_MENU_H
#define TAKEOFF_COSTS_MENU_H

#include "takeoff/costs/mix.h"

/* One way of buying a good. */
struct recipe {
	struct mix_value value; /* its cost with the lanes of its own, without shared ones */
	double paid;            /* the same with parts of drops of shared lanes */
	const double *steps;    /* of each offer; 0 for those it has not, to OFFERS_MOST */
	const double *aboard;   /* kg, by shared lane; below 0: nothing */
};

/* What the search goes by. */
struct kitchen {
	struct arena *arena;
	const struct mixing *mixing;
	const int *shared; /* lanes that others come by too; all by weight */
	int shared_count;
	size_t width;      /* labels kept at a time */
};

struct menu {
	const struct recipe *list; /* those with more of the earlier offers first */
	int count;
	bool is_cut; /* some were dropped for there being too many */
};

/* The way of the good that has the least paid: a menu of one. The steps of the want must be those
 * of some way. */
struct menu menu_least(const struct kitchen *kitchen, const struct want *want);
/* All ways that others do not beat and that have at most the limit's cost paid; where the limit has
 * no surplus, those of this cost with no more steps. Where no lane is shared that is the best one
 * alone. */
struct menu menu_of(const struct kitchen *kitchen, const struct want *want,
	const struct mix_value *limit);

#endif
