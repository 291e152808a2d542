#include "takeoff/planting/planted_bed.h"
#include "base/stop.h"
#include "survey/outline.h"

#include <stdlib.h>

nm planting_wall(const struct region *region)
{
	return region_is_raised(region) ?
		block_effective(&region->entry->block, BED_BLOCK)->as.size.across : 0;
}

/* ---- What is clear --------------------------------------------------------------------------- */

bool planting_is_clear(const struct survey *survey, int region, struct spot at, nm around)
{
	nm cell = survey->cell, left = at.x - around, right = at.x + around;
	nm top = at.y - around, bottom = at.y + around;

	if (left < 0 || top < 0 || right > survey->columns * cell || bottom > survey->rows * cell)
		return false;
	for (nm y = top / cell; y * cell < bottom; y++) {
		const struct run *run =
			&survey->runs[survey_run_at(survey, (int)(left / cell), (int)y)];

		if (run->region != region || run->right * cell < right)
			return false;
	}
	return true;
}

/* Whether no house stands on a square around a spot, all of it within the bed. */
static bool is_clear_of_houses(const struct planted_bed *bed, struct spot at, nm around)
{
	nm cell = bed->basis->survey->cell;

	for (nm y = (at.y - around) / cell; y * cell < at.y + around; y++)
		for (nm x = (at.x - around) / cell; x * cell < at.x + around; x++)
			if (!bands_hold(&bed->bands, BAND_WHOLE, (int)x, (int)y))
				return false;
	return true;
}

bool planted_bed_is_clear(const struct planted_bed *bed, struct spot at, nm around)
{
	return planting_is_clear(bed->basis->survey, bed->region, at, bed->wall + around) &&
		(!bed->has_houses || is_clear_of_houses(bed, at, around));
}

bool planted_bed_holds(const struct planted_bed *bed, enum band band, struct spot at)
{
	nm cell = bed->basis->survey->cell;
	int right = (int)(at.x / cell), below = (int)(at.y / cell);
	int left = (int)((at.x - 1) / cell), above = (int)((at.y - 1) / cell);

	for (int y = above; y <= below; y++)
		for (int x = left; x <= right; x++)
			if (bands_hold(&bed->bands, band, x, y))
				return true;
	return false;
}

/* ---- Its ground, cut ------------------------------------------------------------------------- */

enum { UNDER_THE_WALL, WITHIN };

static void paint_wall(struct cover_boxes *boxes, const struct planted_bed *bed)
{
	const struct survey *survey = bed->basis->survey;
	struct arena outlines = ARENA_EMPTY;
	struct outline outline = { .count = 0 };

	if (bed->wall > 0)
		outline_trace(&outline, &outlines, bed->basis->plot, survey, bed->region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		for (int side = 0; side < outline.loops[i].count; side++) {
			const struct loop *loop = &outline.loops[i];
			bool reflex = loop->corners[(side + 1) % loop->count].reflex;

			cover_boxes_add(boxes, outline_strip_box(survey, loop, side,
				&(struct outline_strip){ reflex ? bed->wall : 0, bed->wall }));
		}
	arena_clear(&outlines);
}

static bool is_held(const struct planted_bed *bed, unsigned int bands, int x, int y)
{
	for (int band = 0; band < BANDS; band++)
		if (bands & BIT_OF_BAND(band) && bands_hold(&bed->bands, (enum band)band, x, y))
			return true;
	return false;
}

static void paint_row(struct cover_boxes *boxes, const struct planted_bed *bed,
	unsigned int bands, int y)
{
	const struct region *r = bed->bands.region;
	nm cell = bed->basis->survey->cell;

	for (int x = r->left; x <= r->most.x; x++) {
		int from = x;

		while (x <= r->most.x && is_held(bed, bands, x, y))
			x++;
		if (x > from)
			cover_boxes_add(boxes, (struct cover_box){ from * cell, y * cell,
				x * cell, (y + 1) * cell, WITHIN });
	}
}

static struct cover_box turned(struct cover_box box)
{
	return (struct cover_box){ box.top, box.left, box.bottom, box.right, box.owner };
}

static void keep_ground(struct cover *out, struct arena *arena, const struct cover *cut,
	bool is_turned)
{
	struct cover_box *pieces = arena_new(arena, cut->count, sizeof *pieces);

	*out = (struct cover){ pieces, 0 };
	for (size_t i = 0; i < cut->count; i++)
		if (cut->pieces[i].owner == WITHIN)
			pieces[out->count++] = is_turned ? turned(cut->pieces[i]) :
				cut->pieces[i];
}

void planted_bed_cut(struct cover *out, struct arena *arena, const struct planted_bed *bed,
	unsigned int bands, enum bed_cut way)
{
	const struct region *r = bed->bands.region;
	struct cover_boxes boxes = { .list = NULL };
	struct arena all = ARENA_EMPTY;
	struct cover cut = { .count = 0 };

	paint_wall(&boxes, bed);
	for (int y = r->first_cell.y; y <= r->most.y && !stop_asked(); y++)
		paint_row(&boxes, bed, bands, y);
	for (size_t i = 0; way == CUT_SIDE_BY_SIDE && i < boxes.count; i++)
		boxes.list[i] = turned(boxes.list[i]);
	if (!stop_asked())
		cover_sweep(&cut, &all, boxes.list, boxes.count);
	keep_ground(out, arena, &cut, way == CUT_SIDE_BY_SIDE);
	free(boxes.list);
	arena_clear(&all);
}

double planted_bed_area(const struct planted_bed *bed, unsigned int bands)
{
	struct arena arena = ARENA_EMPTY;
	nm2 areas[] = { [UNDER_THE_WALL] = 0, [WITHIN] = 0 };
	struct cover ground;

	planted_bed_cut(&ground, &arena, bed, bands, CUT_ABOVE_ONE_ANOTHER);
	cover_areas(&ground, areas);
	arena_clear(&arena);
	return cover_m2(areas[WITHIN]);
}
