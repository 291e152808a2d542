#include "takeoff/fence/fence_holes.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>

struct hole {
	struct spot at;
	nm across;
	int64_t band; /* of the plan, from top to bottom, each as high as the widest hole */
	int region;   /* whose wall it overlaps; NO_REGION: none */
};

/* The holes of all fences, by band, each from left to right. */
struct holes {
	struct hole *list;
	size_t count;
	nm widest;
};

static int compare_holes(const void *a, const void *b)
{
	const struct hole *one = a, *other = b;
	int order = compare(one->band, other->band);

	return order ? order : compare(one->at.x, other->at.x);
}

static struct holes holes_of(const struct fences *fences)
{
	struct holes holes = { NULL, 0, 1 };
	size_t count = 0;

	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		count += (size_t)fencing->post_count;
		holes.widest = nm_most(holes.widest, nm_most(fencing->hole.across,
			fencing->gate_hole.across));
	}
	holes.list = memory_new(count, sizeof *holes.list);
	for (int i = 0; i < fences->count; i++)
		for (int j = 0; j < fences->list[i].post_count && !stop_asked(); j++) {
			const struct fence_post *post = &fences->list[i].posts[j];

			holes.list[holes.count++] = (struct hole){ post->at,
				fencing_hole(&fences->list[i], post->kind)->across,
				post->at.y / holes.widest, NO_REGION };
		}
	if (count > 1)
		sort(holes.list, holes.count, sizeof *holes.list, compare_holes);
	return holes;
}

/* ---- Walls ----------------------------------------------------------------------------------- */

/* How far a place is from a range, 0 within it. */
static nm off(nm at, nm low, nm high)
{
	return nm_most(0, nm_most(low - at, at - high));
}

static bool overlaps(const struct hole *hole, const struct cover_box *box)
{
	nm x = 2 * off(hole->at.x, box->left, box->right);
	nm y = 2 * off(hole->at.y, box->top, box->bottom);

	return x < hole->across && y < hole->across &&
		x * x + y * y < hole->across * hole->across;
}

/* The first hole of a band that is not left of `left`. */
static size_t first_from(const struct holes *holes, int64_t band, nm left)
{
	const struct hole wanted = { .at = { left, 0 }, .band = band };
	size_t low = 0, high = holes->count;

	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (compare_holes(&holes->list[middle], &wanted) < 0)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

/* Marks what of a band overlaps the box. */
static void meet_band(struct holes *holes, int64_t band, const struct cover_box *box, int region)
{
	nm reach = holes->widest / 2;
	size_t i = first_from(holes, band, box->left - reach);

	for (; i < holes->count && holes->list[i].band == band; i++) {
		struct hole *hole = &holes->list[i];

		if (hole->at.x > box->right + reach)
			break;
		if (overlaps(hole, box) && (hole->region == NO_REGION || region < hole->region))
			hole->region = region;
	}
}

static void meet_walls(struct holes *holes, const struct zones *zones, const struct cover *ground)
{
	for (size_t i = 0; i < ground->count && !stop_asked(); i++) {
		const struct cover_box *box = &ground->pieces[i];
		const struct zone *zone = &zones->list[box->owner];
		int64_t last = (box->bottom + holes->widest / 2) / holes->widest;

		if (zone->part != DIG_WALL)
			continue;
		for (int64_t band = nm_most(0, box->top - holes->widest / 2) / holes->widest;
		     band <= last && !stop_asked(); band++)
			meet_band(holes, band, box, zone->region);
	}
}

/* ---- Beds ------------------------------------------------------------------------------------ */

/* The first cell, in reading order, that a spot within the plan or on its edge touches. */
static struct place first_touched(const struct survey *survey, struct spot at)
{
	return (struct place){ (int)nm_most(0, (at.x - 1) / survey->cell),
		(int)nm_most(0, (at.y - 1) / survey->cell) };
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
	struct holes holes;

	if (!has_beds(survey))
		return;
	holes = holes_of(fences);
	if (holes.count > 0)
		meet_walls(&holes, zones, ground);
	for (size_t i = 0; i < holes.count && !stop_asked(); i++) {
		const struct hole *hole = &holes.list[i];
		struct place cell = first_touched(survey, hole->at);
		bool is_wall = hole->region != NO_REGION;
		struct snag *snag;

		if (!is_wall && !is_within_bed(survey, hole->at))
			continue;
		snag = snag_add(basis->snags, SNAG_HOLE_WALL, is_wall ? hole->region :
			survey_region_at(survey, cell.x, cell.y), SNAG_FIGURES_OF(hole->across));
		snag_put_around(snag, cell, (struct rectangle){ cell.x, cell.y,
			held(hole->at.x / survey->cell, 0, survey->columns - 1),
			held(hole->at.y / survey->cell, 0, survey->rows - 1) });
		snag->kind = !is_wall;
	}
	free(holes.list);
}
