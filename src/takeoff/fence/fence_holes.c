#include "takeoff/fence/fence_holes.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/fence/post_holes.h"

#include <stdlib.h>

/* ---- Walls ----------------------------------------------------------------------------------- */

/* The first bed whose wall it overlaps. */
static void note_bed(void *region, struct post_hole_at *hole)
{
	const int *bed = region;

	if (hole->mark == HOLE_UNMARKED || *bed < hole->mark)
		hole->mark = *bed;
}

static void meet_walls(const struct post_holes *holes, const struct zones *zones,
	const struct cover *ground)
{
	for (size_t i = 0; i < ground->count && !stop_asked(); i++) {
		const struct zone *zone = &zones->list[ground->pieces[i].owner];
		int region = zone->region;

		if (zone->part == DIG_WALL)
			post_holes_meeting(holes, &ground->pieces[i], note_bed, &region);
	}
}

/* ---- Beds ------------------------------------------------------------------------------------ */

/* The first cell, in reading order, that a spot within the plan or on its edge touches. */
static struct place first_touched(const struct survey *survey, struct spot at)
{
	return (struct place){ (int)((at.x - 1) / survey->cell),
		(int)((at.y - 1) / survey->cell) };
}

static bool is_bed(const struct survey *survey, nm x, nm y)
{
	return x < survey->columns && y < survey->rows &&
		survey->runs[survey_run_at(survey, (int)x, (int)y)].class == CLASS_BED;
}

/* Whether there is bed on every side of a spot. */
static bool is_within_bed(const struct survey *survey, struct spot at)
{
	struct place first = first_touched(survey, at);
	nm right = at.x / survey->cell, below = at.y / survey->cell;

	return at.x > 0 && at.y > 0 && is_bed(survey, first.x, first.y) &&
		is_bed(survey, right, first.y) && is_bed(survey, first.x, below) &&
		is_bed(survey, right, below);
}

static bool has_beds(const struct survey *survey)
{
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (survey->regions[i].entry->class == CLASS_BED)
			return true;
	return false;
}

void fences_warn_holes(const struct fences *fences, const struct basis *basis,
	const struct zones *zones, const struct cover *ground)
{
	const struct survey *survey = basis->survey;
	struct post_holes holes;

	if (!has_beds(survey))
		return;
	holes = post_holes_of(fences, basis->plot);
	meet_walls(&holes, zones, ground);
	for (size_t i = 0; i < holes.count && !stop_asked(); i++) {
		const struct post_hole_at *hole = &holes.list[i];
		struct place cell = first_touched(survey, hole->at);
		bool is_wall = hole->mark != HOLE_UNMARKED;
		struct snag *snag;

		if (!is_wall && !is_within_bed(survey, hole->at))
			continue;
		snag = snag_add(basis->snags, SNAG_HOLE_WALL, is_wall ? hole->mark :
			survey_region_at(survey, cell.x, cell.y), SNAG_FIGURES_OF(hole->across));
		post_hole_put(snag, survey, hole);
		snag->kind = !is_wall;
	}
	free(holes.list);
}
