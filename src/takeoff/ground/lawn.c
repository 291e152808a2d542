#include "takeoff/ground/lawn.h"
#include "base/measure.h"
#include "base/stop.h"

static struct lawn lawn_of(const struct basis *basis, int region)
{
	const struct region *at = &basis->survey->regions[region];
	const struct block *block = &at->entry->block;
	struct lawn lawn = { .region = region,
		.cover = (enum lawn_cover)block_number(block, LAWN_COVER),
		.area = survey_area(at->cells, basis->survey->cell),
		.topsoil_depth = block_length(block, LAWN_TOPSOIL) };

	lawn.topsoil = volume_of(lawn.area, lawn.topsoil_depth);
	if (lawn.cover == COVER_SEED)
		lawn.seed = lawn.area * block_amount(basis->allow, ALLOW_SEED);
	return lawn;
}

void lawn_compute(struct lawns *out, const struct basis *basis)
{
	struct lawn *lawns = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < basis->survey->region_count && !stop_asked(); i++) {
		const struct entry *entry = basis->survey->regions[i].entry;

		if (entry->class != CLASS_LAWN ||
			block_number(&entry->block, LAWN_COVER) == COVER_NONE)
			continue;
		lawns = arena_grow(basis->arena, lawns, count, &capacity, sizeof *lawns);
		lawns[count++] = lawn_of(basis, i);
	}
	*out = (struct lawns){ lawns, (int)count };
}

void lawn_items(struct item_list *items, const struct lawns *lawns)
{
	int64_t spare = block_number(items->allow, ALLOW_TURF_SPARE);
	struct item turf = { .good = GOOD_TURF, .section = SECTION_LAWN,
		.note = { .kind = NOTE_TRIMMING, .percent = spare } };
	double topsoil = 0, seed = 0;

	for (int i = 0; i < lawns->count && !stop_asked(); i++) {
		const struct lawn *lawn = &lawns->list[i];

		topsoil += lawn->topsoil;
		seed += lawn->seed;
		turf.laid += lawn->cover == COVER_TURF ? lawn->area : 0;
	}
	item_add_bare(items, GOOD_LAWN_TOPSOIL, SECTION_LAWN, topsoil);
	item_add_spare(items, &turf, spare);
	item_add_bare(items, GOOD_SEED, SECTION_LAWN, seed);
}

static const struct word cover_words[] = {
	[COVER_TURF] = { .key = "turf" }, [COVER_SEED] = { .key = "seed" },
};
static const struct figure figures[] = {
	{ "region", "Lawn", NULL, FIELD(REGION, lawn, region), .flags = TEXT_WRAPS },
	{ "cover", "Cover", NULL, FIELD(WORD, lawn, cover), .words = cover_words },
	{ "area_m2", "Area each", NULL, FIELD(AREA, lawn, area) },
	{ "seed_kg", "Seed each", NULL, FIELD(WEIGHT, lawn, seed), .flags = TEXT_DASHED },
	{ "topsoil_depth_m", "Topsoil", NULL, FIELD(INCHES, lawn, topsoil_depth) },
	{ "topsoil_m3", "Volume each", NULL, FIELD(VOLUME, lawn, topsoil) },
};
const struct figure_table lawn_table = FIGURE_TABLE(lawn, figures);
