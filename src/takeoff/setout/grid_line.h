/* A level line of the grid, walked along from its left end: to each place where a run of cells
 * above or below it begins or ends. Between two such places all is alike on either side. */
#ifndef TAKEOFF_SETOUT_GRID_LINE_H
#define TAKEOFF_SETOUT_GRID_LINE_H

#include "survey/survey.h"

struct grid_line {
	const struct survey *survey;
	int row;             /* the line runs along the top of this row of cells: 0..rows */
	int x;               /* how far one has come */
	size_t above, below; /* the runs that hold the cells right of there */
};

/* The regions of the four cells around a grid point; NO_REGION beyond the plan too. */
enum { AROUND_LEFT_ABOVE, AROUND_ABOVE, AROUND_LEFT_BELOW, AROUND_BELOW, AROUND };

/* At its left end. */
struct grid_line grid_line_begin(const struct survey *survey, int row);
/* Moves on to the next place; false at the right end. */
bool grid_line_next(struct grid_line *line);
void grid_line_around(const struct grid_line *line, int around[static AROUND]);

/* The regions whose outlines turn at a grid point, in the order of the cells, each once. Returns
 * how many. An outline goes straight on where two of its region's cells lie side by side there, and
 * is not there at all where none or all four are; with two across it turns twice. */
int corner_regions(const int around[static AROUND], int regions[static AROUND]);

#endif
