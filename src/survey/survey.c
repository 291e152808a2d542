#include "survey/survey.h"
#include "survey/edges.h"

#include <assert.h>
#include <stdio.h>
#include <stdlib.h>


static size_t count_runs(const struct ground *ground)
{
	size_t columns = (size_t)ground->columns, count = 0;

	for (int y = 0; y < ground->rows; y++) {
		const char *row = ground->cells + (size_t)y * columns;

		count++;
		for (size_t x = 1; x < columns; x++)
			count += row[x] != row[x - 1];
	}
	return count;
}

static struct run *find_runs(struct survey *out, struct arena *arena, const struct plot *plot)
{
	const struct ground *ground = &plot->ground;
	struct run *runs = arena_new(arena, count_runs(ground), sizeof *runs);
	size_t *row_runs = arena_new(arena, (size_t)ground->rows + 1, sizeof *row_runs), count = 0;

	for (int y = 0; y < ground->rows; y++) {
		const char *row = ground_at(ground, 0, y);

		row_runs[y] = count;
		for (int x = 0; x < ground->columns;) {
			struct run *run = &runs[count++];

			*run = (struct run){ .left = x, .letter = row[x], .region = NO_REGION,
				.class = plot_class_of(plot, row[x]) };
			while (x < ground->columns && row[x] == run->letter)
				x++;
			run->right = x;
		}
	}
	row_runs[ground->rows] = count;
	out->runs = runs;
	out->row_runs = row_runs;
	return runs;
}

static size_t find_root(size_t *root, size_t i)
{
	while (root[i] != i) {
		root[i] = root[root[i]];
		i = root[i];
	}
	return i;
}

/* Joins runs of one letter that touch along a side in neighbouring rows; the earlier root stays. */
static void join_rows(const struct survey *survey, size_t *root, int y)
{
	size_t above = survey->row_runs[y - 1], below = survey->row_runs[y];
	size_t above_end = below, below_end = survey->row_runs[y + 1];

	while (above < above_end && below < below_end) {
		const struct run *a = &survey->runs[above], *b = &survey->runs[below];

		if (a->letter == b->letter) {
			size_t one = find_root(root, above), other = find_root(root, below);

			root[one < other ? other : one] = one < other ? one : other;
		}
		/* Neighbours overlap: step on from the one that ends first. */
		if (a->right <= b->right)
			above++;
		if (b->right <= a->right)
			below++;
	}
}

static void add_run(struct region *region, const struct run *run, int y)
{
	if (run->left < region->left)
		region->left = run->left;
	if (run->right - 1 > region->most.x)
		region->most.x = run->right - 1;
	region->most.y = y;
	region->cells += run->right - run->left;
}


static size_t count_regions(const struct survey *survey, size_t *root)
{
	size_t runs = survey->row_runs[survey->rows];
	size_t count = 0;

	for (size_t i = 0; i < runs; i++)
		count += find_root(root, i) == i && survey->runs[i].class <= CLASS_FIXTURE;
	return count;
}

/* Numbers the regions in the order of their first runs and adds up their cells. */
static struct region *gather_regions(struct survey *out, struct arena *arena,
	const struct plot *plot, struct run *runs, size_t *root)
{
	struct region *regions = arena_new(arena, count_regions(out, root), sizeof *regions);
	int numbers[CLASSES] = { 0 };

	for (int y = 0; y < out->rows; y++) {
		for (size_t i = out->row_runs[y]; i < out->row_runs[y + 1]; i++) {
			struct run *run = &runs[i];
			size_t first = find_root(root, i);

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

void survey_plot(struct survey *out, struct arena *arena, const struct plot *plot)
{
	struct run *runs;
	size_t *root, count;
	struct region *regions;

	*out = (struct survey){ .cell = plot_cell(plot), .columns = plot->ground.columns,
		.rows = plot->ground.rows };
	runs = find_runs(out, arena, plot);
	count = out->row_runs[out->rows];
	root = memory_new(count, sizeof *root);
	for (size_t i = 0; i < count; i++)
		root[i] = i;
	for (int y = 1; y < out->rows; y++)
		join_rows(out, root, y);
	regions = gather_regions(out, arena, plot, runs, root);
	free(root);
	edges_account(out, regions);
	out->regions = regions;
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
