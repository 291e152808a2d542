/* The sections of the takeoff as text, in the order they are printed. Each prints its own heading, or
 * nothing where it has nothing to tell. */
#ifndef REPORT_PRINT_H
#define REPORT_PRINT_H

#include "report/groups.h"
#include "report/page.h"
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
void print_start(const struct sheet *sheet);   /* what to mind before any work */
void print_areas(const struct sheet *sheet);
void print_edges(const struct sheet *sheet);
void print_beds(const struct sheet *sheet);    /* the schedule */
void print_walls(const struct sheet *sheet);   /* laying sheets */
void print_cutting(const struct sheet *sheet);
void print_fill(const struct sheet *sheet);
void print_assumed(const struct sheet *sheet);
void print_snags(const struct sheet *sheet);

/* ---- Words that several sections use ------------------------------------------------------------ */

/* Adds a length that no line break will split. */
void word_length(struct text *text, const struct sheet *sheet, nm length);
/* The same as a rule reads it: inches without feet. */
void word_inches(struct text *text, const struct sheet *sheet, nm length);
/* "16 in x 8 in x 6 in". */
void word_size(struct text *text, const struct sheet *sheet, const struct size *size);
/* "B1". */
void word_region(struct text *text, const struct sheet *sheet, int region);
/* "1 bed", "2 beds". */
void word_count(struct text *text, int64_t count, const char *one, const char *many);
/* "B1, B2 and B5": regions_of gives the region of an item of the grouped list. */
void word_group(struct text *text, const struct sheet *sheet, const struct group *group,
	int (*region_of)(const struct takeoff *, int));
/* Beds whose cap is wanted but not laid out. */
int64_t caps_not_laid(const struct takeoff *takeoff);

#endif
