#include "takeoff/common/loads.h"

#include <math.h>

/* A sum may end a hair above a whole number of loads; nobody drives for that. */
static const double HAIR = 1e-9;

static double amount_of(const struct block *allow, enum attribute a)
{
	return amount_si(&block_effective(allow, a)->as.amount);
}

static int64_t whole(double loads)
{
	return (int64_t)ceil(loads - HAIR);
}

struct loads loads_of(const struct block *allow, double volume, double density)
{
	double weight = volume * density;

	return (struct loads){
		.barrow = whole(fmax(volume / amount_of(allow, ALLOW_BARROW_VOLUME),
			weight / amount_of(allow, ALLOW_BARROW_WEIGHT))),
		.pickup = whole(weight / amount_of(allow, ALLOW_PICKUP_WEIGHT)),
		.truck = whole(fmax(volume / amount_of(allow, ALLOW_TRUCK_VOLUME),
			weight / amount_of(allow, ALLOW_TRUCK_WEIGHT))),
	};
}

static const struct figure figures[] = {
	{ "barrow", NULL, NULL, FIELD(COUNT, loads, barrow) },
	{ "pickup", NULL, NULL, FIELD(COUNT, loads, pickup) },
	{ "truck", NULL, NULL, FIELD(COUNT, loads, truck) },
};
const struct figure_table loads_table = FIGURE_TABLE(loads, figures);
