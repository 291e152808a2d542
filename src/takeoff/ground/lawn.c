#include "takeoff/ground/lawn.h"
#include "base/measure.h"
#include "base/stop.h"
#include "takeoff/ground/fill.h"

static const int64_t SPARE = 5 * MILLION, SPARE_OF_SMALL = 10 * MILLION;
static const double SMALL_LAWNS = 500 * 0.3048 * 0.3048;

static const struct mix topsoil_alone = { 1, { { "topsoil", 1000 } } };

static struct lawn lawn_of(const struct basis *basis, int region, const struct over_base *over)
{
	const struct region *at = &basis->survey->regions[region];
	const struct block *block = &at->entry->block;
	struct lawn lawn = { .region = region,
		.cover = (enum lawn_cover)block_number(block, LAWN_COVER),
		.area = survey_area(at->cells, basis->survey->cell),
		.topsoil_depth = block_length(block, LAWN_TOPSOIL) };

	lawn.topsoil = volume_of(lawn.area - over->area, lawn.topsoil_depth) + over->topsoil;
	if (lawn.cover == COVER_SEED)
		lawn.seed = lawn.area * block_amount(basis->allow, ALLOW_SEED);
	return lawn;
}

static void check_soil(const struct basis *basis, const struct over_base *over)
{
	nm least = block_length(basis->allow, ALLOW_LAWN_SOIL);

	if (over->area > 0 && over->least < least)
		snag_add(basis->snags, SNAG_LAWN_THIN, over->region,
			SNAG_FIGURES_OF(over->least, least));
}

void lawn_compute(struct lawns *out, const struct basis *basis, const struct over_bases *over)
{
	size_t count = 0, capacity = 0;

	*out = (struct lawns){ .settlement = fill_settlement(basis->allow, &topsoil_alone) };
	for (int i = 0; i < basis->survey->region_count && !stop_asked(); i++) {
		const struct entry *entry = basis->survey->regions[i].entry;
		struct over_base here;
		struct lawn *lawn;

		if (entry->class != CLASS_LAWN)
			continue;
		here = over_base_of(over, i);
		check_soil(basis, &here);
		if (block_number(&entry->block, LAWN_COVER) == COVER_NONE)
			continue;
		out->list = arena_grow(basis->arena, out->list, count, &capacity,
			sizeof *out->list);
		lawn = &out->list[count++];
		*lawn = lawn_of(basis, i, &here);
		lawn->order = lawn->buy = lawn->topsoil *
			(1 + (double)out->settlement / (double)MILLION / 100);
	}
	out->count = (int)count;
}

double lawn_topsoil(const struct lawns *lawns)
{
	double wanted = 0;

	for (int i = 0; i < lawns->count && !stop_asked(); i++)
		wanted += lawns->list[i].order;
	return wanted;
}

void lawn_reuse(struct lawns *lawns, double share)
{
	for (int i = 0; i < lawns->count && !stop_asked(); i++) {
		struct lawn *lawn = &lawns->list[i];

		lawn->reused = lawn->order * share;
		lawn->buy = lawn->order - lawn->reused;
	}
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
	struct item topsoil = { .good = GOOD_LAWN_TOPSOIL, .section = SECTION_LAWN,
		.note = { .kind = NOTE_SETTLEMENT, .percent = lawns->settlement } };
	double seed = 0;

	for (int i = 0; i < lawns->count && !stop_asked(); i++) {
		const struct lawn *lawn = &lawns->list[i];

		topsoil.laid += lawn->topsoil;
		topsoil.spare += lawn->order - lawn->topsoil;
		topsoil.reused += lawn->reused;
		topsoil.order += lawn->buy;
		seed += lawn->seed;
		turf.laid += lawn->cover == COVER_TURF ? lawn->area : 0;
	}
	if (topsoil.laid > 0)
		item_add(items, &topsoil);
	turf.note.percent = lawn_turf_spare(items->allow, turf.laid);
	item_add_spare(items, &turf, turf.note.percent);
	item_add_bare(items, GOOD_SEED, SECTION_LAWN, seed);
}

static const struct word cover_words[] = {
	[COVER_TURF] = { .key = "turf" }, [COVER_SEED] = { .key = "seed" },
};
static const struct figure figures[] = {
	{ "region", "Lawn", NULL, FIELD(REGION, lawn, region), .flags = TEXT_WRAPS | ROW_KEY },
	{ "cover", "Cover", NULL, FIELD(WORD, lawn, cover), .words = cover_words },
	{ "area_m2", "Area each", NULL, FIELD(AREA, lawn, area) },
	{ "seed_kg", "Seed each", NULL, FIELD(WEIGHT, lawn, seed), .flags = TEXT_DASHED },
	{ "topsoil_depth_m", "Topsoil", NULL, FIELD(INCHES, lawn, topsoil_depth) },
	{ "topsoil_m3", "In place", NULL, FIELD(VOLUME, lawn, topsoil) },
	{ "order_m3", "Soil to order", NULL, FIELD(VOLUME, lawn, order) },
	{ "reused_m3", NULL, NULL, FIELD(VOLUME, lawn, reused) },
	{ "buy_m3", NULL, NULL, FIELD(VOLUME, lawn, buy) },
};
const struct figure_table lawn_table = FIGURE_TABLE(lawn, figures);
