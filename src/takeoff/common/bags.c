#include "takeoff/common/bags.h"
#include "base/measure.h"
#include "takeoff/common/lifting.h"

#include <math.h>

/* Yields as printed on bags of 80, 60 and 50 lb: common practice, no published source; 20 and 25 kg
 * likewise. Of each units the heavier come first, and one person can lift the last. */
static const struct concrete_bag bags[] = {
	{ 80 * KG_PER_POUND, 0.60 * M3_PER_CUBIC_FOOT, UNITS_IMPERIAL, "80 lb" },
	{ 60 * KG_PER_POUND, 0.45 * M3_PER_CUBIC_FOOT, UNITS_IMPERIAL, "60 lb" },
	{ 50 * KG_PER_POUND, 0.375 * M3_PER_CUBIC_FOOT, UNITS_IMPERIAL, "50 lb" },
	{ 25, 0.0120, UNITS_METRIC, "25 kg" },
	{ 20, 0.0095, UNITS_METRIC, "20 kg" },
};
enum { BAGS = sizeof bags / sizeof *bags };

const struct concrete_bag *bag_of(double yield)
{
	for (int i = 0; i < BAGS; i++)
		if (fabs(yield - bags[i].yield) <= 0.02 * bags[i].yield)
			return &bags[i];
	return NULL;
}

double bag_weight(const struct amount *yield)
{
	const struct concrete_bag *bag = bag_of(amount_si(yield));

	return bag ? bag->weight : amount_si(yield) * bags[0].weight / bags[0].yield;
}

const struct concrete_bag *bag_for_one(enum units units)
{
	int i = 0;

	while (bags[i].units != units || bags[i].weight > lift_most(units))
		i++;
	return &bags[i];
}
