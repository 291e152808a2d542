#include "takeoff/walks/joined.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* Of a region, a path or a fixture: one gets to it; it leads somewhere; of a fixture, that other
 * ground than a bed touches it. Of paths that touch, the first region has what is true of any. */
enum { REACHED = 1, LEADS = 2, OPEN = 4 };

struct joining {
	const struct basis *basis;
	const struct fence_map *fences;
	const struct house_map *houses;
	const unsigned char *way; /* cells one can walk to */
	int *first;               /* by region, towards the first that it touches */
	unsigned char *facts;     /* by region */
};

static int first_of(const struct joining *joining, int region)
{
	int *first = joining->first;

	while (first[region] != region) {
		first[region] = first[first[region]];
		region = first[region];
	}
	return region;
}

static void join(const struct joining *joining, int a, int b)
{
	int one = first_of(joining, a), other = first_of(joining, b);
	int first = least(one, other), rest = most(one, other);

	joining->first[rest] = first;
	joining->facts[first] |= joining->facts[rest];
}

static void add_fact(const struct joining *joining, int region, int fact)
{
	joining->facts[first_of(joining, region)] |= (unsigned char)fact;
}

/* ---- Sides of cells -------------------------------------------------------------------------- */

/* What a side of cells has on one of its sides. Of the boundary the region is NO_REGION. */
struct land {
	enum plot_class class;
	int region;
};

static void look_from_fixture(const struct joining *joining, struct land fixture,
	struct land beyond)
{
	if (fixture.class == CLASS_FIXTURE && beyond.class != CLASS_FIXTURE &&
		beyond.class != CLASS_BED)
		joining->facts[fixture.region] |= OPEN;
}

static void look_from(const struct joining *joining, struct land path, struct land beyond,
	bool is_shut)
{
	if (path.class != CLASS_PATH)
		return;
	if (beyond.class == CLASS_PATH && beyond.region != path.region)
		join(joining, path.region, beyond.region);
	if (beyond.class != CLASS_PATH && beyond.class != CLASS_OPEN)
		add_fact(joining, path.region, LEADS);
	if (beyond.class == CLASS_FIXTURE && !is_shut)
		joining->facts[beyond.region] |= REACHED;
}

/* at: the cell at whose right or lower side it is; gate: that of fence_map.h. */
static void look_at_side(const struct joining *joining, struct land one, struct land other,
	struct place at, bool is_below)
{
	int gate = is_below ? GATE_BELOW : GATE_RIGHT;
	bool has_gate, is_shut;

	look_from_fixture(joining, one, other);
	look_from_fixture(joining, other, one);
	if (one.class != CLASS_PATH && other.class != CLASS_PATH)
		return;
	has_gate = fence_map_at(joining->fences, at.x, at.y) & gate;
	is_shut = fence_map_is_shut(joining->fences, at, is_below);
	look_from(joining, one, other, is_shut);
	look_from(joining, other, one, is_shut);
	if (has_gate && one.class == CLASS_PATH)
		add_fact(joining, one.region, LEADS);
	if (has_gate && other.class == CLASS_PATH)
		add_fact(joining, other.region, LEADS);
}

static const struct land outside = { CLASS_BOUNDARY, NO_REGION };

/* A row's cells, with the boundary at either end; all boundary outside the plan. */
static void fill_row(const struct survey *survey, int y, struct land *row)
{
	for (int x = -1; x <= survey->columns; x++)
		row[x + 1] = outside;
	if (y < 0 || y >= survey->rows)
		return;
	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];

		for (int x = run->left; x < run->right; x++)
			row[x + 1] = (struct land){ run->class, run->region };
	}
}

/* On the cell, or beside it. */
static bool has_house(const struct house_map *houses, int x, int y)
{
	return house_map_at(houses, x, y) || house_map_at(houses, x - 1, y) ||
		house_map_at(houses, x + 1, y) || house_map_at(houses, x, y - 1) ||
		house_map_at(houses, x, y + 1);
}

static void look_at_path(const struct joining *joining, int path, int x, int y)
{
	if (joining->way[(size_t)y * (size_t)joining->basis->survey->columns + (size_t)x])
		add_fact(joining, path, REACHED);
	if (joining->houses->cells && has_house(joining->houses, x, y))
		add_fact(joining, path, LEADS);
}

static void look_at_row(const struct joining *joining, const struct land *row, int y)
{
	int columns = joining->basis->survey->columns;

	for (int x = -1; x < columns; x++)
		look_at_side(joining, row[x + 1], row[x + 2], (struct place){ x, y }, false);
	for (int x = 0; x < columns; x++)
		if (row[x + 1].class == CLASS_PATH)
			look_at_path(joining, row[x + 1].region, x, y);
}

static void look_at_all(const struct joining *joining)
{
	const struct survey *survey = joining->basis->survey;
	size_t width = (size_t)survey->columns + 2;
	struct land *above = memory_new(width, sizeof *above);
	struct land *row = memory_new(width, sizeof *row);

	fill_row(survey, -1, above);
	for (int y = 0; y <= survey->rows && !stop_asked(); y++) {
		struct land *spare = above;

		fill_row(survey, y, row);
		for (int x = 0; x < survey->columns; x++)
			look_at_side(joining, above[x + 1], row[x + 1], (struct place){ x, y - 1 },
				true);
		if (y < survey->rows)
			look_at_row(joining, row, y);
		above = row;
		row = spare;
	}
	free(above);
	free(row);
}

/* ---- Snags ----------------------------------------------------------------------------------- */

static void tell(const struct joining *joining, int index)
{
	struct snag_list *snags = joining->basis->snags;
	enum plot_class class = joining->basis->survey->regions[index].entry->class;
	int facts = joining->facts[index];

	if (class == CLASS_FIXTURE && (facts & OPEN) && !(facts & REACHED))
		snag_add(snags, SNAG_FIXTURE_NO_PATH, index, SNAG_FIGURES_OF(0));
	if (class != CLASS_PATH || joining->first[index] != index)
		return;
	if (!(facts & REACHED))
		snag_add(snags, SNAG_PATH_CUT_OFF, index, SNAG_FIGURES_OF(0))->kind =
			PATH_UNREACHED;
	else if (!(facts & LEADS))
		snag_add(snags, SNAG_PATH_CUT_OFF, index, SNAG_FIGURES_OF(0))->kind =
			joining->houses->cells ? PATH_TO_NO_HOUSE : PATH_TO_NOTHING;
}

void joined_check(const struct basis *basis, const struct walking *walking)
{
	const struct survey *survey = basis->survey;
	size_t regions = (size_t)survey->region_count;
	struct joining joining = { basis, walking->fences, walking->houses, walking->way,
		memory_new(regions, sizeof *joining.first),
		memory_new(regions, sizeof *joining.facts) };

	for (int i = 0; i < survey->region_count; i++)
		joining.first[i] = i;
	look_at_all(&joining);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		tell(&joining, i);
	free(joining.first);
	free(joining.facts);
}
