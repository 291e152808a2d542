#include "takeoff/ground/over_base.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/surface.h"

#include <stdlib.h>

/* Cubic nanometres, exact: a plan of 2048 by 2048 cells of 10 ft, 2 m deep, is 8e34 of them. */
__extension__ typedef __int128 nm3;

/* The sums of one region, or of open ground. */
struct sum {
	int region;
	nm2 area;
	nm3 topsoil, backfill;
	nm least;
};

struct summing {
	const struct survey *survey;
	const struct over_ground *ground;
	struct surface surface;
	int *slots; /* by region, open ground first: 1 + the index of its sum; 0: none yet */
	struct sum *sums;
	size_t count, capacity;
};

static double nm3_m3(nm3 volume)
{
	const double m = (double)NM_PER_M;

	return (double)volume / (m * m * m);
}

/* ---- What goes back where -------------------------------------------------------------------- */

struct layers {
	nm topsoil, backfill, under_turf;
};

/* On stone that lies `embed` below finished ground. */
static struct layers layers_on(const struct entry *entry, nm embed)
{
	struct layers layers = { 0, embed, embed };

	if (!entry)
		return layers;
	if (entry->class == CLASS_BED && block_number(&entry->block, BED_BUILD) == BUILD_RAISED)
		layers.backfill = 0;
	if (entry->class == CLASS_BED && block_number(&entry->block, BED_BUILD) == BUILD_LEVEL &&
		block_number(&entry->block, BED_REPLACE) == CHOICE_YES)
		layers.backfill = nm_most(0, embed - block_length(&entry->block, BED_PREPARE));
	if (entry->class != CLASS_LAWN)
		return layers;
	layers.under_turf = nm_most(0, embed - turf_thickness(&entry->block));
	if (block_number(&entry->block, LAWN_COVER) != COVER_NONE)
		layers.topsoil = nm_least(layers.under_turf,
			block_length(&entry->block, LAWN_TOPSOIL));
	layers.backfill = layers.under_turf - layers.topsoil;
	return layers;
}

static struct sum *sum_of(struct summing *summing, int region)
{
	int *slot = &summing->slots[region + 1];

	if (*slot == 0) {
		summing->sums = memory_grow(summing->sums, summing->count, &summing->capacity,
			sizeof *summing->sums);
		summing->sums[summing->count++] = (struct sum){ .region = region,
			.least = INT64_MAX };
		*slot = (int)summing->count;
	}
	return &summing->sums[*slot - 1];
}

static void add_ground(struct summing *summing, int region, nm2 area, nm embed)
{
	struct sum *sum = sum_of(summing, region);
	struct layers layers = layers_on(region == NO_REGION ? NULL :
		summing->survey->regions[region].entry, embed);

	sum->area += area;
	sum->topsoil += area * layers.topsoil;
	sum->backfill += area * layers.backfill;
	sum->least = nm_least(sum->least, layers.under_turf);
}

/* From the top of a wall's base up to the finished ground over a part of it. */
static nm embed_at(const struct summing *summing, int wall, const struct cover_box *part)
{
	const struct wall_level *level = wall_level_of(summing->ground->levels, wall);

	if (!level)
		return embed_of(summing->ground->embeds, wall);
	return nm_most(0, level->base - surface_finished(&summing->surface,
		part->left + (part->right - part->left) / 2,
		part->top + (part->bottom - part->top) / 2));
}

/* By what lies on the piece of a wall's base, row by row. */
static void add_piece(struct summing *summing, const struct cover_box *piece, int wall)
{
	const struct survey *survey = summing->survey;
	nm cell = survey->cell;

	for (int y = (int)(piece->top / cell); y * cell < piece->bottom && !stop_asked(); y++) {
		size_t i = survey_run_at(survey, (int)(piece->left / cell), y);

		for (; i < survey->row_runs[y + 1] && survey->runs[i].left * cell < piece->right;
			i++) {
			const struct run *run = &survey->runs[i];
			struct cover_box part = cover_clip(*piece, &(struct cover_box){
				run->left * cell, y * cell, run->right * cell, (y + 1) * cell, 0 });

			add_ground(summing, run->region, cover_box_area(&part),
				embed_at(summing, wall, &part));
		}
	}
}

/* ---- Results --------------------------------------------------------------------------------- */

/* All under a bed's own wall is on stone, be it that of another. */
static void leave_out_walls(struct summing *summing, const struct walls *walls)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		sum_of(summing, wall->region)->area -=
			(nm2)wall->block.across * wall->odd.length;
	}
}

static void list_sums(struct over_bases *out, const struct summing *summing, struct arena *arena)
{
	struct over_base *list = arena_new(arena, summing->count, sizeof *list);
	nm3 backfill = 0;

	for (int region = NO_REGION; region < summing->survey->region_count && !stop_asked();
		region++) {
		int slot = summing->slots[region + 1];
		const struct sum *sum = slot ? &summing->sums[slot - 1] : NULL;

		if (!sum || sum->area <= 0)
			continue;
		list[out->count++] = (struct over_base){ region, cover_m2(sum->area),
			nm3_m3(sum->topsoil), nm3_m3(sum->backfill), sum->least };
		backfill += sum->backfill;
	}
	out->list = list;
	out->backfill = nm3_m3(backfill);
}

static double loosened(const struct over_bases *over, const struct walls *walls)
{
	double area = 0;

	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		if (block_number(wall->bed, BED_INSIDE) == INSIDE_UNDUG)
			area += wall->inner_area - over_base_of(over, wall->region).area;
	}
	return area;
}

void over_bases_find(struct over_bases *out, const struct basis *basis, const struct zones *zones,
	const struct cover *cover, const struct over_ground *ground)
{
	const struct survey *survey = basis->survey;
	const struct walls *walls = ground->walls;
	struct summing summing = { .survey = survey, .ground = ground,
		.surface = surface_of(basis->plot) };

	*out = (struct over_bases){ .count = 0 };
	if (walls->count == 0)
		return;
	summing.slots = memory_new((size_t)survey->region_count + 1, sizeof *summing.slots);
	for (size_t i = 0; i < cover->count && !stop_asked(); i++) {
		const struct cover_box *piece = &cover->pieces[i];
		const struct zone *zone = &zones->list[piece->owner];

		if (zone->part == DIG_WALL)
			add_piece(&summing, piece, zone->region);
	}
	leave_out_walls(&summing, walls);
	list_sums(out, &summing, basis->arena);
	out->loosened = loosened(out, walls);
	free(summing.slots);
	free(summing.sums);
}

static int by_region(const void *region, const void *over)
{
	return *(const int *)region - ((const struct over_base *)over)->region;
}

struct over_base over_base_of(const struct over_bases *over, int region)
{
	const struct over_base *found = over->count == 0 ? NULL :
		bsearch(&region, over->list, (size_t)over->count, sizeof *over->list, by_region);

	return found ? *found : (struct over_base){ .region = region };
}
