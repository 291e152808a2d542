#include "screen/layout.h"
#include "base/number.h"

enum {
	RULER_COLUMNS = 5,
	PANEL_MOST = 26, PANEL_LEAST = 20, PANEL_FULL_AT = 80,
	FORM_COLUMNS = 46, WIDE_MOST = 48,
	HERE_LEAST = 7, HERE_MOST = 12, HERE_BELOW = 2
};

/* The panel's foot has three sevenths of it, as long as that is of use. */
static int here_rows(int body)
{
	return most(least(body * 3 / 7, HERE_MOST), HERE_LEAST);
}

/* The panel narrows between 80 and 60 columns so that the plan keeps its share. */
static int panel_columns(int columns, enum panel_width panel)
{
	int spare = most(PANEL_FULL_AT - columns, 0);

	if (panel == PANEL_WIDE)
		return least(columns / 2, WIDE_MOST);
	return PANEL_MOST - spare * (PANEL_MOST - PANEL_LEAST) / (PANEL_FULL_AT - LEAST_COLUMNS);
}

/* Panel and foot fill the right of the body, with the divider before them. */
static void panel_place(struct layout *layout, int body, int panel)
{
	int left = layout->screen.columns - panel, here = here_rows(body);

	layout->divider = (struct area){ 1, left - 1, body, 1 };
	layout->panel = (struct area){ 1, left, body - here, panel };
	layout->here = (struct area){ 1 + body - here, left, here, panel };
}

/* The plan and its rulers: the body's first rows, from the screen's left. */
static void plan_place(struct layout *layout, int body, int columns)
{
	int plan = (columns - RULER_COLUMNS) / CELL_COLUMNS * CELL_COLUMNS;

	layout->ruler = (struct area){ 1, RULER_COLUMNS, 1, plan };
	layout->side_ruler = (struct area){ 2, 0, body - 1, RULER_COLUMNS };
	layout->plan = (struct area){ 2, RULER_COLUMNS, body - 1, plan };
}

struct layout layout_of(int rows, int columns, enum panel_width panel)
{
	int body = rows - 3, right = panel_columns(columns, panel);
	struct layout layout = {
		.screen = { 0, 0, rows, columns },
		.status = { 0, 0, 1, columns },
		.list = { 1, columns - right - 1, body, right + 1 },
		.form = { 1, columns - FORM_COLUMNS, body, FORM_COLUMNS },
		.message = { rows - 2, 0, 1, columns },
		.keys = { rows - 1, 0, 1, columns },
	};

	if (rows < LEAST_ROWS || columns < LEAST_COLUMNS)
		return (struct layout){ .is_too_small = true, .screen = { 0, 0, rows, columns } };
	if (panel == PANEL_HIDDEN) {
		plan_place(&layout, body - HERE_BELOW, columns);
		layout.here = (struct area){ 1 + body - HERE_BELOW, 0, HERE_BELOW, columns };
	} else {
		plan_place(&layout, body, columns - right - 1);
		panel_place(&layout, body, right);
	}
	return layout;
}
