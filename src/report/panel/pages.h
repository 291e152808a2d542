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
	struct place at;           /* where on the plan what it tells of begins; x -1: nowhere */
	bool is_changed;           /* differs from before the last change: shown with a star */
};

/* Owns all its texts, and points to nothing else. */
struct page {
	struct arena arena;
	struct line *lines;
	size_t count, capacity;
	const uint16_t *sun; /* of the page of the sun: steps by cell (sun_usual.h) */
	bool is_made;
};

/* The plot as its file has it, for the page of what has changed since. */
struct compared;
struct saved {
	const struct compared *counted; /* report/compare/comparison.h; NULL: there is nothing to
	                                 * compare with */
	const char *note;               /* a sentence above all else; NULL: none */
};

enum { PAGES_MOST = 24, PAGE_ROWS_MOST = 10000 };

/* The pages of a takeoff, as far as they were asked for, and those of the takeoff before it. Start
 * zeroed. */
struct pages {
	struct page pages[PAGES_MOST], before[PAGES_MOST];
};

/* There is a new takeoff: the pages that were made become those before. */
void pages_renew(struct pages *pages);
/* Makes the page of that number where it is not there yet; of rows without end the first
 * PAGE_ROWS_MOST. Figures that are new or differ from the page before, if there is one, are marked
 * as changed. saved: for the pages of which page_is_of_saved; the others need none. False where it
 * was stopped (base/stop.h); the page is not there then. */
bool pages_make(struct pages *pages, int page, const struct takeoff *takeoff,
	const struct plot *plot, const struct saved *saved);
/* The plot's file is another now: drops the pages that are compared with it. */
void pages_drop_saved(struct pages *pages);
/* The number of the page of the sun. */
int pages_of_sun(void);
/* Steps of sun by cell (sun_usual.h), as long as the page of the sun is there; NULL: it is not,
 * or the plot has no latitude. */
const uint16_t *pages_sun(const struct pages *pages);
void pages_fini(struct pages *pages);
/* How many pages there are, at most PAGES_MOST, and their names. */
int pages_count(void);
const char *page_name(int page);
/* Whether the page is made by comparing with the plot's file: that takes as long as counting. */
bool page_is_of_saved(int page);

#endif
