#include "screen/layout.h"
#include "base/number.h"

enum {
	RULER_COLUMNS = 5,
	PANEL_MOST = 26, PANEL_LEAST = 20, PANEL_FULL_AT = 80,
	FORM_COLUMNS = 46, WIDE_MOST = 48, TWO_PAGES_AT = 80,
	HERE_TITLE = 1, HERE_LEAST = 3, HERE_BELOW = 2
};

/* The panel's foot: as high as its words, so that the page has the rest; at most half of it. Not
 * less than most cells take, so that the page does not move with every step. */
static int here_rows(int body, int words)
{
	return least(HERE_TITLE + most(words, HERE_LEAST), body / 2);
}

/* Columns beside the plan that it does not need. */
static int spare_columns(int columns, int plan)
{
	return columns - RULER_COLUMNS - plan - 2; /* the plan's end, the divider */
}

/* The panel narrows between 80 and 60 columns so that the plan keeps its share, and takes what the
 * plan does not need. */
static int panel_columns(int columns, const struct wanted *wanted)
{
	int narrow = most(PANEL_FULL_AT - columns, 0);
	int share = PANEL_MOST -
		narrow * (PANEL_MOST - PANEL_LEAST) / (PANEL_FULL_AT - LEAST_COLUMNS);

	if (wanted->panel == PANEL_WIDE)
		return least(columns / 2, WIDE_MOST);
	return most(share, least(spare_columns(columns, wanted->plan), WIDE_MOST));
}

/* Two pages of the same width and a line between them; 0: no room for a second. */
static int second_columns(int columns, const struct wanted *wanted)
{
	int spare = spare_columns(columns, wanted->plan);

	return spare < TWO_PAGES_AT ? 0 : least((spare - 1) / 2, WIDE_MOST);
}

/* A page's columns: the panel's, or those of each of two. */
static int page_columns(int columns, const struct wanted *wanted)
{
	int second = second_columns(columns, wanted);

	return second ? second : panel_columns(columns, wanted);
}

/* Panel and foot fill the right of the body, with the divider before them; a second page stands
 * beside the first, and the foot below both. */
static void panel_place(struct layout *layout, int body, int page, const struct wanted *wanted)
{
	bool has_second = second_columns(layout->screen.columns, wanted);
	int all = has_second ? 2 * page + 1 : page, left = layout->screen.columns - all;
	int here = here_rows(body, wanted->here);

	layout->divider = (struct area){ 1, left - 1, body, 1 };
	layout->panel = (struct area){ 1, left, body - here, page };
	layout->here = (struct area){ 1 + body - here, left, here, all };
	if (has_second)
		layout->second = (struct area){ 1, left + page + 1, body - here, page };
}

/* The plan and its rulers: the body's first rows, from the screen's left. */
static void plan_place(struct layout *layout, int body, int columns)
{
	int plan = (columns - RULER_COLUMNS) / CELL_COLUMNS * CELL_COLUMNS;

	layout->ruler = (struct area){ 1, RULER_COLUMNS, 1, plan };
	layout->side_ruler = (struct area){ 2, 0, body - 1, RULER_COLUMNS };
	layout->plan = (struct area){ 2, RULER_COLUMNS, body - 1, plan };
}

struct layout layout_of(int rows, int columns, const struct wanted *wanted)
{
	int body = rows - 3 - wanted->scale, page = page_columns(columns, wanted);
	int form = most(FORM_COLUMNS, page + 1);
	struct layout layout = {
		.screen = { 0, 0, rows, columns },
		.status = { 0, 0, 1, columns },
		.list = { 1, columns - page - 1, body, page + 1 },
		.form = { 1, columns - form, body, form },
		.scale = { rows - 3, 0, wanted->scale, columns },
		.message = { rows - 2, 0, 1, columns },
		.keys = { rows - 1, 0, 1, columns },
	};

	if (rows < LEAST_ROWS || columns < LEAST_COLUMNS)
		return (struct layout){ .is_too_small = true, .screen = { 0, 0, rows, columns } };
	if (wanted->panel == PANEL_HIDDEN) {
		plan_place(&layout, body - HERE_BELOW, columns);
		layout.here = (struct area){ 1 + body - HERE_BELOW, 0, HERE_BELOW, columns };
	} else {
		panel_place(&layout, body, page, wanted);
		plan_place(&layout, body, layout.divider.column);
	}
	return layout;
}
