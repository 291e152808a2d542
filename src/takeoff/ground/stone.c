#include "takeoff/ground/stone.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"

struct layers {
	const struct basis *basis;
	struct stone *rows;
	int count;
	size_t capacity;
};

nm stone_layer_most(enum tamper tamper, enum units units)
{
	static const nm by_plate[] = { [UNITS_IMPERIAL] = 4 * NM_PER_INCH,
		[UNITS_METRIC] = 100 * NM_PER_MM };

	return tamper == TAMPER_HAND ? by_plate[units] / 2 : by_plate[units];
}

int stone_lifts(nm depth, enum tamper tamper, enum units units)
{
	return (int)quotient_up(depth, stone_layer_most(tamper, units));
}

static double factor(const struct block *allow, enum stone_grading grading)
{
	return (double)block_number(allow, grading == STONE_CLEAN ?
		ALLOW_COMPACTION_CLEAN : ALLOW_COMPACTION_FINES) / (double)MILLION;
}

/* Works out the row's volumes and lifts; adds nothing where there is no stone. */
static void add_row(struct layers *layers, struct stone row)
{
	const struct block *allow = layers->basis->allow;

	if (row.depth == 0 || row.area <= 0)
		return;
	row.compacted = volume_of(row.area, row.depth);
	row.loose = row.compacted * factor(allow, row.grading);
	if (row.layer == STONE_BASE)
		row.lifts = stone_lifts(row.depth,
			(enum tamper)block_number(allow, ALLOW_TAMPER),
			plot_units(layers->basis->plot));
	layers->rows = arena_grow(layers->basis->arena, layers->rows, (size_t)layers->count,
		&layers->capacity, sizeof *layers->rows);
	layers->rows[layers->count++] = row;
}

static void add_zone(struct layers *layers, const struct zone *zone)
{
	static const enum stone_place places[DIG_PARTS] = { [DIG_PATH] = STONE_PATH,
		[DIG_WALL] = STONE_WALL, [DIG_INSIDE] = STONE_INSIDE, [DIG_PAD] = STONE_PAD };
	const struct survey *survey = layers->basis->survey;
	const struct block *block = &survey->regions[zone->region].entry->block;
	struct stone row = { .region = zone->region, .place = places[zone->part],
		.area = zone->area, .depth = zone_base(survey, zone) };

	add_row(layers, row);
	if (zone->part != DIG_PATH)
		return;
	row.layer = STONE_SURFACE;
	row.depth = block_length(block, PATH_SURFACE);
	row.grading = (enum stone_grading)block_number(block, PATH_STONE);
	add_row(layers, row);
}

static enum stone_kind kind_of(const struct stone *stone)
{
	if (stone->layer == STONE_BASE)
		return STONE_KIND_BASE;
	return stone->grading == STONE_CLEAN ? STONE_KIND_CLEAN : STONE_KIND_FINES;
}

static void add_totals(struct stones *stones, const struct block *allow)
{
	double spare = block_share(allow, ALLOW_STONE_SPARE);
	double density = block_amount(allow, ALLOW_DENSITY_STONE);

	for (int i = 0; i < stones->count && !stop_asked(); i++) {
		const struct stone *stone = &stones->list[i];
		struct stone_total *total = &stones->totals[kind_of(stone)];

		total->compacted += stone->compacted;
		total->loose += stone->loose;
	}
	for (int kind = 0; kind < STONE_KINDS; kind++) {
		struct stone_total *total = &stones->totals[kind];

		total->kind = (enum stone_kind)kind;
		total->spare = total->loose * spare;
		total->order = total->loose + total->spare;
		total->weight = total->order * density;
		total->loads = loads_of(allow, total->order, density);
	}
}

static enum layer_kind layer_of(const struct stone *stone)
{
	static const enum layer_kind bases[] = {
		[STONE_PATH] = LAYER_BASE, [STONE_WALL] = LAYER_WALL, [STONE_INSIDE] = LAYER_INSIDE,
		[STONE_PAD] = LAYER_PAD,
	};

	if (stone->layer == STONE_BASE)
		return bases[stone->place];
	return stone->grading == STONE_CLEAN ? LAYER_SURFACE_CLEAN : LAYER_SURFACE_FINES;
}

static void add_layers(struct stones *stones, const struct basis *basis)
{
	const struct details *details = &basis->plot->details;
	struct stone_layer_sum *sums = arena_new(basis->arena, details->legend_count * LAYER_KINDS,
		sizeof *sums);
	size_t count = 0;

	for (int i = 0; i < stones->count && !stop_asked(); i++) {
		const struct stone *stone = &stones->list[i];
		const struct entry *entry = basis->survey->regions[stone->region].entry;
		enum layer_kind kind = layer_of(stone);
		struct stone_layer_sum *sum =
			&sums[(size_t)(entry - details->legend) * LAYER_KINDS + kind];

		*sum = (struct stone_layer_sum){ entry, kind, sum->area + stone->area,
			sum->compacted + stone->compacted, stone->depth, stone->lifts };
	}
	for (size_t i = 0; i < details->legend_count * LAYER_KINDS; i++)
		if (sums[i].entry)
			sums[count++] = sums[i];
	stones->layers = sums;
	stones->layer_count = (int)count;
}

void stone_compute(struct stones *out, const struct basis *basis, const struct zones *zones)
{
	struct layers layers = { .basis = basis };

	for (int i = 0; i < zones->count && !stop_asked(); i++)
		add_zone(&layers, &zones->list[i]);
	*out = (struct stones){ .list = layers.rows, .count = layers.count };
	add_layers(out, basis);
	add_totals(out, basis->allow);
}

void stone_items(struct item_list *items, const struct stones *stones)
{
	static const struct {
		enum good good;
		enum stone_grading grading;
	} kinds[] = {
		[STONE_KIND_BASE] = { GOOD_STONE_BASE, STONE_FINES },
		[STONE_KIND_FINES] = { GOOD_STONE_FINES, STONE_FINES },
		[STONE_KIND_CLEAN] = { GOOD_STONE_CLEAN, STONE_CLEAN },
	};

	for (int kind = 0; kind < STONE_KINDS; kind++) {
		const struct stone_total *total = &stones->totals[kind];

		if (total->order > 0)
			item_add(items, &(struct item){ .good = kinds[kind].good,
				.section = SECTION_STONE, .laid = total->loose,
				.spare = total->spare, .order = total->order,
				.note = { .kind = NOTE_STONE,
					.factor = factor(items->allow, kinds[kind].grading),
					.percent = block_number(items->allow,
						ALLOW_STONE_SPARE) } });
	}
}

static const struct word layer_words[] = {
	[STONE_BASE] = { .key = "base" }, [STONE_SURFACE] = { .key = "surface" },
};
static const struct word place_words[] = {
	[STONE_PATH] = { .key = "path" }, [STONE_WALL] = { .key = "wall" },
	[STONE_INSIDE] = { .key = "inside" }, [STONE_PAD] = { .key = "fixture" },
};
static const struct word grading_words[] = {
	[STONE_FINES] = { .key = "fines" }, [STONE_CLEAN] = { .key = "clean" },
};
static const struct figure stone_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, stone, region), .flags = ROW_KEY },
	{ "layer", NULL, NULL, FIELD(WORD, stone, layer), .words = layer_words, .flags = ROW_KEY },
	{ "place", NULL, NULL, FIELD(WORD, stone, place), .words = place_words, .flags = ROW_KEY },
	{ "stone", NULL, NULL, FIELD(WORD, stone, grading), .words = grading_words },
	{ "area_m2", NULL, NULL, FIELD(AREA, stone, area) },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, stone, depth) },
	{ "compacted_m3", NULL, NULL, FIELD(VOLUME, stone, compacted) },
	{ "loose_m3", NULL, NULL, FIELD(VOLUME, stone, loose) },
	{ "lifts", NULL, NULL, FIELD(COUNT, stone, lifts) },
};
const struct figure_table stone_table = FIGURE_TABLE(stone, stone_figures);

static const struct word sum_words[] = {
	[LAYER_BASE] = { .heading = "base" }, [LAYER_SURFACE_FINES] =
		{ .heading = "surface, fines" },
	[LAYER_SURFACE_CLEAN] = { .heading = "surface, clean" },
	[LAYER_WALL] = { .heading = "base of walls" },
	[LAYER_INSIDE] = { .heading = "base inside" },
	[LAYER_PAD] = { .heading = "base of fixtures" },
};
static const struct figure sum_figures[] = {
	{ NULL, "Of", NULL, FIELD(ENTRY, stone_layer_sum, entry), .flags = TEXT_WRAPS },
	{ NULL, "Stone", NULL, FIELD(WORD, stone_layer_sum, kind), .words = sum_words },
	{ NULL, "Area", NULL, FIELD(AREA, stone_layer_sum, area) },
	{ NULL, "Depth", NULL, FIELD(INCHES, stone_layer_sum, depth) },
	{ NULL, "Compacted", NULL, FIELD(VOLUME, stone_layer_sum, compacted) },
	{ NULL, "Layers", NULL, FIELD(COUNT, stone_layer_sum, lifts), .flags = TEXT_DASHED },
};
const struct figure_table stone_layer_table = FIGURE_TABLE(stone_layer_sum, sum_figures);

static const struct word kind_words[] = {
	[STONE_KIND_BASE] = { "stone.base", "Bases, pads", "Bases and pads" },
	[STONE_KIND_FINES] = { "stone.surface.fines", "Surface, fines", "Surface with fines" },
	[STONE_KIND_CLEAN] = { "stone.surface.clean", "Surface, clean", "Surface, clean" },
};
static const struct figure total_figures[] = {
	{ "item", "In all", "", FIELD(WORD, stone_total, kind), .words = kind_words,
		.flags = PANEL_TITLE | ROW_KEY },
	{ "compacted_m3", "Compacted", "Compacted", FIELD(VOLUME, stone_total, compacted) },
	{ NULL, NULL, "Loose", FIELD(VOLUME, stone_total, loose) },
	{ "order_m3", "Order", "To order", FIELD(VOLUME, stone_total, order), .flags = ROW_NEEDED },
	{ "order_kg", "Weight", "Weight", FIELD(WEIGHT, stone_total, weight) },
	{ "loads", NULL, NULL, FIELD(OBJECT, stone_total, loads), .table = &loads_table },
	{ NULL, "Barrows", NULL, FIELD(COUNT, stone_total, loads.barrow) },
	{ NULL, "Trucks", NULL, FIELD(COUNT, stone_total, loads.truck) },
};
const struct figure_table stone_total_table = FIGURE_TABLE(stone_total, total_figures);
