#include "survey/cover.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdbool.h>
#include <stdlib.h>

/* What shows in a band, from left to right. */
struct visible {
	nm left, right;
	int owner;
	size_t piece; /* which it belongs to */
};

struct line {
	struct visible *visible;
	size_t count, capacity;
};

/* Boxes are held by their index in the caller's list: the lower, the earlier painted. */
struct sweep {
	struct arena *arena;
	const struct cover_box **waiting; /* by top, then left; [next] on are still to come */
	size_t count, next;
	/* in the band, by left; room for its successor */
	const struct cover_box **standing, **spare;
	size_t standing_count;
	const struct cover_box **heap; /* over the point looked at, the first painted on top */
	size_t heap_count;
	struct line line, above; /* of this band and the one before */
	struct cover_box *pieces;
	size_t piece_count, piece_capacity;
};

static int by_top_then_left(const void *a, const void *b)
{
	const struct cover_box *one = *(const struct cover_box *const *)a;
	const struct cover_box *other = *(const struct cover_box *const *)b;

	return one->top != other->top ? compare(one->top, other->top) :
		compare(one->left, other->left);
}

/* ---- The boxes over a point ------------------------------------------------------------------ */

static void heap_push(struct sweep *sweep, const struct cover_box *box)
{
	size_t at = sweep->heap_count++;

	for (; at > 0 && sweep->heap[(at - 1) / 2] > box; at = (at - 1) / 2)
		sweep->heap[at] = sweep->heap[(at - 1) / 2];
	sweep->heap[at] = box;
}

static void heap_pop(struct sweep *sweep)
{
	const struct cover_box *last = sweep->heap[--sweep->heap_count];
	size_t at = 0;

	for (;;) {
		size_t child = 2 * at + 1;

		if (child + 1 < sweep->heap_count && sweep->heap[child + 1] < sweep->heap[child])
			child++;
		if (child >= sweep->heap_count || sweep->heap[child] > last)
			break;
		sweep->heap[at] = sweep->heap[child];
		at = child;
	}
	sweep->heap[at] = last;
}

/* ---- One band -------------------------------------------------------------------------------- */

static void line_add(struct line *line, nm left, nm right, int owner)
{
	struct visible *last = line->count ? &line->visible[line->count - 1] : NULL;

	if (last && last->right == left && last->owner == owner) {
		last->right = right;
		return;
	}
	line->visible = memory_grow(line->visible, line->count, &line->capacity,
		sizeof *line->visible);
	line->visible[line->count++] = (struct visible){ left, right, owner, 0 };
}

/* From left to right: at each point the first painted box over it shows, until it ends or another
 * begins. */
static void line_walk(struct sweep *sweep)
{
	size_t i = 0;
	nm x = sweep->standing[0]->left;

	sweep->line.count = 0;
	sweep->heap_count = 0;
	while ((i < sweep->standing_count || sweep->heap_count > 0) && !stop_asked()) {
		nm end;

		for (; i < sweep->standing_count && sweep->standing[i]->left <= x; i++)
			heap_push(sweep, sweep->standing[i]);
		while (sweep->heap_count > 0 && sweep->heap[0]->right <= x)
			heap_pop(sweep);
		end = sweep->heap_count > 0 ? sweep->heap[0]->right : INT64_MAX;
		if (i < sweep->standing_count)
			end = nm_least(end, sweep->standing[i]->left);
		if (sweep->heap_count > 0)
			line_add(&sweep->line, x, end, sweep->heap[0]->owner);
		x = end;
	}
}

static size_t piece_add(struct sweep *sweep, const struct visible *visible, nm top)
{
	sweep->pieces = arena_grow(sweep->arena, sweep->pieces, sweep->piece_count,
		&sweep->piece_capacity, sizeof *sweep->pieces);
	sweep->pieces[sweep->piece_count] = (struct cover_box){ .left = visible->left, .top = top,
		.right = visible->right, .owner = visible->owner };
	return sweep->piece_count++;
}

/* The pieces of the band above go on where the same shows again. */
static void line_join(struct sweep *sweep, nm top, nm bottom)
{
	const struct line *above = &sweep->above;
	size_t old = 0;

	for (size_t i = 0; i < sweep->line.count; i++) {
		struct visible *s = &sweep->line.visible[i];
		const struct visible *o;

		while (old < above->count && above->visible[old].left < s->left)
			old++;
		o = old < above->count ? &above->visible[old] : NULL;
		s->piece = o && o->left == s->left && o->right == s->right &&
			o->owner == s->owner &&
			sweep->pieces[o->piece].bottom == top ? o->piece : piece_add(sweep, s, top);
		sweep->pieces[s->piece].bottom = bottom;
	}
}

/* ---- From band to band ----------------------------------------------------------------------- */

/* Lets go what ends at y and takes in what begins there, in order. */
static void standing_renew(struct sweep *sweep, nm y)
{
	const struct cover_box **renewed = sweep->spare;
	size_t count = 0;

	for (size_t i = 0; i < sweep->standing_count; i++) {
		const struct cover_box *box = sweep->standing[i];

		while (sweep->next < sweep->count && sweep->waiting[sweep->next]->top == y &&
			sweep->waiting[sweep->next]->left < box->left)
			renewed[count++] = sweep->waiting[sweep->next++];
		if (box->bottom > y)
			renewed[count++] = box;
	}
	while (sweep->next < sweep->count && sweep->waiting[sweep->next]->top == y)
		renewed[count++] = sweep->waiting[sweep->next++];
	sweep->spare = sweep->standing;
	sweep->standing = renewed;
	sweep->standing_count = count;
}

/* Where the next box begins or an open one ends. */
static nm band_bottom(const struct sweep *sweep)
{
	nm bottom = sweep->next < sweep->count ? sweep->waiting[sweep->next]->top : INT64_MAX;

	for (size_t i = 0; i < sweep->standing_count; i++)
		bottom = nm_least(bottom, sweep->standing[i]->bottom);
	return bottom;
}

static void sweep_down(struct sweep *sweep)
{
	nm y = sweep->count ? sweep->waiting[0]->top : 0;

	while ((sweep->next < sweep->count || sweep->standing_count > 0) && !stop_asked()) {
		nm bottom;

		standing_renew(sweep, y);
		bottom = band_bottom(sweep);
		if (sweep->standing_count > 0) {
			struct line above = sweep->above;

			line_walk(sweep);
			line_join(sweep, y, bottom);
			sweep->above = sweep->line;
			sweep->line = above;
		}
		y = bottom;
	}
}

static bool box_is_empty(const struct cover_box *box)
{
	return box->left >= box->right || box->top >= box->bottom;
}

void cover_boxes_add(struct cover_boxes *boxes, struct cover_box box)
{
	boxes->list = memory_grow(boxes->list, boxes->count, &boxes->capacity, sizeof *boxes->list);
	boxes->list[boxes->count++] = box;
}

void cover_sweep(struct cover *out, struct arena *arena, const struct cover_box *boxes,
	size_t count)
{
	struct sweep sweep = { .arena = arena };

	sweep.waiting = memory_new(count + 1, sizeof(void *));
	sweep.standing = memory_new(count + 1, sizeof(void *));
	sweep.spare = memory_new(count + 1, sizeof(void *));
	sweep.heap = memory_new(count + 1, sizeof(void *));
	for (size_t i = 0; i < count && !stop_asked(); i++)
		if (!box_is_empty(&boxes[i]))
			sweep.waiting[sweep.count++] = &boxes[i];
	sort(sweep.waiting, sweep.count, sizeof(void *), by_top_then_left);
	sweep_down(&sweep);
	free(sweep.waiting);
	free(sweep.standing);
	free(sweep.spare);
	free(sweep.heap);
	free(sweep.line.visible);
	free(sweep.above.visible);
	*out = (struct cover){ sweep.pieces, sweep.piece_count };
}

/* ---- Areas ----------------------------------------------------------------------------------- */

nm2 cover_box_area(const struct cover_box *box)
{
	return box_is_empty(box) ? 0 : (nm2)(box->right - box->left) * (box->bottom - box->top);
}

void cover_areas(const struct cover *cover, nm2 *areas)
{
	for (size_t i = 0; i < cover->count && !stop_asked(); i++)
		areas[cover->pieces[i].owner] += cover_box_area(&cover->pieces[i]);
}

struct cover_box cover_clip(struct cover_box box, const struct cover_box *within)
{
	return (struct cover_box){ nm_most(box.left, within->left), nm_most(box.top, within->top),
		nm_least(box.right, within->right), nm_least(box.bottom, within->bottom),
		box.owner };
}

double cover_m2(nm2 area)
{
	return (double)area / ((double)NM_PER_M * (double)NM_PER_M);
}
