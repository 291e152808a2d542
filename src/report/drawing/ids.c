#include "report/drawing/ids.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "base/utf8.h"

#include <stdlib.h>
#include <string.h>

/* A place for words: their first point. Kept small: every cell may be a region. */
struct room {
	int16_t column, row; /* row 0, where nothing is free: there is none yet */
};

/* The best so far for one region. */
struct rooms {
	struct room id, all;
};

static int text_columns(const char *text)
{
	size_t length = strlen(text), step;
	uint32_t code;
	int columns = 0;

	for (size_t at = 0; at < length; at += step) {
		step = utf8_decode(text + at, length - at, &code);
		columns += utf8_columns(code);
	}
	return columns;
}

static int id_columns(const struct region *region)
{
	char id[REGION_NAME_MOST];

	survey_region_name(region, id);
	return (int)strlen(id);
}

/* How far words that begin there have their middle from that of the region's box: in half
 * characters across, of which a row is as good as four. */
static int distance(const struct points *points, const struct region *region, struct room at,
	int columns)
{
	int across = points->cuts.across, down = points->cuts.down;

	return abs(2 * at.column + columns - 1 - across * (region->left + region->most.x + 1)) +
		2 * abs(2 * at.row - down * (region->first_cell.y + region->most.y + 1));
}

/* Takes what is free in a row, where it is better; a character off its ends where it can be. */
static void consider(struct room *best, const struct points *points, const struct region *region,
	struct rectangle free, int columns)
{
	int middle = (points->cuts.across * (region->left + region->most.x + 1) - columns + 1) / 2;
	int spare = free.right + 1 - free.left - columns, off = spare > 1;
	struct room here = { (int16_t)held(middle, free.left + off, free.left + spare - off),
		(int16_t)free.top };

	if (spare < 0)
		return;
	if (best->row == 0 || distance(points, region, here, columns) <
	    distance(points, region, *best, columns))
		*best = here;
}

static void consider_all(struct rooms *rooms, const struct points *points,
	const struct survey *survey, struct rectangle free)
{
	int id = survey_region_at(survey, free.left / points->cuts.across,
		free.top / points->cuts.down);
	const char *own = id == NO_REGION ? NULL : survey_own_name(survey, id);
	int columns;

	if (id == NO_REGION)
		return;
	columns = id_columns(&survey->regions[id]);
	consider(&rooms[id].id, points, &survey->regions[id], free, columns);
	if (own)
		consider(&rooms[id].all, points, &survey->regions[id], free,
			columns + 1 + text_columns(own));
}

/* Free, on one sheet alone, and not beside a word. */
static bool is_open(const struct points *points, int column, int row)
{
	return points_at(points, column, row) == POINT_FREE &&
		!cuts_join_column(&points->cuts, column) &&
		!points_is_word(points_at(points, column - 1, row)) &&
		!points_is_word(points_at(points, column + 1, row));
}

/* Neighbours that are both free have a cell in common, and so are of one region. */
static void consider_row(struct rooms *rooms, const struct points *points,
	const struct survey *survey, int row)
{
	for (int from = 0, to; from < points->columns; from = to + 1) {
		for (to = from; to < points->columns && is_open(points, to, row);)
			to++;
		if (to > from)
			consider_all(rooms, points, survey,
				(struct rectangle){ from, row, to - 1, row });
	}
}

/* Returns how much of it is on the plan. */
static enum named write_id(struct points *points, const struct survey *survey, int region,
	const struct rooms *rooms, struct drawn_name *name, struct arena *arena)
{
	char id[REGION_NAME_MOST];
	const char *own = survey_own_name(survey, region);

	survey_region_name(&survey->regions[region], id);
	if (own && rooms->all.row > 0) {
		*name = (struct drawn_name){ rooms->all.column, rooms->all.row,
			arena_print(arena, "%s %s", id, own) };
		for (int i = text_columns(name->text); i-- > 0;)
			points_put(points, rooms->all.column + i, rooms->all.row, POINT_NAME);
		return NAMED_ALL;
	}
	if (rooms->id.row == 0)
		return NAMED_NOT;
	points_write(points, rooms->id.column, rooms->id.row, id);
	return NAMED_ID;
}

static int compare_places(const void *a, const void *b)
{
	const struct drawn_name *one = a, *other = b;
	int order = compare(one->row, other->row);

	return order ? order : compare(one->column, other->column);
}

void ids_write(struct ids *out, struct points *points, const struct survey *survey,
	struct arena *arena)
{
	size_t count = (size_t)survey->region_count;
	struct rooms *rooms = memory_new(count, sizeof *rooms);
	unsigned char *named = arena_new(arena, count, 1);
	struct drawn_name *names = arena_new(arena, (size_t)survey->name_count, sizeof *names);

	*out = (struct ids){ named, names, 0 };
	for (int row = 0; row < points->rows && !stop_asked(); row++)
		if (!cuts_join_row(&points->cuts, row))
			consider_row(rooms, points, survey, row);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		struct drawn_name name;

		named[i] = (unsigned char)write_id(points, survey, i, &rooms[i], &name, arena);
		if (named[i] == NAMED_ALL)
			names[out->name_count++] = name;
	}
	sort(names, out->name_count, sizeof *names, compare_places);
	free(rooms);
}
