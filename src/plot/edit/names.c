#include "plot/edit/names.h"
#include "base/memory.h"
#include "plot/edit/lay.h"

#include <stdlib.h>

static bool is_in(const struct rectangle *rows, size_t count, struct place at)
{
	for (size_t i = 0; i < count; i++)
		if (rectangle_holds(rows[i], at))
			return true;
	return false;
}

/* The first from index `from` on in the region around a cell, or on the cell of open ground. */
static size_t first_in(struct plot *plot, struct place at, size_t from)
{
	const struct names *names = &plot->details.names;
	struct rectangle cell = { at.x, at.y, at.x, at.y }, *rows = NULL;
	bool is_open = ground_cell(&plot->ground, at.x, at.y) == OPEN_GROUND;
	size_t count = 0;

	if (from < names->count && !is_open)
		rows = lay_patch(&plot->ground, at, &count);
	while (from < names->count &&
		!is_in(rows ? rows : &cell, rows ? count : 1, names->items[from].at))
		from++;
	free(rows);
	return from;
}

size_t names_of_region(struct plot *plot, struct place at)
{
	return first_in(plot, at, 0);
}

void names_set(struct plot *plot, struct place at, const char *text)
{
	struct names *names = &plot->details.names;
	size_t i = names_of_region(plot, at);

	if (*text && i == names->count) {
		names_add(names, at, memory_string(text));
	} else if (*text) {
		free(names->items[i].text);
		names->items[i].text = memory_string(text);
	}
	for (; !*text && i < names->count; i = first_in(plot, at, i))
		names_remove(names, i);
}

/* ---- As the ground moves --------------------------------------------------------------------- */

/* The cell of the region that is left and nearest, over and along; false where none is. */
static bool stay(struct ground *before, struct place at, names_way *way, const void *how,
	struct place *to)
{
	size_t count;
	struct rectangle *rows = lay_patch(before, at, &count);
	int nearest = 2 * SIDE_MOST;

	for (size_t i = 0; i < count; i++) {
		for (int x = rows[i].left; x <= rows[i].right; x++) {
			struct place cell = { x, rows[i].top };
			int away = abs(x - at.x) + abs(cell.y - at.y);

			if (away < nearest && way(how, &cell)) {
				nearest = away;
				*to = cell;
			}
		}
	}
	free(rows);
	return nearest < 2 * SIDE_MOST;
}

bool names_move_cell(struct ground *before, struct place *at, names_way *way, const void *how)
{
	struct place to = *at;
	bool is_left = way(how, &to) || stay(before, *at, way, how, &to);

	if (is_left)
		*at = to;
	return is_left;
}

void names_move(struct names *names, struct ground *before, names_way *way, const void *how)
{
	for (size_t i = 0; i < names->count;) {
		if (names_move_cell(before, &names->items[i].at, way, how))
			i++;
		else
			names_remove(names, i);
	}
}
