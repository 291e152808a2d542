#include "takeoff/watering/slabs.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>

nm chord_nearest(const struct chord *chord, nm along)
{
	return nm_most(chord->from, nm_least(along, chord->to));
}

/* A corner of the inner face, along and across. */
struct point {
	nm along, across;
};

/* A side of the inner face across the slabs. */
struct edge {
	nm along, from, to; /* from < to */
};

struct edges {
	struct edge *list;
	size_t count;
};

/* How the inner face comes of an outline. */
struct face {
	struct place from; /* the grid point that all is measured from */
	nm cell, depth;
};

/* The corner between two sides, moved into the region square to both. */
static struct point inner_corner(const struct face *face, const struct loop *loop, int corner)
{
	const struct corner *a = &loop->corners[(corner + loop->count - 1) % loop->count];
	const struct corner *b = &loop->corners[corner];
	const struct corner *c = &loop->corners[(corner + 1) % loop->count];
	int dx = sign(b->x - a->x) + sign(c->x - b->x), dy = sign(b->y - a->y) + sign(c->y - b->y);

	/* With y down the right hand of (dx, dy), where the region is, is (-dy, dx). */
	return (struct point){ (b->x - face->from.x) * face->cell - dy * face->depth,
		(b->y - face->from.y) * face->cell + dx * face->depth };
}

static void box_find(struct slabs *out, const struct face *face, const struct loop *outer)
{
	struct point from = inner_corner(face, outer, 0), to = from;

	for (int i = 1; i < outer->count; i++) {
		struct point at = inner_corner(face, outer, i);

		from = (struct point){ nm_least(from.along, at.along),
			nm_least(from.across, at.across) };
		to = (struct point){ nm_most(to.along, at.along), nm_most(to.across, at.across) };
	}
	out->is_upright = to.across - from.across > to.along - from.along;
	out->box = out->is_upright ? (struct chord){ from.across, to.across } :
		(struct chord){ from.along, to.along };
	out->near = out->is_upright ? from.along : from.across;
	out->far = out->is_upright ? to.along : to.across;
}

static struct point turned(struct point at, bool is_upright)
{
	return is_upright ? (struct point){ at.across, at.along } : at;
}

static void add_edges(struct edges *edges, const struct face *face, const struct loop *loop,
	bool is_upright)
{
	for (int i = 0; i < loop->count; i++) {
		struct point a = turned(inner_corner(face, loop, i), is_upright);
		struct point b = turned(inner_corner(face, loop, (i + 1) % loop->count),
			is_upright);

		if (a.along == b.along && a.across != b.across)
			edges->list[edges->count++] = (struct edge){ a.along,
				nm_least(a.across, b.across), nm_most(a.across, b.across) };
	}
}

static struct edges edges_of(const struct face *face, const struct outline *outline,
	bool is_upright)
{
	struct edges edges = { NULL, 0 };
	size_t sides = 0;

	for (int i = 0; i < outline->count; i++)
		sides += (size_t)outline->loops[i].count;
	edges.list = memory_new(sides, sizeof *edges.list);
	for (int i = 0; i < outline->count && !stop_asked(); i++)
		add_edges(&edges, face, &outline->loops[i], is_upright);
	return edges;
}

static int by_start(const void *a, const void *b)
{
	const struct edge *one = a, *other = b;

	return compare(one->from, other->from);
}

static int by_along(const void *a, const void *b)
{
	const struct edge *one = a, *other = b;

	return compare(one->along, other->along);
}

/* ---- The sweep ------------------------------------------------------------------------------- */

/* Edges that cross the slab at hand; those that come are behind them. */
struct sweep {
	struct edges edges; /* by where they start */
	size_t next;
	struct edge *open;
	size_t count;
};

/* Leaves those that end at `at`, takes those that start there. */
static void sweep_to(struct sweep *sweep, nm at)
{
	size_t kept = 0;

	for (size_t i = 0; i < sweep->count; i++)
		if (sweep->open[i].to > at)
			sweep->open[kept++] = sweep->open[i];
	sweep->count = kept;
	while (sweep->next < sweep->edges.count && sweep->edges.list[sweep->next].from <= at)
		sweep->open[sweep->count++] = sweep->edges.list[sweep->next++];
	sort(sweep->open, sweep->count, sizeof *sweep->open, by_along);
}

/* Where the next edge starts or ends. */
static nm next_stop(const struct sweep *sweep)
{
	nm next = sweep->next < sweep->edges.count ? sweep->edges.list[sweep->next].from :
		sweep->open[0].to;

	for (size_t i = 0; i < sweep->count; i++)
		next = nm_least(next, sweep->open[i].to);
	return next;
}

/* Edges leave the ground and enter it by turns. */
static struct slab slab_of(const struct sweep *sweep, struct arena *arena, nm from, nm to)
{
	struct chord *chords = arena_new(arena, sweep->count / 2, sizeof *chords);

	for (size_t i = 0; i + 1 < sweep->count; i += 2)
		chords[i / 2] = (struct chord){ sweep->open[i].along, sweep->open[i + 1].along };
	return (struct slab){ from, to, chords, (int)(sweep->count / 2) };
}

void slabs_find(struct slabs *out, struct arena *arena, const struct basis *basis, int region,
	nm depth)
{
	struct arena outlines = ARENA_EMPTY;
	struct outline outline;
	struct sweep sweep = { .next = 0 };
	struct slab *list = NULL;
	size_t count = 0, capacity = 0;
	const struct region *of = &basis->survey->regions[region];
	const struct face face = { { of->left, of->first_cell.y }, basis->survey->cell, depth };

	*out = (struct slabs){ .count = 0 };
	outline_trace(&outline, &outlines, basis->plot, basis->survey, region);
	if (!stop_asked()) {
		box_find(out, &face, &outline.loops[0]);
		sweep.edges = edges_of(&face, &outline, out->is_upright);
		sweep.open = memory_new(sweep.edges.count, sizeof *sweep.open);
		sort(sweep.edges.list, sweep.edges.count, sizeof *sweep.edges.list, by_start);
	}
	for (nm at = out->near; at < out->far && !stop_asked();) {
		nm to;

		sweep_to(&sweep, at);
		if (sweep.count == 0 || stop_asked())
			break;
		to = next_stop(&sweep);
		list = arena_grow(arena, list, count, &capacity, sizeof *list);
		list[count++] = slab_of(&sweep, arena, at, to);
		at = to;
	}
	out->list = list;
	out->count = (int)count;
	free(sweep.edges.list);
	free(sweep.open);
	arena_clear(&outlines);
}

/* ---- Looking --------------------------------------------------------------------------------- */

/* The chords of two slabs, those that meet joined. */
static const struct chord *joined(const struct slab *a, const struct slab *b, struct arena *arena,
	int *count)
{
	struct chord *chords = arena_new(arena, (size_t)a->count + (size_t)b->count,
		sizeof *chords);
	int i = 0, j = 0;

	*count = 0;
	while (i < a->count || j < b->count) {
		bool is_first = j == b->count ||
			(i < a->count && a->chords[i].from <= b->chords[j].from);
		struct chord next = is_first ? a->chords[i++] : b->chords[j++];

		if (*count > 0 && next.from <= chords[*count - 1].to)
			chords[*count - 1].to = nm_most(chords[*count - 1].to, next.to);
		else
			chords[(*count)++] = next;
	}
	return chords;
}

int slab_at(const struct slabs *slabs, nm at)
{
	int low = 0, high = slabs->count - 1;

	while (low < high) {
		int middle = low + (high - low) / 2;

		if (slabs->list[middle].to < at)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

const struct chord *slabs_at(const struct slabs *slabs, struct arena *arena, nm at, int *count)
{
	int number = slab_at(slabs, at);
	const struct slab *slab = &slabs->list[number];

	if (number + 1 < slabs->count && slab->to == at)
		return joined(slab, slab + 1, arena, count);
	*count = slab->count;
	return slab->chords;
}

int slab_chord_before(const struct slab *slab, nm along)
{
	int low = 0, high = slab->count - 1;

	while (low < high) {
		int middle = low + (high - low + 1) / 2;

		if (slab->chords[middle].from <= along)
			low = middle;
		else
			high = middle - 1;
	}
	return low;
}

const struct chord *slab_holding(const struct slab *slab, const struct chord *chord)
{
	const struct chord *before = &slab->chords[slab_chord_before(slab, chord->from)];

	return before->from <= chord->from && chord->to <= before->to ? before : NULL;
}
