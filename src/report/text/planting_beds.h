/* Beds by how they are planted, for the schedule and the plans of them. */
#ifndef REPORT_TEXT_PLANTING_BEDS_H
#define REPORT_TEXT_PLANTING_BEDS_H

#include "report/text/print.h"

/* The rows of a region: from `from` to before `end`, in the planting of a takeoff. */
struct planted_place {
	int region; /* NO_REGION: open ground */
	int from, end;
};

/* Places that are planted, and which of them are alike: of one letter and shape, with the same
 * plants at the same offsets from their first corners. */
struct planting_beds {
	struct planted_place *list;
	int count;
	struct groups alike;
};

void planting_beds_make(struct planting_beds *out, const struct report *report);
void planting_beds_fini(struct planting_beds *beds);
/* "B1 and B3", "open ground"; in report->words. */
const char *planting_beds_words(const struct report *report, const struct planting_beds *beds,
	const struct group *group);

#endif
