#include "takeoff/ground/dig.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"

#include <math.h>

/* dug: m2 of it that is dug at all, to a depth of `deepest` at the most. */
static void add_row(struct dig_list *list, struct dig dig, double dug, nm deepest)
{
	list->rows = arena_grow(list->arena, list->rows, list->count, &list->capacity,
		sizeof *list->rows);
	list->rows[list->count++] = dig;
	if (dig.part != DIG_HOLES && dig.bank.sod > 0)
		list->stripped += dug;
	list->deepest = nm_most(list->deepest, deepest);
}

void dig_add(struct dig_list *list, struct dig dig)
{
	if (dig.area <= 0 || dig.depth <= 0)
		return;
	dig.bank = earth_below(list->allow, dig.area, dig.depth);
	add_row(list, dig, dig.area, dig.depth);
}

/* Ground of a plot with levels. */
static void add_graded(struct dig_list *list, struct dig dig, const struct graded *graded)
{
	dig.bank = graded->cut;
	if (earth_sum(&graded->cut) > 0)
		add_row(list, dig, graded->dug, graded->deepest);
	if (graded->fill <= 0)
		return;
	list->fills = arena_grow(list->arena, list->fills, list->fill_count, &list->fill_capacity,
		sizeof *list->fills);
	list->fills[list->fill_count++] =
		(struct dig_fill){ dig.region, dig.part, graded->fill };
}

void dig_zones(struct dig_list *list, const struct zones *zones, const struct embeds *embeds,
	const struct cut_fills *cut_fills)
{
	for (int i = 0; i < zones->count && !stop_asked(); i++) {
		const struct zone *zone = &zones->list[i];
		const struct dig dig = { .region = zone->region, .part = zone->part,
			.area = zone->area, .depth = zone_depth(embeds, zone) };

		if (cut_fills->zones)
			add_graded(list, dig, &cut_fills->zones[i]);
		else
			dig_add(list, dig);
	}
	if (cut_fills->zones)
		add_graded(list, (struct dig){ .region = NO_REGION, .part = DIG_GRADED,
			.area = cut_fills->others_area }, &cut_fills->others);
}

/* ---- Sums ------------------------------------------------------------------------------------ */

static void sum_rows(struct earthwork *work)
{
	for (int i = 0; i < DIG_PARTS; i++)
		work->sums[i].part = (enum dig_part)i;
	for (int i = 0; i < work->count && !stop_asked(); i++) {
		const struct dig *dig = &work->rows[i];

		earth_add(&work->bank, &dig->bank);
		work->sums[dig->part].bank += earth_sum(&dig->bank);
	}
	for (int i = 0; i < work->fill_count && !stop_asked(); i++)
		work->fill += work->fills[i].fill;
	work->bank_all = earth_sum(&work->bank);
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

/* Fills low ground with what is neither put back nor used again. back: of the bank. */
static void fill_low(struct earthwork *work, const struct block *allow, const struct earth *back)
{
	static const struct earth subsoil = { 0, 0, 1 };
	double topsoil_swell = 1 + block_share(allow, ALLOW_SWELL_TOPSOIL);
	double shrink = (double)block_number(allow, ALLOW_SHRINK) / (double)MILLION;
	const struct earth left = { 0,
		fmax(0, work->bank.topsoil - back->topsoil - work->reused / topsoil_swell),
		work->bank.subsoil - back->subsoil };
	const struct earth taken = earth_put_back(allow, &left, work->fill);
	const struct earth loose = earth_loosened(allow, &taken);
	const struct earth bought = earth_loosened(allow, &subsoil);

	work->fill_loose = earth_sum(&loose);
	work->fill_short = fmax(0, work->fill - earth_sum(&left) * shrink);
	work->fill_bought = work->fill_short / shrink * bought.subsoil;
}

void dig_finish(struct earthwork *out, const struct dig_list *list,
	const struct earth_wanted *wanted)
{
	double density = block_amount(list->allow, ALLOW_DENSITY_SPOIL);
	struct earthwork work = { .rows = list->rows, .count = (int)list->count,
		.fills = list->fills, .fill_count = (int)list->fill_count,
		.stripped = list->stripped, .deepest = list->deepest,
		.backfill = wanted->backfill, .loosened = wanted->loosened };
	struct earth back, back_loose;

	sum_rows(&work);
	back = earth_put_back(list->allow, &work.bank, work.backfill);
	work.loose = earth_loosened(list->allow, &work.bank);
	work.loose_all = earth_sum(&work.loose);
	back_loose = earth_loosened(list->allow, &back);
	work.backfill_loose = earth_sum(&back_loose);
	reuse(&work, work.loose.topsoil - back_loose.topsoil, wanted);
	fill_low(&work, list->allow, &back);
	work.spoil = work.loose.sod;
	if (work.fill_short <= 0)
		work.spoil += (work.loose.topsoil - back_loose.topsoil - work.reused) +
			(work.loose.subsoil - back_loose.subsoil) - work.fill_loose;
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
	item_add_bare(items, GOOD_FILL, SECTION_DIG, work->fill_bought);
}

const struct word dig_words[DIG_PARTS] = {
	[DIG_PATH] = { "path", "path", "Paths" },
	[DIG_WALL] = { "wall", "wall and its base", "Walls" },
	[DIG_INSIDE] = { "inside", "inside of bed", "Inside beds" },
	[DIG_PAD] = { "pad", "fixture", "Fixtures" },
	[DIG_LAWN] = { "lawn", "lawn", "Lawns" },
	[DIG_BED] = { "bed", "soil replaced", "Soil replaced" },
	[DIG_HOLES] = { "holes", "post holes", "Post holes" },
	[DIG_GRADED] = { "graded", "graded alone", "Graded alone" },
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

static const struct figure dig_fill_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, dig_fill, region), .flags = ROW_KEY },
	{ "part", NULL, NULL, FIELD(WORD, dig_fill, part), .words = dig_words, .flags = ROW_KEY },
	{ "fill_m3", NULL, NULL, FIELD(VOLUME, dig_fill, fill) },
};
const struct figure_table dig_fill_table = FIGURE_TABLE(dig_fill, dig_fill_figures);

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
	{ "fill_m3", NULL, "Low ground filled, in place", FIELD(VOLUME, earthwork, fill),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "fill_loose_m3", NULL, "Filled of the dug, loose", FIELD(VOLUME, earthwork, fill_loose),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "fill_short_m3", NULL, "To be brought, in place", FIELD(VOLUME, earthwork, fill_short),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
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
