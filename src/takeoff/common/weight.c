#include "takeoff/common/weight.h"
#include "prices/ware.h"

#include <string.h>

static double block_weight(const struct takeoff *takeoff, const struct item *item)
{
	enum block_use use = strcmp(item->id, "block.cap") == 0 ? USE_CAP : USE_WALL;

	for (int i = 0; i < takeoff->cutting_count; i++) {
		const struct cutting *cutting = &takeoff->cuttings[i];

		if (cutting->use == use && cutting->bought > 0 &&
			size_equal(&cutting->block, &item->block))
			return cutting->weight / (double)cutting->bought;
	}
	return 0;
}

double item_unit_weight(const struct takeoff *takeoff, const struct item *item)
{
	const struct ware *ware = ware_find(item->id);

	if (item->unit == UNIT_KG)
		return 1;
	if (!ware)
		return 0;
	if (ware->has_block)
		return block_weight(takeoff, item);
	if (ware->density == NO_DENSITY)
		return 0;
	return amount_si(&block_effective(takeoff->allow, ware->density)->as.amount);
}
