#include "takeoff/ground/stone.h"
#include "takeoff/common/item_rows.h"

#define LIFT_BY_PLATE (4 * NM_PER_INCH)
#define LIFT_BY_HAND (2 * NM_PER_INCH)

/* A path has a base and a surface. */
enum { LAYERS_MOST = 2 };

struct stones {
	const struct takeoff *takeoff;
	struct stone *rows; /* room for all layers of all zones */
	int count;
};

int stone_lifts(nm depth, enum tamper tamper)
{
	nm lift = tamper == TAMPER_HAND ? LIFT_BY_HAND : LIFT_BY_PLATE;

	return (int)((depth + lift - 1) / lift);
}

static double factor(const struct takeoff *takeoff, enum stone_grading grading)
{
	return (double)block_number(takeoff->allow, grading == STONE_CLEAN ?
		ALLOW_COMPACTION_CLEAN : ALLOW_COMPACTION_FINES) / (double)MILLION;
}

/* The row has all but what follows from it; none where there is no stone. */
static void add_row(struct stones *stones, struct stone row)
{
	const struct takeoff *takeoff = stones->takeoff;

	if (row.depth == 0 || row.area <= 0)
		return;
	row.compacted = row.area * (double)row.depth / (double)NM_PER_M;
	row.loose = row.compacted * factor(takeoff, row.grading);
	if (row.layer == STONE_BASE)
		row.lifts = stone_lifts(row.depth,
			(enum tamper)block_number(takeoff->allow, ALLOW_TAMPER));
	stones->rows[stones->count++] = row;
}

static void add_path(struct stones *stones, struct stone row, const struct block *path)
{
	row.depth = block_length(path, PATH_BASE);
	add_row(stones, row);
	row.layer = STONE_SURFACE;
	row.depth = block_length(path, PATH_SURFACE);
	row.grading = (enum stone_grading)block_number(path, PATH_STONE);
	add_row(stones, row);
}

static void add_base(struct stones *stones, struct stone row, enum stone_place place, nm depth)
{
	row.place = place;
	row.depth = depth;
	add_row(stones, row);
}

static void add_zone(struct stones *stones, const struct zone *zone)
{
	const struct block *block = &stones->takeoff->survey.regions[zone->region].entry->block;
	struct stone row = { .region = zone->region, .area = zone->area };

	switch (zone->part) {
	case ZONE_PATH:
		add_path(stones, row, block);
		return;
	case ZONE_WALL:
		add_base(stones, row, STONE_WALL, block_length(block, BED_BASE));
		return;
	case ZONE_INSIDE:
		if (block_number(block, BED_INSIDE) == INSIDE_BASE)
			add_base(stones, row, STONE_INSIDE, block_length(block, BED_BASE));
		return;
	case ZONE_PAD:
		add_base(stones, row, STONE_PAD, block_length(block, FIXTURE_BASE));
		return;
	case ZONE_LAWN:
	case ZONE_BED:
		return;
	}
}

enum stone_kind stone_kind_of(const struct stone *stone)
{
	if (stone->layer == STONE_BASE)
		return STONE_KIND_BASE;
	return stone->grading == STONE_CLEAN ? STONE_KIND_CLEAN : STONE_KIND_FINES;
}

static void add_totals(struct takeoff *takeoff)
{
	double spare = (double)block_number(takeoff->allow, ALLOW_STONE_SPARE) / (double)MILLION;
	double density = amount_si(&block_effective(takeoff->allow, ALLOW_DENSITY_STONE)->as.amount);

	for (int i = 0; i < takeoff->stone_count; i++) {
		const struct stone *stone = &takeoff->stones[i];
		struct stone_total *total = &takeoff->stone_totals[stone_kind_of(stone)];

		total->compacted += stone->compacted;
		total->loose += stone->loose;
	}
	for (int kind = 0; kind < STONE_KINDS; kind++) {
		struct stone_total *total = &takeoff->stone_totals[kind];

		total->spare = total->loose * spare / 100;
		total->order = total->loose + total->spare;
		total->weight = total->order * density;
		total->loads = loads_of(takeoff->allow, total->order, density);
	}
}

void stone_compute(struct takeoff *takeoff, struct arena *arena)
{
	size_t most = (size_t)takeoff->zones.count * LAYERS_MOST;
	struct stones stones = { takeoff, arena_new(arena, most, sizeof *stones.rows), 0 };

	for (int i = 0; i < takeoff->zones.count; i++)
		add_zone(&stones, &takeoff->zones.list[i]);
	takeoff->stones = stones.rows;
	takeoff->stone_count = stones.count;
	add_totals(takeoff);
}

static const struct {
	const char *id, *label;
	enum stone_grading grading;
} kinds[] = {
	[STONE_KIND_BASE] = { "stone.base", "Base stone", STONE_FINES },
	[STONE_KIND_FINES] = { "stone.surface.fines", "Stone with fines", STONE_FINES },
	[STONE_KIND_CLEAN] = { "stone.surface.clean", "Clean stone", STONE_CLEAN },
};

const char *stone_kind_word(enum stone_kind kind)
{
	return kinds[kind].id;
}

/* "loose, 1.2 x compacted; 5 % spare". */
static const char *order_note(struct arena *arena, const struct takeoff *takeoff,
	enum stone_grading grading)
{
	struct text words = TEXT_EMPTY;
	const char *note;

	text_add(&words, "loose, ");
	text_add_number(&words, factor(takeoff, grading), 6);
	text_print(&words, " x compacted; %s", item_percent(arena,
		block_number(takeoff->allow, ALLOW_STONE_SPARE), "spare"));
	note = arena_print(arena, "%s", words.bytes);
	text_fini(&words);
	return note;
}

void stone_items(struct items *items, const struct takeoff *takeoff)
{
	for (int kind = 0; kind < STONE_KINDS; kind++) {
		const struct stone_total *total = &takeoff->stone_totals[kind];

		if (total->order > 0)
			item_add(items, &(struct item){ .id = kinds[kind].id,
				.section = SECTION_STONE, .label = kinds[kind].label,
				.unit = UNIT_M3, .laid = total->loose, .spare = total->spare,
				.order = total->order,
				.note = order_note(items->arena, takeoff, kinds[kind].grading) });
	}
}

const char *stone_place_word(enum stone_place place)
{
	static const char *const words[] = {
		[STONE_PATH] = "path", [STONE_WALL] = "wall", [STONE_INSIDE] = "inside",
		[STONE_PAD] = "fixture",
	};

	return words[place];
}
