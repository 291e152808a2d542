#include "takeoff/planting/bands.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/way.h"

#include <stdlib.h>

/* Of a side the point nearest to a cell's middle is one of its ends or its own middle. So all of
 * these are marked on a grid of half cells. Of each column of that grid the nearest mark up or down
 * is found first, then of each row the column whose mark is nearest: each column is the nearest
 * along one stretch of the row, and where two of them change over follows from both distances. */
enum { NOWHERE = -1, NOT_OF_THE_BED = -2 };

struct search {
	const struct survey *survey;
	const struct fence_map *fences;
	const struct house_map *houses;
	int region;
	struct bands *out;
	int width, height;     /* of the grid of half cells */
	unsigned char *marks;
	int16_t *nearest;      /* by row of cells and column of the grid: the row of the mark */
	int *columns, *from;   /* of a row: columns that are the nearest along a stretch */
};

static unsigned int class_at(const struct search *search, int x, int y)
{
	const struct survey *survey = search->survey;

	if (x < 0 || y < 0 || x >= survey->columns || y >= survey->rows ||
		(search->houses->cells && house_map_at(search->houses, x, y)))
		return CLASS_BOUNDARY;
	return survey->runs[survey_run_at(survey, x, y)].class;
}

static void mark(struct search *search, int x, int y)
{
	search->marks[(size_t)y * (size_t)search->width + (size_t)x] = 1;
}

/* The side of a cell towards a neighbour; x, y: of the cell in the box. */
static void mark_side(struct search *search, int x, int y, int across, int down)
{
	const struct region *region = search->out->region;
	int left = region->left + x, top = region->first_cell.y + y;
	int fence = across ? fence_map_at(search->fences, left - (across < 0), top) & FENCE_RIGHT :
		fence_map_at(search->fences, left, top - (down < 0)) & FENCE_BELOW;
	int middle_x = 2 * x + 1 + across, middle_y = 2 * y + 1 + down;

	if (fence || !way_is_over(class_at(search, left + across, top + down)))
		return;
	for (int i = -1; i <= 1; i++)
		mark(search, middle_x + (across ? 0 : i), middle_y + (across ? i : 0));
}

static void mark_row(struct search *search, int y)
{
	const struct survey *survey = search->survey;
	const struct region *region = search->out->region;
	int row = region->first_cell.y + y;

	for (size_t i = survey_run_at(survey, region->left, row); i < survey->row_runs[row + 1] &&
		survey->runs[i].left <= region->most.x; i++) {
		const struct run *run = &survey->runs[i];

		for (int x = run->left; run->region == search->region && x < run->right; x++) {
			int at = x - region->left;

			if (search->houses->cells && house_map_at(search->houses, x, row))
				continue;
			search->out->nearest[(size_t)y * (size_t)search->out->columns +
				(size_t)at].x = NOWHERE;
			mark_side(search, at, y, -1, 0);
			mark_side(search, at, y, 1, 0);
			mark_side(search, at, y, 0, -1);
			mark_side(search, at, y, 0, 1);
		}
	}
}

/* The nearest marks up, then down, of the middles of the cells' rows. */
static void look_along_column(struct search *search, int x)
{
	int up = NOWHERE, down = NOWHERE;

	for (int y = 0; y < search->height; y++) {
		if (search->marks[(size_t)y * (size_t)search->width + (size_t)x])
			up = y;
		if (y % 2 == 1)
			search->nearest[(size_t)(y / 2) * (size_t)search->width + (size_t)x] =
				(int16_t)up;
	}
	for (int y = search->height - 1; y >= 0; y--) {
		int16_t *nearest = &search->nearest[(size_t)(y / 2) * (size_t)search->width +
			(size_t)x];

		if (search->marks[(size_t)y * (size_t)search->width + (size_t)x])
			down = y;
		if (y % 2 == 1 && down != NOWHERE && (*nearest == NOWHERE ||
			down - y < y - *nearest))
			*nearest = (int16_t)down;
	}
}

static int64_t squared(int64_t number)
{
	return number * number;
}

/* From which column of the grid on the mark of `next` is as near as that of `before`, or nearer:
 * before < next. */
static int64_t changes_at(int64_t before, int64_t next, int64_t down_before, int64_t down_next)
{
	int64_t over = squared(next) + squared(down_next) - squared(before) - squared(down_before);
	int64_t by = 2 * (next - before);

	return over <= 0 ? 0 : quotient_up(over, by);
}

static void look_along_row(struct search *search, int y)
{
	const int16_t *nearest = search->nearest + (size_t)y * (size_t)search->width;
	struct half_point *out = search->out->nearest + (size_t)y * (size_t)search->out->columns;
	const struct region *region = search->out->region;
	int count = 0, at = 0;

	for (int x = 0; x < search->width; x++) {
		int64_t from = 0;

		if (nearest[x] == NOWHERE)
			continue;
		while (count > 0) {
			int before = search->columns[count - 1];

			from = changes_at(before, x, nearest[before] - (2 * y + 1),
				nearest[x] - (2 * y + 1));
			if (from > search->from[count - 1])
				break;
			from = 0;
			count--;
		}
		if (from >= search->width)
			continue;
		search->columns[count] = x;
		search->from[count++] = (int)from;
	}
	for (int x = 0; x < search->out->columns && count > 0; x++) {
		int column;
		int64_t distance;

		while (at + 1 < count && search->from[at + 1] <= 2 * x + 1)
			at++;
		if (out[x].x == NOT_OF_THE_BED)
			continue;
		column = search->columns[at];
		distance = squared(2 * x + 1 - column) + squared(2 * y + 1 - nearest[column]);
		out[x] = (struct half_point){ (int16_t)(2 * region->left + column),
			(int16_t)(2 * region->first_cell.y + nearest[column]) };
		if (distance > search->out->farthest)
			search->out->farthest = distance;
	}
}

void bands_find(struct bands *out, const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, int region)
{
	const struct region *r = &survey->regions[region];
	struct search search = { .survey = survey, .fences = fences, .houses = houses,
		.region = region, .out = out };
	size_t cells;

	*out = (struct bands){ .region = r, .columns = r->most.x + 1 - r->left,
		.rows = r->most.y + 1 - r->first_cell.y };
	cells = (size_t)out->columns * (size_t)out->rows;
	search.width = 2 * out->columns + 1;
	search.height = 2 * out->rows + 1;
	out->nearest = memory_new(cells, sizeof *out->nearest);
	search.marks = memory_new((size_t)search.width * (size_t)search.height,
		sizeof *search.marks);
	search.nearest = memory_new((size_t)search.width * (size_t)out->rows,
		sizeof *search.nearest);
	search.columns = memory_new((size_t)search.width, sizeof *search.columns);
	search.from = memory_new((size_t)search.width, sizeof *search.from);
	for (size_t i = 0; i < cells; i++)
		out->nearest[i] = (struct half_point){ NOT_OF_THE_BED, NOT_OF_THE_BED };
	for (int y = 0; y < out->rows && !stop_asked(); y++)
		mark_row(&search, y);
	for (int x = 0; x < search.width && !stop_asked(); x++)
		look_along_column(&search, x);
	for (int y = 0; y < out->rows && !stop_asked(); y++)
		look_along_row(&search, y);
	free(search.marks);
	free(search.nearest);
	free(search.columns);
	free(search.from);
}

void bands_end(struct bands *bands)
{
	free(bands->nearest);
	*bands = (struct bands){ .nearest = NULL };
}

/* NULL where it is none of the bed's. */
static const struct half_point *point_at(const struct bands *bands, int x, int y)
{
	int column = x - bands->region->left, row = y - bands->region->first_cell.y;
	const struct half_point *point;

	if (column < 0 || row < 0 || column >= bands->columns || row >= bands->rows)
		return NULL;
	point = &bands->nearest[(size_t)row * (size_t)bands->columns + (size_t)column];
	return point->x == NOT_OF_THE_BED ? NULL : point;
}

bool bands_hold(const struct bands *bands, enum band band, int x, int y)
{
	const struct half_point *point = point_at(bands, x, y);
	int64_t away, third;

	if (!point || band == BAND_WHOLE)
		return point != NULL;
	if (point->x == NOWHERE)
		return band == BAND_BACK;
	away = 9 * (squared(2 * x + 1 - point->x) + squared(2 * y + 1 - point->y));
	third = away <= bands->farthest ? BAND_FRONT :
		away <= 4 * bands->farthest ? BAND_MIDDLE : BAND_BACK;
	return third == band;
}

bool bands_nearest(const struct bands *bands, int x, int y, struct half_point *point)
{
	const struct half_point *at = point_at(bands, x, y);

	if (!at || at->x == NOWHERE)
		return false;
	*point = *at;
	return true;
}
