#include "takeoff/ground/lawn.h"
#include "base/measure.h"
#include "base/stop.h"

/* 3 to 5 % for trimming, says the Maryland Turfgrass Council; on small lawns twice that: common
 * practice, no published source. */
static const int64_t SPARE = 5 * MILLION, SPARE_OF_SMALL = 10 * MILLION;
static const double SMALL_LAWNS = 500 * 0.3048 * 0.3048;

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

int64_t lawn_turf_spare(const struct block *allow, double area)
{
	const struct value *own = block_value(allow, ALLOW_TURF_SPARE);

	if (own->set)
		return own->as.number;
	return area < SMALL_LAWNS ? SPARE_OF_SMALL : SPARE;
}

void lawn_items(struct item_list *items, const struct lawns *lawns)
{
	struct item turf = { .good = GOOD_TURF, .section = SECTION_LAWN,
		.note.kind = NOTE_TRIMMING };
	double topsoil = 0, seed = 0;

	for (int i = 0; i < lawns->count && !stop_asked(); i++) {
		const struct lawn *lawn = &lawns->list[i];

		topsoil += lawn->topsoil;
		seed += lawn->seed;
		turf.laid += lawn->cover == COVER_TURF ? lawn->area : 0;
	}
	item_add_bare(items, GOOD_LAWN_TOPSOIL, SECTION_LAWN, topsoil);
	turf.note.percent = lawn_turf_spare(items->allow, turf.laid);
	item_add_spare(items, &turf, turf.note.percent);
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
