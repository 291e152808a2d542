#include "takeoff/planting/planting.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

/* A drift in one bed. */
struct job {
	int region, kind;
	const struct drift *drift;
	int64_t laid;
	bool has_no_ground; /* no cell of the bed is in its band, or the wall takes those up */
};

struct planter {
	struct planting *out;
	const struct basis *basis;
	const struct plants *plants;
	struct planting_row *rows;
	struct job *jobs;
	size_t job_count, job_capacity;
};

/* ---- What is to be placed where -------------------------------------------------------------- */

static void add_job(struct planter *planter, int region, int kind, const struct drift *drift)
{
	planter->jobs = memory_grow(planter->jobs, planter->job_count, &planter->job_capacity,
		sizeof *planter->jobs);
	planter->jobs[planter->job_count++] = (struct job){ .region = region, .kind = kind,
		.drift = drift };
}

static bool is_bed(const struct survey *survey, int region)
{
	return region != NO_REGION && survey->regions[region].entry->class == CLASS_BED;
}

static void tell_no_bed(const struct planter *planter, int kind, const struct drift *drift)
{
	struct snag *snag = snag_add(planter->basis->snags, SNAG_DRIFT_EMPTY, NO_REGION,
		SNAG_FIGURES_OF(kind));

	snag->kind = DRIFT_NO_BED;
	if (drift->letter == 0)
		snag_put(snag, drift->at);
}

static void add_jobs(struct planter *planter, int kind, const struct drift *drift)
{
	const struct survey *survey = planter->basis->survey;
	size_t before = planter->job_count;
	int region;

	if (drift->letter == 0) {
		region = survey_region_at(survey, drift->at.x, drift->at.y);
		if (is_bed(survey, region))
			add_job(planter, region, kind, drift);
	}
	for (region = 0; drift->letter != 0 && region < survey->region_count && !stop_asked();
		region++)
		if (is_bed(survey, region) &&
			survey->regions[region].entry->letter == drift->letter)
			add_job(planter, region, kind, drift);
	if (planter->job_count == before)
		tell_no_bed(planter, kind, drift);
}

static int by_bed(const void *a, const void *b)
{
	const struct job *one = a, *other = b;

	return compare(one->region, other->region);
}

/* Bed by bed, in each in the order of the plot. */
static void gather_jobs(struct planter *planter)
{
	for (int kind = 0; kind < planter->out->plant_count; kind++) {
		const struct plant *plant = &planter->plants->items[kind];

		for (size_t i = 0; i < plant->drift_count && !stop_asked(); i++)
			add_jobs(planter, kind, &plant->drifts[i]);
	}
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

static bool is_square(const struct planter *planter, int kind)
{
	return block_number(&planter->plants->items[kind].block, PLANT_PATTERN) == PATTERN_SQUARE;
}

static void lay_job(struct planter *planter, const struct planted_bed *bed, struct job *job)
{
	struct planting_row *row = &planter->rows[row_of(planter, job->region, job->kind)];
	struct drift_laid laid = drift_lay(&planter->out->placed, bed, job->drift->band,
		&(struct placed_plant){ .kind = job->kind, .row = (int)(row - planter->rows) },
		is_square(planter, job->kind));

	job->laid = laid.count;
	job->has_no_ground = laid.count == 0 && job->drift->band != BAND_WHOLE &&
		planted_bed_area(bed, BIT_OF_BAND(job->drift->band)) <= 0;
	row->in_drifts += laid.count;
	row->room += laid.room;
	planter->out->is_cut = planter->out->placed.is_full;
}

/* Ground that two drifts of a kind share is counted once. */
static void add_ground(struct planter *planter, const struct planted_bed *bed, size_t from)
{
	unsigned int *bands = memory_new((size_t)planter->out->plant_count, sizeof *bands);

	for (size_t i = from; i < planter->job_count && planter->jobs[i].region == bed->region; i++)
		bands[planter->jobs[i].kind] |= BIT_OF_BAND(planter->jobs[i].drift->band);
	for (int kind = 0; kind < planter->out->plant_count && !stop_asked(); kind++) {
		struct planting_row *row = &planter->rows[row_of(planter, bed->region, kind)];
		double spacing = metres(planter->out->placed.kinds[kind].size.spacing);

		if (!bands[kind])
			continue;
		row->area = planted_bed_area(bed, bands[kind]);
		row->by_area = row->area /
			(spacing * spacing * (is_square(planter, kind) ? 1 : sqrt(3) / 2));
	}
	free(bands);
}

/* The jobs from `from` on that are in one bed. Returns the first of the next. */
static size_t lay_bed(struct planter *planter, const struct fence_map *fences,
	const struct house_map *houses, size_t from)
{
	const struct basis *basis = planter->basis;
	struct planted_bed bed = { .basis = basis, .mirror = mirror_of(basis->plot),
		.region = planter->jobs[from].region, .has_houses = houses->cells };
	size_t i = from;

	bed.wall = planting_wall(&basis->survey->regions[bed.region]);
	bands_find(&bed.bands, basis->survey, fences, houses, bed.region);
	for (; i < planter->job_count && planter->jobs[i].region == bed.region; i++)
		if (!stop_asked() && !planter->out->is_cut)
			lay_job(planter, &bed, &planter->jobs[i]);
	add_ground(planter, &bed, from);
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

static void tell_empty(const struct planter *planter, const struct job *job)
{
	struct snag *snag;

	if (job->laid > 0)
		return;
	snag = snag_add(planter->basis->snags, SNAG_DRIFT_EMPTY, job->region,
		SNAG_FIGURES_OF(job->kind));
	snag->kind = job->has_no_ground ? DRIFT_NO_BAND : DRIFT_NO_ROOM;
	if (job->drift->letter == 0)
		snag_put(snag, job->drift->at);
}

/* Not of a few plants, of which the ground alone says little. */
enum { THIN_LEAST = 4 };

static void tell_thin(const struct planter *planter, const struct planting_row *row)
{
	if (row->room > 0 && row->by_area >= THIN_LEAST && (double)row->room < row->by_area / 2)
		snag_add(planter->basis->snags, SNAG_DRIFT_THIN, row->region,
			SNAG_FIGURES_OF(row->kind, row->room, (int64_t)row->by_area,
			planter->out->placed.kinds[row->kind].size.spacing));
}

static void tell(const struct planter *planter)
{
	if (planter->out->is_cut) {
		snag_add(planter->basis->snags, SNAG_PLANT_MANY, NO_REGION,
			SNAG_FIGURES_OF(PLACED_MOST));
		return;
	}
	for (size_t i = 0; i < planter->job_count && !stop_asked(); i++)
		tell_empty(planter, &planter->jobs[i]);
	for (int i = 0; i < planter->out->count && !stop_asked(); i++)
		tell_thin(planter, &planter->rows[i]);
}

static struct placed_size size_of(const struct block *block)
{
	return (struct placed_size){ block_length(block, PLANT_SPACING),
		block_length(block, PLANT_SPREAD) };
}

static void begin(const struct planter *planter)
{
	struct planting *out = planter->out;
	struct placed_size *sizes = memory_new(planter->plants->count, sizeof *sizes);

	for (int kind = 0; kind < out->plant_count; kind++)
		sizes[kind] = size_of(&planter->plants->items[kind].block);
	placed_begin(&out->placed, sizes, out->plant_count);
	free(sizes);
}

void planting_find(struct planting *out, const struct basis *basis)
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
	tell(&planter);
	planting_sum(out, planter.plants, basis);
	free(planter.jobs);
}

void planting_end(struct planting *planting)
{
	placed_end(&planting->placed);
}
