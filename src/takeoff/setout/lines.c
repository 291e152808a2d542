#include "takeoff/setout/lines.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/common/basis.h"

#include <stdlib.h>
#include <string.h>

/* A line that may get a string. */
struct line {
	struct setout_string string;
	struct setout_guided guides[SETOUT_NAMED_MOST];
	int last; /* the last fence along it, and one; 0: none */
};

struct lines {
	const struct survey *survey;
	struct line *level, *upright; /* by line of the grid */
	struct line *between;         /* on none of them */
	size_t between_count, between_capacity;
	int *stamps, stamp;           /* by region: the stamp of the last line that had it */
};

/* ---- What is guided -------------------------------------------------------------------------- */

static void guide(struct line *line, enum setout_use use, struct setout_guided guided)
{
	struct setout_string *string = &line->string;

	if (string->guide_count == 0 || use < string->use)
		string->use = use;
	if (string->guide_count < SETOUT_NAMED_MOST)
		line->guides[string->guide_count] = guided;
	string->guide_count++;
}

static enum setout_use use_of(const struct region *region)
{
	switch (region->entry->class) {
	case CLASS_PATH:
		return USE_PATHS;
	case CLASS_LAWN:
		return USE_LAWNS;
	case CLASS_FIXTURE:
		return USE_FIXTURES;
	case CLASS_BED:
	case CLASS_OPEN:
	case CLASS_BOUNDARY:
		break;
	}
	return region_is_raised(region) ? USE_WALLS : USE_BEDS;
}

static void guide_region(struct lines *lines, struct line *line, int region)
{
	if (region == NO_REGION || lines->stamps[region] == lines->stamp)
		return;
	lines->stamps[region] = lines->stamp;
	guide(line, use_of(&lines->survey->regions[region]),
		(struct setout_guided){ false, region });
}

/* A side of a cell, between two regions or none. */
static void guide_side(struct lines *lines, struct line *line, int first, int second)
{
	if (first == second)
		return;
	guide_region(lines, line, first);
	guide_region(lines, line, second);
}

static void find_level(struct lines *lines, int row)
{
	struct line *found = &lines->level[row];
	struct grid_line line = grid_line_begin(lines->survey, row);
	int around[AROUND], regions[AROUND];

	lines->stamp++;
	do {
		grid_line_around(&line, around);
		guide_side(lines, found, around[AROUND_ABOVE], around[AROUND_BELOW]);
		found->string.corner_count += corner_regions(around, regions) > 0;
	} while (grid_line_next(&line));
}

static int region_right(const struct survey *survey, size_t run, int x)
{
	return x == survey->columns ? NO_REGION : survey->runs[run].region;
}

static int region_left(const struct survey *survey, size_t run, int x)
{
	return x == 0 ? NO_REGION :
		survey->runs[run - (survey->runs[run].left == x)].region;
}

/* at: of each row the run that holds the cell left of the line; moved on. */
static void find_upright(struct lines *lines, int x, size_t *at)
{
	const struct survey *survey = lines->survey;

	lines->stamp++;
	for (int y = 0; y < survey->rows; y++) {
		at[y] += x < survey->columns && survey->runs[at[y]].right == x;
		guide_side(lines, &lines->upright[x], region_left(survey, at[y], x),
			region_right(survey, at[y], x));
	}
}

static void find_regions(struct lines *lines)
{
	const struct survey *survey = lines->survey;
	size_t *at = memory_new((size_t)survey->rows, sizeof *at);

	lines->stamps = memory_new((size_t)survey->region_count, sizeof *lines->stamps);
	for (int y = 0; y <= survey->rows && !stop_asked(); y++)
		find_level(lines, y);
	for (int y = 0; y < survey->rows; y++)
		at[y] = survey->row_runs[y];
	for (int x = 0; x <= survey->columns && !stop_asked(); x++)
		find_upright(lines, x, at);
	free(lines->stamps);
	free(at);
}

/* ---- Fences ---------------------------------------------------------------------------------- */

bool heading_is_upright(enum heading heading)
{
	return heading == HEADING_DOWN || heading == HEADING_UP;
}

/* Whether a length from the plan's edge is on a line of the grid: then which. */
static bool is_on_grid(const struct survey *survey, nm at, int *line)
{
	*line = (int)(at / survey->cell);
	return at % survey->cell == 0;
}

static struct line *line_at(struct lines *lines, bool is_upright, nm at)
{
	int on;

	if (is_on_grid(lines->survey, at, &on))
		return is_upright ? &lines->upright[on] : &lines->level[on];
	for (size_t i = 0; i < lines->between_count; i++)
		if (lines->between[i].string.is_upright == is_upright &&
		    lines->between[i].string.at == at)
			return &lines->between[i];
	lines->between = memory_grow(lines->between, lines->between_count,
		&lines->between_capacity, sizeof *lines->between);
	lines->between[lines->between_count] = (struct line){
		.string = { .is_upright = is_upright, .at = at } };
	return &lines->between[lines->between_count++];
}

static void guide_fence(struct lines *lines, int fence, enum heading heading, struct spot from)
{
	bool is_upright = heading_is_upright(heading);
	struct line *line = line_at(lines, is_upright, is_upright ? from.x : from.y);

	if (line->last == fence + 1)
		return;
	line->last = fence + 1;
	guide(line, USE_POSTS, (struct setout_guided){ true, fence });
}

static void find_fences(struct lines *lines, const struct fences *fences)
{
	for (int f = 0; f < fences->count; f++) {
		const struct fencing *fencing = &fences->list[f];

		for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
			guide_fence(lines, f, fencing->legs[i].heading, fencing->legs[i].from);
		for (int i = 0; i < fencing->gate_count && !stop_asked(); i++)
			guide_fence(lines, f, fencing->gates[i].heading, fencing->gates[i].from);
	}
}

/* ---- The list -------------------------------------------------------------------------------- */

/* The base line, the sides at its ends, the edge across from it. */
static int compare_frame(const struct setout_string *a, const struct setout_string *b)
{
	bool is_far = a->at > 0;

	if (is_far != (b->at > 0))
		return compare(is_far, b->at > 0);
	return is_far ? compare(b->is_upright, a->is_upright) :
		compare(a->is_upright, b->is_upright);
}

static int compare_strings(const void *one, const void *other)
{
	const struct setout_string *a = one, *b = other;

	if (a->use != b->use)
		return compare(a->use, b->use);
	if (a->is_frame)
		return compare_frame(a, b);
	return a->is_upright != b->is_upright ? compare(a->is_upright, b->is_upright) :
		compare(a->at, b->at);
}

/* Adds those that guide something to the list. */
static void keep(struct setout_string *list, int *count, struct arena *arena,
	const struct line *lines, size_t from)
{
	for (size_t i = 0; i < from; i++) {
		struct setout_string string = lines[i].string;
		size_t named = (size_t)least(string.guide_count, SETOUT_NAMED_MOST);
		struct setout_guided *guides;

		if (named == 0 && !string.is_frame)
			continue;
		guides = arena_new(arena, named, sizeof *guides);
		memcpy(guides, lines[i].guides, named * sizeof *guides);
		string.guides = guides;
		list[(*count)++] = string;
	}
}

static void make_frame(struct line *lines, int last)
{
	lines[0].string.is_frame = lines[last].string.is_frame = true;
	lines[0].string.use = lines[last].string.use = USE_FRAME;
}

static struct line *grid_lines(const struct survey *survey, int cells, bool is_upright)
{
	struct line *lines = memory_new((size_t)cells + 1, sizeof *lines);

	for (int i = 0; i <= cells; i++)
		lines[i].string = (struct setout_string){ .is_upright = is_upright,
			.at = i * survey->cell };
	return lines;
}

struct setout_string *lines_find(struct setout *out, struct arena *arena)
{
	const struct survey *survey = out->survey;
	struct lines lines = { .survey = survey,
		.level = grid_lines(survey, survey->rows, false),
		.upright = grid_lines(survey, survey->columns, true) };
	struct setout_string *list;
	size_t room;
	int corner = 1;

	find_fences(&lines, out->fences);
	find_regions(&lines);
	make_frame(lines.level, survey->rows);
	make_frame(lines.upright, survey->columns);
	room = (size_t)survey->rows + (size_t)survey->columns + 2 + lines.between_count;
	list = arena_new(arena, room, sizeof *list);
	keep(list, &out->string_count, arena, lines.level, (size_t)survey->rows + 1);
	keep(list, &out->string_count, arena, lines.upright,
		(size_t)survey->columns + 1);
	keep(list, &out->string_count, arena, lines.between, lines.between_count);
	free(lines.level);
	free(lines.upright);
	free(lines.between);
	sort(list, (size_t)out->string_count, sizeof *list, compare_strings);
	for (int i = 0; i < out->string_count; i++) {
		list[i].first_corner = corner;
		corner += list[i].corner_count;
	}
	out->corner_count = corner - 1;
	out->strings = list;
	return list;
}

/* ---- By line --------------------------------------------------------------------------------- */

struct line_index line_index_of(const struct setout *setout)
{
	const struct survey *survey = setout->survey;
	struct line_index index = { setout,
		memory_new((size_t)survey->rows + 1, sizeof(int)),
		memory_new((size_t)survey->columns + 1, sizeof(int)),
		memory_new((size_t)setout->string_count, sizeof(int)), 0 };

	for (int i = 0; i <= survey->rows; i++)
		index.level[i] = NO_STRING;
	for (int i = 0; i <= survey->columns; i++)
		index.upright[i] = NO_STRING;
	for (int i = 0; i < setout->string_count; i++) {
		const struct setout_string *string = &setout->strings[i];
		int on;

		if (!is_on_grid(survey, string->at, &on))
			index.between[index.between_count++] = i;
		else if (string->is_upright)
			index.upright[on] = i;
		else
			index.level[on] = i;
	}
	return index;
}

void line_index_fini(struct line_index *index)
{
	free(index->level);
	free(index->upright);
	free(index->between);
}

int line_index_find(const struct line_index *index, bool is_upright, nm at)
{
	int on;

	if (is_on_grid(index->setout->survey, at, &on))
		return is_upright ? index->upright[on] : index->level[on];
	for (int i = 0; i < index->between_count; i++) {
		const struct setout_string *string = &index->setout->strings[index->between[i]];

		if (string->is_upright == is_upright && string->at == at)
			return index->between[i];
	}
	return NO_STRING;
}
