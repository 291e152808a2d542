/* The sections of the takeoff as text, in the order they are printed. Each prints its own heading, or
 * nothing where it has nothing to tell. */
#ifndef REPORT_PRINT_H
#define REPORT_PRINT_H

#include "base/text.h"
#include "takeoff/takeoff.h"

/* What every section goes by. */
struct sheet {
	struct text *out;
	const struct plot *plot;
	const struct takeoff *takeoff;
	enum units units;
	const char *file; /* the plot file's name */
};

void print_head(const struct sheet *sheet);
void print_items(const struct sheet *sheet);
void print_costs(const struct sheet *sheet);   /* nothing without a price book */
void print_start(const struct sheet *sheet);   /* what to mind before any work */
void print_areas(const struct sheet *sheet);
void print_edges(const struct sheet *sheet);
void print_dig(const struct sheet *sheet);
void print_beds(const struct sheet *sheet);    /* the schedule */
void print_walls(const struct sheet *sheet);   /* laying sheets */
void print_cutting(const struct sheet *sheet);
void print_fill(const struct sheet *sheet);
void print_fence(const struct sheet *sheet);   /* legs, gates, panels, posts */
void print_stone(const struct sheet *sheet);   /* bases, surfaces, fabric, liner */
void print_edging(const struct sheet *sheet);
void print_lawn(const struct sheet *sheet);
void print_work(const struct sheet *sheet);     /* the order of work */
void print_assumed(const struct sheet *sheet);
void print_snags(const struct sheet *sheet);

#endif
