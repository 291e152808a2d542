#include "takeoff/common/loads.h"
#include "base/measure.h"

#include <math.h>

struct loads loads_of(const struct block *allow, double volume, double density)
{
	double weight = volume * density;

	return (struct loads){
		.barrow = (int64_t)whole(fmax(volume / block_amount(allow, ALLOW_BARROW_VOLUME),
			weight / block_amount(allow, ALLOW_BARROW_WEIGHT))),
		.pickup = (int64_t)whole(weight / block_amount(allow, ALLOW_PICKUP_WEIGHT)),
		.truck = (int64_t)whole(fmax(volume / block_amount(allow, ALLOW_TRUCK_VOLUME),
			weight / block_amount(allow, ALLOW_TRUCK_WEIGHT))),
	};
}

static const struct figure figures[] = {
	{ "barrow", NULL, NULL, FIELD(COUNT, loads, barrow) },
	{ "pickup", NULL, NULL, FIELD(COUNT, loads, pickup) },
	{ "truck", NULL, NULL, FIELD(COUNT, loads, truck) },
};
const struct figure_table loads_table = FIGURE_TABLE(loads, figures);
