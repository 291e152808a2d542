/* A run of a wall as its laying sheet draws it: to scale in characters, a bar at each joint and at
 * both ends, tape marks below.
 *
 *    odd   through|-------|-------|aaa|-------|butts
 *                 0       16      32  40      56
 *
 * Whole blocks are filled with dashes, sawn pieces with the letter of their size (sawn.h). A bar
 * stands in the column nearest to its joint; a mark is the joint's distance from the side's first
 * corner along the outer face, as a tape is read, its first character in the bar's column (further
 * left where the page ends: marks of 11 characters and more). Where a mark would touch another it
 * is left out, but for the ends of sawn pieces and of rows: these go a line further down. A run
 * that is too long goes on in more rows, each begun at a joint; rows of whole blocks between the
 * first and the last are counted, not drawn: "then 24 whole, to 480". */
#ifndef REPORT_TEXT_STRIP_H
#define REPORT_TEXT_STRIP_H

#include "report/text/sawn.h"
#include "report/words/report.h"

struct strip {
	nm side;         /* length of its side's outer face */
	nm from, length; /* from is from the side's first corner, and may be before it */
	const nm *pieces;
	int count;       /* 0: the side has no such run */
	bool through[2]; /* whether it goes through the side's first and last corner; or butts */
	nm block;        /* a shorter piece is sawn */
};

/* What a strip is drawn by; for all strips of a side the same where that leaves pieces legible. */
struct strip_scale {
	nm origin; /* the place in the first column, from the side's first corner; 0 or less */
	nm length; /* this long are STRIP_BLOCK characters */
};
enum { STRIP_BLOCK = 8 };

/* The first column's place on the page. */
enum { STRIP_INDENT = 14 };

/* Prints it with a name of up to 4 characters before it. It can be stopped. */
void strip_print(const struct report *report, const char *name, const struct strip *strip,
	const struct strip_scale *scale, const struct sawn *sawn);

#endif
