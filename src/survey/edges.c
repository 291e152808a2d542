#include "survey/edges.h"

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
		int end = b->right < d->right ? b->right : d->right;

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

void edges_account(struct survey *out, struct region *regions)
{
	struct account account = { out, regions, { .right = out->columns, .region = NO_REGION,
		.letter = '\0', .class = CLASS_BOUNDARY } };

	for (int y = 0; y <= out->rows; y++) {
		if (y < out->rows)
			add_upright_sides(&account, y);
		add_level_sides(&account, y);
	}
	for (int i = 0; i < out->region_count; i++)
		regions[i].holes = 1 - (regions[i].convex - regions[i].reflex) / 4;
}
