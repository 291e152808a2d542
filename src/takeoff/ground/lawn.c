#include "takeoff/ground/lawn.h"
#include "takeoff/common/item_rows.h"

static struct lawn lawn_of(const struct takeoff *takeoff, int region)
{
	const struct region *at = &takeoff->survey.regions[region];
	const struct block *block = &at->entry->block;
	struct lawn lawn = { .region = region,
		.cover = (enum lawn_cover)block_number(block, LAWN_COVER),
		.area = survey_area(at->cells, takeoff->survey.cell),
		.topsoil_depth = block_length(block, LAWN_TOPSOIL) };

	lawn.topsoil = lawn.area * (double)lawn.topsoil_depth / (double)NM_PER_M;
	if (lawn.cover == COVER_SEED)
		lawn.seed = lawn.area *
			amount_si(&block_effective(takeoff->allow, ALLOW_SEED)->as.amount);
	return lawn;
}

void lawn_compute(struct takeoff *takeoff, struct arena *arena)
{
	struct lawn *lawns = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < takeoff->survey.region_count; i++) {
		const struct entry *entry = takeoff->survey.regions[i].entry;

		if (entry->class != CLASS_LAWN ||
			block_number(&entry->block, LAWN_COVER) == COVER_NONE)
			continue;
		lawns = arena_grow(arena, lawns, count, &capacity, sizeof *lawns);
		lawns[count++] = lawn_of(takeoff, i);
	}
	takeoff->lawns = lawns;
	takeoff->lawn_count = (int)count;
}

void lawn_items(struct items *items, const struct takeoff *takeoff)
{
	int64_t spare = block_number(takeoff->allow, ALLOW_TURF_SPARE);
	struct item topsoil = { .id = "topsoil.lawn", .section = SECTION_LAWN,
		.label = "Lawn topsoil", .unit = UNIT_M3 };
	struct item turf = { .id = "turf", .section = SECTION_LAWN, .label = "Turf",
		.unit = UNIT_M2, .note = item_percent(items->arena, spare, "trimming") };
	struct item seed = { .id = "seed", .section = SECTION_LAWN, .label = "Grass seed",
		.unit = UNIT_KG };

	for (int i = 0; i < takeoff->lawn_count; i++) {
		const struct lawn *lawn = &takeoff->lawns[i];

		topsoil.laid += lawn->topsoil;
		seed.laid += lawn->seed;
		turf.laid += lawn->cover == COVER_TURF ? lawn->area : 0;
	}
	item_add_spare(items, &topsoil, 0);
	item_add_spare(items, &turf, spare);
	item_add_spare(items, &seed, 0);
}
