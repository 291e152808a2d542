#include "plot/edit/round.h"
#include "base/number.h"

#include <stdlib.h>

/* ---- Discs ----------------------------------------------------------------------------------- */

static int middle_at(const struct mirror *mirror, bool is_level, int cell, int diameter)
{
	int axis = mirror_axis(mirror, is_level);

	if (mirror_has_axis(mirror, is_level) && abs(2 * cell + 1 - axis) <= 1)
		return axis;
	return 2 * cell + 1 + (diameter % 2 == 0);
}

struct disc disc_at(const struct mirror *mirror, struct place cell, int diameter)
{
	return (struct disc){ { middle_at(mirror, false, cell.x, diameter),
		middle_at(mirror, true, cell.y, diameter) }, diameter };
}

struct disc disc_within(struct rectangle r, int diameter)
{
	return (struct disc){ { r.left + r.right + 1, r.top + r.bottom + 1 }, diameter };
}

/* How far, in half cells, a middle may be from that of a disc along a row which is `away` from it;
 * less than 0: no middle in the row is in the disc. */
static int reach(int diameter, int64_t away)
{
	int64_t square = (int64_t)diameter * diameter - away * away;
	int at = -1;

	while ((int64_t)(at + 1) * (at + 1) < square)
		at++;
	return at;
}

/* The cells with their middles no farther than that, all in half cells; none: first is after last.
 * A cell's own middle is odd. */
static void span(int middle, int away, int *first, int *last)
{
	int odd = (middle + 1 + away) % 2, room = away - odd;

	*first = (middle - room - 1) / 2;
	*last = (middle + room - 1) / 2;
}

struct rectangle disc_cells(const struct disc *disc)
{
	int line_x = disc->middle.x % 2 == 0, line_y = disc->middle.y % 2 == 0;
	struct rectangle r;

	span(disc->middle.x, reach(disc->diameter, line_y), &r.left, &r.right);
	span(disc->middle.y, reach(disc->diameter, line_x), &r.top, &r.bottom);
	return r;
}

struct laid lay_disc(struct plot *plot, const struct disc *disc, char letter)
{
	struct mirror mirror = mirror_of(plot);
	struct rectangle r = disc_cells(disc), row;
	struct laid laid = { 0, false };

	for (int y = r.top; y <= r.bottom; y++) {
		row = (struct rectangle){ .top = y, .bottom = y };
		span(disc->middle.x, reach(disc->diameter, 2 * y + 1 - disc->middle.y), &row.left,
			&row.right);
		if (row.left <= row.right)
			lay_piece(plot, &mirror, row, letter, &laid);
	}
	return laid;
}

/* ---- Rounded corners ------------------------------------------------------------------------- */

/* How many cells a quarter circle leaves out at either end of the row. */
static int cut_off(struct rectangle r, int radius, int y)
{
	int above = 2 * (r.top + radius) - (2 * y + 1);
	int below = 2 * y + 1 - 2 * (r.bottom + 1 - radius);

	if (above < 0 && below < 0)
		return 0;
	return radius - (reach(2 * radius, most(above, below)) + 1) / 2;
}

struct laid lay_rounded(struct plot *plot, struct rectangle r, int radius, char letter)
{
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };

	for (int y = r.top; y <= r.bottom; y++) {
		int off = cut_off(r, radius, y);

		lay_piece(plot, &mirror, (struct rectangle){ r.left + off, y, r.right - off, y },
			letter, &laid);
	}
	return laid;
}
