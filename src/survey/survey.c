#include "survey/survey.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <assert.h>
#include <stdio.h>
#include <stdlib.h>

/* No fewer than there are: ends of rows are passed over. */
static size_t runs_most(const struct ground *ground)
{
	size_t count = (size_t)ground->rows;

	for (size_t i = 1; i < ground_count(ground); i++)
		count += ground->cells[i] != ground->cells[i - 1];
	return count;
}

static struct run *find_runs(struct survey *out, struct arena *arena, const struct plot *plot)
{
	const struct ground *ground = &plot->ground;
	struct run *runs = arena_new(arena, runs_most(ground), sizeof *runs);
	size_t *row_runs = arena_new(arena, (size_t)ground->rows + 1, sizeof *row_runs), count = 0;

	for (int y = 0; y < ground->rows && !stop_asked(); y++) {
		const char *row = ground_at(ground, 0, y);

		row_runs[y] = count;
		for (int x = 0; x < ground->columns;) {
			struct run *run = &runs[count++];

			*run = (struct run){ .left = (int16_t)x, .letter = row[x],
				.region = NO_REGION,
				.class = (uint8_t)plot_class_of(plot, row[x]) };
			while (x < ground->columns && row[x] == run->letter)
				x++;
			run->right = (int16_t)x;
		}
	}
	row_runs[ground->rows] = count;
	out->runs = runs;
	out->row_runs = row_runs;
	return runs;
}

static uint32_t find_root(uint32_t *root, uint32_t i)
{
	while (root[i] != i) {
		root[i] = root[root[i]];
		i = root[i];
	}
	return i;
}

/* Joins runs of one letter that touch along a side in neighbouring rows; the earlier root stays. */
static void join_rows(const struct survey *survey, uint32_t *root, int y)
{
	size_t above = survey->row_runs[y - 1], below = survey->row_runs[y];
	size_t above_end = below, below_end = survey->row_runs[y + 1];

	while (above < above_end && below < below_end) {
		const struct run *a = &survey->runs[above], *b = &survey->runs[below];

		if (a->letter == b->letter) {
			uint32_t one = find_root(root, (uint32_t)above);
			uint32_t other = find_root(root, (uint32_t)below);

			root[one < other ? other : one] = one < other ? one : other;
		}
		/* Neighbours overlap: step on from the one that ends first. */
		if (a->right <= b->right)
			above++;
		if (b->right <= a->right)
			below++;
	}
}

/* By run, another of its region; the first of all is its own. */
static uint32_t *join_runs(const struct survey *survey)
{
	size_t count = survey->row_runs[survey->rows];
	uint32_t *root = memory_new(count, sizeof *root);

	for (size_t i = 0; i < count; i++)
		root[i] = (uint32_t)i;
	for (int y = 1; y < survey->rows && !stop_asked(); y++)
		join_rows(survey, root, y);
	return root;
}

static void add_run(struct region *region, const struct run *run, int y)
{
	region->left = least(region->left, run->left);
	region->most = (struct place){ most(region->most.x, run->right - 1), y };
	region->cells += run->right - run->left;
}

static size_t count_regions(const struct survey *survey, uint32_t *root)
{
	size_t count = 0;

	for (uint32_t i = 0; i < survey->row_runs[survey->rows] && !stop_asked(); i++)
		count += find_root(root, i) == i && survey->runs[i].class <= CLASS_FIXTURE;
	return count;
}

/* Numbers the regions in the order of their first runs and adds up their cells. */
static struct region *gather_regions(struct survey *out, struct arena *arena,
	const struct plot *plot, struct run *runs, uint32_t *root)
{
	struct region *regions = arena_new(arena, count_regions(out, root), sizeof *regions);
	int numbers[CLASSES] = { 0 };

	for (int y = 0; y < out->rows && !stop_asked(); y++) {
		for (size_t i = out->row_runs[y]; i < out->row_runs[y + 1]; i++) {
			struct run *run = &runs[i];
			size_t first = find_root(root, (uint32_t)i);

			if (run->class > CLASS_FIXTURE)
				continue;
			if (first == i) {
				run->region = out->region_count++;
				regions[run->region] = (struct region){
					.entry = plot_entry(plot, run->letter),
					.number = ++numbers[run->class],
					.first_cell = { run->left, y }, .left = run->left };
			}
			run->region = runs[first].region;
			add_run(&regions[run->region], run, y);
		}
	}
	return regions;
}

/* ---- Edges ----------------------------------------------------------------------------------- */

/* The runs of one row, or the one run beyond the plan that lies above the first row and below the
 * last. */
struct row {
	const struct run *runs;
	size_t count;
};

struct account {
	struct survey *survey;
	struct region *regions;
	struct run beyond;
};

static struct row row_of(const struct account *account, int y)
{
	const struct survey *survey = account->survey;

	if (y < 0 || y >= survey->rows)
		return (struct row){ &account->beyond, 1 };
	return (struct row){ survey->runs + survey->row_runs[y],
		survey->row_runs[y + 1] - survey->row_runs[y] };
}

static void add_side(struct account *account, const struct run *a, const struct run *b, int length)
{
	int64_t(*edges)[CLASSES] = account->survey->edges;

	if (a->letter == b->letter)
		return;
	edges[a->class][b->class] += length;
	if (a->class != b->class)
		edges[b->class][a->class] += length;
	if (a->region != NO_REGION)
		account->regions[a->region].perimeter += length;
	if (b->region != NO_REGION)
		account->regions[b->region].perimeter += length;
}

static void add_upright_sides(struct account *account, int y)
{
	struct row row = row_of(account, y);

	add_side(account, &account->beyond, &row.runs[0], 1);
	for (size_t i = 1; i < row.count; i++)
		add_side(account, &row.runs[i - 1], &row.runs[i], 1);
	add_side(account, &row.runs[row.count - 1], &account->beyond, 1);
}

/* The corner that the region of `own` has at a grid point, seen from its cell there: convex
 * where both neighbours are others, reflex where both are its own and the cell across the point
 * is not. */
static void add_corner(struct account *account, const struct run *own, const struct run *beside,
	const struct run *over, const struct run *across)
{
	struct region *region;

	if (own->region == NO_REGION)
		return;
	region = &account->regions[own->region];
	if (beside->letter != own->letter && over->letter != own->letter)
		region->convex++;
	else if (beside->letter == own->letter && over->letter == own->letter &&
		across->letter != own->letter)
		region->reflex++;
}

/* The grid point between four cells: a left above, b right above, c left below, d right below. */
static void add_point(struct account *account, const struct run *a, const struct run *b,
	const struct run *c, const struct run *d)
{
	add_corner(account, a, b, c, d);
	add_corner(account, b, a, d, c);
	add_corner(account, c, d, a, b);
	add_corner(account, d, c, b, a);
}

/* The level sides between row y - 1 and row y, and the grid points on that line. Two
 * neighbouring runs overlap at each step, and each step begins at a point where one of the rows
 * changes. */
static void add_level_sides(struct account *account, int y)
{
	struct row above = row_of(account, y - 1), below = row_of(account, y);
	const struct run *a = &account->beyond, *c = &account->beyond;
	size_t i = 0, j = 0;
	int x = 0;

	while (i < above.count && j < below.count) {
		const struct run *b = &above.runs[i], *d = &below.runs[j];
		int end = least(b->right, d->right);

		add_point(account, a, b, c, d);
		add_side(account, b, d, end - x);
		a = b;
		c = d;
		x = end;
		i += b->right == end;
		j += d->right == end;
	}
	add_point(account, a, &account->beyond, c, &account->beyond);
}

/* Fills out->edges, and perimeter and corners of the regions, whose runs are known. */
static void account_edges(struct survey *out, struct region *regions)
{
	struct account account = { out, regions, { .right = (int16_t)out->columns,
		.region = NO_REGION, .letter = '\0', .class = CLASS_BOUNDARY } };

	for (int y = 0; y <= out->rows && !stop_asked(); y++) {
		if (y < out->rows)
			add_upright_sides(&account, y);
		add_level_sides(&account, y);
	}
}

/* ---- Names ----------------------------------------------------------------------------------- */

static int compare_names(const void *a, const void *b)
{
	const struct region_name *one = a, *other = b;

	return compare(one->region, other->region);
}

/* Of several names of a region the first in the plot counts. */
static void find_names(struct survey *out, struct arena *arena, const struct names *names)
{
	struct region_name *list = arena_new(arena, names->count, sizeof *list);
	size_t count = 0, kept = 0;

	for (size_t i = 0; i < names->count; i++) {
		struct place at = names->items[i].at;
		int region = survey_region_at(out, at.x, at.y);

		if (region != NO_REGION)
			list[count++] = (struct region_name){ region, names->items[i].text };
	}
	sort(list, count, sizeof *list, compare_names);
	for (size_t i = 0; i < count; i++)
		if (i == 0 || list[i].region != list[kept - 1].region)
			list[kept++] = list[i];
	out->names = list;
	out->name_count = (int)kept;
}

const char *survey_own_name(const struct survey *survey, int region)
{
	const struct region_name wanted = { region, NULL }, *found = survey->name_count == 0 ?
		NULL : bsearch(&wanted, survey->names, (size_t)survey->name_count,
		sizeof wanted, compare_names);

	return found ? found->text : NULL;
}

/* ---- All of it ------------------------------------------------------------------------------- */

void survey_plot(struct survey *out, struct arena *arena, const struct plot *plot)
{
	struct region *regions;
	struct run *runs;
	uint32_t *root;

	*out = (struct survey){ .cell = plot_cell(plot), .columns = plot->ground.columns,
		.rows = plot->ground.rows };
	runs = find_runs(out, arena, plot);
	if (stop_asked())
		return;
	root = join_runs(out);
	regions = gather_regions(out, arena, plot, runs, root);
	free(root);
	account_edges(out, regions);
	out->regions = regions;
	if (!stop_asked())
		find_names(out, arena, &plot->details.names);
}

bool survey_has_run_above(const struct survey *survey, int y, const struct run *run, size_t *i)
{
	const struct run *above;

	if (y == 0)
		return false;
	while (*i < survey->row_runs[y] && survey->runs[*i].left < run->left)
		++*i;
	above = &survey->runs[*i];
	return *i < survey->row_runs[y] && above->left == run->left && above->right == run->right &&
		above->region == run->region;
}

int region_holes(const struct region *region)
{
	return 1 - (region->convex - region->reflex) / 4;
}

size_t survey_run_at(const struct survey *survey, int x, int y)
{
	size_t low = survey->row_runs[y], high = survey->row_runs[y + 1];

	while (high - low > 1) {
		size_t middle = low + (high - low) / 2;

		if (survey->runs[middle].left <= x)
			low = middle;
		else
			high = middle;
	}
	return low;
}

int survey_region_at(const struct survey *survey, int x, int y)
{
	return survey->runs[survey_run_at(survey, x, y)].region;
}

void survey_region_name(const struct region *region, char name[REGION_NAME_MOST])
{
	enum plot_class class = region->entry->class;

	assert(class <= CLASS_FIXTURE);
	snprintf(name, REGION_NAME_MOST, "%c%d", "BPLF"[class], region->number);
}

double survey_area(int64_t cells, nm cell)
{
	double side = (double)cell / (double)NM_PER_M;

	return (double)cells * side * side;
}
