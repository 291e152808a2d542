#include "takeoff/setout/grid_line.h"
#include "base/number.h"

static bool has_above(const struct grid_line *line)
{
	return line->row > 0;
}

static bool has_below(const struct grid_line *line)
{
	return line->row < line->survey->rows;
}

struct grid_line grid_line_begin(const struct survey *survey, int row)
{
	struct grid_line line = { .survey = survey, .row = row };

	if (has_above(&line))
		line.above = survey->row_runs[row - 1];
	if (has_below(&line))
		line.below = survey->row_runs[row];
	return line;
}

bool grid_line_next(struct grid_line *line)
{
	const struct survey *survey = line->survey;
	int above = has_above(line) ? survey->runs[line->above].right : survey->columns;
	int below = has_below(line) ? survey->runs[line->below].right : survey->columns;

	if (line->x == survey->columns)
		return false;
	line->x = least(above, below);
	if (line->x == survey->columns)
		return true;
	line->above += has_above(line) && above == line->x;
	line->below += has_below(line) && below == line->x;
	return true;
}

static int left_of(const struct grid_line *line, size_t run)
{
	const struct run *runs = line->survey->runs;

	return line->x == 0 ? NO_REGION : runs[run - (runs[run].left == line->x)].region;
}

static int right_of(const struct grid_line *line, size_t run)
{
	return line->x == line->survey->columns ? NO_REGION : line->survey->runs[run].region;
}

void grid_line_around(const struct grid_line *line, int around[static AROUND])
{
	for (int i = 0; i < AROUND; i++)
		around[i] = NO_REGION;
	if (has_above(line)) {
		around[AROUND_LEFT_ABOVE] = left_of(line, line->above);
		around[AROUND_ABOVE] = right_of(line, line->above);
	}
	if (has_below(line)) {
		around[AROUND_LEFT_BELOW] = left_of(line, line->below);
		around[AROUND_BELOW] = right_of(line, line->below);
	}
}

static bool turns(const int around[static AROUND], int region)
{
	int cells = 0;

	for (int i = 0; i < AROUND; i++)
		cells += around[i] == region;
	return cells % 2 == 1 || (cells == 2 &&
		(around[AROUND_LEFT_ABOVE] == region) == (around[AROUND_BELOW] == region));
}

int corner_regions(const int around[static AROUND], int regions[static AROUND])
{
	int count = 0;

	for (int i = 0; i < AROUND; i++) {
		bool is_new = around[i] != NO_REGION && turns(around, around[i]);

		for (int j = 0; j < count; j++)
			is_new = is_new && regions[j] != around[i];
		if (is_new)
			regions[count++] = around[i];
	}
	return count;
}
