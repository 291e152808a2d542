/* Where everything stands on the screen. Pure: so many rows and columns in, areas out. */
#ifndef SCREEN_LAYOUT_H
#define SCREEN_LAYOUT_H

#include "plot/plot.h"

enum { LEAST_ROWS = 18, LEAST_COLUMNS = 60, CELL_COLUMNS = 2 };

/* Rows and columns of characters, counted from the screen's top left corner. */
struct area {
	int row, column, rows, columns;
};

struct layout {
	bool is_too_small; /* under 60 x 18: nothing below is set but the screen */
	struct area screen;
	struct area status;     /* the first row */
	struct area ruler;      /* above the plan */
	struct area side_ruler; /* left of the plan */
	struct area plan;       /* an even number of columns: two a cell */
	struct area divider;    /* one column between plan and panel */
	struct area panel;
	struct area here;       /* the panel's foot: what is under the cursor */
	struct area form;       /* what a form covers, over the panel and the plan's right */
	struct area message;    /* last row but one */
	struct area keys;       /* last row */
};

struct layout layout_of(int rows, int columns);

/* The first cell shown, given the one shown first so far: the same while the cursor is in view; else the
 * view moves so that the cursor stands a third of the view away from the edge it went over. */
struct place view_follow(struct place first, const struct area *plan, const struct ground *ground,
	struct place cursor);
/* Cells of the ground that the plan has room for from `first` on. */
struct place view_cells(struct place first, const struct area *plan, const struct ground *ground);

#endif
