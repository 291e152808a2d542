/* The offers of a good in the order in which a search for the best mix decides on them, each with
 * what is known of all that come after it. */
#ifndef TAKEOFF_COSTS_STAGES_H
#define TAKEOFF_COSTS_STAGES_H

#include "takeoff/costs/menu.h"

struct stage {
	const struct offer *offer;
	bool is_last;
	/* At least, with drops as if parts of one were paid: what a unit costs from a later offer,
	 * in hundredths; the same of steps. */
	double cost_a_unit, steps_a_unit;
	bool is_best;        /* no later offer is cheaper by the unit, so counted */
	bool is_steady;      /* the fewer of it (where it is best, else the more), the more steps */
	const int *open;     /* lanes of its own that something may be aboard of, once it is decided
	                        on; shared ones follow */
	int own_count, open_count;
	const int *closing;  /* lanes of its own that nothing comes by any more then */
	int closing_count;
	double closing_most; /* hundredths by which their whole drops may exceed parts of drops */
};

struct stages {
	struct stage *list;
	int count;
	double rounding; /* hundredths that rounded costs may be below exact ones */
	double hair;     /* hundredths below which a difference is none */
	const struct lane *lanes;
	bool *by_volume; /* by lane: bulk fills it by volume rather than by weight */
};

/* In the kitchen's arena. */
void stages_init(struct stages *stages, const struct kitchen *kitchen, const struct want *want);
/* What is aboard as a part of a drop, or of several, at the price of a drop. */
double stages_part_drops(const struct stages *stages, int lane, const struct aboard *aboard);

#endif
