#include "takeoff/fence/post_holes.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>

static int compare_holes(const void *a, const void *b)
{
	const struct post_hole_at *one = a, *other = b;
	int order = compare(one->band, other->band);

	return order ? order : compare(one->at.x, other->at.x);
}

struct post_holes post_holes_of(const struct fences *fences, const struct plot *plot)
{
	struct post_holes holes = { NULL, 0, plot_cell(plot) };
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
			const struct fencing *fencing = &fences->list[i];
			const struct fence_post *post = &fencing->posts[j];

			holes.list[holes.count++] = (struct post_hole_at){ post->at,
				fencing_hole(fencing, post->kind)->across,
				(int)(fencing->fence - plot->details.fences), j, HOLE_UNMARKED,
				post->at.y / holes.widest };
		}
	sort(holes.list, holes.count, sizeof *holes.list, compare_holes);
	return holes;
}

/* The first hole of a band that is not left of `left`. */
static size_t first_from(const struct post_holes *holes, int64_t band, nm left)
{
	const struct post_hole_at wanted = { .at = { left, 0 }, .band = band };
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

void post_holes_meeting(const struct post_holes *holes, const struct cover_box *box,
	void (*meet)(void *data, struct post_hole_at *hole), void *data)
{
	const struct near_thing thing = { box->left, box->top, box->right, box->bottom, 0 };
	nm reach = holes->widest / 2;
	int64_t last = (box->bottom + reach) / holes->widest;

	if (holes->count == 0)
		return;
	for (int64_t band = (box->top - reach) / holes->widest; band <= last && !stop_asked();
	     band++)
		for (size_t i = first_from(holes, band, box->left - reach); i < holes->count; i++) {
			struct post_hole_at *hole = &holes->list[i];

			if (hole->band != band || hole->at.x > box->right + reach)
				break;
			if (near_disc(&thing, hole->at.x, hole->at.y, hole->across))
				meet(data, hole);
		}
}

void post_hole_put(struct snag *snag, const struct survey *survey, const struct post_hole_at *hole)
{
	struct spot at = hole->at;
	nm cell = survey->cell;
	struct place first = { (int)((at.x - 1) / cell), (int)((at.y - 1) / cell) };

	snag_put_around(snag, first, (struct rectangle){ first.x, first.y,
		held(at.x / cell, 0, survey->columns - 1), held(at.y / cell, 0,
		survey->rows - 1) });
}
