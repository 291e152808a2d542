/* Adding lines to a page of the panel. */
#ifndef REPORT_PANEL_PAGE_LINES_H
#define REPORT_PANEL_PAGE_LINES_H

#include "report/panel/pages.h"
#include "report/words/item_words.h"

struct page_maker {
	struct report report; /* its words last as long as the pages */
	struct page *page;
	const struct saved *saved;
};

void page_heading_line(struct page_maker *maker, const char *words);
void page_note_line(struct page_maker *maker, const char *words);
/* The same of something that is on the plan. */
void page_heading_at(struct page_maker *maker, const char *words, struct place at);
void page_note_at(struct page_maker *maker, const char *words, struct place at);
/* Copies label and value. */
void page_figure(struct page_maker *maker, const char *label, const char *value);
/* An item's order, in its unit. */
void page_item(struct page_maker *maker, const struct item *item);
/* All items of a section, under the heading. */
void page_items(struct page_maker *maker, enum section section, const char *heading);
/* Whether row `at` of `count` rows is still to be added: not where the page has PAGE_ROWS_MOST of
 * them already, which it then says, nor where it is stopped (base/stop.h). */
bool page_goes_on(struct page_maker *maker, int at, int count);
/* A note if the page has no line yet. */
void page_if_empty(struct page_maker *maker, const char *words);

/* The lines of a row's figures that have a label, under its title if it has one; none for a row
 * that is left out. A title that has a region leads to where that begins. */
void page_row(struct page_maker *maker, const struct figure_table *table, const void *row);
/* The same with a title that leads to a place. */
void page_row_at(struct page_maker *maker, const struct figure_table *table, const void *row,
	struct place at);
void page_rows(struct page_maker *maker, const struct figure_table *table, const void *rows,
	int count);

/* "B1 b": a region's name and its entry's letter. */
const char *page_region(const struct page_maker *maker, int region);
/* Its first cell. */
struct place page_region_place(const struct page_maker *maker, int region);

#endif
