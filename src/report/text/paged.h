/* Text on pages for a printer: 66 lines each, parted by form feeds. */
#ifndef REPORT_TEXT_PAGED_H
#define REPORT_TEXT_PAGED_H

#include "base/sink.h"

/* A page has 66 lines, 11 in at 6 to the inch; the last ones are left free. From PAGE_LINES_SOFT
 * on it ends at a blank line. What has no blank line within it, a plan, a table, a paragraph, is
 * not cut where a page has room for it. */
enum { PAGE_LINES = 66, PAGE_LINES_MOST = 62, PAGE_LINES_SOFT = 54 };

/* Into another sink, line by line. Start with paged_sink, end with paged_fini. */
struct paged_sink {
	struct sink sink; /* first */
	struct sink *out;
	struct text line, block;     /* block: whole lines that are held, until the next is blank */
	int lines;                   /* in it */
	bool is_long;                /* no page has room for it: none is held before it ends */
	struct text title, of;       /* the head of a page that goes on with a part */
	int row, page;               /* on the page so far; which of the part, from 1 */
};
struct paged_sink paged_sink(struct sink *out);
/* What comes now is a part of its own, on a new page unless this one has a line at most; pages
 * after its first begin with a rule as page_rule has it. */
void paged_part(struct paged_sink *paged, const char *title, const char *of);
void paged_fini(struct paged_sink *paged);

#endif
