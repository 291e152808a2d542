#include "takeoff/planting/planting.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/planting/planting_soil.h"

#include <math.h>
#include <stdlib.h>

/* A drift in one bed. */
struct job {
	int region, kind;
	enum band band;
	int drift; /* in the order of the plot */
};

/* What came of a drift, over all beds. */
struct drift_outcome {
	int64_t laid;
	bool is_in_bed;
	int region; /* the first of them */
};

struct planter {
	struct planting *out;
	const struct basis *basis;
	const struct plants *plants;
	struct planting_row *rows;
	struct job *jobs;
	size_t job_count, job_capacity;
	struct drift_outcome *outcomes; /* by drift */
};

/* ---- What is to be placed where -------------------------------------------------------------- */

static void add_job(struct planter *planter, int region, int kind, const struct drift *drift,
	int number)
{
	planter->jobs = memory_grow(planter->jobs, planter->job_count, &planter->job_capacity,
		sizeof *planter->jobs);
	planter->jobs[planter->job_count++] = (struct job){ region, kind, drift->band, number };
}

static bool is_bed(const struct survey *survey, int region)
{
	return region != NO_REGION && survey->regions[region].entry->class == CLASS_BED;
}

static void add_jobs(struct planter *planter, int kind, const struct drift *drift, int number)
{
	const struct survey *survey = planter->basis->survey;
	int region;

	if (drift->letter == 0) {
		region = survey_region_at(survey, drift->at.x, drift->at.y);
		if (is_bed(survey, region))
			add_job(planter, region, kind, drift, number);
		return;
	}
	for (region = 0; region < survey->region_count && !stop_asked(); region++)
		if (is_bed(survey, region) &&
			survey->regions[region].entry->letter == drift->letter)
			add_job(planter, region, kind, drift, number);
}

static int by_bed(const void *a, const void *b)
{
	const struct job *one = a, *other = b;

	return compare(one->region, other->region);
}

/* Bed by bed, in each in the order of the plot. */
static void gather_jobs(struct planter *planter)
{
	int number = 0;

	for (int kind = 0; kind < planter->out->plant_count; kind++) {
		const struct plant *plant = &planter->plants->items[kind];

		for (size_t i = 0; i < plant->drift_count && !stop_asked(); i++)
			add_jobs(planter, kind, &plant->drifts[i], number++);
	}
	planter->outcomes = memory_new((size_t)number, sizeof *planter->outcomes);
	if (planter->job_count > 1)
		sort(planter->jobs, planter->job_count, sizeof *planter->jobs, by_bed);
}

/* ---- Rows ------------------------------------------------------------------------------------ */

/* Open ground comes last. */
static uint64_t key_of(const struct planter *planter, int region, int kind)
{
	int at = region == NO_REGION ? planter->basis->survey->region_count : region;

	return (uint64_t)at * (uint64_t)planter->out->plant_count + (uint64_t)kind;
}

static void make_row(struct planter *planter, uint64_t key)
{
	uint64_t kinds = (uint64_t)planter->out->plant_count;
	int region = (int)(key / kinds), kind = (int)(key % kinds);
	const struct plant *plant = &planter->plants->items[kind];

	planter->rows[planter->out->count++] = (struct planting_row){
		.region = region == planter->basis->survey->region_count ? NO_REGION : region,
		.kind = kind, .letter = plant->letter, .name = plant->name };
}

static int row_of(const struct planter *planter, int region, int kind)
{
	uint64_t key = key_of(planter, region, kind);
	int from = 0, end = planter->out->count;

	while (from + 1 < end) {
		int middle = from + (end - from) / 2;
		const struct planting_row *row = &planter->rows[middle];

		if (key_of(planter, row->region, row->kind) <= key)
			from = middle;
		else
			end = middle;
	}
	return from;
}

static int region_of(const struct planter *planter, struct place at)
{
	return survey_region_at(planter->basis->survey, at.x, at.y);
}

static void make_rows(struct planter *planter)
{
	size_t count = planter->job_count, used = 0;
	uint64_t *keys;

	for (size_t kind = 0; kind < planter->plants->count; kind++)
		count += planter->plants->items[kind].specimen_count;
	keys = memory_new(count, sizeof *keys);
	for (size_t i = 0; i < planter->job_count; i++)
		keys[used++] = key_of(planter, planter->jobs[i].region, planter->jobs[i].kind);
	for (int kind = 0; kind < planter->out->plant_count; kind++) {
		const struct plant *plant = &planter->plants->items[kind];

		for (size_t i = 0; i < plant->specimen_count && !stop_asked(); i++)
			keys[used++] = key_of(planter, region_of(planter, plant->specimens[i]),
				kind);
	}
	sort_numbers(keys, used);
	planter->rows = arena_new(planter->basis->arena, used, sizeof *planter->rows);
	for (size_t i = 0; i < used && !stop_asked(); i++)
		if (i == 0 || keys[i] != keys[i - 1])
			make_row(planter, keys[i]);
	planter->out->list = planter->rows;
	free(keys);
}

/* ---- Placing --------------------------------------------------------------------------------- */

static void place_specimens(struct planter *planter, int kind)
{
	const struct plant *plant = &planter->plants->items[kind];
	nm cell = planter->basis->survey->cell;

	for (size_t i = 0; i < plant->specimen_count && !stop_asked(); i++) {
		struct place at = plant->specimens[i];
		int row = row_of(planter, region_of(planter, at), kind);

		if (!placed_add(&planter->out->placed, &(struct placed_plant){
			.at = { (2 * at.x + 1) * cell / 2, (2 * at.y + 1) * cell / 2 },
			.kind = kind, .row = row, .is_specimen = true }))
			break;
		planter->rows[row].specimens++;
	}
	planter->out->is_cut = planter->out->placed.is_full;
}

static void lay_job(struct planter *planter, const struct planted_bed *bed, const struct job *job)
{
	struct planting_row *row = &planter->rows[row_of(planter, job->region, job->kind)];
	const struct plant *plant = &planter->plants->items[job->kind];
	bool is_square = block_number(&plant->block, PLANT_PATTERN) == PATTERN_SQUARE;
	double spacing = metres(block_length(&plant->block, PLANT_SPACING));
	double one = spacing * spacing * (is_square ? 1 : sqrt(3) / 2);
	double area = drift_area(bed, job->band);
	int64_t laid = drift_lay(&planter->out->placed, bed, job->band,
		&(struct placed_plant){ .kind = job->kind, .row = (int)(row - planter->rows) },
		is_square);
	struct drift_outcome *outcome = &planter->outcomes[job->drift];

	row->in_drifts += laid;
	row->area += area;
	row->by_area += area / one;
	if (!outcome->is_in_bed)
		outcome->region = job->region;
	outcome->is_in_bed = true;
	outcome->laid += laid;
	planter->out->is_cut = planter->out->placed.is_full;
}

/* The jobs from `from` on that are in one bed. Returns the first of the next. */
static size_t lay_bed(struct planter *planter, const struct fence_map *fences,
	const struct house_map *houses, size_t from)
{
	const struct basis *basis = planter->basis;
	struct planted_bed bed = { .basis = basis, .mirror = mirror_of(basis->plot),
		.region = planter->jobs[from].region };
	size_t i = from;

	bed.wall = planting_wall(&basis->survey->regions[bed.region]);
	bands_find(&bed.bands, basis->survey, fences, houses, bed.region);
	for (; i < planter->job_count && planter->jobs[i].region == bed.region; i++)
		if (!stop_asked() && !planter->out->is_cut)
			lay_job(planter, &bed, &planter->jobs[i]);
	bands_end(&bed.bands);
	return i;
}

static void lay_drifts(struct planter *planter)
{
	struct arena arena = ARENA_EMPTY;
	struct fence_map fences = fence_map_of(planter->basis->plot, &arena);
	struct house_map houses = house_map_of(planter->basis->plot, 0, &arena);

	for (size_t i = 0; i < planter->job_count && !stop_asked() && !planter->out->is_cut;)
		i = lay_bed(planter, &fences, &houses, i);
	arena_clear(&arena);
}

/* ---- What came of it ------------------------------------------------------------------------- */

/* The spots of each row, one row after the other. */
static void gather_spots(struct planter *planter)
{
	const struct placed *placed = &planter->out->placed;
	struct planted_spot *spots = arena_new(planter->basis->arena, placed->count, sizeof *spots);
	int64_t before = 0;

	for (int i = 0; i < planter->out->count && !stop_asked(); i++) {
		struct planting_row *row = &planter->rows[i];

		row->spots = spots + before;
		row->count = row->specimens + row->in_drifts;
		before += row->count;
	}
	for (size_t i = 0; i < placed->count && !stop_asked(); i++) {
		struct planting_row *row = &planter->rows[placed->list[i].row];

		spots[row->spots - spots + row->spot_count++].at = placed->list[i].at;
	}
}

static void tell_empty(const struct planter *planter, int kind, const struct drift *drift,
	const struct drift_outcome *outcome)
{
	struct snag *snag;

	if (outcome->laid > 0)
		return;
	snag = snag_add(planter->basis->snags, SNAG_DRIFT_EMPTY,
		outcome->is_in_bed ? outcome->region : NO_REGION, SNAG_FIGURES_OF(kind));
	snag->kind = outcome->is_in_bed ? DRIFT_NO_ROOM : DRIFT_NO_BED;
	if (drift->letter == 0)
		snag_put(snag, drift->at);
}

static void tell(const struct planter *planter)
{
	const struct drift_outcome *outcome = planter->outcomes;

	for (int kind = 0; kind < planter->out->plant_count && !planter->out->is_cut; kind++) {
		const struct plant *plant = &planter->plants->items[kind];

		for (size_t i = 0; i < plant->drift_count && !stop_asked(); i++)
			tell_empty(planter, kind, &plant->drifts[i], outcome++);
	}
	if (planter->out->is_cut)
		snag_add(planter->basis->snags, SNAG_PLANT_MANY, NO_REGION,
			SNAG_FIGURES_OF(PLACED_MOST));
}

static void begin(const struct planter *planter)
{
	struct planting *out = planter->out;
	nm *spacings = memory_new(planter->plants->count, sizeof *spacings);

	for (int kind = 0; kind < out->plant_count; kind++)
		spacings[kind] = block_length(&planter->plants->items[kind].block, PLANT_SPACING);
	placed_begin(&out->placed, spacings, out->plant_count);
	free(spacings);
}

void planting_find(struct planting *out, const struct basis *basis, const struct fills *fills)
{
	struct planter planter = { .out = out, .basis = basis,
		.plants = &basis->plot->details.plants };

	*out = (struct planting){ .plant_count = (int)planter.plants->count };
	if (out->plant_count == 0)
		return;
	begin(&planter);
	gather_jobs(&planter);
	make_rows(&planter);
	for (int kind = 0; kind < out->plant_count; kind++)
		place_specimens(&planter, kind);
	lay_drifts(&planter);
	gather_spots(&planter);
	planting_soil_find(planter.rows, out->count, basis, fills);
	tell(&planter);
	planting_sum(out, planter.plants, basis);
	free(planter.outcomes);
	free(planter.jobs);
}

void planting_end(struct planting *planting)
{
	placed_end(&planting->placed);
}
