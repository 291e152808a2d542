/* Which regions of one survey are which of another, of a plan that was changed since.
 *
 * Regions go together by their own names; then by the ground they share, the most of it first, with
 * the plans laid on each other by that corner or middle at which they share most; then by letter
 * and shape, for what was moved. Cells of another size share no ground: there, by letter alone.
 * Two regions that go together are of one class. The same the other way round. */
#ifndef REPORT_COMPARE_REGION_PAIRS_H
#define REPORT_COMPARE_REGION_PAIRS_H

#include "survey/survey.h"

struct region_pairs {
	const struct survey *old, *new;
	int *new_of, *old_of; /* by region of the old, of the new survey; NO_REGION: none */
	int *shared;          /* cells, by region of the new: of what it goes with */
};

/* All lives in the arena. It can be stopped (base/stop.h). */
void region_pairs_find(struct region_pairs *out, struct arena *arena, const struct survey *old,
	const struct survey *new);
/* What became of a region: changed where it covers other ground or is called otherwise, renumbered
 * where only its number is another. */
enum region_change {
	REGION_SAME, REGION_CAME, REGION_WENT, REGION_CHANGED, REGION_RENUMBERED, REGION_CHANGES
};
/* Of a region of the new survey; never that it went. */
enum region_change region_change(const struct region_pairs *pairs, int new);

#endif
