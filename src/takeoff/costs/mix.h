/* The cheapest mix of packs for goods that share deliveries.
 *
 * Each good is wanted in some amount, and offered in packs of several kinds, which may be mixed. A
 * pack comes by a lane, whose drops are paid for each, or is collected. Goods that come by one lane
 * share its drops: what rides along in a drop that is paid for anyway costs no delivery.
 *
 * Of mixes that cost the same the one with the least surplus is taken (the sum over the goods of
 * what is bought over what is wanted, as a share of that, to 1e-9), then the one of the fewest
 * steps, then the one with more of the earlier offers. */
#ifndef TAKEOFF_COSTS_MIX_H
#define TAKEOFF_COSTS_MIX_H

#include "takeoff/costs/offer.h"

/* The packs that a good of the book may have. */
enum { OFFERS_MOST = 20 };
/* Lanes that one good shares with the next, and that with another, and so on. */
enum { LANES_SHARED_MOST = 12 };

struct want {
	double order;               /* over 0 */
	const struct offer *offers; /* 1 to OFFERS_MOST, each of which alone would do */
	int offer_count;
	double *steps;              /* of each offer: the result */
};

struct mixing {
	const struct want *wants;
	int want_count;
	const struct lane *lanes; /* what comes by one for several goods is no bulk */
	int lane_count;
};

/* What a mix comes to. */
struct mix_value {
	money cost;     /* with deliveries */
	double surplus; /* in 1e-9 of what is wanted */
	double steps;
};

/* Fills in the steps of each want. True where no other mix is better; false where there were too
 * many to look at them all, or goods that share over LANES_SHARED_MOST lanes: then it is a good
 * one, at most as dear as if each good were bought as is cheapest for it alone. Asks stop_asked,
 * and then leaves anything in the steps. */
bool mix_find(const struct mixing *mixing);
/* What the mix in the steps of each want comes to, with all that is aboard the lanes that one of
 * them may come by. */
struct mix_value mix_value(const struct mixing *mixing);
/* As for qsort: the better one first. */
int mix_compare(const struct mix_value *a, const struct mix_value *b);
/* The surplus of one good of which so much is left to be bought, below 0: too much. */
double mix_surplus(double rest, double order);

#endif
