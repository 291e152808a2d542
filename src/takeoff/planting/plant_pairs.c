#include "base/number.h"
#include "base/stop.h"
#include "takeoff/planting/planting_snags.h"

#include <math.h>

/* Two kinds of plants, one of them in a region. */
struct pair {
	const struct basis *basis;
	struct planting *planting;
	const struct planting_row *row;
	int other;
};

static const struct plant_sum *sum_of(const struct pair *pair, int kind)
{
	return &pair->planting->plants[kind];
}

/* ---- Too close ------------------------------------------------------------------------------- */

static nm apart(struct spot a, struct spot b)
{
	return llround(hypot((double)(a.x - b.x), (double)(a.y - b.y)));
}

static bool is_same_spot(struct spot a, struct spot b)
{
	return a.x == b.x && a.y == b.y;
}

/* The nearest of the other kind that is nearer than half of `twice`. */
struct nearest {
	bool is_found, is_specimen;
	nm away;
};

static struct nearest nearest_to(const struct pair *pair, struct spot at, nm twice)
{
	struct nearest nearest = { .is_found = false };
	struct placed_walk walk;
	const struct placed_plant *plant;
	nm reach = twice / 2;

	placed_walk_begin(&walk, &pair->planting->placed, pair->other, &(struct placed_ground){
		at.x - reach, at.y - reach, at.x + reach, at.y + reach });
	while ((plant = placed_walk_next(&walk))) {
		nm away = apart(plant->at, at);

		if ((pair->other == pair->row->kind && is_same_spot(plant->at, at)) ||
			!spots_are_nearer(plant->at, at, twice) ||
			(nearest.is_found && nearest.away <= away))
			continue;
		nearest = (struct nearest){ true, plant->is_specimen, away };
	}
	return nearest;
}

/* By its spread; of plants in drifts by how much wider than its spacing that is. */
static bool takes_more(const struct plant_sum *one, const struct plant_sum *other,
	unsigned int close)
{
	return close == PLANT_CLOSE_SPECIMENS ? one->spread > other->spread :
		one->spread - one->spacing > other->spread - other->spacing;
}

static void add_close(const struct pair *pair, int spot, const struct nearest *nearest, nm twice)
{
	const struct planting_row *row = pair->row;
	/* No drift comes so close to a specimen. */
	unsigned int close = nearest->is_specimen ? PLANT_CLOSE_SPECIMENS : PLANT_CLOSE_DRIFTS;
	bool is_other = takes_more(sum_of(pair, pair->other), sum_of(pair, row->kind), close);
	struct snag *snag = snag_add(pair->basis->snags, SNAG_PLANT_CLOSE, row->region,
		SNAG_FIGURES_OF(is_other ? pair->other : row->kind,
		is_other ? row->kind : pair->other, nearest->away, twice / 2));

	snag->kind = close & UINT8_MAX;
	snag_put(snag, planting_cell(pair->basis->survey, row->spots[spot].at));
}

/* What is in a drift has half of both spacings to all others, and half of both spreads to
 * specimens: where plants are no wider than their spacing, only specimens may be too close, to each
 * other. */
static void check_close(const struct pair *pair)
{
	const struct planting_row *row = pair->row;
	const struct plant_sum *one = sum_of(pair, row->kind), *other = sum_of(pair, pair->other);
	nm twice = one->spread + other->spread;
	bool is_wide = twice > one->spacing + other->spacing;
	int64_t count = is_wide ? row->count : other->specimens > 0 ? row->specimens : 0;

	for (int i = 0; i < count && !stop_asked(); i++) {
		struct nearest nearest = nearest_to(pair, row->spots[i].at, twice);

		if (!nearest.is_found)
			continue;
		add_close(pair, i, &nearest, twice);
		return;
	}
}

/* Of two kinds the earlier one says it. */
static void check_all_close(struct pair *pair)
{
	for (int i = 0; i < pair->planting->count && !stop_asked(); i++) {
		pair->row = &pair->planting->list[i];
		for (pair->other = pair->row->kind; pair->other < pair->planting->plant_count;
			pair->other++)
			if (sum_of(pair, pair->other)->count > 0)
				check_close(pair);
	}
}

/* ---- Too tall in front ----------------------------------------------------------------------- */

/* From a plant to where one walks up to it. */
struct view {
	struct spot plant, edge;
};

/* Whether what stands there is between both, nearer to the line than half of a spread. */
static bool is_between(const struct view *view, struct spot at, nm spread)
{
	double x = (double)(view->edge.x - view->plant.x);
	double y = (double)(view->edge.y - view->plant.y);
	double to_x = (double)(at.x - view->plant.x), to_y = (double)(at.y - view->plant.y);
	double square = x * x + y * y, along = to_x * x + to_y * y, over = to_x * y - to_y * x;

	return along > 0 && along <= square &&
		fabs(over) < (double)spread / 2 * sqrt(square);
}

static bool is_hidden(const struct pair *pair, const struct view *view)
{
	struct placed_walk walk;
	const struct placed_plant *plant;
	nm spread = sum_of(pair, pair->other)->spread, reach = spread / 2;

	placed_walk_begin(&walk, &pair->planting->placed, pair->other, &(struct placed_ground){
		nm_least(view->plant.x, view->edge.x) - reach,
		nm_least(view->plant.y, view->edge.y) - reach,
		nm_most(view->plant.x, view->edge.x) + reach,
		nm_most(view->plant.y, view->edge.y) + reach });
	while ((plant = placed_walk_next(&walk)))
		if (pair->planting->list[plant->row].region == pair->row->region &&
			is_between(view, plant->at, spread))
			return true;
	return false;
}

static void check_front(const struct pair *pair, const struct bands *bands)
{
	const struct planting_row *row = pair->row;
	const struct survey *survey = pair->basis->survey;

	for (int i = 0; i < row->spot_count && !stop_asked(); i++) {
		struct place cell = planting_cell(survey, row->spots[i].at);
		struct half_point edge;
		struct view view = { .plant = row->spots[i].at };

		if (!bands_nearest(bands, cell.x, cell.y, &edge))
			continue;
		view.edge = (struct spot){ edge.x * survey->cell / 2, edge.y * survey->cell / 2 };
		if (!is_hidden(pair, &view))
			continue;
		snag_put(snag_add(pair->basis->snags, SNAG_PLANT_FRONT, row->region,
			SNAG_FIGURES_OF(pair->other, sum_of(pair, pair->other)->height, row->kind,
				sum_of(pair, row->kind)->height)), cell);
		return;
	}
}

/* The rows from `from` to before `end` are of one bed. */
static void check_bed(struct pair *pair, const struct bands *bands, int from, int end)
{
	const struct planting_row *list = pair->planting->list;

	for (int i = from; i < end; i++)
		for (int j = from; j < end && !stop_asked(); j++) {
			nm height = sum_of(pair, list[i].kind)->height;

			pair->row = &list[i];
			pair->other = list[j].kind;
			if (height > 0 && list[i].count > 0 && list[j].count > 0 &&
				sum_of(pair, pair->other)->height > height)
				check_front(pair, bands);
		}
}

static bool has_heights(const struct pair *pair, int from, int end)
{
	nm first = 0;

	for (int i = from; i < end; i++) {
		nm height = sum_of(pair, pair->planting->list[i].kind)->height;

		if (height > 0 && first > 0 && height != first)
			return true;
		first = height > 0 ? height : first;
	}
	return false;
}

static void check_beds(struct pair *pair, const struct fence_map *fences,
	const struct house_map *houses)
{
	const struct planting *planting = pair->planting;
	const struct survey *survey = pair->basis->survey;

	for (int from = 0, end = 0; from < planting->count && !stop_asked(); from = end) {
		int region = planting->list[from].region;
		struct bands bands;

		while (end < planting->count && planting->list[end].region == region)
			end++;
		if (region == NO_REGION || survey->regions[region].entry->class != CLASS_BED ||
			!has_heights(pair, from, end))
			continue;
		bands_find(&bands, survey, fences, houses, region);
		check_bed(pair, &bands, from, end);
		bands_end(&bands);
	}
}

void plant_pairs_check(const struct basis *basis, struct planting *planting,
	const struct fence_map *fences, const struct house_map *houses)
{
	struct pair pair = { .basis = basis, .planting = planting };

	check_all_close(&pair);
	check_beds(&pair, fences, houses);
}
