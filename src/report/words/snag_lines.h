/* Which snags of a code are told, and how: those that are images of one another in the plot's
 * mirror in one line. */
#ifndef REPORT_WORDS_SNAG_LINES_H
#define REPORT_WORDS_SNAG_LINES_H

#include "report/words/report.h"

enum { SNAG_LINES_MOST = 20 };

struct snag_line {
	const struct snag *snag; /* the first of them */
	int64_t images;          /* how many more */
	struct snag_box orbit;   /* snag_first_image of all of them */
};

struct snag_lines {
	struct snag_line list[SNAG_LINES_MOST];
	int count;
	int64_t more; /* snags that are in none of the lines */
};

/* Of sorted snags of one code; lines with one sentence and one cure come together. It can be
 * stopped (base/stop.h). */
void snag_lines_find(struct snag_lines *out, const struct report *report, const struct snag *snags,
	size_t count);
/* True where one card would cure both. */
bool snag_has_same_card(const struct report *report, const struct snag *a, const struct snag *b);
/* " and 3 images"; "" where there is none. In report->words. */
const char *snag_images_words(const struct report *report, const struct snag_line *line);

#endif
