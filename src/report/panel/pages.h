/* The pages of the panel, as lines of text: a third view of the takeoff beside text and JSON. Pure; a
 * page is one row of the table in pages.c and one function. */
#ifndef REPORT_PANEL_PAGES_H
#define REPORT_PANEL_PAGES_H

#include "takeoff/takeoff.h"

enum line_kind {
	LINE_FIGURE,  /* label at the left, value at the right */
	LINE_HEADING, /* label only, stands out */
	LINE_NOTE     /* label only, a sentence to be wrapped */
};

struct line {
	enum line_kind kind;
	const char *label, *value; /* value "" but for figures */
	const char *under;         /* the last heading's label before it, "" where there is none */
	bool is_changed;           /* another value than before the last change: a star */
};

struct page {
	const char *name;
	struct line *lines;
	size_t count, capacity;
};

enum { PAGES = 10 };

/* All pages own their texts and point into nothing else. Start zeroed. */
struct pages {
	struct arena arena;
	struct page pages[PAGES];
	bool is_filled;
};

/* Builds all pages anew; stars go to the figures that the pages so far, if any, did not show so. */
void pages_update(struct pages *pages, const struct takeoff *takeoff, const struct plot *plot);
void pages_fini(struct pages *pages);
const char *page_name(int page);

/* For the functions that build a page. */
struct page_maker {
	struct arena *arena;
	struct page *page;
	const struct takeoff *takeoff;
	const struct plot *plot;
	enum units units;
};

void pages_heading(struct page_maker *maker, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
void pages_note(struct page_maker *maker, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* Takes the words out of value, which is empty afterwards. */
void pages_figure(struct page_maker *maker, const char *label, struct text *value);
void pages_length(struct page_maker *maker, const char *label, nm length);
void pages_area(struct page_maker *maker, const char *label, double area);
void pages_volume(struct page_maker *maker, const char *label, double volume);
void pages_count(struct page_maker *maker, const char *label, int64_t count);
/* What to order of an item, in its unit. */
void pages_item(struct page_maker *maker, const struct item *item);
/* "B1 b", a region by its name and its entry's letter, as a label in the arena. */
const char *pages_region(struct page_maker *maker, int region);

void pages_areas(struct page_maker *maker);
void pages_edges(struct page_maker *maker);
void pages_beds(struct page_maker *maker);
void pages_walls(struct page_maker *maker);
void pages_fill(struct page_maker *maker);
void pages_dig(struct page_maker *maker);
void pages_fence(struct page_maker *maker);
void pages_stone(struct page_maker *maker);
void pages_costs(struct page_maker *maker);
void pages_snags(struct page_maker *maker);

#endif
