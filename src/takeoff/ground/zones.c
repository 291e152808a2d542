#include "takeoff/ground/zones.h"
#include "base/stop.h"

#include <assert.h>
#include <stdlib.h>

enum { NO_ZONE = -1 };

struct painting {
	const struct plot *plot;
	const struct survey *survey;
	const struct walls *walls;
	struct arena *arena;
	struct zone *list;
	int count;
	size_t capacity;
	int *own;                /* by region: the zone of its own cells, or NO_ZONE */
	struct cover_box plan;
	struct cover_boxes boxes;
};

/* ---- Which zones there are ------------------------------------------------------------------- */

static int zone_add(struct painting *painting, int region, enum dig_part part)
{
	painting->list = arena_grow(painting->arena, painting->list, (size_t)painting->count,
		&painting->capacity, sizeof *painting->list);
	painting->list[painting->count] = (struct zone){ .region = region, .part = part };
	return painting->count++;
}

/* The wall's zone comes before that of its bed's own cells. */
static int bed_zones(struct painting *painting, int region)
{
	const struct region *at = &painting->survey->regions[region];
	const struct block *bed = &at->entry->block;

	if (!region_is_raised(at))
		return block_number(bed, BED_REPLACE) == CHOICE_YES ?
			zone_add(painting, region, DIG_BED) : NO_ZONE;
	if (!walls_find(painting->walls, region))
		return NO_ZONE;
	zone_add(painting, region, DIG_WALL);
	return block_number(bed, BED_INSIDE) == INSIDE_UNDUG ? NO_ZONE :
		zone_add(painting, region, DIG_INSIDE);
}

/* Adds the zones of a region; returns that of its own cells, or NO_ZONE. */
static int region_zones(struct painting *painting, int region)
{
	const struct entry *entry = painting->survey->regions[region].entry;

	switch (entry->class) {
	case CLASS_BED:
		return bed_zones(painting, region);
	case CLASS_PATH:
		return zone_add(painting, region, DIG_PATH);
	case CLASS_LAWN:
		return block_number(&entry->block, LAWN_COVER) == COVER_NONE ? NO_ZONE :
			zone_add(painting, region, DIG_LAWN);
	case CLASS_FIXTURE:
		return zone_add(painting, region, DIG_PAD);
	case CLASS_OPEN:
	case CLASS_BOUNDARY:
		break;
	}
	return NO_ZONE;
}

/* ---- Their ground ---------------------------------------------------------------------------- */

static size_t box_add(struct painting *painting, struct cover_box box)
{
	cover_boxes_add(&painting->boxes, cover_clip(box, &painting->plan));
	return painting->boxes.count - 1;
}

/* Paints the own cells of regions with base all over, or of all others: one box for equal runs
 * in rows below one another. box_of: by run, its box. */
static void paint_row(struct painting *painting, int y, bool with_base, size_t *box_of)
{
	const struct survey *survey = painting->survey;
	nm cell = survey->cell;
	size_t above = y > 0 ? survey->row_runs[y - 1] : 0;

	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];

		if (run->region == NO_REGION || painting->own[run->region] == NO_ZONE ||
			(run->class == CLASS_PATH || run->class == CLASS_FIXTURE) != with_base)
			continue;
		if (survey_has_run_above(survey, y, run, &above)) {
			box_of[i] = box_of[above];
			assert(painting->boxes.list); /* that of the run above is there */
			painting->boxes.list[box_of[i]].bottom = (y + 1) * cell;
		} else {
			box_of[i] = box_add(painting, (struct cover_box){ run->left * cell,
				y * cell, run->right * cell, (y + 1) * cell,
				painting->own[run->region] });
		}
	}
}

static void paint_cells(struct painting *painting, bool with_base)
{
	const struct survey *survey = painting->survey;
	size_t *box_of = memory_new(survey->row_runs[survey->rows], sizeof *box_of);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		paint_row(painting, y, with_base, box_of);
	free(box_of);
}

static struct cover_box strip_box(const struct survey *survey, const struct loop *loop, int side,
	const struct outline_strip *strip, int zone)
{
	struct cover_box box = outline_strip_box(survey, loop, side, strip);

	box.owner = zone;
	return box;
}

/* What of a box lies on a region's own cells, or on all others. */
static void paint_part(struct painting *painting, const struct cover_box *strip, int region,
	bool own)
{
	const struct survey *survey = painting->survey;
	struct cover_box box = cover_clip(*strip, &painting->plan);
	nm cell = survey->cell;

	if (box.left >= box.right)
		return;
	for (int y = (int)(box.top / cell); y * cell < box.bottom && !stop_asked(); y++) {
		size_t i = survey_run_at(survey, (int)(box.left / cell), y);

		for (; i < survey->row_runs[y + 1] && survey->runs[i].left * cell < box.right; i++)
			if ((survey->runs[i].region == region) == own)
				box_add(painting, cover_clip(box, &(struct cover_box){
					survey->runs[i].left * cell, y * cell,
					survey->runs[i].right * cell, (y + 1) * cell, 0 }));
	}
}

/* How far a wall's base goes from the bed's outline; whether inwards it may leave the bed on its
 * far side, and outwards come back to it across a gap, farther than it goes the other way. */
struct reach {
	nm out, in;
	bool passes_out, passes_in;
};

static struct reach reach_of(const struct wall *wall, nm cell)
{
	nm depth = wall->block.across, out = block_length(wall->bed, BED_REACH);
	nm in = depth + block_length(wall->bed, BED_REACH_IN);

	/* A bed with a wall is over two walls wide everywhere, a gap at least a cell. */
	return (struct reach){ out, in, in - 2 * depth > out, out - cell > in };
}

static void paint_side(struct painting *painting, const struct loop *loop, int side,
	const struct reach *reach, int zone)
{
	bool reflex = loop->corners[(side + 1) % loop->count].reflex;
	const struct outline_strip out = { reflex ? 0 : reach->out, -reach->out };
	const struct outline_strip in = { reflex ? reach->in : 0, reach->in };
	struct cover_box outside = strip_box(painting->survey, loop, side, &out, zone);
	struct cover_box inside = strip_box(painting->survey, loop, side, &in, zone);
	int region = painting->list[zone].region;

	if (reach->passes_in)
		paint_part(painting, &outside, region, false);
	else
		box_add(painting, outside);
	if (reach->passes_out)
		paint_part(painting, &inside, region, true);
	else
		box_add(painting, inside);
}

/* Outwards the base reaches round each convex corner. Inwards it is the wall's depth and the
 * reach from each side, and as much round a reflex corner, where the wall turns into the bed. */
static void paint_wall(struct painting *painting, struct arena *outlines, const struct wall *wall,
	int zone)
{
	struct reach reach = reach_of(wall, painting->survey->cell);
	struct outline outline;

	outline_trace(&outline, outlines, painting->plot, painting->survey, wall->region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		for (int side = 0; side < outline.loops[i].count && !stop_asked(); side++)
			paint_side(painting, &outline.loops[i], side, &reach, zone);
}

/* Walls and their zones are both in region order. */
static void paint_walls(struct painting *painting)
{
	struct arena outlines = ARENA_EMPTY;
	int wall = 0;

	for (int i = 0; i < painting->count && !stop_asked(); i++) {
		if (painting->list[i].part != DIG_WALL)
			continue;
		assert(painting->walls->list[wall].region == painting->list[i].region);
		paint_wall(painting, &outlines, &painting->walls->list[wall++], i);
	}
	arena_clear(&outlines);
}

void zones_compute(struct zones *out, struct zones_ground *ground, const struct basis *basis,
	const struct walls *walls)
{
	const struct survey *survey = basis->survey;
	size_t regions = (size_t)survey->region_count;
	struct painting painting = {
		.plot = basis->plot, .survey = survey, .walls = walls,
		.arena = basis->arena,
		.own = memory_new(regions, sizeof(int)),
		.plan = { 0, 0, survey->columns * survey->cell, survey->rows * survey->cell, 0 },
	};
	nm2 *areas;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		painting.own[i] = region_zones(&painting, i);
	paint_cells(&painting, true);
	paint_walls(&painting);
	paint_cells(&painting, false);
	free(painting.own);
	*out = (struct zones){ painting.list, painting.count };
	*ground = (struct zones_ground){ .arena = ARENA_EMPTY };
	cover_sweep(&ground->cover, &ground->arena, painting.boxes.list, painting.boxes.count);
	free(painting.boxes.list);
	areas = memory_new((size_t)painting.count, sizeof *areas);
	cover_areas(&ground->cover, areas);
	for (int i = 0; i < painting.count && !stop_asked(); i++)
		painting.list[i].area = cover_m2(areas[i]);
	free(areas);
}

nm zone_base(const struct survey *survey, const struct zone *zone)
{
	const struct block *block = &survey->regions[zone->region].entry->block;

	switch (zone->part) {
	case DIG_PATH:
		return block_length(block, PATH_BASE);
	case DIG_WALL:
		return block_length(block, BED_BASE);
	case DIG_INSIDE:
		return block_number(block, BED_INSIDE) == INSIDE_BASE ?
			block_length(block, BED_BASE) : 0;
	case DIG_PAD:
		return block_length(block, FIXTURE_BASE);
	case DIG_LAWN:
	case DIG_BED:
	case DIG_HOLES:
	case DIG_GRADED:
		break;
	}
	return 0;
}

nm zone_depth(const struct embeds *embeds, const struct zone *zone)
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
	case DIG_GRADED:
		break;
	}
	return 0;
}
