#include "takeoff/planting/drifts.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/planting/lattice.h"

#include <limits.h>
#include <stdlib.h>

/* A drift that is being laid. */
struct drift_job {
	struct placed *placed;
	const struct planted_bed *bed;
	enum band band;
	int kind;
	nm spacing;
	bool is_square;
};

/* ---- The band -------------------------------------------------------------------------------- */

/* The cells around it; none where right < left. */
static struct rectangle box_of(const struct drift_job *job)
{
	const struct region *r = job->bed->bands.region;
	struct rectangle box = { INT_MAX, INT_MAX, -1, -1 };

	for (int y = r->first_cell.y; y <= r->most.y && !stop_asked(); y++)
		for (int x = r->left; x <= r->most.x; x++)
			if (bands_hold(&job->bed->bands, job->band, x, y)) {
				box.left = least(box.left, x);
				box.top = least(box.top, y);
				box.right = most(box.right, x);
				box.bottom = most(box.bottom, y);
			}
	return box;
}

/* Turned over left for right, top for bottom, or both, within its box. */
static bool is_own_image(const struct drift_job *job, const struct rectangle *box,
	bool over_across, bool over_down)
{
	const struct bands *bands = &job->bed->bands;

	for (int y = box->top; y <= box->bottom && !stop_asked(); y++)
		for (int x = box->left; x <= box->right; x++)
			if (bands_hold(bands, job->band, x, y) != bands_hold(bands, job->band,
				over_across ? box->left + box->right - x : x,
				over_down ? box->top + box->bottom - y : y))
				return false;
	return true;
}

/* ---- The mirror ------------------------------------------------------------------------------ */

/* Where the middle of ground lies, from an axis of the mirror in half cells: -1 before it, 1 behind
 * it, 0 on it. */
static int side_of(const struct planted_bed *bed, nm low, nm high, int axis)
{
	return sign(low + high - axis * bed->basis->survey->cell);
}

/* Whether rows begin at the high end, for they are images of rows that begin at the low one. */
static bool begins_high(const struct planted_bed *bed, const struct cover_box *box, bool is_level)
{
	const struct mirror *mirror = &bed->mirror;
	int across, down;

	if (mirror->kind != MIRROR_HALF_TURN)
		return mirror_has_axis(mirror, is_level) &&
			(is_level ? side_of(bed, box->top, box->bottom, mirror->down) :
			side_of(bed, box->left, box->right, mirror->across)) > 0;
	across = side_of(bed, box->left, box->right, mirror->across);
	down = side_of(bed, box->top, box->bottom, mirror->down);
	return across > 0 || (across == 0 && down > 0);
}

/* What images the mirror asks for in ground whose box this is, where it is its own image. */
static struct lattice_images images_of(const struct planted_bed *bed, const struct cover_box *box)
{
	const struct mirror *mirror = &bed->mirror;
	bool on_upright = side_of(bed, box->left, box->right, mirror->across) == 0;
	bool on_level = side_of(bed, box->top, box->bottom, mirror->down) == 0;

	return (struct lattice_images){
		.across = on_upright && mirror_has_axis(mirror, false),
		.down = on_level && mirror_has_axis(mirror, true),
		.turned = on_upright && on_level && mirror->kind == MIRROR_HALF_TURN };
}

static enum lattice_start in_the_middle(const struct planted_bed *bed, const struct cover_box *box,
	bool is_level)
{
	return begins_high(bed, box, is_level) ? START_MIDDLE_HIGH : START_MIDDLE_LOW;
}

/* ---- One rectangle --------------------------------------------------------------------------- */

/* Cells of the band along a way, and those of the bed. */
struct reach_along {
	int first, last, face_first, face_last;
};

static struct lattice_way way_of(const struct drift_job *job, const struct cover_box *box,
	const struct reach_along *cells, bool is_level, bool is_own)
{
	const struct planted_bed *bed = job->bed;
	nm cell = bed->basis->survey->cell, half = lattice_half(job->spacing);
	nm face_low = cells->face_first * cell + bed->wall;
	nm face_high = (cells->face_last + 1) * cell - bed->wall;
	bool at_low = cells->first == cells->face_first, at_high = cells->last == cells->face_last;
	struct lattice_way way = { .low = nm_most(cells->first * cell, face_low),
		.high = nm_least((cells->last + 1) * cell, face_high) };

	way.clear_low = nm_most(way.low, face_low + half);
	way.clear_high = nm_least(way.high, face_high - half);
	/* What has its inner face on one side alone begins there. */
	if (at_low != at_high)
		way.start = at_low ? START_LOW : START_HIGH;
	else if (is_own)
		way.start = in_the_middle(bed, box, is_level);
	else
		way.start = begins_high(bed, box, is_level) ? START_HIGH : START_LOW;
	return way;
}

static struct lattice_ground whole_ground(const struct drift_job *job,
	const struct rectangle *cells)
{
	const struct region *r = job->bed->bands.region;
	nm cell = job->bed->basis->survey->cell;
	const struct cover_box box = { cells->left * cell, cells->top * cell,
		(cells->right + 1) * cell, (cells->bottom + 1) * cell, 0 };
	bool turned = is_own_image(job, cells, true, true);
	bool across = is_own_image(job, cells, true, false);
	bool down = is_own_image(job, cells, false, true);
	struct lattice_images images = images_of(job->bed, &box);

	images.across = images.across && across;
	images.down = images.down && down;
	images.turned = images.turned && turned;
	return (struct lattice_ground){ .spacing = job->spacing, .is_square = job->is_square,
		.images = images,
		.across = way_of(job, &box, &(struct reach_along){ cells->left, cells->right,
			r->left, r->most.x }, false, turned || across),
		.down = way_of(job, &box, &(struct reach_along){ cells->top, cells->bottom,
			r->first_cell.y, r->most.y }, true, turned || down) };
}

/* ---- Rectangles of its ground ---------------------------------------------------------------- */

static struct lattice_way way_in(const struct drift_job *job, const struct cover_box *box,
	bool is_level)
{
	nm half = lattice_half(job->spacing);
	nm low = is_level ? box->top : box->left, high = is_level ? box->bottom : box->right;

	return (struct lattice_way){ low, high, low + half, high - half,
		in_the_middle(job->bed, box, is_level) };
}

static struct lattice_ground piece_ground(const struct drift_job *job, const struct cover_box *box)
{
	return (struct lattice_ground){ .across = way_in(job, box, false),
		.down = way_in(job, box, true), .spacing = job->spacing,
		.is_square = job->is_square, .images = images_of(job->bed, box) };
}

/* ---- Places ---------------------------------------------------------------------------------- */

/* Places of a drift, laid in one of its ways. */
struct places {
	struct spot *list; /* owned */
	size_t count, capacity;
	int64_t room;
};

static void add_place(struct places *places, const struct drift_job *job, struct spot at)
{
	if (!planted_bed_is_clear(job->bed, at, lattice_half(job->spacing)) ||
		!planted_bed_holds(job->bed, job->band, at))
		return;
	places->room++;
	if (placed_is_near(job->placed, at, job->kind))
		return;
	places->list = memory_grow(places->list, places->count, &places->capacity,
		sizeof *places->list);
	places->list[places->count++] = at;
}

/* No more than may be placed at all, and one. */
static void add_places(struct places *places, const struct drift_job *job,
	const struct lattice_ground *ground)
{
	struct lattice lattice;

	lattice_make(&lattice, ground);
	for (int64_t row = 0; row < lattice.rows.count && !stop_asked(); row++)
		for (int64_t i = 0; i < lattice_count(&lattice, row) &&
			places->count <= PLACED_MOST; i++)
			add_place(places, job, lattice_place(&lattice, row, i));
}

static void keep_more(struct places *kept, struct places *others)
{
	if (others->count > kept->count) {
		struct places fewer = *kept;

		*kept = *others;
		*others = fewer;
	}
	free(others->list);
}

/* Ground that is one rectangle is laid already. */
static void try_cut(struct places *kept, const struct drift_job *job, enum bed_cut way)
{
	struct arena arena = ARENA_EMPTY;
	struct places places = { .list = NULL };
	struct cover ground;

	planted_bed_cut(&ground, &arena, job->bed, BIT_OF_BAND(job->band), way);
	for (size_t i = 0; ground.count > 1 && i < ground.count && !stop_asked(); i++) {
		struct lattice_ground piece = piece_ground(job, &ground.pieces[i]);

		add_places(&places, job, &piece);
	}
	keep_more(kept, &places);
	arena_clear(&arena);
}

struct drift_laid drift_lay(struct placed *placed, const struct planted_bed *bed, enum band band,
	const struct placed_plant *plant, bool is_square)
{
	const struct drift_job job = { placed, bed, band, plant->kind,
		placed->kinds[plant->kind].size.spacing, is_square };
	struct rectangle cells = box_of(&job);
	struct places places = { .list = NULL };
	struct drift_laid laid = { 0, 0 };
	struct placed_plant next = *plant;

	if (cells.right < cells.left || stop_asked())
		return laid;
	const struct lattice_ground whole = whole_ground(&job, &cells);

	add_places(&places, &job, &whole);
	try_cut(&places, &job, CUT_ABOVE_ONE_ANOTHER);
	try_cut(&places, &job, CUT_SIDE_BY_SIDE);
	laid.room = places.room;
	for (size_t i = 0; i < places.count && !stop_asked(); i++) {
		next.at = places.list[i];
		if (!placed_add(placed, &next))
			break;
		laid.count++;
	}
	free(places.list);
	return laid;
}
