/* What things weigh: blocks by their own density, stone, soil and mulch by those in force. */
#ifndef TAKEOFF_COMMON_WEIGHT_H
#define TAKEOFF_COMMON_WEIGHT_H

#include "takeoff/takeoff.h"

/* kg of one unit of the item: of a block, of a cubic metre; of blocks of one size and several densities the
 * mean. 0 where only a pack could tell. */
double item_unit_weight(const struct takeoff *takeoff, const struct item *item);

#endif
