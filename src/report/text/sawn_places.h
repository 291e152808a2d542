/* Where sawn pieces go: bed, side and course. */
#ifndef REPORT_TEXT_SAWN_PLACES_H
#define REPORT_TEXT_SAWN_PLACES_H

#include "report/text/sawn.h"
#include "report/words/report.h"

/* Of each size, in their order: "each of B1 and B2: 2 each on side 1 even, side 2 odd; B3: 1 each
 * on hole 1 side 4 odd". A number is how many pieces one bed has on each of the sides behind it,
 * over all of its odd or even courses; a cap's sides are without either word. Beds go by their
 * laying sheets, sides as those number them. Of a bed the first sides are named, and the first
 * beds: "and 12 on other sides", "and 12 more beds". The words have ties (page.h). A list of
 * sawn->count texts, to be freed with sawn_places_free. */
struct text *sawn_places(const struct report *report, const struct sawn *sawn);
void sawn_places_free(struct text *places, const struct sawn *sawn);

#endif
