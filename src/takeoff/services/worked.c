#include "takeoff/services/worked.h"
#include "base/stop.h"
#include "takeoff/ground/dig.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/services/service_values.h"

#include <stdlib.h>

struct gathering {
	const struct basis *basis;
	struct arena *arena;
	struct work_place *list;
	int count;
	size_t capacity;
	struct cover_boxes boxes;
};

static int add_place(struct gathering *g, const struct work_place *place)
{
	g->list = arena_grow(g->arena, g->list, (size_t)g->count, &g->capacity, sizeof *g->list);
	g->list[g->count] = *place;
	return g->count++;
}

static void add_zones(struct gathering *g, const struct zones *zones, const struct cover *ground)
{
	for (int i = 0; i < zones->count && !stop_asked(); i++) {
		const struct zone *zone = &zones->list[i];

		add_place(g, &(struct work_place){ .region = zone->region,
			.part = dig_words[zone->part].key, .words = dig_words[zone->part].heading,
			.has_fabric = fabric_is_under(g->basis->survey, zone) });
	}
	for (size_t i = 0; i < ground->count && !stop_asked(); i++)
		cover_boxes_add(&g->boxes, ground->pieces[i]);
}

/* A bed whose ground is worked where it lies: what no zone has of its cells. */
static bool is_worked(const struct region *region)
{
	const struct block *bed = &region->entry->block;

	if (region->entry->class != CLASS_BED)
		return false;
	if (region_is_raised(region))
		return block_number(bed, BED_INSIDE) == INSIDE_UNDUG;
	return block_number(bed, BED_REPLACE) != CHOICE_YES && block_length(bed, BED_PREPARE) > 0;
}

/* Under all that is painted before. */
static void add_beds(struct gathering *g)
{
	const struct survey *survey = g->basis->survey;
	int *places = memory_new((size_t)survey->region_count, sizeof *places);
	nm cell = survey->cell;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		bool is_raised = region_is_raised(&survey->regions[i]);

		if (is_worked(&survey->regions[i]))
			places[i] = 1 + add_place(g, &(struct work_place){ .region = i,
				.part = is_raised ? "loosened" : "dug-over",
				.words = is_raised ? "ground inside, forked over" : "dug over" });
	}
	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			if (run->region != NO_REGION && places[run->region] > 0)
				cover_boxes_add(&g->boxes, (struct cover_box){ run->left * cell,
					y * cell, run->right * cell, (y + 1) * cell,
					places[run->region] - 1 });
		}
	free(places);
}

/* Under all else. */
static void add_graded(struct gathering *g)
{
	const struct survey *survey = g->basis->survey;

	cover_boxes_add(&g->boxes, (struct cover_box){ 0, 0, survey->columns * survey->cell,
		survey->rows * survey->cell, add_place(g, &(struct work_place){
			.region = NO_REGION, .part = dig_words[DIG_GRADED].key,
			.words = "other ground, graded" }) });
}

static void add_legs(struct gathering *g, const struct legs *legs, nm half, int place)
{
	const struct survey *survey = g->basis->survey;
	const struct cover_box plan = { 0, 0, survey->columns * survey->cell,
		survey->rows * survey->cell, 0 };

	for (size_t i = 0; i < legs->count && !stop_asked(); i++) {
		struct near_thing leg = near_leg(legs->items[i], survey->cell, half);

		cover_boxes_add(&g->boxes, cover_clip((struct cover_box){ leg.left - half,
			leg.top - half, leg.right + half, leg.bottom + half, place }, &plan));
	}
}

static void add_trench(struct gathering *g, const struct service *service)
{
	struct legs legs = LEGS_EMPTY;
	int place = add_place(g, &(struct work_place){ .kind = HAND_TRENCH, .region = NO_REGION,
		.part = "trench", .words = "trench", .line = service->name });

	routes_legs(&service->routes, &legs);
	add_legs(g, &legs, service_trench(g->basis->plot, service) / 2, place);
	legs_fini(&legs);
}

static void add_header(struct gathering *g, const struct work_ground *ground)
{
	add_legs(g, ground->header, ground->header_width / 2, add_place(g, &(struct work_place){
		.kind = HAND_HEADER, .region = NO_REGION, .part = "header-trench",
		.words = "trench of the header" }));
}

void worked_find(struct worked *out, const struct basis *basis, const struct work_ground *ground)
{
	const struct services *services = &basis->plot->details.around.services;
	struct gathering g = { .basis = basis, .arena = &out->arena };

	*out = (struct worked){ .arena = ARENA_EMPTY };
	add_zones(&g, ground->zones, ground->cover);
	add_beds(&g);
	if (ground->is_graded)
		add_graded(&g);
	cover_sweep(&out->ground, &out->arena, g.boxes.list, g.boxes.count);
	g.boxes.count = 0;
	for (size_t i = 0; i < services->count && !stop_asked(); i++)
		if (services->items[i].is_to_lay)
			add_trench(&g, &services->items[i]);
	add_header(&g, ground);
	cover_sweep(&out->trenches, &out->arena, g.boxes.list, g.boxes.count);
	free(g.boxes.list);
	out->list = g.list;
	out->count = g.count;
}
