#include "takeoff/ground/bed_snags.h"
#include "base/stop.h"

#include <math.h>

struct bed {
	int region;
	const struct block *block;
	nm height, cap, embed;
};

static void check_embed(const struct basis *basis, const struct bed *bed)
{
	if (bed->embed * HEIGHT_PER_EMBED < bed->height)
		snag_add(basis->snags, SNAG_WALL_EMBED, bed->region, SNAG_FIGURES_OF(bed->embed,
			bed->height, bed->height / HEIGHT_PER_EMBED));
}

static void check_height(const struct basis *basis, const struct bed *bed)
{
	nm above = bed->height + bed->cap - bed->embed;
	nm from_footing = bed->height + bed->cap + block_length(bed->block, BED_BASE);
	nm most_above = block_length(basis->allow, ALLOW_WALL_ABOVE);
	nm most_from_footing = block_length(basis->allow, ALLOW_WALL_FOOTING);
	bool care = above > most_above, permit = from_footing > most_from_footing;

	if (care || permit)
		snag_add(basis->snags, SNAG_WALL_HIGH, bed->region, SNAG_FIGURES_OF(above,
			most_above, from_footing, most_from_footing))->kind =
			care && permit ? WALL_HIGH_BOTH : care ? WALL_HIGH_CARE : WALL_HIGH_PERMIT;
}

static void check_soil(const struct basis *basis, const struct fills *fills, int region)
{
	const struct fill *fill = fills_find(fills, region);
	nm least = block_length(basis->allow, ALLOW_SOIL_LEAST);

	if (fill && fill->soil_depth < least)
		snag_add(basis->snags, SNAG_SOIL_THIN, region,
			SNAG_FIGURES_OF(fill->soil_depth, least));
}

static void check_floor(const struct basis *basis, const struct fill_ground *ground,
	const struct bed *bed)
{
	const struct wall *wall = walls_find(ground->walls, bed->region);
	int64_t most = block_number(basis->allow, ALLOW_FLOOR_STONE);
	int64_t share;

	if (!wall || block_number(bed->block, BED_INSIDE) == INSIDE_BASE)
		return;
	share = llround(over_base_of(ground->over, bed->region).area / wall->inner_area *
		(double)(100 * MILLION));
	if (share > most)
		snag_add(basis->snags, SNAG_FLOOR_STONE, bed->region,
			SNAG_FIGURES_OF(share, most));
}

void bed_snags_add(const struct basis *basis, const struct fill_ground *ground,
	const struct fills *fills)
{
	for (int i = 0; i < basis->survey->region_count && !stop_asked(); i++) {
		const struct block *block = &basis->survey->regions[i].entry->block;
		struct bed bed = { .region = i, .block = block };

		if (!region_is_raised(&basis->survey->regions[i]))
			continue;
		bed.height = wall_height(block);
		bed.cap = block_effective(block, BED_CAP)->as.size.up;
		bed.embed = embed_of(ground->embeds, i);
		check_embed(basis, &bed);
		check_height(basis, &bed);
		check_soil(basis, fills, i);
		check_floor(basis, ground, &bed);
	}
}
