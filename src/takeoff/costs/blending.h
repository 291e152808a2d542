/* What the search for the best mix of several goods is made of, for its own files. See blend.c. */
#ifndef TAKEOFF_COSTS_BLENDING_H
#define TAKEOFF_COSTS_BLENDING_H

#include "takeoff/costs/blend.h"

struct box {
	double from[LANES_SHARED_MOST], to[LANES_SHARED_MOST]; /* drops by lane, both included */
};

/* A kilogram aboard each lane, in hundredths. */
struct prices {
	double of[LANES_SHARED_MOST];
};

struct blending {
	const struct blend *blend;
	int lanes;
	struct menu *menus;
	double *paid;                 /* by good, at least */
	const struct recipe **chosen; /* by good, while it is looked for */
	struct mix_value best;        /* of the steps in the wants */
	double hair;
	int boxes, tries;
	bool is_cut;
};

const struct lane *lane_of(const struct blending *b, int i);
/* Takes what is chosen into the steps of the wants where it is better, on a tie where it has more
 * of the earlier offers. */
void take_chosen(struct blending *b);
/* Whether the recipe uses a lane that has no drop in the box. */
bool is_barred(const struct blending *b, const struct box *box, const struct recipe *recipe);
/* What the recipe costs at these prices, in hundredths. */
double recipe_cost(const struct blending *b, const struct prices *prices,
	const struct recipe *recipe);
/* The price at which a full drop pays for itself. */
double full_price(const struct lane *lane);
/* The drops of the box, less what can be aboard them at these prices. */
double drops_cost(const struct blending *b, const struct box *box, const struct prices *prices);
/* Tries all recipes for a box of settled drops, with prices found for it. */
void settle(struct blending *b, const struct box *box, const struct prices *prices);

#endif
