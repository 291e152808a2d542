#include "takeoff/ground/dig.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"

#include <math.h>

double earth_sum(const struct earth *earth)
{
	return earth->sod + earth->topsoil + earth->subsoil;
}

static struct earth earth_below(const struct block *allow, double area, nm depth)
{
	nm sod = nm_least(depth, block_length(allow, ALLOW_SOD));
	nm topsoil = nm_least(depth - sod, block_length(allow, ALLOW_TOPSOIL));

	return (struct earth){ volume_of(area, sod), volume_of(area, topsoil),
		volume_of(area, depth - sod - topsoil) };
}

void dig_add(struct dig_list *list, struct dig dig)
{
	if (dig.area <= 0 || dig.depth <= 0)
		return;
	dig.bank = earth_below(list->allow, dig.area, dig.depth);
	list->rows = arena_grow(list->arena, list->rows, list->count, &list->capacity,
		sizeof *list->rows);
	list->rows[list->count++] = dig;
}

static nm zone_depth(const struct embeds *embeds, const struct zone *zone)
{
	const struct block *block = &embeds->survey->regions[zone->region].entry->block;
	nm base = zone_base(embeds->survey, zone);

	switch (zone->part) {
	case DIG_PATH:
		return base + block_length(block, PATH_SURFACE);
	case DIG_WALL:
	case DIG_INSIDE:
		return base + embed_of(embeds, zone->region);
	case DIG_PAD:
		return base + embeds->surface;
	case DIG_LAWN:
		return block_length(block, LAWN_TOPSOIL) + turf_thickness(block);
	case DIG_BED:
		return block_length(block, BED_PREPARE);
	case DIG_HOLES:
		break;
	}
	return 0;
}

void dig_zones(struct dig_list *list, const struct zones *zones, const struct embeds *embeds)
{
	for (int i = 0; i < zones->count && !stop_asked(); i++) {
		const struct zone *zone = &zones->list[i];

		dig_add(list, (struct dig){ .region = zone->region, .part = zone->part,
			.area = zone->area, .depth = zone_depth(embeds, zone) });
	}
}

/* ---- Sums ------------------------------------------------------------------------------------ */

static struct earth loosened(const struct block *allow, const struct earth *bank)
{
	static const enum attribute subsoils[] = {
		[SUBSOIL_LOAM] = ALLOW_SWELL_LOAM, [SUBSOIL_CLAY] = ALLOW_SWELL_CLAY,
		[SUBSOIL_SAND] = ALLOW_SWELL_SAND,
	};
	double topsoil = 1 + block_share(allow, ALLOW_SWELL_TOPSOIL);

	return (struct earth){ bank->sod * topsoil, bank->topsoil * topsoil,
		bank->subsoil *
			(1 + block_share(allow, subsoils[block_number(allow, ALLOW_SUBSOIL)])) };
}

static void sum_rows(struct earthwork *work)
{
	for (int i = 0; i < DIG_PARTS; i++)
		work->sums[i].part = (enum dig_part)i;
	for (int i = 0; i < work->count && !stop_asked(); i++) {
		const struct dig *dig = &work->rows[i];

		work->bank.sod += dig->bank.sod;
		work->bank.topsoil += dig->bank.topsoil;
		work->bank.subsoil += dig->bank.subsoil;
		work->sums[dig->part].bank += earth_sum(&dig->bank);
	}
	work->bank_all = earth_sum(&work->bank);
}

/* What backfill takes of the bank. */
static struct earth put_back(const struct block *allow, const struct earth *bank, double backfill)
{
	double wanted = backfill * (double)MILLION / (double)block_number(allow, ALLOW_SHRINK);
	double subsoil = fmin(bank->subsoil, wanted);

	return (struct earth){ 0, fmin(bank->topsoil, wanted - subsoil), subsoil };
}

static double share_of(double taken, double wanted)
{
	return taken > 0 ? taken / wanted : 0;
}

/* Shares out topsoil, m3, loose: the mixes come first. */
static void reuse(struct earthwork *work, double topsoil, const struct earth_wanted *wanted)
{
	double mixes = fmin(topsoil, wanted->mixes);
	double lawns = fmin(topsoil - mixes, wanted->lawns);

	work->mixes_share = share_of(mixes, wanted->mixes);
	work->lawns_share = share_of(lawns, wanted->lawns);
	work->reused = mixes + lawns;
}

void dig_finish(struct earthwork *out, const struct dig_list *list,
	const struct earth_wanted *wanted)
{
	double density = block_amount(list->allow, ALLOW_DENSITY_SPOIL);
	struct earthwork work = { .rows = list->rows, .count = (int)list->count,
		.backfill = wanted->backfill, .loosened = wanted->loosened };
	struct earth back;

	sum_rows(&work);
	back = put_back(list->allow, &work.bank, work.backfill);
	work.loose = loosened(list->allow, &work.bank);
	work.loose_all = earth_sum(&work.loose);
	back = loosened(list->allow, &back);
	work.backfill_loose = earth_sum(&back);
	reuse(&work, work.loose.topsoil - back.topsoil, wanted);
	work.spoil = work.loose.sod + (work.loose.topsoil - back.topsoil - work.reused) +
		(work.loose.subsoil - back.subsoil);
	work.spoil_weight = work.spoil * density;
	work.loads = loads_of(list->allow, work.spoil, density);
	*out = work;
}

double earthwork_sod_kept(const struct earthwork *work, const struct block *allow)
{
	return volume_of(work->loosened, block_length(allow, ALLOW_SOD));
}

void dig_items(struct item_list *items, const struct earthwork *work)
{
	if (work->spoil > 0)
		item_add(items, &(struct item){ .good = GOOD_SPOIL, .section = SECTION_DIG,
			.laid = work->spoil, .order = work->spoil, .note.kind = NOTE_SPOIL });
}

const struct word dig_words[DIG_PARTS] = {
	[DIG_PATH] = { "path", "path", "Paths" },
	[DIG_WALL] = { "wall", "wall and its base", "Walls" },
	[DIG_INSIDE] = { "inside", "inside of bed", "Inside beds" },
	[DIG_PAD] = { "pad", "fixture", "Fixtures" },
	[DIG_LAWN] = { "lawn", "lawn", "Lawns" },
	[DIG_BED] = { "bed", "soil replaced", "Soil replaced" },
	[DIG_HOLES] = { "holes", "post holes", "Post holes" },
};

/* Rows are alike in purpose, depth and area. */
static const struct figure dig_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, dig, region), .flags = ROW_KEY },
	{ "part", "For", NULL, FIELD(WORD, dig, part), .words = dig_words, .flags = ROW_KEY },
	{ NULL, "Depth", NULL, FIELD(INCHES, dig, depth) },
	{ "area_m2", "Area", NULL, FIELD(AREA, dig, area) },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, dig, depth) },
	{ "sod_m3", NULL, NULL, FIELD(VOLUME, dig, bank.sod) },
	{ "topsoil_m3", NULL, NULL, FIELD(VOLUME, dig, bank.topsoil) },
	{ "subsoil_m3", NULL, NULL, FIELD(VOLUME, dig, bank.subsoil) },
};
const struct figure_table dig_table = FIGURE_TABLE(dig, dig_figures);

static const struct figure earth_figures[] = {
	{ "sod_m3", NULL, NULL, FIELD(VOLUME, earth, sod) },
	{ "topsoil_m3", NULL, NULL, FIELD(VOLUME, earth, topsoil) },
	{ "subsoil_m3", NULL, NULL, FIELD(VOLUME, earth, subsoil) },
};
static const struct figure_table earth_table = FIGURE_TABLE(earth, earth_figures);

static const struct figure earthwork_figures[] = {
	{ "bank", NULL, NULL, FIELD(OBJECT, earthwork, bank), .table = &earth_table },
	{ "loose", NULL, NULL, FIELD(OBJECT, earthwork, loose), .table = &earth_table },
	{ NULL, NULL, "All", FIELD(VOLUME, earthwork, bank_all) },
	{ .label = "Dug, loose", .kind = FIGURE_HEADING },
	{ NULL, NULL, "Sod", FIELD(VOLUME, earthwork, loose.sod) },
	{ NULL, NULL, "Topsoil", FIELD(VOLUME, earthwork, loose.topsoil) },
	{ NULL, NULL, "Subsoil", FIELD(VOLUME, earthwork, loose.subsoil) },
	{ "backfill_m3", NULL, "Put back, in place", FIELD(VOLUME, earthwork, backfill),
		.flags = PANEL_OPTIONAL },
	{ "backfill_loose_m3", NULL, "Put back, loose", FIELD(VOLUME, earthwork, backfill_loose),
		.flags = PANEL_OPTIONAL },
	{ "loosened_m2", NULL, "Loosened in beds", FIELD(AREA, earthwork, loosened),
		.flags = PANEL_OPTIONAL },
	{ "reused_m3", NULL, "Topsoil reused", FIELD(VOLUME, earthwork, reused) },
	{ .label = "Spoil to haul away", .kind = FIGURE_HEADING },
	{ "spoil_m3", NULL, "Loose", FIELD(VOLUME, earthwork, spoil) },
	{ "spoil_kg", NULL, "Weight", FIELD(WEIGHT, earthwork, spoil_weight) },
	{ "loads", NULL, NULL, FIELD(OBJECT, earthwork, loads), .table = &loads_table },
	{ NULL, NULL, "Barrows", FIELD(COUNT, earthwork, loads.barrow) },
	{ NULL, NULL, "or pickup loads", FIELD(COUNT, earthwork, loads.pickup) },
	{ NULL, NULL, "or truck loads", FIELD(COUNT, earthwork, loads.truck) },
};
const struct figure_table earthwork_table = FIGURE_TABLE(earthwork, earthwork_figures);
