/* Where everything is on the screen, from its size and what there is to show. */
#ifndef SCREEN_LAYOUT_H
#define SCREEN_LAYOUT_H

#include "editor/view.h"

enum { LEAST_ROWS = 18, LEAST_COLUMNS = 60, CELL_COLUMNS = 2 };

/* What there is to show. */
struct wanted {
	enum panel_width panel;
	int plan;  /* columns of characters that the whole plan takes */
	int here;  /* rows that the words of what is under the cursor take */
	bool scale; /* what the sun's shades mean is said */
};

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
	struct area divider;    /* one column between plan and panel; empty while that is hidden */
	struct area panel;      /* empty while it is hidden */
	struct area second;     /* the page after the panel's, at its right; empty without room */
	struct area here;       /* what is under the cursor: the panel's foot, or below the plan */
	struct area list;       /* a short list of answers: the last page's, also without a panel */
	struct area form;       /* a form: the same, and what else it needs */
	struct area scale;      /* above that, where it is wanted; else empty */
	struct area message;    /* last row but one */
	struct area keys;       /* last row */
};

/* The plan has the room that it takes, then the panel up to its most, then a second page. */
struct layout layout_of(int rows, int columns, const struct wanted *wanted);

#endif
