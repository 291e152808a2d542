#include "takeoff/walls/wall_levels.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/outline.h"
#include "survey/surface.h"

#include <math.h>
#include <stdlib.h>

/* What levelling the walls needs; corners are taken one after the other. */
struct levelling {
	const struct basis *basis;
	const struct embeds *embeds;
	struct surface surface;
	struct bed_corner *corners;
	int corner_count;
};

static struct spot spot_of(const struct levelling *levelling, const struct corner *corner)
{
	nm cell = levelling->basis->survey->cell;

	return (struct spot){ corner->x * cell, corner->y * cell };
}

/* ---- The ground along a bed ------------------------------------------------------------------ */

static void look_along_side(const struct levelling *levelling, struct wall_level *level,
	struct spot from, struct spot to)
{
	struct surface_span span = surface_along(&levelling->surface, from.x, from.y, to.x, to.y);

	level->highest = nm_least(level->highest, span.highest);
	level->lowest = nm_most(level->lowest, span.lowest);
}

static void look_along_loop(struct levelling *levelling, struct wall_level *level,
	const struct loop *loop)
{
	for (int i = 0; i < loop->count && !stop_asked(); i++) {
		struct spot at = spot_of(levelling, &loop->corners[i]);
		nm ground = surface_finished(&levelling->surface, at.x, at.y);

		if (level->corner_count++ == 0)
			level->highest = level->lowest = ground;
		look_along_side(levelling, level, at,
			spot_of(levelling, &loop->corners[(i + 1) % loop->count]));
		levelling->corners[levelling->corner_count++] = (struct bed_corner){
			.region = level->region, .at = at, .ground = ground,
			.on = { loop->corners[i].x, loop->corners[i].y } };
	}
}

static void look_round(struct levelling *levelling, struct wall_level *level)
{
	const struct basis *basis = levelling->basis;
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	level->corners = &levelling->corners[levelling->corner_count];
	outline_trace(&outline, &arena, basis->plot, basis->survey, level->region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		look_along_loop(levelling, level, &outline.loops[i]);
	arena_clear(&arena);
}

/* Adds the cells of one row that lie in the bed, and their drops. */
static void look_within_row(const struct levelling *levelling, int region, int y, double *drops,
	int *cells)
{
	const struct survey *survey = levelling->basis->survey;
	const struct region *bed = &survey->regions[region];
	nm cell = survey->cell;
	size_t i = survey_run_at(survey, bed->left, y);

	for (; i < survey->row_runs[y + 1] && survey->runs[i].left <= bed->most.x; i++) {
		if (survey->runs[i].region != region)
			continue;
		for (int x = survey->runs[i].left; x < survey->runs[i].right; x++)
			*drops += (double)surface_finished(&levelling->surface,
				x * cell + cell / 2, y * cell + cell / 2);
		*cells += survey->runs[i].right - survey->runs[i].left;
	}
}

static void look_within(const struct levelling *levelling, struct wall_level *level)
{
	const struct region *bed = &levelling->basis->survey->regions[level->region];
	double drops = 0;
	int cells = 0;

	for (int y = bed->first_cell.y; y <= bed->most.y && !stop_asked(); y++)
		look_within_row(levelling, level->region, y, &drops, &cells);
	if (cells > 0)
		level->rise = level->lowest - (nm)llround(drops / (double)cells);
}

/* ---- The wall on it -------------------------------------------------------------------------- */

static void stand(struct levelling *levelling, struct wall_level *level, const struct wall *wall)
{
	struct bed_corner *corner = &levelling->corners[levelling->corner_count -
		level->corner_count];

	level->base = level->lowest + embed_of(levelling->embeds, wall->region);
	level->formation = level->base + block_length(wall->bed, BED_BASE);
	level->first = level->base - wall->block.up;
	level->top = level->base - wall_height(wall->bed) -
		(wall->has_cap ? wall->cap_block.up : 0);
	for (int i = 0; i < level->corner_count && !stop_asked(); i++, corner++)
		corner->exposed = corner->ground - level->top;
}

static struct wall_level level_of(struct levelling *levelling, const struct wall *wall)
{
	struct wall_level level = { .region = wall->region };
	nm fall;

	look_round(levelling, &level);
	look_within(levelling, &level);
	stand(levelling, &level, wall);
	fall = level.lowest - level.highest;
	if (fall >= wall->block.up)
		snag_add(levelling->basis->snags, SNAG_WALL_STEP, wall->region,
			SNAG_FIGURES_OF(fall, wall->block.up));
	return level;
}

static int count_corners(const struct basis *basis, const struct walls *walls)
{
	int count = 0;

	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct region *region = &basis->survey->regions[walls->list[i].region];

		count += region->convex + region->reflex;
	}
	return count;
}

void wall_levels_find(struct wall_levels *out, const struct basis *basis,
	const struct walls *walls, const struct embeds *embeds)
{
	struct levelling levelling = { basis, embeds, surface_of(basis->plot), NULL, 0 };
	struct wall_level *list;

	*out = (struct wall_levels){ .count = 0 };
	if (!surface_is_told(&levelling.surface))
		return;
	list = arena_new(basis->arena, (size_t)walls->count, sizeof *list);
	levelling.corners = arena_new(basis->arena, (size_t)count_corners(basis, walls),
		sizeof *levelling.corners);
	for (int i = 0; i < walls->count && !stop_asked(); i++)
		list[out->count++] = level_of(&levelling, &walls->list[i]);
	out->list = list;
	out->corners = levelling.corners;
	out->corner_count = levelling.corner_count;
}

static int by_region(const void *region, const void *level)
{
	return *(const int *)region - ((const struct wall_level *)level)->region;
}

const struct wall_level *wall_level_of(const struct wall_levels *levels, int region)
{
	if (levels->count == 0)
		return NULL;
	return bsearch(&region, levels->list, (size_t)levels->count, sizeof *levels->list,
		by_region);
}

/* ---- Figures --------------------------------------------------------------------------------- */

static const struct figure corner_figures[] = {
	{ NULL, "Bed", NULL, FIELD(REGION, bed_corner, region) },
	{ "at", "Across, down", NULL, FIELD(PLACE, bed_corner, on), .flags = TEXT_WRAPS },
	{ "at_m", NULL, NULL, FIELD(SPOT, bed_corner, at), .flags = ROW_KEY },
	{ "ground_m", "Ground", NULL, FIELD(INCHES, bed_corner, ground) },
	{ "exposed_m", "Exposed", NULL, FIELD(INCHES, bed_corner, exposed) },
};
const struct figure_table bed_corner_table = FIGURE_TABLE(bed_corner, corner_figures);

static const struct figure figures[] = {
	{ "bed", "Bed", "", FIELD(REGION, wall_level, region), .flags = PANEL_TITLE | ROW_KEY },
	{ "highest_ground_m", NULL, "Ground from", FIELD(INCHES, wall_level, highest) },
	{ "lowest_ground_m", NULL, "Ground to", FIELD(INCHES, wall_level, lowest) },
	{ "formation_m", "Formation", "Formation", FIELD(INCHES, wall_level, formation) },
	{ "base_top_m", "Base's top", "Base's top", FIELD(INCHES, wall_level, base) },
	{ "course_1_m", "Course 1", "Course 1, top", FIELD(INCHES, wall_level, first) },
	{ "top_m", "Wall's top", "Wall's top", FIELD(INCHES, wall_level, top) },
	{ "corners", NULL, NULL, FIELDS(ROWS, wall_level, corners, corner_count),
		.table = &bed_corner_table, .flags = JSON_LINES },
};
const struct figure_table wall_level_table = FIGURE_TABLE(wall_level, figures);
