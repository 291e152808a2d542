#include "takeoff/common/embed.h"
#include "base/number.h"
#include "base/stop.h"

#include <assert.h>

/* In an imperial and in a metric plot. */
static const nm SURFACE_WITHOUT_PATHS[] = { 2 * NM_PER_INCH, 50 * NM_PER_MM };
static const nm SOIL_UNDER_LAWN[] = { 2 * NM_PER_INCH, 50 * NM_PER_MM };
static const nm EMBED_STEP[] = { NM_PER_INCH / 2, 10 * NM_PER_MM };

/* While it is found what touches what. */
struct touching {
	const struct survey *survey;
	const struct details *details;
	uint8_t *lawns;
};

nm wall_height(const struct block *bed)
{
	return block_number(bed, BED_COURSES) * block_effective(bed, BED_BLOCK)->as.size.up;
}

nm turf_thickness(const struct block *lawn)
{
	return block_number(lawn, LAWN_COVER) == COVER_TURF ?
		block_length(lawn, LAWN_THICKNESS) : 0;
}

/* ---- What touches what ----------------------------------------------------------------------- */

static void touch(struct touching *touching, const struct run *bed, const struct run *lawn)
{
	const struct entry *legend = touching->details->legend;
	const struct entry *turf = touching->survey->regions[lawn->region].entry;
	uint8_t *thickest = &touching->lawns[bed->region];

	if (*thickest == 0 || turf_thickness(&turf->block) >
		turf_thickness(&legend[*thickest - 1].block))
		*thickest = (uint8_t)(turf - legend + 1);
}

static void meet(struct touching *touching, const struct run *a, const struct run *b)
{
	if (a->class == CLASS_BED && b->class == CLASS_LAWN)
		touch(touching, a, b);
	else if (a->class == CLASS_LAWN && b->class == CLASS_BED)
		touch(touching, b, a);
}

/* Row y with the one above it: runs that end at the same place also touch those that follow, at
 * their corners. */
static void meet_above(struct touching *touching, int y)
{
	const struct survey *survey = touching->survey;
	const struct run *above = &survey->runs[survey->row_runs[y - 1]];
	const struct run *below = &survey->runs[survey->row_runs[y]];
	const struct run *last = below - 1;

	while (above <= last) {
		int end = least(above->right, below->right);
		bool both_end = above->right == below->right;

		meet(touching, above, below);
		if (both_end && above < last) {
			meet(touching, above, below + 1);
			meet(touching, above + 1, below);
		}
		above += above->right == end;
		below += both_end || below->right == end;
	}
}

static void meet_all(struct touching *touching)
{
	const struct survey *survey = touching->survey;

	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		for (size_t i = survey->row_runs[y]; i + 1 < survey->row_runs[y + 1]; i++)
			meet(touching, &survey->runs[i], &survey->runs[i + 1]);
		if (y > 0)
			meet_above(touching, y);
	}
}

/* What has a cell has an edge. */
static bool has_class(const struct survey *survey, enum plot_class class)
{
	int64_t edges = 0;

	for (int other = 0; other < CLASSES; other++)
		edges += survey->edges[class][other];
	return edges > 0;
}

static const uint64_t *touched_by_entry(const struct touching *touching, struct arena *arena)
{
	const struct survey *survey = touching->survey;
	uint64_t *touched = arena_new(arena, touching->details->legend_count, sizeof *touched);

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		touched[survey->regions[i].entry - touching->details->legend] |=
			UINT64_C(1) << (touching->lawns ? touching->lawns[i] : 0);
	return touched;
}

static nm deepest_surface(const struct survey *survey, enum units units)
{
	nm deepest = -1;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct entry *entry = survey->regions[i].entry;

		if (entry->class == CLASS_PATH)
			deepest = nm_most(block_length(&entry->block, PATH_SURFACE), deepest);
	}
	return deepest < 0 ? SURFACE_WITHOUT_PATHS[units == UNITS_METRIC] : deepest;
}

void embeds_find(struct embeds *out, const struct basis *basis)
{
	const struct survey *survey = basis->survey;
	struct touching touching = { .survey = survey, .details = &basis->plot->details };

	assert(touching.details->legend_count < 64);
	if (has_class(survey, CLASS_BED) && has_class(survey, CLASS_LAWN))
		touching.lawns = arena_new(basis->arena, (size_t)survey->region_count,
			sizeof *touching.lawns);
	if (touching.lawns)
		meet_all(&touching);
	*out = (struct embeds){ .survey = survey, .legend = touching.details->legend,
		.units = plot_units(basis->plot), .lawns = touching.lawns };
	out->surface = deepest_surface(survey, out->units);
	out->touched = touched_by_entry(&touching, basis->arena);
}

/* ---- The embed ------------------------------------------------------------------------------- */

/* lawn: 1 + the index in the legend of a lawn that touches the bed; 0: none does. */
static nm embed_beside(const struct embeds *embeds, const struct block *bed, int lawn)
{
	const struct value *own = block_value(bed, BED_EMBED);
	bool is_metric = embeds->units == UNITS_METRIC;
	nm embed = embeds->surface;

	if (own->set)
		return own->as.length;
	embed = nm_most(embed, quotient_up(wall_height(bed), HEIGHT_PER_EMBED));
	if (lawn > 0)
		embed = nm_most(embed, SOIL_UNDER_LAWN[is_metric] +
			turf_thickness(&embeds->legend[lawn - 1].block));
	return multiple_up(embed, EMBED_STEP[is_metric]);
}

nm embed_of(const struct embeds *embeds, int region)
{
	return embed_beside(embeds, &embeds->survey->regions[region].entry->block,
		embeds->lawns ? embeds->lawns[region] : 0);
}

struct embed_range embed_range(const struct embeds *embeds, const struct entry *bed)
{
	uint64_t touched = embeds->touched[bed - embeds->legend];
	struct embed_range range = { INT64_MAX, 0 };

	for (int lawn = 0; touched >> lawn; lawn++) {
		nm embed;

		if (!(touched >> lawn & 1))
			continue;
		embed = embed_beside(embeds, &bed->block, lawn);
		range.least = nm_least(range.least, embed);
		range.most = nm_most(range.most, embed);
	}
	return range;
}
