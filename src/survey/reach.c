#include "survey/reach.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/cover.h"
#include "survey/way.h"

#include <stdlib.h>
#include <string.h>

/* Distances are counted in halves of a cell: the middle of a cell is at odd ones, lines of the grid
 * at even ones. Of a side the point nearest to a cell's middle is the side's own middle, where the
 * cell lies in its row or column, else its nearer end. So all there is to know of a row is, by
 * columns and by upright lines, how far up or down the next such point is. */
enum { HALVES_MOST = 4 * SIDE_MOST };

struct reaching {
	const struct survey *survey;
	const struct fence_map *fences;
	const struct house_map *houses;
	int columns, rows;
	int64_t limit;  /* the most that a distance's square may be */
	int arm;        /* the most that a distance may be */
	uint16_t *wide; /* by distance up or down: how far across one reaches beside it */
	/* By column, and by line: how far up the next point is from the middle of the row that is
	 * looked at (while rows are passed from the bottom up: how far down), and how far down from
	 * that of each row; arm + 1 where it is farther. */
	uint16_t *column_up, *line_up, *column_down, *line_down;
	int *until;     /* by row: how far to either side what was met on it reaches */
};

/* The classes of a row's cells; of a row outside the plan, and of a house, CLASS_BOUNDARY. */
static void classes_of_row(const struct reaching *reaching, int y, unsigned char *classes)
{
	const struct survey *survey = reaching->survey;

	for (int x = 0; x < survey->columns; x++)
		classes[x] = CLASS_BOUNDARY;
	if (y < 0 || y >= survey->rows)
		return;
	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++)
		for (int x = survey->runs[i].left; x < survey->runs[i].right; x++)
			classes[x] = survey->runs[i].class;
	for (int x = 0; reaching->houses->cells && x < survey->columns; x++)
		if (house_map_at(reaching->houses, x, y))
			classes[x] = CLASS_BOUNDARY;
}

static bool can_stand(unsigned int one, unsigned int other)
{
	return (one == CLASS_BED && way_is_over(other)) || (other == CLASS_BED && way_is_over(one));
}

static uint16_t farther(const struct reaching *reaching, int distance)
{
	return (uint16_t)least(distance, reaching->arm + 1);
}

/* Goes on to the next row, y, down or up: its middle is 2 halves from that of the row before.
 * classes: of this row and of that one; edge: the row at whose lower side the two meet. */
static void pass_row(const struct reaching *reaching, unsigned char *const classes[2], int y,
	int edge)
{
	int columns = reaching->columns;
	uint16_t *column = reaching->column_up, *line = reaching->line_up;

	for (int x = 0; x < columns; x++) {
		bool has_fence = fence_map_at(reaching->fences, x, edge) & FENCE_BELOW;

		column[x] = can_stand(classes[0][x], classes[1][x]) && !has_fence ? 1 :
			farther(reaching, column[x] + 2);
	}
	/* Nobody stands at the plan's edges: their lines stay as far as they are. */
	for (int x = 1; x < columns; x++) {
		bool has_fence = fence_map_at(reaching->fences, x - 1, y) & FENCE_RIGHT;

		/* An upright side ends half a cell from the middle of its row. */
		line[x] = can_stand(classes[0][x - 1], classes[0][x]) && !has_fence ? 0 :
			farther(reaching, line[x] == 0 ? 1 : line[x] + 2);
	}
}

/* How far the next point on a line is, up or down: an end of an upright side, or of a level one of
 * the columns at its left and right. */
static int line_distance(const struct reaching *reaching, const uint16_t *column,
	const uint16_t *line, int x)
{
	int distance = line[x];

	if (x > 0)
		distance = least(distance, column[x - 1]);
	return x < reaching->columns ? least(distance, column[x]) : distance;
}

/* Marks what is beyond reach in a row. */
static void mark_row(const struct reaching *reaching, int y, const unsigned char *classes,
	unsigned char *beyond)
{
	int columns = reaching->columns;
	const uint16_t *column_down = reaching->column_down + (size_t)y * (size_t)columns;
	const uint16_t *line_down = reaching->line_down + (size_t)y * (size_t)(columns + 1);
	int *until = reaching->until, farthest = 0;

	for (int x = 0; x <= columns; x++) {
		int down = line_distance(reaching, column_down, line_down, x);
		int up = line_distance(reaching, reaching->column_up, reaching->line_up, x);
		int near = least(down, up);

		until[x] = near <= reaching->arm ? reaching->wide[near] : 0;
	}
	/* What reaches 0 to either side is on no cell's middle. */
	for (int x = 0; x < columns; x++) {
		farthest = most(farthest, 2 * x + until[x]);
		beyond[x] = classes[x] == CLASS_BED && 2 * x + 1 > farthest &&
			least(column_down[x], reaching->column_up[x]) > reaching->arm;
	}
	farthest = 2 * columns;
	for (int x = columns - 1; x >= 0; x--) {
		farthest = least(farthest, 2 * (x + 1) - until[x + 1]);
		beyond[x] = beyond[x] && 2 * x + 1 < farthest;
	}
}

static void fill_far(const struct reaching *reaching, uint16_t *distances, int count)
{
	for (int i = 0; i < count; i++)
		distances[i] = (uint16_t)(reaching->arm + 1);
}

/* From the bottom up: of each row how far down the next points are. */
static void look_down(const struct reaching *reaching, unsigned char *classes[2])
{
	int columns = reaching->columns;
	size_t width = (size_t)columns;

	fill_far(reaching, reaching->column_up, columns);
	fill_far(reaching, reaching->line_up, columns + 1);
	classes_of_row(reaching, reaching->rows, classes[1]);
	for (int y = reaching->rows - 1; y >= 0 && !stop_asked(); y--) {
		unsigned char *row = classes[0];

		classes_of_row(reaching, y, row);
		pass_row(reaching, classes, y, y);
		memcpy(reaching->column_down + (size_t)y * width, reaching->column_up,
			width * sizeof *reaching->column_up);
		memcpy(reaching->line_down + (size_t)y * (width + 1), reaching->line_up,
			(width + 1) * sizeof *reaching->line_up);
		classes[0] = classes[1];
		classes[1] = row;
	}
}

/* From the top down. What is left of how far down the next points are from the first row may stay:
 * as a way up it is farther, until one comes by the point, than the way down that was told. */
static void look_up(const struct reaching *reaching, unsigned char *classes[2],
	unsigned char *beyond)
{
	classes_of_row(reaching, -1, classes[1]);
	for (int y = 0; y < reaching->rows && !stop_asked(); y++) {
		unsigned char *row = classes[0];

		classes_of_row(reaching, y, row);
		pass_row(reaching, classes, y, y - 1);
		mark_row(reaching, y, row, beyond + (size_t)y * (size_t)reaching->columns);
		classes[0] = classes[1];
		classes[1] = row;
	}
}

/* Squares of distances are whole: that of the arm is rounded down. */
static void set_arm(struct reaching *reaching, nm arm)
{
	nm2 cell = reaching->survey->cell, square = (nm2)arm * arm * 4 / (cell * cell);
	int64_t across = 0;

	reaching->limit = square < (nm2)HALVES_MOST * HALVES_MOST ? (int64_t)square :
		(int64_t)HALVES_MOST * HALVES_MOST;
	while ((across + 1) * (across + 1) <= reaching->limit)
		across++;
	reaching->arm = (int)across;
	reaching->wide = memory_new((size_t)reaching->arm + 1, sizeof *reaching->wide);
	for (int64_t away = 0; away <= reaching->arm; away++) {
		while (across * across + away * away > reaching->limit)
			across--;
		reaching->wide[away] = (uint16_t)across;
	}
}

unsigned char *reach_beyond(const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, nm arm)
{
	size_t columns = (size_t)survey->columns, rows = (size_t)survey->rows;
	size_t line_count = (columns + 1) * rows;
	unsigned char *beyond = memory_new(columns * rows, sizeof *beyond);
	unsigned char *classes[] = { memory_new(columns, sizeof **classes),
		memory_new(columns, sizeof **classes) };
	struct reaching reaching = { .survey = survey, .fences = fences, .houses = houses,
		.columns = survey->columns, .rows = survey->rows };

	set_arm(&reaching, arm);
	reaching.column_down = memory_new(line_count, sizeof *reaching.column_down);
	reaching.line_down = memory_new(line_count, sizeof *reaching.line_down);
	reaching.column_up = memory_new(columns + 1, sizeof *reaching.column_up);
	reaching.line_up = memory_new(columns + 1, sizeof *reaching.line_up);
	reaching.until = memory_new(columns + 1, sizeof *reaching.until);
	look_down(&reaching, classes);
	look_up(&reaching, classes, beyond);
	free(reaching.wide);
	free(reaching.column_down);
	free(reaching.line_down);
	free(reaching.column_up);
	free(reaching.line_up);
	free(reaching.until);
	free(classes[0]);
	free(classes[1]);
	return beyond;
}
