#include "takeoff/planting/planting_soil.h"
#include "base/number.h"

enum { SOIL_UNKNOWN = -1 };

/* Of a raised bed what is filled in, of one at ground level what is dug over. */
static nm soil_of(const struct basis *basis, const struct fills *fills, int region)
{
	const struct region *r;
	const struct fill *fill;

	if (region == NO_REGION || basis->survey->regions[region].entry->class != CLASS_BED)
		return SOIL_UNKNOWN;
	r = &basis->survey->regions[region];
	fill = fills_find(fills, region);
	if (!region_is_raised(r))
		return block_length(&r->entry->block, BED_PREPARE);
	return fill ? fill->soil_depth : SOIL_UNKNOWN;
}

static nm needed_by(const struct basis *basis, const struct planting_row *row)
{
	const struct block *plant = &basis->plot->details.plants.items[row->kind].block;
	const struct value *soil = block_value(plant, PLANT_SOIL);

	return soil->set && row->count > 0 ? soil->as.length : 0;
}

void planting_soil_find(struct planting *planting, const struct basis *basis,
	const struct fills *fills)
{
	struct planting_row *rows = planting->list;
	int count = planting->count;

	for (int from = 0, end = 0; from < count; from = end) {
		nm soil = soil_of(basis, fills, rows[from].region), needed = 0;

		for (; end < count && rows[end].region == rows[from].region; end++)
			needed = nm_most(needed, needed_by(basis, &rows[end]));
		for (int i = from; i < end; i++) {
			rows[i].is_soil_known = soil != SOIL_UNKNOWN;
			rows[i].bed_soil = nm_most(soil, 0);
			rows[i].bed_needs = rows[i].region == NO_REGION ? 0 : needed;
		}
	}
}
