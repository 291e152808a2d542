/* Bags of dry concrete mix. */
#ifndef TAKEOFF_COMMON_BAGS_H
#define TAKEOFF_COMMON_BAGS_H

#include "base/length.h"
#include "plot/amount.h"

/* A bag as it is sold: what it weighs, kg, and the concrete that comes of it, m3. */
struct concrete_bag {
	double weight, yield;
	enum units units;  /* of plots that it is offered in */
	const char *words; /* "80 lb" */
};

/* Kilograms of a bag with that yield: of the bags that are sold the one that yields as much, else
 * by weight as the 80 lb bag. */
double bag_weight(const struct amount *yield);
/* The bag that yields as much, to 2 %; NULL: none that is sold. */
const struct concrete_bag *bag_of(double yield);
/* The heaviest, of those offered in plots of such units, that one person can lift. */
const struct concrete_bag *bag_for_one(enum units units);

#endif
