#include "support/digging.h"
#include "support/beds.h"
#include "support/plots.h"

#include <stdio.h>
#include <stdlib.h>

static double metres(nm length)
{
	return (double)length / (double)NM_PER_M;
}

static struct geos_box cell_box(const struct survey *survey, int x, int y, double more)
{
	double cell = metres(survey->cell);

	return (struct geos_box){ x * cell - more, y * cell - more, (x + 1) * cell + more,
		(y + 1) * cell + more };
}

/* The cells of a region (own), or all others up to one beyond the plan's edges, each wider on
 * all sides. */
static GEOSGeometry *widened(GEOSContextHandle_t geos, const struct survey *survey, int region,
	bool own, double more)
{
	struct geos_box *boxes = calloc((size_t)((survey->columns + 2) * (survey->rows + 2)),
		sizeof *boxes);
	GEOSGeometry *shape;
	size_t count = 0;

	for (int y = -1; y <= survey->rows; y++) {
		for (int x = -1; x <= survey->columns; x++) {
			bool is_in = x >= 0 && y >= 0 && x < survey->columns && y < survey->rows &&
				survey_region_at(survey, x, y) == region;

			if (is_in == own)
				boxes[count++] = cell_box(survey, x, y, more);
		}
	}
	shape = geos_union(geos, boxes, count);
	free(boxes);
	return shape;
}

static GEOSGeometry *common(GEOSContextHandle_t geos, GEOSGeometry *a, GEOSGeometry *b)
{
	GEOSGeometry *shape = GEOSIntersection_r(geos, a, b);

	geos_free(geos, a);
	geos_free(geos, b);
	return shape;
}

static GEOSGeometry *joined(GEOSContextHandle_t geos, GEOSGeometry *a, GEOSGeometry *b)
{
	GEOSGeometry *shape = GEOSUnion_r(geos, a, b);

	geos_free(geos, a);
	geos_free(geos, b);
	return shape;
}

/* What is not the bed within the reach of it, and what of the bed is no further than the wall's
 * depth and the reach inwards from what is not. */
static GEOSGeometry *wall_ground(GEOSContextHandle_t geos, const struct survey *survey, int region,
	const struct block *bed)
{
	double out = metres(block_length(bed, BED_REACH));
	double in = metres(block_length(bed, BED_REACH_IN));
	double depth = metres(block_effective(bed, BED_BLOCK)->as.size.across);
	double cell = metres(survey->cell);
	struct geos_box plan = { 0, 0, survey->columns * cell, survey->rows * cell };

	return common(geos, geos_union(geos, &plan, 1), joined(geos,
		common(geos, widened(geos, survey, region, true, out),
			widened(geos, survey, region, false, 0)),
		common(geos, widened(geos, survey, region, true, 0),
			widened(geos, survey, region, false, depth + in))));
}

static void add(struct diggings *diggings, int region, enum dig_part part, GEOSGeometry *shape)
{
	GEOSGeometry *rest = geos_difference(diggings->geos, shape, diggings->taken);

	diggings->list[diggings->count++] = (struct digging){ region, part, rest };
	diggings->taken = joined(diggings->geos, diggings->taken, shape);
}

static void add_cells(struct diggings *diggings, const struct survey *survey, int region,
	enum dig_part part)
{
	add(diggings, region, part, widened(diggings->geos, survey, region, true, 0));
}

static bool is_walled(const struct takeoff *takeoff, int region)
{
	for (int i = 0; i < takeoff->walls.count; i++)
		if (takeoff->walls.list[i].region == region)
			return true;
	return false;
}

static void add_last(struct diggings *diggings, const struct takeoff *takeoff, int region)
{
	const struct entry *entry = takeoff->survey.regions[region].entry;

	if (entry->class == CLASS_LAWN) {
		if (block_number(&entry->block, LAWN_COVER) != COVER_NONE)
			add_cells(diggings, &takeoff->survey, region, DIG_LAWN);
	} else if (entry->class == CLASS_BED && is_walled(takeoff, region)) {
		if (block_number(&entry->block, BED_INSIDE) != INSIDE_UNDUG)
			add_cells(diggings, &takeoff->survey, region, DIG_INSIDE);
	} else if (entry->class == CLASS_BED && block_number(&entry->block,
		BED_BUILD) == BUILD_LEVEL &&
		block_number(&entry->block, BED_REPLACE) == CHOICE_YES) {
		add_cells(diggings, &takeoff->survey, region, DIG_BED);
	}
}

struct diggings diggings_find(GEOSContextHandle_t geos, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	struct diggings found = { .geos = geos, .taken = geos_union(geos, NULL, 0),
		.list = calloc((size_t)survey->region_count * 2 + 1, sizeof *found.list) };

	for (int i = 0; i < survey->region_count; i++) {
		enum plot_class class = survey->regions[i].entry->class;

		if (class == CLASS_PATH || class == CLASS_FIXTURE)
			add_cells(&found, survey, i, class == CLASS_PATH ? DIG_PATH : DIG_PAD);
	}
	for (int i = 0; i < survey->region_count; i++)
		if (is_walled(takeoff, i))
			add(&found, i, DIG_WALL, wall_ground(geos, survey, i,
				&survey->regions[i].entry->block));
	for (int i = 0; i < survey->region_count; i++)
		add_last(&found, takeoff, i);
	return found;
}

void diggings_free(struct diggings *diggings)
{
	for (int i = 0; i < diggings->count; i++)
		geos_free(diggings->geos, diggings->list[i].shape);
	geos_free(diggings->geos, diggings->taken);
	free(diggings->list);
}

const struct digging *diggings_at(const struct diggings *diggings, int region, enum dig_part part)
{
	for (int i = 0; i < diggings->count; i++)
		if (diggings->list[i].region == region && diggings->list[i].part == part)
			return &diggings->list[i];
	return NULL;
}

/* ---- Plots ----------------------------------------------------------------------------------- */

static void set_depth(struct plot *plot, struct random *random, char letter, enum attribute a,
	int most)
{
	char words[32];

	if (!plot_entry(plot, letter) || random_below(random, 3) == 0)
		return;
	snprintf(words, sizeof words, "%d mm", random_between(random, 0, most));
	plot_set(plot, letter, a, words);
}

static void set_one_of(struct plot *plot, struct random *random, char letter, enum attribute a,
	const char *const *words)
{
	int count = 0;

	while (words[count])
		count++;
	if (plot_entry(plot, letter))
		plot_set(plot, letter, a, words[random_below(random, count)]);
}

void diggings_plot(struct plot *plot, struct random *random)
{
	static const char *const letters[] = { "abcpqSl.", "ab.", "aabbcp.", "aS.l", "cpSln" };
	static const char *const insides[] = { "undug", "filled", "base", NULL };
	static const char *const covers[] = { "turf", "seed", "none", NULL };
	static const char *const choices[] = { "yes", "no", NULL };
	static const nm cells[] = { NM_PER_FOOT, NM_PER_FOOT / 2, 300 * NM_PER_MM,
		3 * NM_PER_FOOT };

	plot_at_random(plot, random, 14, letters[random_below(random, 5)]);
	beds_set_cell(plot, cells[random_below(random, 4)]);
	beds_set_block(plot, 8 * NM_PER_INCH, random_between(random, 40, 120) * NM_PER_MM,
		3 * NM_PER_INCH);
	for (const char *bed = "ab"; *bed; bed++) {
		set_depth(plot, random, *bed, BED_REACH, random_below(random, 2) ? 1000 : 200);
		set_depth(plot, random, *bed, BED_REACH_IN, random_below(random, 2) ? 1000 : 200);
		set_depth(plot, random, *bed, BED_BASE, 150);
		set_depth(plot, random, *bed, BED_EMBED, 150);
		set_one_of(plot, random, *bed, BED_INSIDE, insides);
	}
	if (plot_entry(plot, 'c'))
		plot_set(plot, 'c', BED_BUILD, "level");
	set_one_of(plot, random, 'c', BED_REPLACE, choices);
	set_depth(plot, random, 'c', BED_PREPARE, 300);
	set_depth(plot, random, 'p', PATH_BASE, 150);
	set_depth(plot, random, 'p', PATH_SURFACE, 60);
	set_depth(plot, random, 'q', PATH_SURFACE, 60);
	set_depth(plot, random, 'S', FIXTURE_BASE, 150);
	set_one_of(plot, random, 'l', LAWN_COVER, covers);
	set_depth(plot, random, 'l', LAWN_TOPSOIL, 100);
}
