#include "screen/layout.h"

enum {
	RULER_COLUMNS = 5,
	PANEL_MOST = 26, PANEL_LEAST = 20, PANEL_FULL_AT = 80,
	FORM_COLUMNS = 46,
	HERE_LEAST = 7, HERE_MOST = 12
};

/* The panel's foot has three sevenths of it, as long as that is of use. */
static int here_rows(int body)
{
	int rows = body * 3 / 7;

	return rows < HERE_LEAST ? HERE_LEAST : rows > HERE_MOST ? HERE_MOST : rows;
}

/* The panel narrows between 80 and 60 columns so that the plan keeps its share. */
static int panel_columns(int columns)
{
	int spare = PANEL_FULL_AT - columns;

	if (spare <= 0)
		return PANEL_MOST;
	return PANEL_MOST - spare * (PANEL_MOST - PANEL_LEAST) / (PANEL_FULL_AT - LEAST_COLUMNS);
}

struct layout layout_of(int rows, int columns)
{
	int body = rows - 3, panel = panel_columns(columns), left = columns - panel;
	int here = here_rows(body);
	int plan = (left - 1 - RULER_COLUMNS) / CELL_COLUMNS * CELL_COLUMNS;

	if (rows < LEAST_ROWS || columns < LEAST_COLUMNS)
		return (struct layout){ .is_too_small = true, .screen = { 0, 0, rows, columns } };
	return (struct layout){
		.screen = { 0, 0, rows, columns },
		.status = { 0, 0, 1, columns },
		.ruler = { 1, RULER_COLUMNS, 1, plan },
		.side_ruler = { 2, 0, body - 1, RULER_COLUMNS },
		.plan = { 2, RULER_COLUMNS, body - 1, plan },
		.divider = { 1, left - 1, body, 1 },
		.panel = { 1, left, body - here, panel },
		.here = { 1 + body - here, left, here, panel },
		.form = { 1, columns - FORM_COLUMNS, body, FORM_COLUMNS },
		.message = { rows - 2, 0, 1, columns },
		.keys = { rows - 1, 0, 1, columns },
	};
}

/* One direction: `shown` cells from `first` on, of `all`. */
static int follow(int first, int shown, int all, int cursor)
{
	int last = all > shown ? all - shown : 0;

	if (cursor < first)
		first = cursor - shown / 3;
	else if (cursor >= first + shown)
		first = cursor - (shown - 1 - shown / 3);
	if (first > last)
		first = last;
	return first < 0 ? 0 : first;
}

struct place view_follow(struct place first, const struct area *plan, const struct ground *ground,
	struct place cursor)
{
	return (struct place){
		follow(first.x, plan->columns / CELL_COLUMNS, ground->columns, cursor.x),
		follow(first.y, plan->rows, ground->rows, cursor.y),
	};
}

static int least(int a, int b)
{
	return a < b ? a : b;
}

struct place view_cells(struct place first, const struct area *plan, const struct ground *ground)
{
	return (struct place){
		least(plan->columns / CELL_COLUMNS, ground->columns - first.x),
		least(plan->rows, ground->rows - first.y),
	};
}
