/* What patterns and signs mean on a plan to scale: of those that it has. */
#ifndef REPORT_SVG_SIGNS_H
#define REPORT_SVG_SIGNS_H

#include "report/svg/remarks.h"

/* A remark for each letter that has ground, and one for open ground; one for each sign. They can be
 * stopped. */
void signs_add_ground(struct remark_list *list, const struct report *report);
void signs_add(struct remark_list *list, const struct report *report,
	const struct svg_asked *asked);

/* "B1 to B4, B7": regions as they are added, with how many more where they take too many words. */
struct region_words {
	struct text words;
	char class;
	int first, last, ranges, more;
};
#define REGION_WORDS_NONE ((struct region_words){ TEXT_EMPTY, 0, 0, 0, 0, 0 })
/* Adds a region; in their order, of one class. */
void region_words_add(struct region_words *list, const struct region *region);
/* Ends the list: what it says, in report->words. */
const char *region_words_end(struct region_words *list, const struct report *report);

#endif
