/* The sections of the takeoff as text, in the order they are printed. Each prints its own heading, or
 * nothing where it has nothing to tell. */
#ifndef REPORT_TEXT_PRINT_H
#define REPORT_TEXT_PRINT_H

#include "report/words/report.h"

/* The takeoff for people, pure: 80 columns of text to take to the yard, in the plot's own units. Its first
 * line is "parterre takeoff 1". name is the plot file's, for the heading. */
void report_text(struct text *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

void print_head(const struct report *report);
void print_items(const struct report *report);
void print_costs(const struct report *report);   /* nothing without a price book */
void print_start(const struct report *report);   /* what to mind before any work */
void print_areas(const struct report *report);
void print_edges(const struct report *report);
void print_dig(const struct report *report);
void print_beds(const struct report *report);    /* the schedule */
void print_walls(const struct report *report);   /* laying sheets */
void print_cutting(const struct report *report);
void print_fill(const struct report *report);
void print_fence(const struct report *report);   /* legs, gates, panels, posts */
void print_stone(const struct report *report);   /* bases, surfaces, fabric, liner */
void print_edging(const struct report *report);
void print_lawn(const struct report *report);
void print_work(const struct report *report);     /* the order of work */
void print_assumed(const struct report *report);
void print_snags(const struct report *report);

#endif
