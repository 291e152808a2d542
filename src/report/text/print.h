/* The takeoff as text. */
#ifndef REPORT_TEXT_PRINT_H
#define REPORT_TEXT_PRINT_H

#include "base/measure.h"
#include "report/words/alike.h"
#include "report/words/figures.h"
#include "report/words/item_words.h"
#include "report/words/page.h"

/* Prints the takeoff for people: 80 columns of text to take to the yard, in the plot's own
 * units. Its first line is "parterre takeoff 1". name: the plot file's. Pure. */
void report_text(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

/* Prints the plan alone, whatever it takes, on sheets of 80 columns (report/drawing/cuts.h). Its
 * first line is "parterre plan 1". Pure. */
void report_plan(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

/* The sections, in the order they are printed: each with its heading, or nothing where there is
 * nothing to say. */

void print_head(const struct report *report);
/* The plan with what its signs mean. Where it takes more sheets than PLAN_SHEETS_MOST only how
 * many, and what prints them. */
enum { PLAN_SHEETS_MOST = 9 };
void print_plan(const struct report *report);
void print_items(const struct report *report);
void print_costs(const struct report *report);   /* nothing without a price book */
void print_start(const struct report *report);   /* cautions before any work */
void print_areas(const struct report *report);
/* Of regions that have names of their own; nothing where none has. */
void print_names(const struct report *report);
void print_edges(const struct report *report);
void print_dig(const struct report *report);
void print_beds(const struct report *report);    /* the schedule */
void print_stone(const struct report *report);   /* bases, surfaces, fabric, liner */
void print_edging(const struct report *report);
void print_walls(const struct report *report);   /* laying sheets */
void print_cutting(const struct report *report);
void print_fill(const struct report *report);
void print_lawn(const struct report *report);
void print_fence(const struct report *report);   /* legs, gates, panels, posts */
void print_work(const struct report *report);    /* the order of work */
/* What a small change would spare; nothing where there is neither a raised bed nor a fence. */
void print_advice(const struct report *report);
void print_assumed(const struct report *report);
void print_snags(const struct report *report);

/* For a plan by itself: its title, file and size; and all of its sheets with what they mean. */
void print_plan_head(const struct report *report);
void print_drawing(const struct report *report);

/* For the sections. What prints a paragraph or a table clears report->words. */

/* The heading, marked as incomplete if it is. */
void print_heading(const struct report *report, const char *words, bool is_complete);
/* A paragraph, its first line and all others indented by so many columns. */
void print_lines(const struct report *report, size_t first, size_t rest, const char *format, ...)
	__attribute__((format(printf, 4, 5)));
/* A paragraph with a blank line before it. */
void print_note(const struct report *report, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
void print_blank(const struct report *report);

/* The last column of a table, made by hand. */
struct last_column {
	const char *heading;
	const char *(*cell)(const struct report *report, const void *row, const void *context);
	const void *context;
};
/* Declared rows as a table with a column for each figure that has a heading; `last` may be
 * NULL. Nothing where there is no row. */
void print_rows(const struct report *report, const struct figure_table *table, const void *rows,
	int count, size_t indent, const struct last_column *last);
/* The same, with rows that are alike (figures.h) as one. */
void print_alike(const struct report *report, const struct figure_table *table, const void *rows,
	int count);

/* Where more than these are alike, they are not named or listed one by one. */
enum { NAMED_MOST = 100 };
/* "B1, B2 and B5": the regions of a group of rows; of many "B1 to B800, B802 and 6,000 more". */
const char *group_words(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group);
/* "B1", or "B1 and B2: 2 beds" followed by `more`. */
const char *group_title(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group, const char *more);
/* "2 of 7 7/8 in + 1 of 3 in": the lengths to saw one block or piece into, each `fit` shorter
 * than its place. */
const char *cut_words(const struct report *report, const struct cut *cut, nm fit);
/* The length to saw a piece to: `fit` shorter than its place, half of that at least, down to what
 * a rule shows: 1/16 in or 1 mm. */
nm saw_length(const struct report *report, nm place, nm fit);
/* Two columns: how many, and what each is cut into. */
void print_cut_table(const struct report *report, const char *const headings[2],
	const struct cut *cuts, int count, nm fit);

#endif
