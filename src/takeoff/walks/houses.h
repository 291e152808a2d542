/* What houses are in the way of:
 *
 *	house-near     a bed is nearer to a house than is allowed for, as the crow flies; once a
 *	               bed. A length of 0 asks nothing
 *	house-covered  a house stands on ground of a region; once a region. Of a bed that alone is
 *	               told
 *	house-fence    a fence stands within a house, not along its walls; once for each straight
 *	               piece
 *
 * Houses side by side are one. */
#ifndef TAKEOFF_WALKS_HOUSES_H
#define TAKEOFF_WALKS_HOUSES_H

#include "survey/house_map.h"
#include "takeoff/common/basis.h"

/* How far beyond the plan a map must tell of houses. */
int houses_margin(const struct basis *basis);
void houses_check(const struct basis *basis, const struct house_map *houses);

#endif
