/* Plants of a garden under test, and what holds for all of them. */
#ifndef SUPPORT_PLANTING_H
#define SUPPORT_PLANTING_H

#include "support/garden.h"

/* Adds a kind z named "Plant" to the plot: "spacing 6 in\n  drift b whole". */
void planting_add(struct garden *garden, const char *attributes_and_drifts);
/* An imperial garden of one bed b at ground level, of cells of a side, say "1 ft". */
void planting_bed(struct garden *garden, int columns, int rows, const char *cell);
/* How many plants stand, by the rows, once it is counted. */
int64_t planting_count(const struct garden *garden);
/* How many snags have the code. */
int planting_snags(const struct garden *garden, enum snag_code code);
/* The first of them; it is there. */
const struct snag *planting_snag(const struct garden *garden, enum snag_code code);

#endif
