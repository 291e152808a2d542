#include "takeoff/labour.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/takeoff.h"

/* Hours per cubic metre; by enum subsoil: loam, clay, sand. */
static const double DIGGING[] = { 2.20, 3.30, 1.20 }, LOADING[] = { 1.30, 1.90, 1.00 };
static const double BARROWING = 1.25, BACKFILLING = 1.00, BASE_COURSE = 1.00;

/* Hours per metre of a barrow that is pushed; what the usual rate of spreading has in it. */
static const double PUSHING = 1 / (60 * 200 * 0.3048);
static const nm BARROWED = 50 * NM_PER_M;

/* Fixtures are set twice, trenches are dug and put back apart from the rest, low ground is made
 * up. */
enum { KINDS = RATE_SEED - RATE_STRIP + 1, AGAIN = 4 };

static const enum work_step steps[KINDS] = {
#define AT(name) [RATE_##name - RATE_STRIP]
	AT(STRIP) = WORK_STRIP, AT(DIG) = WORK_DIG, AT(HOLE) = WORK_DIG, AT(POST) = WORK_POSTS,
	AT(LOAD) = WORK_HAUL, AT(BARROW) = WORK_HAUL,
	AT(TAMP) = WORK_TAMP, AT(FABRIC) = WORK_FABRIC, AT(BASE) = WORK_BASE,
	AT(FIXTURE) = WORK_FIXTURES, AT(BLOCK) = WORK_WALLS, AT(CAP) = WORK_WALLS,
	AT(CUT) = WORK_WALLS, AT(BACKFILL) = WORK_BACKFILL, AT(LOOSEN) = WORK_BACKFILL,
	AT(PREPARE) = WORK_BACKFILL, AT(LINER) = WORK_FILL, AT(FILL) = WORK_FILL,
	AT(EDGING) = WORK_EDGING, AT(SURFACE) = WORK_SURFACE, AT(PANEL) = WORK_PANELS,
	AT(GATE) = WORK_PANELS, AT(PLANT) = WORK_PLANTS, AT(MULCH) = WORK_MULCH,
	AT(TOPSOIL) = WORK_LAWN,
	AT(TURF) = WORK_LAWN, AT(SEED) = WORK_LAWN,
#undef AT
};

struct gathering {
	const struct takeoff *takeoff;
	const struct plot *plot;
	struct labour *list;
	int count;
};

/* The rate that plot or book give; NULL: neither does. */
static const struct amount *rate_given(const struct gathering *g, enum attribute kind,
	enum rate_source *source)
{
	const struct value *value = block_value(&g->plot->details.rates, kind);

	*source = RATE_OF_PLOT;
	if (!value->set && g->takeoff->book) {
		value = block_value(&g->takeoff->book->rates, kind);
		*source = RATE_OF_BOOK;
	}
	return value->set ? &value->as.amount : NULL;
}

/* usual: hours at the usual rate, 0 where there is none. */
static void add_at(struct gathering *g, enum attribute kind, enum work_step step, double quantity,
	double usual)
{
	struct labour *labour = &g->list[g->count];
	const struct amount *rate;

	if (quantity <= 0)
		return;
	*labour = (struct labour){ .kind = kind, .step = step, .quantity = quantity };
	rate = rate_given(g, kind, &labour->source);
	labour->hours = rate ? quantity * amount_si(rate) : usual;
	if (!rate)
		labour->source = usual > 0 ? RATE_USUAL : RATE_UNKNOWN;
	g->count++;
}

static void add(struct gathering *g, enum attribute kind, double quantity, double usual)
{
	add_at(g, kind, steps[kind - RATE_STRIP], quantity, usual);
}

/* Of the loads of one step, there and back. included: so much of the way is in another rate. */
static void add_barrows(struct gathering *g, enum work_step step, nm included)
{
	struct barrow_run run = barrow_run_of(g->takeoff, step);
	double length = 2 * (double)run.loads * metres(nm_most(run.way - included, 0));

	add_at(g, RATE_BARROW, step, length, length * PUSHING);
}

static int64_t post_count(const struct fences *fences)
{
	int64_t posts = 0;

	for (int i = 0; i < fences->count; i++)
		posts += fences->list[i].post_count;
	return posts;
}

/* ---- Ground ---------------------------------------------------------------------------------- */

/* Sod is stripped wherever is dug but for post holes, out of which it comes with the rest; and off
 * the ground within beds that is loosened, where it goes back. A post hole takes far longer than as
 * much of open ground, so holes are work of their own. */
static void add_digging(struct gathering *g)
{
	const struct earthwork *earth = &g->takeoff->earthwork;
	double digging = DIGGING[block_number(g->takeoff->allow, ALLOW_SUBSOIL)];
	double sod = 0, below = 0, kept = earthwork_sod_kept(earth, g->takeoff->allow);

	for (int i = 0; i < earth->count && !stop_asked(); i++) {
		const struct dig *dig = &earth->rows[i];

		if (dig->part == DIG_HOLES)
			continue;
		sod += dig->bank.sod;
		below += dig->bank.topsoil + dig->bank.subsoil;
	}
	add(g, RATE_STRIP, earth->stripped + (kept > 0 ? earth->loosened : 0),
		digging * (sod + kept));
	add(g, RATE_DIG, below, digging * below);
	add(g, RATE_HOLE, (double)post_count(&g->takeoff->fences), 0);
}

static double stone_area(const struct stones *stones, enum stone_layer layer)
{
	double area = 0;

	for (int i = 0; i < stones->count && !stop_asked(); i++)
		if (stones->list[i].layer == layer)
			area += stones->list[i].area;
	return area;
}

static void add_base(struct gathering *g)
{
	const struct takeoff *t = g->takeoff;
	double spoil = t->earthwork.spoil;
	double compacted = t->stones.totals[STONE_KIND_BASE].compacted;

	add(g, RATE_LOAD, spoil, spoil * LOADING[block_number(t->allow, ALLOW_SUBSOIL)]);
	add_barrows(g, WORK_HAUL, 0);
	add_at(g, RATE_BACKFILL, WORK_TAMP, t->earthwork.fill, t->earthwork.fill * BACKFILLING);
	add(g, RATE_TAMP, stone_area(&t->stones, STONE_BASE), 0);
	add(g, RATE_FABRIC, t->fabric.area, 0);
	add(g, RATE_BASE, compacted, compacted * BASE_COURSE);
	add_barrows(g, WORK_BASE, 0);
}

/* Beds at ground level that are dug over where they lie. */
static void add_prepared(struct gathering *g)
{
	const struct survey *survey = &g->takeoff->survey;
	double digging = DIGGING[block_number(g->takeoff->allow, ALLOW_SUBSOIL)];
	double area = 0, volume = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct region *region = &survey->regions[i];
		const struct block *bed = &region->entry->block;
		double ground = survey_area(region->cells, survey->cell);

		if (region->entry->class != CLASS_BED || region_is_raised(region) ||
			block_number(bed, BED_REPLACE) == CHOICE_YES ||
			block_length(bed, BED_PREPARE) <= 0)
			continue;
		area += ground;
		volume += volume_of(ground, block_length(bed, BED_PREPARE));
	}
	add(g, RATE_PREPARE, area, digging * volume);
}

static void add_stone_surface(struct gathering *g)
{
	const struct stones *stones = &g->takeoff->stones;

	add(g, RATE_SURFACE, stone_area(stones, STONE_SURFACE), BARROWING *
		(stones->totals[STONE_KIND_FINES].loose + stones->totals[STONE_KIND_CLEAN].loose));
	add_barrows(g, WORK_SURFACE, BARROWED);
}

/* ---- Beds and lawns -------------------------------------------------------------------------- */

/* Pieces of block as laid, cut ones or all. */
static int64_t pieces_laid(const struct cuttings *cuttings, enum block_use use, bool is_whole_too)
{
	int64_t pieces = 0;

	for (int i = 0; i < cuttings->count; i++) {
		const struct cutting *cutting = &cuttings->list[i];

		if (cutting->use != use)
			continue;
		pieces += is_whole_too ? cutting->whole : 0;
		for (int j = 0; j < cutting->cut_count; j++)
			pieces += cutting->cuts[j].blocks * cutting->cuts[j].piece_count;
	}
	return pieces;
}

static void add_walls(struct gathering *g)
{
	const struct cuttings *cuttings = &g->takeoff->cuttings;

	add(g, RATE_BLOCK, (double)pieces_laid(cuttings, USE_WALL, true), 0);
	add(g, RATE_CAP, (double)pieces_laid(cuttings, USE_CAP, true), 0);
	add(g, RATE_CUT, (double)(pieces_laid(cuttings, USE_WALL, false) +
		pieces_laid(cuttings, USE_CAP, false)), 0);
}

static void add_fill(struct gathering *g)
{
	const struct takeoff *t = g->takeoff;
	double fill = 0;
	nm liner = 0;

	for (int i = 0; i < t->liners.count && !stop_asked(); i++)
		liner += t->liners.list[i].length;
	for (int i = 0; i < t->fills.count && !stop_asked(); i++)
		fill += t->fills.list[i].order;
	add(g, RATE_LINER, metres(liner), 0);
	add(g, RATE_FILL, fill, fill * BARROWING);
	add_barrows(g, WORK_FILL, BARROWED);
}

static void add_mulch(struct gathering *g)
{
	const struct fills *fills = &g->takeoff->fills;
	double mulch = 0;

	for (int i = 0; i < fills->count && !stop_asked(); i++)
		mulch += fills->list[i].mulch;
	add(g, RATE_MULCH, mulch, mulch * BARROWING);
	add_barrows(g, WORK_MULCH, BARROWED);
}

static void add_lawns(struct gathering *g)
{
	const struct lawns *lawns = &g->takeoff->lawns;
	double topsoil = lawn_topsoil(lawns), areas[] = { [COVER_TURF] = 0, [COVER_SEED] = 0 };

	for (int i = 0; i < lawns->count && !stop_asked(); i++)
		areas[lawns->list[i].cover] += lawns->list[i].area;
	add(g, RATE_TOPSOIL, topsoil, topsoil * BARROWING);
	add(g, RATE_TURF, areas[COVER_TURF], 0);
	add(g, RATE_SEED, areas[COVER_SEED], 0);
	add_barrows(g, WORK_LAWN, BARROWED);
}

/* ---- Fences ---------------------------------------------------------------------------------- */

static void add_posts(struct gathering *g)
{
	add(g, RATE_POST, (double)post_count(&g->takeoff->fences), 0);
	add_barrows(g, WORK_POSTS, 0);
}

/* A trench is dug, and put back, apart from all else. */
static void add_trenches(struct gathering *g)
{
	double dug = g->takeoff->services.trenches + g->takeoff->watering.trench_dug;

	add_at(g, RATE_DIG, WORK_SLEEVES, dug,
		dug * DIGGING[block_number(g->takeoff->allow, ALLOW_SUBSOIL)]);
	add_at(g, RATE_BACKFILL, WORK_SLEEVES, dug, dug * BACKFILLING);
}

static void add_panels(struct gathering *g)
{
	const struct fences *fences = &g->takeoff->fences;
	int64_t panels = 0, gates = 0;

	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		panels += fencing->panels_whole + fencing->panel_pieces;
		for (int j = 0; j < fencing->gate_count; j++)
			gates += fencing->gates[j].leaves > 0;
	}
	add(g, RATE_PANEL, (double)panels, 0);
	add(g, RATE_GATE, (double)gates, 0);
}

/* Each that stands; those to spare are not planted. */
static void add_plants(struct gathering *g)
{
	const struct planting *planting = &g->takeoff->planting;
	int64_t plants = 0;

	for (int i = 0; i < planting->plant_count; i++)
		plants += planting->plants[i].count;
	add(g, RATE_PLANT, (double)plants, 0);
}

/* ---- All ------------------------------------------------------------------------------------- */

void labour_compute(struct labours *out, const struct takeoff *takeoff, const struct plot *plot,
	struct arena *arena)
{
	const struct fixtures *fixtures = &takeoff->fixtures;
	struct gathering g = { takeoff, plot,
		arena_new(arena, KINDS + AGAIN + WORK_STEPS, sizeof *g.list), 0 };

	add_digging(&g);
	add_posts(&g);
	add_trenches(&g);
	add_base(&g);
	add_at(&g, RATE_FIXTURE, WORK_FIXTURES_INSIDE, (double)fixtures->inside, 0);
	add_walls(&g);
	add(&g, RATE_BACKFILL, takeoff->earthwork.backfill,
		takeoff->earthwork.backfill * BACKFILLING);
	add(&g, RATE_LOOSEN, takeoff->earthwork.loosened, 0);
	add_prepared(&g);
	add_fill(&g);
	add(&g, RATE_FIXTURE, (double)fixtures->others, 0);
	add(&g, RATE_EDGING, metres(takeoff->edging.length), 0);
	add_stone_surface(&g);
	add_panels(&g);
	add_plants(&g);
	add_mulch(&g);
	add_lawns(&g);
	*out = (struct labours){ g.list, g.count };
}

const char *rate_source_word(enum rate_source source)
{
	static const char *const words[] = { [RATE_UNKNOWN] = NULL, [RATE_OF_PLOT] = "plot",
		[RATE_OF_BOOK] = "book", [RATE_USUAL] = "usual" };

	return words[source];
}
