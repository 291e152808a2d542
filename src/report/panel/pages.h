/* The pages of the panel, as lines of text: the third view of a takeoff. Pure. */
#ifndef REPORT_PANEL_PAGES_H
#define REPORT_PANEL_PAGES_H

#include "takeoff/takeoff.h"

enum line_kind {
	LINE_FIGURE,  /* label at the left, value at the right */
	LINE_HEADING, /* label only, shown boldly */
	LINE_NOTE     /* label only, a sentence to be wrapped */
};

struct line {
	enum line_kind kind;
	const char *label, *value; /* value "" but for figures */
	const char *under;         /* label of the last heading before it; "": none */
	bool is_changed;           /* differs from before the last change: shown with a star */
};

struct page {
	const char *name;
	struct line *lines;
	size_t count, capacity;
};

enum { PAGES_MOST = 24 };

/* Owns all texts of the pages, and points to nothing else. Start zeroed. */
struct pages {
	struct arena arena;
	struct page pages[PAGES_MOST];
	bool is_filled;
};

/* Builds all pages anew; figures that are new or differ from the pages before, if any, are
 * marked as changed. */
void pages_update(struct pages *pages, const struct takeoff *takeoff, const struct plot *plot);
void pages_fini(struct pages *pages);
/* How many pages there are, at most PAGES_MOST, and their names. */
int pages_count(void);
const char *page_name(int page);

#endif
