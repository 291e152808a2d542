/* How large a plan is drawn in characters, and how it is cut into sheets of 80 columns.
 *
 * Characters stand on the plan's grid points, so many on from one to the next across and down:
 *
 *	4 and 2   where the plan then is one sheet: small plans
 *	2 and 1   where it then is no wider than one sheet: a cell is about square, as above
 *	1 and 1   all others: rather narrow than in pieces
 *
 * A sheet is as wide as a page with its ruler and SHEET_ROWS high. Where there are several they
 * are of one size, to within a cell; each cell is on one sheet, and the grid points along which
 * sheets join are on both. */
#ifndef REPORT_DRAWING_CUTS_H
#define REPORT_DRAWING_CUTS_H

#include "plot/mirror.h"

enum { SHEET_ROWS = 54, SHEET_NAME_MOST = 16 };

struct cuts {
	int columns, rows;  /* the plan's cells */
	int across, down;   /* characters from one grid point to the next */
	int sheets_across, sheets_down;
};

/* ruler: the columns that a sheet's ruler takes of a page. */
struct cuts cuts_of(int columns, int rows, int ruler);
/* The same where 4 and 2 are for plans that then are `high` at most, up to SHEET_ROWS. */
struct cuts cuts_within(int columns, int rows, int ruler, int high);
/* The cells of a sheet: `sheet` is its column and row among the sheets. */
struct rectangle cuts_cells(const struct cuts *cuts, struct place sheet);
/* Whether sheets join along the column, or the row, of characters. */
bool cuts_join_column(const struct cuts *cuts, int column);
bool cuts_join_row(const struct cuts *cuts, int row);
/* "A1": the row of the sheet by letter, after Z by two of them, and its column. */
void cuts_name(struct place sheet, char name[SHEET_NAME_MOST]);

#endif
