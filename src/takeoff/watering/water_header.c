#include "takeoff/watering/water_header.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/services/service_values.h"
#include "takeoff/watering/header.h"

#include <stdlib.h>
#include <string.h>

/* ---- Within beds ----------------------------------------------------------------------------- */

/* Under the wall of a bed and up inside it; 0 of a bed at ground level. */
static nm wall_way(const struct walls *walls, int region)
{
	const struct wall *wall = walls_find(walls, region);

	return !wall ? 0 : wall->block.across + wall->courses * wall->block.up + wall->cap_block.up;
}

/* From the grid point on; taped from the bed's corner. */
static void lead_in(struct watered *bed, const struct basis *basis, struct place from)
{
	const struct region *region = &basis->survey->regions[bed->region];
	nm cell = basis->survey->cell;

	bed_header_find(&bed->header, basis->arena, &bed->drip, &(struct spot){
		(from.x - region->left) * cell, (from.y - region->first_cell.y) * cell });
}

/* end: as header_reach has it. */
static void reach_bed(struct watered *bed, const struct basis *basis,
	const struct header_ways *ways, int end)
{
	bed->is_reached = end >= 0;
	if (end < 0)
		snag_add(basis->snags, SNAG_WATER_CUT_OFF, bed->region, SNAG_FIGURES_OF(0));
	else
		lead_in(bed, basis, (struct place){ end % ways->columns, end / ways->columns });
}

/* Each zone's tube goes under the wall of its bed and up by itself, but of the bed that the tap
 * stands in. inside: that one, or NO_REGION. */
static void add_tubes(struct watering *out, struct watered *beds, const struct walls *walls,
	int inside)
{
	for (int i = 0; i < out->zone_count && !stop_asked(); i++)
		for (int j = 0; j < out->zones[i].bed_count; j++) {
			const struct zone_bed *part = &out->zones[i].beds[j];
			struct watered *bed = &beds[part->bed];
			struct bed_tube tube = bed_header_tube(&bed->header, &bed->drip,
				part->first, part->lines);

			bed->within += tube.length + (bed->region == inside ? 0 :
				wall_way(walls, bed->region));
			out->tees += tube.tees + (j > 0);
			out->ends += tube.ends;
		}
}

/* ---- Sleeves under walls --------------------------------------------------------------------- */

static const struct block *bed_of(const struct basis *basis, int region)
{
	return &basis->survey->regions[region].entry->block;
}

/* What of the wall's base the tube goes under. */
static nm wall_sleeve(const struct basis *basis, int region)
{
	const struct block *bed = bed_of(basis, region);

	return block_value(bed, BED_BLOCK)->as.size.across + block_length(bed, BED_REACH) +
		block_length(bed, BED_REACH_IN) + 2 * block_length(basis->allow,
		ALLOW_SLEEVE_PAST);
}

/* By grid point, how long the trench's sleeve is that the way there ends in. from: as in
 * header_tree. The caller frees. */
static nm *sleeves_before(const struct watering *out, const struct header_ways *ways,
	const int *from, nm cell)
{
	nm *lengths = memory_new((size_t)ways->columns * (size_t)ways->rows, sizeof *lengths);

	for (int i = 0; i < out->sleeve_count; i++) {
		const struct sleeve *sleeve = &out->sleeves[i];
		const struct spot ends[] = { sleeve->from, sleeve->to };
		int next = sleeve->from.x == sleeve->to.x ? ways->columns : 1;

		for (int j = 0; j < 2; j++) {
			int at = (int)(ends[j].y / cell) * ways->columns + (int)(ends[j].x / cell);

			if (ends[j].x % cell == 0 && ends[j].y % cell == 0 &&
				from[at] - 1 == (j == 0 ? at + next : at - next))
				lengths[at] = sleeve->length;
		}
	}
	return lengths;
}

/* Whether the header comes to a bed under its wall. */
static bool passes_wall(const struct basis *basis, const struct header_ways *ways, int region,
	int end)
{
	return end >= 0 && region != ways->inside &&
		region_is_raised(&basis->survey->regions[region]);
}

/* The list of sleeves while it is made. */
struct sleeves {
	struct header_sleeve *list; /* in the arena */
	size_t count, capacity;
};

static void add_sleeves(struct sleeves *sleeves, struct arena *arena, struct header_sleeve sleeve)
{
	sleeves->list = arena_grow(arena, sleeves->list, sleeves->count, &sleeves->capacity,
		sizeof *sleeves->list);
	sleeves->list[sleeves->count++] = sleeve;
}

/* How many tubes, one for each zone, come to a bed. The caller frees. */
static int64_t *tubes_of_beds(const struct watering *out)
{
	int64_t *tubes = memory_new((size_t)out->count, sizeof *tubes);

	for (int i = 0; i < out->zone_count; i++)
		for (int j = 0; j < out->zones[i].bed_count; j++)
			tubes[out->zones[i].beds[j].bed]++;
	return tubes;
}

/* Under the wall of a raised bed, one for each tube. All of them come through the sleeve of the
 * trench that the way there ends in, so what that has outside the wall each has already: `before`
 * of it. */
static void pass_wall(struct watering *out, struct sleeves *sleeves, const struct basis *basis,
	struct header_sleeve sleeve, nm before)
{
	nm outside = block_length(bed_of(basis, sleeve.region), BED_REACH) +
		block_length(basis->allow, ALLOW_SLEEVE_PAST);

	sleeve.place.length = wall_sleeve(basis, sleeve.region) - nm_least(outside, before);
	out->walls += sleeve.sleeves;
	out->sleeve_length += sleeve.sleeves * sleeve.place.length;
	add_sleeves(sleeves, basis->arena, sleeve);
}

static void pass_walls(struct watering *out, struct sleeves *sleeves, const struct basis *basis,
	const struct header_ways *ways, const int *from, const int *ends)
{
	nm cell = basis->survey->cell, *before = sleeves_before(out, ways, from, cell);
	int64_t *tubes = tubes_of_beds(out);

	for (int i = 0; i < out->count && !stop_asked(); i++) {
		int region = out->list[i].region;
		struct spot at = { ends[i] % ways->columns * cell,
			ends[i] / ways->columns * cell };

		if (passes_wall(basis, ways, region, ends[i]))
			pass_wall(out, sleeves, basis, (struct header_sleeve){ .region = region,
				.place = { .from = at, .to = at }, .sleeves = tubes[i],
				.tubes = 1 }, before[ends[i]]);
	}
	free(before);
	free(tubes);
}

/* ---- Sleeves of the trench ------------------------------------------------------------------- */

/* So many tubes lie along the side that comes to a grid point on its way from the tap. */
struct tubes {
	const struct header_ways *ways;
	const struct header_tree *tree;
	int *along; /* by grid point; owned */
};

/* A tube to a grid point, from where another of its zone has left: of that the marks know. Returns
 * how many sides of cells it lies along. */
static int64_t add_tube(const struct tubes *tubes, int end, int *marks, int mark)
{
	const int *from = tubes->tree->from;
	int64_t sides = 0;

	for (int at = end; from[at] != 0 && marks[at] != mark; at = from[at] - 1) {
		marks[at] = mark;
		tubes->along[at]++;
		sides++;
	}
	return sides;
}

/* The most along any side that the sleeve has some of. */
static int64_t tubes_in(const struct tubes *tubes, const struct sleeve *sleeve, nm cell)
{
	const int *from = tubes->tree->from;
	bool is_upright = sleeve->from.x == sleeve->to.x;
	nm low = is_upright ? sleeve->from.y : sleeve->from.x;
	nm high = is_upright ? sleeve->to.y : sleeve->to.x;
	int next = is_upright ? tubes->ways->columns : 1, count = 0;
	int at = (int)(sleeve->from.y / cell) * tubes->ways->columns +
		(int)(sleeve->from.x / cell);

	for (nm side = low / cell; side * cell < high; side++, at += next) {
		if (from[at + next] - 1 == at)
			count = most(count, tubes->along[at + next]);
		else if (from[at] - 1 == at + next)
			count = most(count, tubes->along[at]);
	}
	return count;
}

static void list_trench(struct watering *out, struct sleeves *sleeves, const struct basis *basis,
	const struct tubes *tubes)
{
	for (int i = 0; i < out->sleeve_count && !stop_asked(); i++) {
		out->sleeve_length += out->sleeves[i].length;
		add_sleeves(sleeves, basis->arena, (struct header_sleeve){ .region = NO_REGION,
			.place = out->sleeves[i], .sleeves = 1,
			.tubes = tubes_in(tubes, &out->sleeves[i], basis->survey->cell) });
	}
}

/* ---- From the tap ---------------------------------------------------------------------------- */

/* ends: by bed, -1: no way gets there. */
static void find_zone_headers(struct watering *out, struct water_zone *zones,
	const struct tubes *tubes, const int *ends, nm cell)
{
	int *marks = memory_new((size_t)tubes->ways->columns * (size_t)tubes->ways->rows,
		sizeof *marks);

	for (int i = 0; i < out->zone_count && !stop_asked(); i++) {
		for (int j = 0; j < zones[i].bed_count; j++) {
			int end = ends[zones[i].beds[j].bed];

			zones[i].header += end < 0 ? 0 : add_tube(tubes, end, marks, i + 1) * cell;
		}
		out->header += zones[i].header;
	}
	free(marks);
}

/* Legs that live as long as the takeoff. */
static struct legs legs_kept(const struct legs *legs, struct arena *arena)
{
	struct legs kept = { arena_new(arena, legs->count, sizeof *kept.items), legs->count,
		legs->count };

	if (legs->count > 0)
		memcpy(kept.items, legs->items, legs->count * sizeof *legs->items);
	return kept;
}

/* As that of a line of water. */
static void dig_trench(struct watering *out, const struct plot *plot)
{
	nm below = attribute_preset(SERVICE_BELOW, plot_units(plot))->as.length;

	out->trench_width = service_usual_trench(plot, SERVICE_WATER);
	out->trench_depth = service_usual_depth(plot, SERVICE_WATER) + below;
	out->trench_dug = volume_of(area_of(out->trench, out->trench_width), out->trench_depth);
}

static void find_trench(struct watering *out, struct watered *beds, const struct basis *basis,
	const struct header_ways *ways, struct header_tree *tree, int *ends)
{
	struct legs legs = LEGS_EMPTY;
	int64_t sides = 0;

	for (int i = 0; i < out->count && !stop_asked(); i++) {
		ends[i] = header_reach(tree, ways, basis, beds[i].region, &sides);
		reach_bed(&beds[i], basis, ways, ends[i]);
	}
	out->trench = sides * basis->survey->cell;
	if (out->trench > 0)
		dig_trench(out, basis->plot);
	header_legs(tree, ways, &legs);
	out->legs = legs_kept(&legs, basis->arena);
	legs_fini(&legs);
}

/* Of the trench and under walls. */
static void find_sleeves(struct watering *out, const struct basis *basis,
	const struct water_ground *ground, const struct tubes *tubes, const int *ends)
{
	struct sleeves sleeves = { .list = NULL };

	out->sleeves = sleeves_find(basis, ground->zones, ground->cover, &out->legs,
		&out->sleeve_count);
	list_trench(out, &sleeves, basis, tubes);
	pass_walls(out, &sleeves, basis, tubes->ways, tubes->tree->from, ends);
	out->header_sleeves = sleeves.list;
	out->header_sleeve_count = (int)sleeves.count;
}

/* Returns the bed that the tap stands in, or NO_REGION. */
static int find_header(struct watering *out, struct watered *beds, struct water_zone *zones,
	const struct basis *basis, const struct water_ground *ground)
{
	struct arena arena = ARENA_EMPTY;
	struct house_map houses = house_map_of(basis->plot, 1, &arena);
	struct post_holes holes = post_holes_of(ground->fences, basis->plot);
	int *ends = memory_new((size_t)out->count, sizeof *ends);
	struct header_ways ways;
	struct header_tree tree;
	struct tubes tubes;

	header_ways_find(&ways, &arena, basis, &(struct header_ground){ &houses, &holes,
		service_usual_trench(basis->plot, SERVICE_WATER) });
	tree = header_begin(&ways);
	find_trench(out, beds, basis, &ways, &tree, ends);
	tubes = (struct tubes){ &ways, &tree,
		memory_new((size_t)ways.columns * (size_t)ways.rows, sizeof *tubes.along) };
	find_zone_headers(out, zones, &tubes, ends, basis->survey->cell);
	find_sleeves(out, basis, ground, &tubes, ends);
	free(tubes.along);
	header_fini(&tree);
	free(holes.list);
	free(ends);
	arena_clear(&arena);
	return ways.inside;
}

void water_header_find(struct watering *out, struct watered *beds, struct water_zone *zones,
	const struct basis *basis, const struct water_ground *ground)
{
	int inside = out->has_tap ? find_header(out, beds, zones, basis, ground) : NO_REGION;

	for (int i = 0; i < out->count && !stop_asked(); i++)
		if (!beds[i].is_reached)
			bed_header_find(&beds[i].header, basis->arena, &beds[i].drip, NULL);
	add_tubes(out, beds, ground->walls, inside);
	for (int i = 0; i < out->count; i++)
		out->header += beds[i].within;
}
