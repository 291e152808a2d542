#include "takeoff/ground/slender.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/outline.h"

#include <math.h>

/* Longer sides count as long: common practice, no published source. */
static const nm LONG_SIDE[] = { 6 * NM_PER_FOOT, 1800 * NM_PER_MM };

/* In an imperial and in a metric plot. */
static nm long_side(const struct basis *basis)
{
	return LONG_SIDE[plot_units(basis->plot) == UNITS_METRIC];
}

static bool has_long_side(const struct basis *basis, int region)
{
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	nm longest = 0;

	outline_trace(&outline, &arena, basis->plot, basis->survey, region);
	for (int i = 0; i < outline.count && !stop_asked(); i++) {
		for (int side = 0; side < outline.loops[i].count; side++) {
			nm length = outline_side(&outline.loops[i], side) * basis->survey->cell;

			longest = length > longest ? length : longest;
		}
	}
	arena_clear(&arena);
	return longest > long_side(basis);
}

/* What a wall of the bed's block may be above ground. */
static nm greatest_height(const struct basis *basis, const struct wall *wall,
	enum attribute slender)
{
	double usual = amount_si(&attribute_preset(BED_DENSITY,
		plot_units(basis->plot))->as.amount), density = wall_density(wall->bed);
	nm highest = nm_times(wall->block.across, block_number(basis->allow, slender));

	return density < usual ? (nm)((double)highest * sqrt(density / usual)) : highest;
}

static nm above_ground(const struct wall *wall, const struct embeds *embeds)
{
	return wall_height(wall->bed) + (wall->has_cap ? wall->cap_block.up : 0) -
		embed_of(embeds, wall->region);
}

static void check(const struct basis *basis, const struct wall *wall, nm height)
{
	bool is_clay = block_number(basis->allow, ALLOW_SUBSOIL) == SUBSOIL_CLAY;
	nm highest = greatest_height(basis, wall, ALLOW_SLENDER);
	nm highest_long = greatest_height(basis, wall, ALLOW_SLENDER_LONG);
	enum wall_slender kind = WALL_SLENDER;

	/* The outline is looked at only where it matters. */
	if (height <= highest && height <= highest_long)
		return;
	if (is_clay)
		kind = WALL_SLENDER_CLAY;
	else if (has_long_side(basis, wall->region))
		kind = WALL_SLENDER_LONG;
	if (kind != WALL_SLENDER)
		highest = highest_long;
	if (height > highest)
		snag_add(basis->snags, SNAG_WALL_SLENDER, wall->region,
			SNAG_FIGURES_OF(height, wall->block.across, highest,
			long_side(basis)))->kind = kind;
}

void slender_check(const struct basis *basis, const struct walls *walls,
	const struct embeds *embeds)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++)
		check(basis, &walls->list[i], above_ground(&walls->list[i], embeds));
}
