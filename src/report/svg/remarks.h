/* What stands beside a plan to scale: the bar to check its scale by, north, what patterns and signs
 * mean, what has no room; then a section of each wall that is built in a way of its own. */
#ifndef REPORT_SVG_REMARKS_H
#define REPORT_SVG_REMARKS_H

#include "report/svg/sheet.h"

/* In the arena, with the words. It can be stopped. */
void remarks_make(struct remarks *out, struct arena *arena, const struct report *report,
	const struct svg_asked *asked);

/* Remarks while they are gathered. */
struct remark_list {
	struct arena *arena;
	struct remark *items;
	size_t count, capacity;
};
/* Adds one that is so high, or as its words are where that is more; they are broken into lines of
 * that width. Returned to be written to. */
struct remark *remark_add(struct remark_list *list, nm height, nm width, const char *words);
/* Adds words as wide as the column. */
void remark_paragraph(struct remark_list *list, const char *words);
/* Writes its lines from a point down. */
void remark_words(struct sheet *sheet, struct at at, const struct remark *remark);

#endif
