#include "takeoff/planting/planting_snags.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/reach.h"

#include <stdlib.h>

struct place planting_cell(const struct survey *survey, struct spot at)
{
	return (struct place){ least((int)(at.x / survey->cell), survey->columns - 1),
		least((int)(at.y / survey->cell), survey->rows - 1) };
}

/* ---- Where nothing is planted ---------------------------------------------------------------- */

/* -1: it may stand there. */
static int wrong_place(const struct basis *basis, const struct house_map *houses,
	struct spot at, int region)
{
	struct place cell = planting_cell(basis->survey, at);
	const struct region *r;

	if (houses->cells && house_map_at(houses, cell.x, cell.y))
		return PLANT_IN_HOUSE;
	if (region == NO_REGION)
		return -1;
	r = &basis->survey->regions[region];
	if (r->entry->class == CLASS_PATH)
		return PLANT_ON_PATH;
	if (r->entry->class == CLASS_FIXTURE)
		return PLANT_ON_FIXTURE;
	return planting_is_clear(basis->survey, region, at, planting_wall(r)) ? -1 :
		PLANT_IN_WALL;
}

static void check_places(const struct basis *basis, const struct planting *planting,
	const struct house_map *houses)
{
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];

		for (int j = 0; j < row->specimens; j++) {
			int place = wrong_place(basis, houses, row->spots[j].at, row->region);
			struct snag *snag;

			if (place < 0)
				continue;
			snag = snag_add(basis->snags, SNAG_PLANT_PLACE, row->region,
				SNAG_FIGURES_OF(row->kind));
			snag->kind = (unsigned int)place & UINT8_MAX;
			snag_put(snag, planting_cell(basis->survey, row->spots[j].at));
		}
	}
}

/* ---- Reach ----------------------------------------------------------------------------------- */

static void check_row_reach(const struct basis *basis, const struct planting_row *row,
	const unsigned char *beyond, nm arm)
{
	for (int i = 0; i < row->spot_count; i++) {
		struct place cell = planting_cell(basis->survey, row->spots[i].at);

		if (!beyond[(size_t)cell.y * (size_t)basis->survey->columns + (size_t)cell.x])
			continue;
		snag_put(snag_add(basis->snags, SNAG_PLANT_REACH, row->region,
			SNAG_FIGURES_OF(row->kind, arm)), cell);
		return;
	}
}

static void check_reach(const struct basis *basis, const struct planting *planting,
	const struct fence_map *fences, const struct house_map *houses)
{
	nm arm = block_length(basis->allow, ALLOW_ARM);
	unsigned char *beyond;

	if (arm == 0)
		return;
	beyond = reach_beyond(basis->survey, fences, houses, arm);
	for (int i = 0; i < planting->count && !stop_asked(); i++)
		check_row_reach(basis, &planting->list[i], beyond, arm);
	free(beyond);
}

/* ---- Soil ------------------------------------------------------------------------------------ */

static void put_at_first(const struct basis *basis, struct snag *snag,
	const struct planting_row *row)
{
	snag_put(snag, planting_cell(basis->survey, row->spots[0].at));
}

static void check_height(const struct basis *basis, const struct planting *planting,
	const struct planting_row *row, nm soil)
{
	nm height = planting->plants[row->kind].height;
	nm tallest = nm_times(soil, block_number(basis->allow, ALLOW_PLANT_TALL));

	if (height > tallest && region_is_raised(&basis->survey->regions[row->region]))
		put_at_first(basis, snag_add(basis->snags, SNAG_PLANT_WALL, row->region,
			SNAG_FIGURES_OF(row->kind, height, soil, tallest)), row);
}

static void check_depth(const struct basis *basis, const struct planting *planting,
	const struct planting_row *row, nm soil)
{
	nm needed = planting->plants[row->kind].soil;
	struct snag *snag;

	if (needed <= soil)
		return;
	snag = snag_add(basis->snags, SNAG_PLANT_SOIL, row->region,
		SNAG_FIGURES_OF(row->kind, needed, soil));
	snag->kind = region_is_raised(&basis->survey->regions[row->region]) ? PLANT_SOIL_RAISED :
		PLANT_SOIL_LEVEL;
	put_at_first(basis, snag, row);
}

static void check_soil(const struct basis *basis, const struct planting *planting)
{
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];

		if (!row->is_soil_known)
			continue;
		check_height(basis, planting, row, row->bed_soil);
		check_depth(basis, planting, row, row->bed_soil);
	}
}

void planting_snags_add(const struct basis *basis, struct planting *planting)
{
	struct arena arena = ARENA_EMPTY;
	struct fence_map fences;
	struct house_map houses;

	if (planting->plant_count == 0)
		return;
	fences = fence_map_of(basis->plot, &arena);
	houses = house_map_of(basis->plot, 0, &arena);
	check_places(basis, planting, &houses);
	check_reach(basis, planting, &fences, &houses);
	check_soil(basis, planting);
	plant_pairs_check(basis, planting, &fences, &houses);
	arena_clear(&arena);
}
