#include "takeoff/ground/strips.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/ground/ticks.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

/* A box in strips' terms: ticks along them, rows across them. */
struct strip_box {
	int from, to;    /* ticks */
	int first, last; /* rows */
};

struct layer {
	const struct strips *strips;
	struct strips_way way;
	struct strips_sink *sink;
	nm edge;    /* where the first row begins, across; if turned, from the far side */
	struct ticks ticks; /* where boxes begin and end along the strips */
	struct strip_box *boxes; /* by first row */
	size_t box_count;
	int rows;
	struct strip_box *open; /* those in the present row */
	size_t open_count;
	int *change; /* by tick: boxes that begin less those that end */
	/* from each tick to the next: whether a piece lies in the row before, in this one */
	bool *above, *now;
};

/* ---- Along and across ------------------------------------------------------------------------ */

/* A box along the strips, and across them in the direction in which the rows follow each other. */
struct bounds {
	nm start, end, near, far;
};

static struct bounds bounds_of(const struct layer *layer, const struct cover_box *box)
{
	struct bounds at = layer->way.is_upright ?
		(struct bounds){ box->top, box->bottom, box->left, box->right } :
		(struct bounds){ box->left, box->right, box->top, box->bottom };

	return layer->way.is_turned ? (struct bounds){ at.start, at.end, -at.far, -at.near } : at;
}

static struct cover_box piece_box(const struct layer *layer, int row, int from, int to)
{
	nm pitch = layer->strips->width - layer->strips->lap;
	nm near = layer->edge + row * pitch, far = near + layer->strips->width;
	nm low = layer->way.is_turned ? -far : near, high = layer->way.is_turned ? -near : far;
	nm start = layer->ticks.list[from], end = layer->ticks.list[to];

	return layer->way.is_upright ? (struct cover_box){ low, start, high, end, row } :
		(struct cover_box){ start, low, end, high, row };
}

/* ---- Preparing ------------------------------------------------------------------------------- */

static void find_ticks(struct layer *layer)
{
	const struct strips *strips = layer->strips;

	for (size_t i = 0; i < strips->count && !stop_asked(); i++) {
		struct bounds at = bounds_of(layer, &strips->boxes[i]);

		ticks_add(&layer->ticks, at.start);
		ticks_add(&layer->ticks, at.end);
	}
	ticks_number(&layer->ticks);
}

static int row_at(const struct layer *layer, nm across)
{
	nm past = across - layer->edge - layer->strips->width;

	return past < 0 ? 0 : (int)(past / (layer->strips->width - layer->strips->lap)) + 1;
}

static struct strip_box strip_box_of(const struct layer *layer, const struct cover_box *box)
{
	struct bounds at = bounds_of(layer, box);

	return (struct strip_box){ ticks_find(&layer->ticks, at.start),
		ticks_find(&layer->ticks, at.end), row_at(layer, at.near),
		row_at(layer, at.far - 1) };
}

static void find_edge(struct layer *layer)
{
	const struct strips *strips = layer->strips;
	struct bounds all = bounds_of(layer, &strips->boxes[0]);

	for (size_t i = 1; i < strips->count && !stop_asked(); i++) {
		struct bounds at = bounds_of(layer, &strips->boxes[i]);

		all.near = nm_least(all.near, at.near);
		all.far = nm_most(all.far, at.far);
	}
	layer->edge = all.near;
	layer->rows = row_at(layer, all.far - 1) + 1;
}

/* Sorts the boxes by their first rows. */
static void find_boxes(struct layer *layer)
{
	const struct strips *strips = layer->strips;
	size_t *starts = memory_new((size_t)layer->rows + 1, sizeof *starts);

	for (size_t i = 0; i < strips->count && !stop_asked(); i++)
		starts[row_at(layer, bounds_of(layer, &strips->boxes[i]).near) + 1]++;
	for (int row = 0; row < layer->rows; row++)
		starts[row + 1] += starts[row];
	layer->boxes = memory_new(strips->count, sizeof *layer->boxes);
	layer->box_count = strips->count;
	for (size_t i = 0; i < strips->count && !stop_asked(); i++) {
		struct strip_box box = strip_box_of(layer, &strips->boxes[i]);

		layer->boxes[starts[box.first]++] = box;
	}
	free(starts);
}

/* ---- Row by row ------------------------------------------------------------------------------ */

/* Reports each piece of the row. */
static void report_pieces(const struct layer *layer, int row)
{
	int from = 0;

	for (int i = 0; i < layer->ticks.count; i++) {
		if (!layer->now[i] && from < i) {
			struct cover_box piece = piece_box(layer, row, from, i);

			layer->sink->piece(layer->sink, &piece);
		}
		from = layer->now[i] ? from : i + 1;
	}
}

static void report_edges(const struct layer *layer)
{
	int from = 0;

	for (int i = 0; i < layer->ticks.count; i++) {
		bool is_edge = layer->now[i] || layer->above[i];

		if (!is_edge && from < i)
			layer->sink->edge(layer->sink,
				layer->ticks.list[i] - layer->ticks.list[from]);
		from = is_edge ? from : i + 1;
	}
}

/* From where ground ends, at one tick, to where it goes on at another. */
static bool is_run_through(const struct layer *layer, int end, int next)
{
	return layer->ticks.list[next] - layer->ticks.list[end] < layer->strips->bridge;
}

/* Lays the row's pieces on through the gaps between them that are too short to be cut for. */
static void bridge_gaps(struct layer *layer)
{
	int end = layer->ticks.count; /* where the ground before ends */

	for (int i = 0; i < layer->ticks.count; i++) {
		if (!layer->now[i])
			continue;
		if (end < i && is_run_through(layer, end, i))
			memset(layer->now + end, true, (size_t)(i - end) * sizeof *layer->now);
		end = i + 1;
	}
}

/* Opens the boxes that begin in the row, and finds where it has ground. Returns the next box. */
static size_t find_ground(struct layer *layer, int row, size_t next)
{
	size_t kept = 0;
	int boxes = 0;

	while (next < layer->box_count && layer->boxes[next].first == row)
		layer->open[layer->open_count++] = layer->boxes[next++];
	memset(layer->change, 0, (size_t)layer->ticks.count * sizeof *layer->change);
	for (size_t i = 0; i < layer->open_count && !stop_asked(); i++) {
		struct strip_box box = layer->open[i];

		layer->change[box.from]++;
		layer->change[box.to]--;
		if (box.last > row)
			layer->open[kept++] = box;
	}
	layer->open_count = kept;
	for (int i = 0; i < layer->ticks.count; i++) {
		boxes += layer->change[i];
		layer->now[i] = boxes > 0;
	}
	return next;
}

static void lay_rows(struct layer *layer)
{
	size_t next = 0, ticks = (size_t)layer->ticks.count;

	layer->open = memory_new(layer->box_count, sizeof *layer->open);
	layer->change = memory_new(ticks, sizeof *layer->change);
	layer->above = memory_new(ticks, sizeof *layer->above);
	layer->now = memory_new(ticks, sizeof *layer->now);
	for (int row = 0; row < layer->rows && !stop_asked(); row++) {
		bool *above = layer->above;

		next = find_ground(layer, row, next);
		bridge_gaps(layer);
		report_edges(layer);
		report_pieces(layer, row);
		layer->above = layer->now;
		layer->now = above;
	}
	memset(layer->now, 0, ticks * sizeof *layer->now);
	report_edges(layer);
	free(layer->open);
	free(layer->change);
	free(layer->above);
	free(layer->now);
}

void strips_lay(const struct strips *strips, struct strips_way way, struct strips_sink *sink)
{
	struct layer layer = { .strips = strips, .way = way, .sink = sink };

	assert(strips->lap >= 0 && strips->lap <= strips->width / 2);
	if (strips->count == 0)
		return;
	find_edge(&layer);
	find_ticks(&layer);
	if (!stop_asked())
		find_boxes(&layer);
	if (!stop_asked())
		lay_rows(&layer);
	ticks_fini(&layer.ticks);
	free(layer.boxes);
}
