#include "takeoff/costs/lane.h"
#include "base/measure.h"

#include <math.h>

/* Keeps a truck that holds next to nothing from overflowing the count. */
static const double LOADS_MOST = 1e6;

int64_t load_count(const struct load *load, double weight, double volume)
{
	double by_weight = whole(weight / load->carries);
	double by_volume = load->holds > 0 ? whole(volume / load->holds) : 0;

	return (int64_t)fmin(fmax(1, fmax(by_weight, by_volume)), LOADS_MOST);
}

void aboard_add(struct aboard *aboard, double weight, double volume, double steps)
{
	if (steps <= 0)
		return;
	aboard->weight += steps * weight;
	aboard->volume += steps * volume;
	aboard->is_used = true;
}

int64_t lane_drops(const struct lane *lane, const struct aboard *aboard)
{
	return aboard->is_used ? load_count(&lane->load, aboard->weight, aboard->volume) : 0;
}

money lane_cost(const struct lane *lane, const struct aboard *aboard)
{
	return lane_drops(lane, aboard) * lane->delivery;
}
