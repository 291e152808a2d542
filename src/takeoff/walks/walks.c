#include "takeoff/walks/walks.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/narrow.h"
#include "survey/reach.h"
#include "survey/way.h"
#include "takeoff/walks/houses.h"
#include "takeoff/walks/joined.h"

#include <stdlib.h>

/* ---- Widths ---------------------------------------------------------------------------------- */

struct width {
	enum plot_class class;
	enum snag_code code;
	nm least; /* over 0 */
};

static void begin(struct narrow_search *search, const struct basis *basis,
	const struct width *width)
{
	nm cell = basis->survey->cell;

	narrow_begin(search, basis->survey, width->class,
		(int)nm_least((width->least + cell - 1) / cell, SIDE_MOST + 1));
}

static void tell(struct narrow_search *search, const struct basis *basis,
	const struct width *width)
{
	struct narrow found;

	while (narrow_next(search, &found)) {
		int region = survey_region_at(basis->survey, found.first.x, found.first.y);

		snag_put_around(snag_add(basis->snags, width->code, region,
			SNAG_FIGURES_OF(width->least)), found.first, found.cells);
	}
}

static void check_width(const struct basis *basis, const struct width *width,
	const struct width *narrower)
{
	struct narrow_search search, within;
	bool has_narrower = narrower && narrower->least > 0;

	if (has_narrower) {
		begin(&within, basis, narrower);
		tell(&within, basis, narrower);
	}
	if (width->least > 0) {
		begin(&search, basis, width);
		search.within = has_narrower && narrower->least <= width->least ? &within : NULL;
		tell(&search, basis, width);
		narrow_end(&search);
	}
	if (has_narrower)
		narrow_end(&within);
}

static bool has_class(const struct survey *survey, enum plot_class class)
{
	int64_t sides = 0;

	for (int other = 0; other < CLASSES; other++)
		sides += survey->edges[class][other];
	return sides > 0;
}

static void check_widths(const struct basis *basis)
{
	const struct block *allow = basis->allow;
	const struct width path = { CLASS_PATH, SNAG_PATH_NARROW,
		block_length(allow, ALLOW_PATH_CLEAR) };
	const struct width barrow = { CLASS_PATH, SNAG_PATH_BARROW,
		block_length(allow, ALLOW_BARROW_CLEAR) };
	const struct width lawn = { CLASS_LAWN, SNAG_LAWN_NARROW,
		block_length(allow, ALLOW_LAWN_CLEAR) };

	if (has_class(basis->survey, CLASS_PATH))
		check_width(basis, &path, &barrow);
	if (has_class(basis->survey, CLASS_LAWN))
		check_width(basis, &lawn, NULL);
}

/* ---- Reach ----------------------------------------------------------------------------------- */

static void check_row(const struct basis *basis, nm arm, const unsigned char *beyond,
	size_t y, unsigned char *is_told)
{
	const struct survey *survey = basis->survey;

	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];

		if (run->class != CLASS_BED)
			continue;
		for (int x = run->left; x < run->right && !is_told[run->region]; x++) {
			if (!beyond[x])
				continue;
			is_told[run->region] = 1;
			snag_add(basis->snags, SNAG_BED_REACH, run->region,
				SNAG_FIGURES_OF(arm))->cell = (struct place){ x, (int)y };
		}
	}
}

static void check_reach(const struct basis *basis, const struct fence_map *fences,
	const struct house_map *houses)
{
	const struct survey *survey = basis->survey;
	nm arm = block_length(basis->allow, ALLOW_ARM);
	unsigned char *beyond, *is_told;

	if (arm == 0 || !has_class(survey, CLASS_BED))
		return;
	beyond = reach_beyond(survey, fences, houses, arm);
	is_told = memory_new((size_t)survey->region_count, sizeof *is_told);
	for (size_t y = 0; y < (size_t)survey->rows && !stop_asked(); y++)
		check_row(basis, arm, beyond + y * (size_t)survey->columns, y, is_told);
	free(is_told);
	free(beyond);
}

/* ---- Fixtures -------------------------------------------------------------------------------- */

static void check_tall(const struct basis *basis, int index)
{
	const struct region *region = &basis->survey->regions[index];
	nm height = block_length(&region->entry->block, FIXTURE_HEIGHT);
	nm width = basis->survey->cell * least(region->most.x - region->left + 1,
		region->most.y - region->first_cell.y + 1);
	nm highest = nm_times(width, block_number(basis->allow, ALLOW_FIXTURE_SLENDER));

	if (height > highest)
		snag_add(basis->snags, SNAG_FIXTURE_TALL, index,
			SNAG_FIGURES_OF(height, width, highest));
}

void walks_find(struct barrow_ways *out, const struct basis *basis)
{
	const struct survey *survey = basis->survey;
	struct arena arena = ARENA_EMPTY;
	struct fence_map fences = fence_map_of(basis->plot, &arena);
	struct house_map houses = house_map_of(basis->plot, houses_margin(basis), &arena);
	unsigned char *way = way_from_outside(survey, &fences);
	const struct walking walking = { &fences, &houses, way };

	check_widths(basis);
	check_reach(basis, &fences, &houses);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (survey->regions[i].entry->class == CLASS_FIXTURE)
			check_tall(basis, i);
	joined_check(basis, &walking);
	houses_check(basis, &houses);
	barrow_ways_find(out, basis, &walking);
	free(way);
	arena_clear(&arena);
}
