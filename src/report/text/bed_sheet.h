/* A plan of one bed in characters: its outline, whatever is put into it, rulers above and beside.
 * A character is a part of a cell across and twice as much down; grid lines lie on characters. */
#ifndef REPORT_TEXT_BED_SHEET_H
#define REPORT_TEXT_BED_SHEET_H

#include "report/text/print.h"

struct bed_sheet {
	const struct report *report;
	int region;
	struct rectangle cells; /* around the bed */
	int pitch;              /* characters a cell across, even */
	int columns, rows;      /* of characters */
	char *characters;       /* owned; blanks, and the outline of - | and + */
};

/* As large as a page is wide, and so many rows high at most where that can be. */
void bed_sheet_begin(struct bed_sheet *sheet, const struct report *report, int region,
	int rows_most);
void bed_sheet_end(struct bed_sheet *sheet);

char *bed_sheet_character(const struct bed_sheet *sheet, int column, int row);
/* The column and row of the character nearest to a spot of the ground. */
struct place bed_sheet_nearest(const struct bed_sheet *sheet, struct spot spot);
/* With its rulers; what is wider than a page on several sheets, side by side. */
void bed_sheet_print(const struct bed_sheet *sheet);
/* "A character is 3 in across and 6 in down." */
const char *bed_sheet_scale_words(const struct bed_sheet *sheet);

#endif
