/* Rulers along a plan in characters: lengths from its left and upper edges. */
#ifndef REPORT_TEXT_RULER_H
#define REPORT_TEXT_RULER_H

#include "report/text/print.h"

/* One direction of a plan. */
struct ruler {
	enum units units;
	nm cell, end, step; /* end: the plan's; step: from one label to the next */
	int pitch;          /* characters to a cell */
};

/* With labels so many characters apart at least. */
struct ruler ruler_of(const struct report *report, int cells, int pitch, int apart);
/* What the ruler at the left takes: its widest label and a tick. */
int ruler_columns(const struct report *report);
/* Prints labels above ticks, over the characters from `left` to `right`, indented. */
void ruler_across(const struct report *report, const struct ruler *ruler, int indent, int left,
	int right);
/* Adds the part of a row of the ruler at the left: a label and a tick, or blanks. */
void ruler_label(struct text *line, const struct ruler *ruler, int columns, int row);
/* Prints the line without blanks at its end. */
void print_trimmed(const struct report *report, struct text *line);

#endif
