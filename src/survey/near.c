#include "survey/near.h"
#include "base/number.h"
#include "base/stop.h"
#include "plot/edit/lay.h"

#include <stdlib.h>
#include <string.h>

struct near_thing near_leg(struct leg leg, nm cell, nm around)
{
	struct leg f = leg_forward(leg);

	return (struct near_thing){ f.from.x * cell, f.from.y * cell, f.to.x * cell, f.to.y * cell,
		around };
}

struct near_thing near_obstacle(const struct obstacle *obstacle, nm cell)
{
	const struct rectangle *cells = &obstacle->cells;

	if (obstacle->radius > 0)
		return (struct near_thing){ obstacle->at.x * cell, obstacle->at.y * cell,
			obstacle->at.x * cell, obstacle->at.y * cell, obstacle->radius };
	return (struct near_thing){ cells->left * cell, cells->top * cell,
		(cells->right + 1) * cell, (cells->bottom + 1) * cell, 0 };
}

/* How far two ranges are apart, 0 where they meet. */
static nm apart(nm low, nm high, nm other_low, nm other_high)
{
	return nm_most(0, nm_most(other_low - high, low - other_high));
}

bool near_box(const struct near_thing *thing, const struct cover_box *box)
{
	nm across = apart(box->left, box->right, thing->left, thing->right);
	nm down = apart(box->top, box->bottom, thing->top, thing->bottom);

	if (thing->around == 0)
		return box->left < thing->right && thing->left < box->right &&
			box->top < thing->bottom && thing->top < box->bottom;
	return (nm2)across * across + (nm2)down * down < (nm2)thing->around * thing->around;
}

bool near_disc(const struct near_thing *thing, nm x, nm y, nm across)
{
	const struct near_thing doubled = { 2 * thing->left, 2 * thing->top, 2 * thing->right,
		2 * thing->bottom, 2 * thing->around + across };

	return near_box(&doubled, &(struct cover_box){ 2 * x, 2 * y, 2 * x, 2 * y, 0 });
}

/* ---- Cells ----------------------------------------------------------------------------------- */

static unsigned char *row_of(const struct near_cells *cells, int y)
{
	return cells->cells + (size_t)y * (size_t)cells->survey->columns;
}

static const struct rectangle nowhere = { 0, 0, -1, -1 };

void near_cells_begin(struct near_cells *cells, const struct survey *survey)
{
	*cells = (struct near_cells){ survey, memory_new((size_t)survey->columns *
		(size_t)survey->rows, sizeof *cells->cells), nowhere };
}

/* The cells of a row, or the rows, that a range with `around` on either side may reach. */
static void reach(nm low, nm high, nm around, nm cell, int count, int *first, int *last)
{
	*first = held((low - around) / cell, 0, count);
	*last = held((high + around) / cell, -1, count - 1);
}

/* The cells of a row that are near lie side by side: those at its ends are passed for as long as
 * nothing of them is near. */
static void add_row(struct near_cells *cells, const struct near_thing *thing, int y, int first,
	int last)
{
	nm cell = cells->survey->cell;
	struct cover_box box = { first * cell, y * cell, (first + 1) * cell, (y + 1) * cell, 0 };
	struct rectangle *within = &cells->within, row;

	for (; first <= last && !near_box(thing, &box); first++)
		box.right += cell;
	box.left = last * cell;
	box.right = box.left + cell;
	for (; first <= last && !near_box(thing, &box); last--)
		box.left -= cell;
	if (first > last)
		return;
	memset(row_of(cells, y) + first, 1, (size_t)(last - first + 1));
	row = (struct rectangle){ first, y, last, y };
	*within = within->right < within->left ? row : rectangle_around(*within, row);
}

void near_cells_add(struct near_cells *cells, const struct near_thing *thing)
{
	const struct survey *survey = cells->survey;
	int first, last, top, bottom;

	reach(thing->left, thing->right, thing->around, survey->cell, survey->columns, &first,
		&last);
	reach(thing->top, thing->bottom, thing->around, survey->cell, survey->rows, &top, &bottom);
	for (int y = top; y <= bottom && !stop_asked(); y++)
		add_row(cells, thing, y, first, last);
}

void near_cells_clear(struct near_cells *cells)
{
	const struct rectangle *within = &cells->within;

	for (int y = within->top; y <= within->bottom; y++)
		memset(row_of(cells, y) + within->left, 0,
			(size_t)(within->right - within->left + 1));
	cells->within = nowhere;
}

bool near_cells_hold(const struct near_cells *cells, int x, int y)
{
	return row_of(cells, y)[x];
}

void near_cells_end(struct near_cells *cells)
{
	free(cells->cells);
}
