#include "report/compare/hand_rows.h"
#include "base/groups.h"
#include "base/hash.h"
#include "base/stop.h"
#include "report/words/labour_words.h"
#include "report/words/snag_words.h"

#include <math.h>
#include <string.h>

/* ---- Edges ----------------------------------------------------------------------------------- */

struct edge_row {
	const char *between;
	nm length;
};

static const struct figure edge_figures[] = {
	{ "between", NULL, NULL, FIELD(TEXT, edge_row, between), .flags = ROW_KEY },
	{ "length_m", NULL, NULL, FIELD(LENGTH, edge_row, length), .flags = ROW_NEEDED },
};
static const struct figure_table edge_table = FIGURE_TABLE(edge_row, edge_figures);

static struct rows edge_rows(struct arena *arena, const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct edge_row *rows = arena_new(arena, (size_t)CLASSES * CLASSES, sizeof *rows);
	int count = 0;

	for (int a = 0; a < CLASSES; a++)
		for (int b = a; b < CLASSES; b++)
			rows[count++] = (struct edge_row){ arena_print(arena, "%s, %s",
				class_word((enum plot_class)a), class_word((enum plot_class)b)),
				survey->edges[a][b] * survey->cell };
	return (struct rows){ &edge_table, rows, count };
}

/* ---- Regions --------------------------------------------------------------------------------- */

struct region_row {
	int region;
	char letter;
	const char *name;
	struct place first_cell;
	int64_t cells;
	double area;
	nm perimeter;
	int holes, convex, reflex;
};

static const struct figure region_figures[] = {
	{ "id", NULL, NULL, FIELD(REGION, region_row, region), .flags = ROW_KEY },
	{ "letter", NULL, NULL, FIELD(LETTER, region_row, letter) },
	{ "name", NULL, NULL, FIELD(TEXT, region_row, name) },
	{ "first_cell", NULL, NULL, FIELD(PLACE, region_row, first_cell) },
	{ "cells", NULL, NULL, FIELD(COUNT, region_row, cells) },
	{ "area_m2", NULL, NULL, FIELD(AREA, region_row, area) },
	{ "perimeter_m", NULL, NULL, FIELD(LENGTH, region_row, perimeter) },
	{ "holes", NULL, NULL, FIELD(COUNT, region_row, holes) },
	{ "corners.convex", NULL, NULL, FIELD(COUNT, region_row, convex) },
	{ "corners.reflex", NULL, NULL, FIELD(COUNT, region_row, reflex) },
};
static const struct figure_table region_table = FIGURE_TABLE(region_row, region_figures);

static struct rows region_rows(struct arena *arena, const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct region_row *rows = arena_new(arena, (size_t)survey->region_count, sizeof *rows);

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct region *region = &survey->regions[i];

		rows[i] = (struct region_row){ i, region->entry->letter,
			survey_own_name(survey, i), region->first_cell, region->cells,
			survey_area(region->cells, survey->cell), region->perimeter * survey->cell,
			region_holes(region), region->convex, region->reflex };
	}
	return (struct rows){ &region_table, rows, survey->region_count };
}

/* ---- Work ------------------------------------------------------------------------------------ */

struct labour_row {
	const char *kind;
	int64_t pieces;
	nm length;
	double area, volume, hours;
};

static const struct figure labour_figures[] = {
	{ "kind", NULL, NULL, FIELD(TEXT, labour_row, kind), .flags = ROW_KEY },
	{ "quantity", NULL, NULL, FIELD(COUNT, labour_row, pieces) },
	{ "quantity_m", NULL, NULL, FIELD(LENGTH, labour_row, length) },
	{ "quantity_m2", NULL, NULL, FIELD(AREA, labour_row, area) },
	{ "quantity_m3", NULL, NULL, FIELD(VOLUME, labour_row, volume) },
	{ "hours", NULL, NULL, FIELD(NUMBER, labour_row, hours) },
};
static const struct figure_table labour_table = FIGURE_TABLE(labour_row, labour_figures);

struct step_row {
	const char *step; /* its word: its title goes with what else there is */
	int64_t barrows;
	nm way;
	double hours;
	const struct labour_row *labour;
	int labour_count;
};

static const struct figure step_figures[] = {
	{ "step", NULL, NULL, FIELD(TEXT, step_row, step), .flags = ROW_KEY },
	{ "barrows", NULL, NULL, FIELD(COUNT, step_row, barrows) },
	{ "barrow_m", NULL, "Barrow, each way", FIELD(LENGTH, step_row, way) },
	{ "hours", NULL, NULL, FIELD(NUMBER, step_row, hours) },
	{ "labour", NULL, NULL, FIELDS(ROWS, step_row, labour, labour_count),
		.table = &labour_table },
};
static const struct figure_table step_table = FIGURE_TABLE(step_row, step_figures);

static struct labour_row labour_row(const struct labour *labour)
{
	const char *unit = labour_unit(labour->kind);
	struct labour_row row = { .kind = attribute_row(labour->kind)->label,
		.hours = labour->hours };

	if (strcmp(unit, "m") == 0)
		row.length = llround(labour->quantity * (double)NM_PER_M);
	else if (strcmp(unit, "m2") == 0)
		row.area = labour->quantity;
	else if (strcmp(unit, "m3") == 0)
		row.volume = labour->quantity;
	else
		row.pieces = llround(labour->quantity);
	return row;
}

static struct rows work_rows(struct arena *arena, const struct report *report)
{
	const struct work *work = &report->takeoff->work;
	struct step_row *rows = arena_new(arena, (size_t)work->count, sizeof *rows);

	for (int i = 0; i < work->count; i++) {
		const struct planned_step *step = &work->list[i];
		struct labour_row *labour = arena_new(arena, (size_t)step->labour_count,
			sizeof *labour);

		for (int j = 0; j < step->labour_count; j++)
			labour[j] = labour_row(&step->labour[j]);
		rows[i] = (struct step_row){ work_step_word(step->step), step->barrow.loads,
			step->barrow.way, step->hours, labour, step->labour_count };
	}
	return (struct rows){ &step_table, rows, work->count };
}

/* ---- Snags ----------------------------------------------------------------------------------- */

/* Snags of one code in one region. */
struct snag_row {
	const char *heading;
	int region;
	int count;
};

static const struct figure snag_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, snag_row, region), .flags = ROW_KEY },
	{ "snag", NULL, NULL, FIELD(TEXT, snag_row, heading), .flags = ROW_KEY },
	{ "count", NULL, "Places", FIELD(COUNT, snag_row, count) },
};
static const struct figure_table snag_table = FIGURE_TABLE(snag_row, snag_figures);

static bool are_of_one(const void *a, const void *b, const void *context)
{
	const struct snag *one = a, *two = b;

	(void)context;
	return one->code == two->code && one->region == two->region;
}

static uint64_t hash_snag(const void *item, const void *context)
{
	const struct snag *snag = item;
	const int of[] = { (int)snag->code, snag->region };

	(void)context;
	return hash_bytes(HASH_EMPTY, of, sizeof of);
}

static struct rows snag_rows(struct arena *arena, const struct report *report)
{
	const struct snag_list *snags = &report->takeoff->snags;
	struct groups groups = groups_make(snags->list, (int)snags->count, sizeof *snags->list,
		&(struct alike){ are_of_one, hash_snag, NULL });
	int count = groups.count;
	struct snag_row *rows = arena_new(arena, (size_t)count, sizeof *rows);

	for (int i = 0; i < count && !stop_asked(); i++) {
		const struct snag *first = &snags->list[groups.list[i].members[0]];

		rows[i] = (struct snag_row){ arena_print(arena, "%s",
			snag_heading(report, first->code)), first->region, groups.list[i].count };
		arena_clear(report->words);
	}
	groups_fini(&groups);
	return (struct rows){ &snag_table, rows, count };
}

/* ---- Sums ------------------------------------------------------------------------------------ */

struct sum_row {
	money cost;
	double bring, away;
	int64_t pickups, trucks, drops, trips;
	double hours;
};

static const struct figure sum_figures[] = {
	{ "cost", NULL, NULL, FIELD(MONEY, sum_row, cost) },
	{ "bring_kg", NULL, "Weight to bring", FIELD(WEIGHT, sum_row, bring) },
	{ "away_kg", NULL, "Weight to take away", FIELD(WEIGHT, sum_row, away) },
	{ "pickup_loads", NULL, NULL, FIELD(COUNT, sum_row, pickups) },
	{ "truck_loads", NULL, "or truck loads", FIELD(COUNT, sum_row, trucks) },
	{ "drops", NULL, NULL, FIELD(COUNT, sum_row, drops) },
	{ "trips", NULL, NULL, FIELD(COUNT, sum_row, trips) },
	{ "hours", NULL, "Hours of one person", FIELD(NUMBER, sum_row, hours) },
};
static const struct figure_table sum_table = FIGURE_TABLE(sum_row, sum_figures);

struct rows sum_rows(struct arena *arena, const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct costs *costs = &takeoff->costs;
	struct sum_row *row = arena_new(arena, 1, sizeof *row);

	*row = (struct sum_row){ .cost = costs->total, .bring = costs->brought,
		.away = takeoff->earthwork.spoil_weight, .hours = takeoff->work.sum.hours };
	for (int i = 0; i < costs->shipment_count; i++)
		*(costs->shipments[i].supplier == NO_SUPPLIER ? &row->trips : &row->drops) +=
			costs->shipments[i].drops;
	for (int i = 0; i < costs->day_count && !takeoff->book; i++) {
		row->pickups += costs->days[i].pickups;
		row->trucks += costs->days[i].trucks;
	}
	return (struct rows){ &sum_table, row, 1 };
}

/* ---- All of them ----------------------------------------------------------------------------- */

static struct rows costs_rows(struct arena *arena, const struct report *report)
{
	(void)arena;
	return (struct rows){ &costs_table, &report->takeoff->costs,
		report->takeoff->book != NULL };
}

struct rows hand_rows(struct arena *arena, const struct report *report, const char *key)
{
	static const struct {
		const char *key;
		struct rows (*make)(struct arena *arena, const struct report *report);
	} parts[] = {
		{ "edges", edge_rows }, { "regions", region_rows }, { "items", goods_rows },
		{ "costs", costs_rows }, { "work", work_rows }, { "snags", snag_rows },
	};

	for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
		if (strcmp(parts[i].key, key) == 0)
			return parts[i].make(arena, report);
	return (struct rows){ NULL, NULL, 0 };
}
