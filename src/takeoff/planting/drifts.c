#include "takeoff/planting/drifts.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/outline.h"
#include "takeoff/planting/lattice.h"

#include <limits.h>
#include <stdlib.h>

nm planting_wall(const struct region *region)
{
	return region_is_raised(region) ?
		block_effective(&region->entry->block, BED_BLOCK)->as.size.across : 0;
}

/* ---- The band -------------------------------------------------------------------------------- */

/* The cells around it; none where right < left. */
static struct rectangle box_of(const struct planted_bed *bed, enum band band)
{
	const struct region *r = bed->bands.region;
	struct rectangle box = { INT_MAX, INT_MAX, -1, -1 };

	if (band == BAND_WHOLE)
		return (struct rectangle){ r->left, r->first_cell.y, r->most.x, r->most.y };
	for (int y = r->first_cell.y; y <= r->most.y && !stop_asked(); y++)
		for (int x = r->left; x <= r->most.x; x++)
			if (bands_hold(&bed->bands, band, x, y)) {
				box.left = least(box.left, x);
				box.top = least(box.top, y);
				box.right = most(box.right, x);
				box.bottom = most(box.bottom, y);
			}
	return box;
}

/* Turned over left for right, top for bottom, or both, within its box. */
static bool is_own_image(const struct planted_bed *bed, enum band band,
	const struct rectangle *box, bool over_across, bool over_down)
{
	for (int y = box->top; y <= box->bottom && !stop_asked(); y++)
		for (int x = box->left; x <= box->right; x++)
			if (bands_hold(&bed->bands, band, x, y) != bands_hold(&bed->bands, band,
				over_across ? box->left + box->right - x : x,
				over_down ? box->top + box->bottom - y : y))
				return false;
	return true;
}

/* ---- Where rows begin ------------------------------------------------------------------------ */

/* -1 before the axis, 1 behind it, 0 where the bed's middle is on it or there is none. */
static int side_of(const struct planted_bed *bed, bool is_level)
{
	const struct region *r = bed->bands.region;
	int twice_middle = is_level ? r->first_cell.y + r->most.y + 1 : r->left + r->most.x + 1;

	return mirror_has_axis(&bed->mirror, is_level) ?
		sign(twice_middle - mirror_axis(&bed->mirror, is_level)) : 0;
}

/* Whether rows begin at the high end, for they are images of rows that begin at the low one. */
static bool begins_high(const struct planted_bed *bed, bool is_level)
{
	const struct region *r = bed->bands.region;
	int across, down;

	if (bed->mirror.kind != MIRROR_HALF_TURN)
		return side_of(bed, is_level) > 0;
	across = sign(r->left + r->most.x + 1 - bed->mirror.across);
	down = sign(r->first_cell.y + r->most.y + 1 - bed->mirror.down);
	return across > 0 || (across == 0 && down > 0);
}

/* first, last: cells of the band; face_first, face_last: of the bed. */
static struct lattice_way way_of(const struct planted_bed *bed, nm spacing, bool is_level,
	int first, int last, int face_first, int face_last)
{
	nm cell = bed->basis->survey->cell, half = lattice_half(spacing);
	nm face_low = face_first * cell + bed->wall, face_high = (face_last + 1) * cell - bed->wall;
	struct lattice_way way = { .low = nm_most(first * cell, face_low),
		.high = nm_least((last + 1) * cell, face_high) };

	way.clear_low = nm_most(way.low, face_low + half);
	way.clear_high = nm_least(way.high, face_high - half);
	if ((first == face_first) != (last == face_last))
		way.start = first == face_first ? START_LOW : START_HIGH;
	else
		way.start = begins_high(bed, is_level) ? START_HIGH : START_LOW;
	return way;
}

static void set_in_the_middle(struct lattice_way *way)
{
	way->start = way->start == START_LOW ? START_MIDDLE_LOW : START_MIDDLE_HIGH;
}

static struct lattice_ground ground_of(const struct planted_bed *bed, enum band band,
	const struct rectangle *box, nm spacing)
{
	const struct region *r = bed->bands.region;
	struct lattice_ground ground = { .spacing = spacing,
		.across = way_of(bed, spacing, false, box->left, box->right, r->left, r->most.x),
		.down = way_of(bed, spacing, true, box->top, box->bottom, r->first_cell.y,
			r->most.y) };
	bool half_turn = is_own_image(bed, band, box, true, true);

	/* What has its inner face on one side alone begins there. */
	if ((box->left == r->left) == (box->right == r->most.x) &&
		(half_turn || is_own_image(bed, band, box, true, false)))
		set_in_the_middle(&ground.across);
	if ((box->top == r->first_cell.y) == (box->bottom == r->most.y) &&
		(half_turn || is_own_image(bed, band, box, false, true)))
		set_in_the_middle(&ground.down);
	return ground;
}

/* ---- Places ---------------------------------------------------------------------------------- */

bool planting_is_clear(const struct survey *survey, int region, struct spot at, nm around)
{
	nm cell = survey->cell, left = at.x - around, right = at.x + around;
	nm top = at.y - around, bottom = at.y + around;

	if (left < 0 || top < 0 || right > survey->columns * cell || bottom > survey->rows * cell)
		return false;
	for (nm y = top / cell; y * cell < bottom || y * cell <= top; y++) {
		const struct run *run;

		if (y == survey->rows || left / cell == survey->columns)
			return false;
		run = &survey->runs[survey_run_at(survey, (int)(left / cell), (int)y)];
		if (run->region != region || run->right * cell < right)
			return false;
	}
	return true;
}

/* Whether one of the cells that have the spot, also on their edge, is in the band. */
static bool is_in_band(const struct planted_bed *bed, enum band band, struct spot at)
{
	nm cell = bed->basis->survey->cell;
	int right = (int)(at.x / cell), below = (int)(at.y / cell);
	int left = (int)((at.x - 1) / cell), above = (int)((at.y - 1) / cell);

	if (band == BAND_WHOLE)
		return true;
	for (int y = above; y <= below; y++)
		for (int x = left; x <= right; x++)
			if (bands_hold(&bed->bands, band, x, y))
				return true;
	return false;
}

int64_t drift_lay(struct placed *placed, const struct planted_bed *bed, enum band band,
	const struct placed_plant *plant, bool is_square)
{
	nm spacing = placed->kinds[plant->kind].spacing;
	nm clear = bed->wall + lattice_half(spacing);
	struct rectangle box = box_of(bed, band);
	struct placed_plant next = *plant;
	struct lattice_ground ground;
	struct lattice lattice;
	/* Plants of this drift are not near to each other. */
	bool has_others = placed->count > 0;
	size_t before = placed->count;

	if (box.right < box.left || stop_asked())
		return 0;
	ground = ground_of(bed, band, &box, spacing);
	ground.is_square = is_square;
	lattice_make(&lattice, &ground);
	for (int64_t row = 0; row < lattice.rows.count && !stop_asked(); row++)
		for (int64_t i = 0; i < lattice_count(&lattice, row); i++) {
			next.at = lattice_place(&lattice, row, i);
			if (!planting_is_clear(bed->basis->survey, bed->region, next.at, clear) ||
				!is_in_band(bed, band, next.at) ||
				(has_others && placed_is_near(placed, next.at, next.kind)))
				continue;
			if (!placed_add(placed, &next))
				return (int64_t)(placed->count - before);
		}
	return (int64_t)(placed->count - before);
}

/* ---- Its area -------------------------------------------------------------------------------- */

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

static void paint_band(struct cover_boxes *boxes, const struct planted_bed *bed, enum band band,
	int y)
{
	const struct region *r = bed->bands.region;
	nm cell = bed->basis->survey->cell;

	for (int x = r->left; x <= r->most.x; x++) {
		int from = x;

		while (x <= r->most.x && bands_hold(&bed->bands, band, x, y))
			x++;
		if (x > from)
			cover_boxes_add(boxes, (struct cover_box){ from * cell, y * cell,
				x * cell, (y + 1) * cell, WITHIN });
	}
}

double drift_area(const struct planted_bed *bed, enum band band)
{
	const struct region *r = bed->bands.region;
	struct cover_boxes boxes = { .list = NULL };
	struct arena arena = ARENA_EMPTY;
	nm2 areas[] = { [UNDER_THE_WALL] = 0, [WITHIN] = 0 };
	struct cover cover = { .count = 0 };

	paint_wall(&boxes, bed);
	for (int y = r->first_cell.y; y <= r->most.y && !stop_asked(); y++)
		paint_band(&boxes, bed, band, y);
	if (!stop_asked())
		cover_sweep(&cover, &arena, boxes.list, boxes.count);
	if (!stop_asked())
		cover_areas(&cover, areas);
	free(boxes.list);
	arena_clear(&arena);
	return cover_m2(areas[WITHIN]);
}
