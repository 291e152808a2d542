#include "takeoff/ground/fill.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

static const int64_t SETTLEMENT = 15 * MILLION, SETTLEMENT_OF_COMPOST = 20 * MILLION;

static const char TOPSOIL[] = "topsoil", COMPOST[] = "compost";

struct filling {
	const struct basis *basis;
	const struct fill_ground *ground;
	struct fill *rows;
	size_t count, capacity;
};

static bool is_topsoil(const char *part)
{
	return strcmp(part, TOPSOIL) == 0;
}

/* ---- Rows ------------------------------------------------------------------------------------ */

static struct fill *row_add(struct filling *filling, int region)
{
	struct fill *row;

	filling->rows = arena_grow(filling->basis->arena, filling->rows, filling->count,
		&filling->capacity, sizeof *filling->rows);
	row = &filling->rows[filling->count++];
	*row = (struct fill){ .region = region };
	return row;
}

/* Shares row->order among the parts of the mix, or among all but topsoil. */
static void order_share(struct arena *arena, struct fill *row, const struct mix *mix,
	bool leave_topsoil)
{
	int64_t all = 0;

	row->parts = arena_new(arena, (size_t)mix->count, sizeof *row->parts);
	for (int i = 0; i < mix->count; i++)
		if (!leave_topsoil || !is_topsoil(mix->parts[i].name))
			all += mix->parts[i].thousandths;
	for (int i = 0; i < mix->count; i++) {
		const struct mix_part *part = &mix->parts[i];
		double volume;

		if (leave_topsoil && is_topsoil(part->name))
			continue;
		volume = (double)part->thousandths * (row->order / (double)all);
		row->parts[row->part_count++] = (struct fill_part){ part->name, volume, 0, volume };
	}
}

static void mulch_fill(struct fill *row, const struct block *bed, double area)
{
	row->mulch_depth = block_length(bed, BED_MULCH);
	row->mulch = volume_of(area, row->mulch_depth);
}

int64_t fill_settlement(const struct block *allow, const struct mix *mix)
{
	const struct value *own = block_value(allow, ALLOW_SETTLEMENT);
	int64_t all = 0, compost = 0;

	if (own->set)
		return own->as.number;
	for (int i = 0; i < mix->count; i++) {
		all += mix->parts[i].thousandths;
		if (strcmp(mix->parts[i].name, COMPOST) == 0)
			compost += mix->parts[i].thousandths;
	}
	return 2 * compost >= all ? SETTLEMENT_OF_COMPOST : SETTLEMENT;
}

/* Orders what is in place, with what settles. */
static void order_fill(const struct filling *filling, struct fill *row, const struct block *bed)
{
	const struct mix *mix = block_effective(bed, BED_MIX)->as.mix;

	row->settlement = fill_settlement(filling->basis->allow, mix);
	row->order = row->soil * (1 + (double)row->settlement / (double)MILLION / 100);
	order_share(filling->basis->arena, row, mix, false);
}

/* From the wall's top down: freeboard, mulch, soil. Returns the depth of soil above the base, or
 * above undug ground; 0 where there is none, and says so. */
static nm soil_depth(const struct filling *filling, int region, const struct block *bed, nm rise)
{
	bool is_undug = block_number(bed, BED_INSIDE) == INSIDE_UNDUG;
	nm height = wall_height(bed), freeboard = block_length(bed, BED_FREEBOARD);
	nm mulch = block_length(bed, BED_MULCH), embed = embed_of(filling->ground->embeds, region);
	nm depth = height - freeboard - mulch - (is_undug ? embed + rise : 0);

	if (depth > 0)
		return depth;
	snag_add(filling->basis->snags, SNAG_FILL_NONE, region,
		SNAG_FIGURES_OF(height, freeboard, mulch, embed))->kind =
		is_undug ? FILL_NONE_UNDUG : FILL_NONE_RAISED;
	return 0;
}

/* How much higher undug ground within a bed's walls is than where the ground is lowest. */
static nm rise_of(const struct filling *filling, int region, const struct block *bed)
{
	const struct wall_level *level = wall_level_of(filling->ground->levels, region);

	return level && block_number(bed, BED_INSIDE) == INSIDE_UNDUG ? level->rise : 0;
}

static void raised_fill(struct filling *filling, int region, const struct block *bed)
{
	const struct wall *wall = walls_find(filling->ground->walls, region);
	nm rise = rise_of(filling, region, bed);
	nm depth = soil_depth(filling, region, bed, rise);
	struct fill *row;

	if (depth == 0 || !wall)
		return;
	row = row_add(filling, region);
	row->way = FILL_RAISED;
	row->soil_depth = depth;
	row->deepest = rise > 0 ? depth + rise : 0;
	if (block_number(bed, BED_INSIDE) == INSIDE_UNDUG)
		row->strip_area = over_base_of(filling->ground->over, region).area;
	if (row->strip_area > 0)
		row->strip_depth = nm_most(0,
			embed_of(filling->ground->embeds, region) + rise);
	row->soil = volume_of(wall->inner_area, depth) +
		volume_of(row->strip_area, row->strip_depth);
	order_fill(filling, row, bed);
	mulch_fill(row, bed, wall->inner_area);
}

/* A ground-level bed always has a row: its mulch is laid even if nothing is dug in. */
static void level_fill(struct filling *filling, int region, const struct block *bed)
{
	const struct survey *survey = filling->basis->survey;
	double area = survey_area(survey->regions[region].cells, survey->cell);
	bool is_replaced = block_number(bed, BED_REPLACE) == CHOICE_YES;
	struct fill *row = row_add(filling, region);

	row->way = is_replaced ? FILL_REPLACED : FILL_AMENDED;
	row->soil_depth = block_length(bed, is_replaced ? BED_PREPARE : BED_AMEND);
	row->soil = volume_of(area, row->soil_depth);
	if (is_replaced) {
		order_fill(filling, row, bed);
	} else {
		row->order = row->soil;
		order_share(filling->basis->arena, row, block_effective(bed, BED_MIX)->as.mix,
			true);
	}
	mulch_fill(row, bed, area);
	if (row->part_count == 0)
		row->order = row->soil = 0;
	if (row->order > 0)
		return;
	snag_add(filling->basis->snags, SNAG_FILL_NONE, region, SNAG_FIGURES_OF(0))->kind =
		row->part_count == 0 ? FILL_NONE_MIX :
		is_replaced ? FILL_NONE_REPLACED : FILL_NONE_AMENDED;
}

void fill_compute(struct fills *out, const struct basis *basis, const struct fill_ground *ground)
{
	struct filling filling = { .basis = basis, .ground = ground };

	for (int i = 0; i < basis->survey->region_count && !stop_asked(); i++) {
		const struct region *region = &basis->survey->regions[i];
		const struct block *bed = &region->entry->block;

		if (region->entry->class != CLASS_BED)
			continue;
		if (region_is_raised(region))
			raised_fill(&filling, i, bed);
		else
			level_fill(&filling, i, bed);
	}
	*out = (struct fills){ filling.rows, (int)filling.count };
}

static int by_region(const void *region, const void *fill)
{
	return *(const int *)region - ((const struct fill *)fill)->region;
}

const struct fill *fills_find(const struct fills *fills, int region)
{
	if (fills->count == 0)
		return NULL;
	return bsearch(&region, fills->list, (size_t)fills->count, sizeof *fills->list, by_region);
}

/* ---- Topsoil that was dug here --------------------------------------------------------------- */

double fill_topsoil(const struct fills *fills)
{
	double wanted = 0;

	for (int i = 0; i < fills->count && !stop_asked(); i++)
		for (int j = 0; j < fills->list[i].part_count; j++)
			if (is_topsoil(fills->list[i].parts[j].name))
				wanted += fills->list[i].parts[j].volume;
	return wanted;
}

void fill_reuse(struct fills *fills, double share)
{
	for (int i = 0; i < fills->count && !stop_asked(); i++) {
		for (int j = 0; j < fills->list[i].part_count; j++) {
			struct fill_part *part = &fills->list[i].parts[j];

			part->reused = is_topsoil(part->name) ? part->volume * share : 0;
			part->buy = part->volume - part->reused;
		}
	}
}

/* ---- Items ----------------------------------------------------------------------------------- */

static struct item *soil_row(struct item_list *items, size_t first, const char *part)
{
	enum good good = good_of_soil(part);
	const char *name = good_row(good)->varies == VARIES_BY_NAME ? part : "";

	for (size_t i = first; i < items->count; i++)
		if (items->list[i].good == good && strcmp(items->list[i].name, name) == 0)
			return &items->list[i];
	return item_add(items, &(struct item){ .good = good, .name = name,
		.section = SECTION_FILL });
}

/* percent: in millionths. */
static void note_settlement(struct item *row, int64_t percent)
{
	if (row->note.kind == NOTE_SETTLEMENT && row->note.percent != percent)
		percent = 0;
	row->note = (struct note){ .kind = NOTE_SETTLEMENT, .percent = percent };
}

static void add_soil(struct item_list *items, const struct fill *fill, size_t first)
{
	for (int i = 0; fill->order > 0 && i < fill->part_count; i++) {
		const struct fill_part *part = &fill->parts[i];
		struct item *row = soil_row(items, first, part->name);
		double laid = part->volume * (fill->soil / fill->order);

		row->laid += laid;
		row->spare += part->volume - laid;
		row->reused += part->reused;
		row->order += part->buy;
		if (fill->order > fill->soil)
			note_settlement(row, fill->settlement);
	}
}

void fill_items(struct item_list *items, const struct fills *fills)
{
	size_t first = items->count;
	double mulch = 0;

	for (int i = 0; i < fills->count; i++) {
		add_soil(items, &fills->list[i], first);
		mulch += fills->list[i].mulch;
	}
	item_add_bare(items, GOOD_MULCH, SECTION_FILL, mulch);
}

static const struct figure part_figures[] = {
	{ "name", NULL, NULL, FIELD(TEXT, fill_part, name), .flags = ROW_KEY },
	{ "m3", NULL, "Volume", FIELD(VOLUME, fill_part, volume) },
	{ "reused_m3", NULL, NULL, FIELD(VOLUME, fill_part, reused) },
	{ "buy_m3", NULL, NULL, FIELD(VOLUME, fill_part, buy) },
};
static const struct figure_table part_table = FIGURE_TABLE(fill_part, part_figures);

const struct word fill_words[FILL_WAYS] = {
	[FILL_RAISED] = { .heading = "Soil" }, [FILL_REPLACED] = { .heading = "Soil replaced" },
	[FILL_AMENDED] = { .heading = "Amended" },
};
static const struct figure figures[] = {
	{ "bed", NULL, "", FIELD(REGION, fill, region), .flags = PANEL_TITLE | ROW_KEY },
	{ NULL, NULL, NULL, FIELD(WORD, fill, way), .words = fill_words },
	{ "soil_depth_m", NULL, "Soil depth", FIELD(LENGTH, fill, soil_depth),
		.flags = PANEL_OPTIONAL },
	{ "soil_deepest_m", NULL, "Where ground is lowest", FIELD(LENGTH, fill, deepest),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "strip_m2", NULL, "Over the base", FIELD(AREA, fill, strip_area),
		.flags = PANEL_OPTIONAL },
	{ "strip_depth_m", NULL, "There deeper by", FIELD(LENGTH, fill, strip_depth),
		.flags = PANEL_OPTIONAL },
	{ "soil_m3", NULL, "Soil in place", FIELD(VOLUME, fill, soil), .flags = PANEL_OPTIONAL },
	{ "order_m3", NULL, "Soil to order", FIELD(VOLUME, fill, order), .flags = PANEL_OPTIONAL },
	{ "parts", NULL, NULL, FIELDS(ROWS, fill, parts, part_count), .table = &part_table },
	{ NULL, NULL, NULL, FIELD(INCHES, fill, mulch_depth) },
	{ "mulch_m3", NULL, "Mulch", FIELD(VOLUME, fill, mulch), .flags = PANEL_OPTIONAL },
};
const struct figure_table fill_table = FIGURE_TABLE(fill, figures);
