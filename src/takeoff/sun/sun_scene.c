#include "takeoff/sun/sun_scene.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/house_map.h"
#include "survey/outline.h"

#include <stdlib.h>

enum { GROUND = 0 }; /* the level of finished ground */

struct staging {
	struct arena *arena;
	const struct takeoff *takeoff;
	const struct survey *survey;
	struct occluder *occluders;
	size_t count, capacity;
	uint16_t *levels;
	nm *heights;
	size_t level_count, level_capacity;
};

static void occluder_add(struct staging *staging, struct occluder occluder)
{
	staging->occluders = arena_grow(staging->arena, staging->occluders, staging->count,
		&staging->capacity, sizeof *staging->occluders);
	staging->occluders[staging->count++] = occluder;
}

/* The level at a height, a new one where there is none yet. */
static int level_at(struct staging *staging, nm height)
{
	size_t level = 0;

	while (level < staging->level_count && staging->heights[level] != height)
		level++;
	if (level == staging->level_count) {
		staging->heights = arena_grow(staging->arena, staging->heights,
			staging->level_count, &staging->level_capacity, sizeof *staging->heights);
		staging->heights[staging->level_count++] = height;
	}
	return (int)level;
}

static uint16_t *level_of_cell(const struct staging *staging, int x, int y)
{
	return &staging->levels[(size_t)y * (size_t)staging->survey->columns + (size_t)x];
}

/* ---- Regions --------------------------------------------------------------------------------- */

/* How high the wall of a raised bed stands above ground, without its cap. */
static nm wall_above(const struct staging *staging, int region)
{
	const struct block *bed = &staging->survey->regions[region].entry->block;

	return wall_height(bed) - embed_of(&staging->takeoff->embeds, region);
}

static nm wall_top(const struct staging *staging, int region)
{
	const struct block *bed = &staging->survey->regions[region].entry->block;

	return wall_above(staging, region) + block_effective(bed, BED_CAP)->as.size.up;
}

/* A region as it stands above ground. */
struct standing {
	nm height;  /* of what it casts shade with; 0: it casts none */
	uint16_t level; /* of its cells */
};

static struct standing standing_of(struct staging *staging, int region)
{
	const struct region *at = &staging->survey->regions[region];
	const struct block *block = &at->entry->block;

	if (at->entry->class == CLASS_FIXTURE)
		return (struct standing){ block_length(block, FIXTURE_HEIGHT), SHADE_NO_LEVEL };
	if (!region_is_raised(at))
		return (struct standing){ 0, GROUND };
	return (struct standing){ wall_top(staging, region), (uint16_t)level_at(staging,
		wall_above(staging, region) - block_length(block, BED_FREEBOARD)) };
}

/* A row's cells: their levels, and what they cast shade with, one box for equal runs in rows below
 * one another. box_of: by run, its box. */
static void row_stage(struct staging *staging, int y, const struct standing *standings,
	size_t *box_of)
{
	const struct survey *survey = staging->survey;
	size_t above = y > 0 ? survey->row_runs[y - 1] : 0;
	nm cell = survey->cell;

	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];
		const struct standing *standing;

		if (run->region == NO_REGION)
			continue;
		standing = &standings[run->region];
		for (int x = run->left; x < run->right; x++)
			*level_of_cell(staging, x, y) = standing->level;
		if (standing->height <= 0)
			continue;
		if (survey_has_run_above(survey, y, run, &above)) {
			box_of[i] = box_of[above];
			staging->occluders[box_of[i]].bottom = (y + 1) * cell;
			continue;
		}
		box_of[i] = staging->count;
		occluder_add(staging, (struct occluder){ run->left * cell, y * cell,
			run->right * cell, (y + 1) * cell, standing->height, CAST_ON_OTHERS,
			standing->level });
	}
}

static void regions_stage(struct staging *staging)
{
	const struct survey *survey = staging->survey;
	struct standing *standings = memory_new((size_t)survey->region_count, sizeof *standings);
	size_t *box_of = memory_new(survey->row_runs[survey->rows], sizeof *box_of);

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		standings[i] = standing_of(staging, i);
	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		row_stage(staging, y, standings, box_of);
	free(box_of);
	free(standings);
}

/* ---- Walls as they are seen from within ------------------------------------------------------ */

/* The region's cells whose middle is in the box are at a level. */
static void cells_raise(struct staging *staging, const struct cover_box *box, int region, int level)
{
	const struct survey *survey = staging->survey;
	nm cell = survey->cell;
	/* The first middle at or after a line, and the last at or before it. */
	int left = (int)((box->left + (cell - 1) / 2) / cell);
	int top = (int)((box->top + (cell - 1) / 2) / cell);
	int right = least(survey->columns, (int)((box->right + cell / 2) / cell));
	int bottom = least(survey->rows, (int)((box->bottom + cell / 2) / cell));

	for (int y = most(top, 0); y < bottom; y++)
		for (int x = most(left, 0); x < right; x++)
			if (survey_region_at(survey, x, y) == region)
				*level_of_cell(staging, x, y) = (uint16_t)level;
}

static void side_stage(struct staging *staging, const struct loop *loop, int side, int region)
{
	const struct entry *entry = staging->survey->regions[region].entry;
	nm depth = block_effective(&entry->block, BED_BLOCK)->as.size.across;
	bool turns_in = loop->corners[(side + 1) % loop->count].reflex;
	const struct outline_strip strip = { turns_in ? depth : 0, depth };
	struct cover_box box = outline_strip_box(staging->survey, loop, side, &strip);
	nm top = wall_top(staging, region);
	int within = level_at(staging, wall_above(staging, region) -
		block_length(&entry->block, BED_FREEBOARD));

	occluder_add(staging, (struct occluder){ box.left, box.top, box.right, box.bottom, top,
		CAST_ON_LEVEL, within });
	cells_raise(staging, &box, region, level_at(staging, top));
}

static void walls_stage(struct staging *staging)
{
	const struct survey *survey = staging->survey;
	struct arena outlines = ARENA_EMPTY;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		struct outline outline;

		if (!region_is_raised(&survey->regions[i]))
			continue;
		outline_trace(&outline, &outlines, &staging->takeoff->plot, survey, i);
		for (int j = 0; j < outline.count && !stop_asked(); j++)
			for (int side = 0; side < outline.loops[j].count && !stop_asked(); side++)
				side_stage(staging, &outline.loops[j], side, i);
		arena_clear(&outlines);
	}
}

/* ---- Fences, houses and shade ---------------------------------------------------------------- */

static void fence_stage(struct staging *staging, const struct fence *fence)
{
	nm height = block_length(&fence->block, FENCE_HEIGHT) +
		block_length(&fence->block, FENCE_GAP);
	nm cell = staging->survey->cell;
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count && !stop_asked(); i++) {
		struct leg leg = leg_forward(legs.items[i]);

		occluder_add(staging, (struct occluder){ leg.from.x * cell, leg.from.y * cell,
			leg.to.x * cell, leg.to.y * cell, height, CAST_ON_ALL, 0 });
	}
	legs_fini(&legs);
}

static void obstacles_stage(struct staging *staging, const struct obstacles *obstacles)
{
	nm cell = staging->survey->cell;

	for (size_t i = 0; i < obstacles->count && !stop_asked(); i++) {
		const struct obstacle *obstacle = &obstacles->items[i];
		const struct rectangle *r = &obstacle->cells;

		if (obstacle->height)
			occluder_add(staging, (struct occluder){ r->left * cell, r->top * cell,
				(r->right + 1) * cell, (r->bottom + 1) * cell, obstacle->height,
				CAST_ON_ALL, 0 });
	}
}

static void houses_clear(struct staging *staging)
{
	const struct survey *survey = staging->survey;
	struct house_map houses = house_map_of(&staging->takeoff->plot, 0, staging->arena);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (int x = 0; x < survey->columns; x++)
			if (house_map_at(&houses, x, y))
				*level_of_cell(staging, x, y) = SHADE_NO_LEVEL;
}

void sun_scene_make(struct shade_scene *out, struct arena *arena, const struct takeoff *takeoff)
{
	const struct details *details = &takeoff->plot.details;
	const struct survey *survey = &takeoff->survey;
	struct staging staging = { .arena = arena, .takeoff = takeoff, .survey = survey,
		.levels = arena_new(arena, ground_count(&takeoff->plot.ground),
			sizeof *staging.levels) };

	level_at(&staging, 0);
	regions_stage(&staging);
	walls_stage(&staging);
	for (size_t i = 0; i < details->fence_count; i++)
		fence_stage(&staging, &details->fences[i]);
	obstacles_stage(&staging, &details->around.houses);
	obstacles_stage(&staging, &details->around.shades);
	houses_clear(&staging);
	*out = (struct shade_scene){ survey->cell, survey->columns, survey->rows, staging.levels,
		staging.heights, (int)staging.level_count, staging.occluders, staging.count };
}
