#include "survey/surface.h"
#include "base/number.h"

#include <math.h>

static const int64_t QUARTER_TURN = 90 * MILLION; /* millionths of a degree */

/* ---- Houses ---------------------------------------------------------------------------------- */

struct house_edges {
	nm left, top, right, bottom;
};

static struct house_edges edges_of(const struct surface *surface, size_t house)
{
	const struct rectangle *r = &surface->houses->items[house].cells;
	nm cell = surface->cell;

	return (struct house_edges){ r->left * cell, r->top * cell, (r->right + 1) * cell,
		(r->bottom + 1) * cell };
}

/* What must be added to get from a place of a line into a part of it. */
static nm short_of(nm at, nm low, nm high)
{
	return at < low ? low - at : at > high ? high - at : 0;
}

bool surface_from_house(const struct surface *surface, nm right, nm down, struct from_house *out)
{
	double nearest = INFINITY;

	*out = (struct from_house){ .house = 0 };
	for (size_t i = 0; i < surface->houses->count; i++) {
		const struct house_edges edges = edges_of(surface, i);
		double x = (double)-short_of(right, edges.left, edges.right);
		double y = (double)-short_of(down, edges.top, edges.bottom);
		double distance = sqrt(x * x + y * y);

		if (distance >= nearest)
			continue;
		nearest = distance;
		*out = (struct from_house){ (int)i, llround(distance),
			distance > 0 ? x / distance : 0, distance > 0 ? y / distance : 0 };
	}
	return surface->houses->count > 0;
}

/* ---- The ground of a plot -------------------------------------------------------------------- */

/* The spot of a side of the plan nearest to a part of the same line; the middle one of several. */
static nm nearest_along(nm side, nm low, nm high)
{
	nm from = nm_most(0, nm_least(low, side)), to = nm_most(0, nm_least(high, side));

	return from + (to - from) / 2;
}

/* Where the finished ground is as the existing one, where no level of it is told. */
static void start_at_existing(struct surface *surface, const struct ground *ground)
{
	if (surface->is_away) {
		const struct house_edges edges = edges_of(surface, 0);

		surface->right = nearest_along(ground->columns * surface->cell, edges.left,
			edges.right);
		surface->down = nearest_along(ground->rows * surface->cell, edges.top,
			edges.bottom);
	}
	surface->drop = surface->has_levels ?
		levels_drop(surface->levels, surface->right, surface->down) : 0;
}

/* Exact where it falls along the grid: a quarter turn is done without a sine. */
static void fall_towards(struct surface *surface, int64_t bearing, int64_t north)
{
	int64_t turn = (bearing - north + 4 * QUARTER_TURN) % (4 * QUARTER_TURN);
	double rest = (double)(turn % QUARTER_TURN) / (double)MILLION * M_PI / 180;
	double right = surface->fall * sin(rest), down = -surface->fall * cos(rest);

	for (int64_t i = turn / QUARTER_TURN; i > 0; i--) {
		double turned = -down;

		down = right;
		right = turned;
	}
	surface->fall_right = right;
	surface->fall_down = down;
}

struct surface surface_of(const struct plot *plot)
{
	const struct details *details = &plot->details;
	const struct finish *finish = &details->finish;
	struct surface surface = { .levels = &details->levels, .houses = &details->around.houses,
		.cell = plot_cell(plot), .has_levels = details->levels.step > 0 };
	bool has_fall = finish->has_fall && (!finish->is_away || surface.houses->count > 0);
	struct from_house from;

	surface.has_finish = finish->has_level || has_fall;
	surface.is_away = has_fall && finish->is_away;
	if (has_fall)
		surface.fall = (double)finish->percent / (double)(100 * MILLION);
	if (!finish->is_away)
		fall_towards(&surface, finish->bearing,
			block_number(&details->head, HEAD_NORTH));
	if (finish->has_level) {
		surface.right = finish->at.x * surface.cell;
		surface.down = finish->at.y * surface.cell;
		surface.drop = finish->drop;
	} else if (has_fall) {
		start_at_existing(&surface, &plot->ground);
	}
	if (surface.is_away && surface_from_house(&surface, surface.right, surface.down, &from))
		surface.drop -= llround(surface.fall * (double)from.distance);
	return surface;
}

bool surface_is_told(const struct surface *surface)
{
	return surface->has_levels || surface->has_finish;
}

bool surface_is_graded(const struct surface *surface)
{
	return surface->has_levels && surface->has_finish;
}

/* ---- Drops ----------------------------------------------------------------------------------- */

/* 0 where nothing is told of it. */
static nm finished_drop(const struct surface *surface, nm right, nm down)
{
	struct from_house from;

	if (surface->is_away) {
		surface_from_house(surface, right, down, &from);
		return surface->drop + llround(surface->fall * (double)from.distance);
	}
	return surface->drop + llround(surface->fall_right * (double)(right - surface->right) +
		surface->fall_down * (double)(down - surface->down));
}

nm surface_existing(const struct surface *surface, nm right, nm down)
{
	return surface->has_levels ? levels_drop(surface->levels, right, down) :
		finished_drop(surface, right, down);
}

nm surface_finished(const struct surface *surface, nm right, nm down)
{
	return surface->has_finish ? finished_drop(surface, right, down) :
		surface_existing(surface, right, down);
}

nm surface_formation(const struct surface *surface, nm right, nm down, nm dig)
{
	return surface_finished(surface, right, down) + dig;
}

int64_t surface_fall(const struct surface *surface, nm right, nm down, double to_right,
	double to_down)
{
	nm x = llround(to_right * (double)surface->cell / 2);
	nm y = llround(to_down * (double)surface->cell / 2);
	nm fall = surface_finished(surface, right + x, down + y) -
		surface_finished(surface, right - x, down - y);

	return llround((double)fall / (double)surface->cell * 100 * (double)MILLION);
}

/* ---- Along a line ---------------------------------------------------------------------------- */

static void look_at(struct surface_span *span, const struct surface *surface, nm right, nm down)
{
	nm drop = surface_finished(surface, right, down);

	span->highest = nm_least(span->highest, drop);
	span->lowest = nm_most(span->lowest, drop);
}

/* A level line where y is the same, else an upright one. */
struct line {
	nm fixed, low, high;
	bool is_level;
};

static void look_along(struct surface_span *span, const struct surface *surface,
	const struct line *line, nm at)
{
	nm on = nm_most(line->low, nm_least(at, line->high));

	look_at(span, surface, line->is_level ? on : line->fixed,
		line->is_level ? line->fixed : on);
}

struct surface_span surface_along(const struct surface *surface, nm right, nm down, nm to_right,
	nm to_down)
{
	bool is_level = down == to_down;
	const struct line line = { is_level ? down : right,
		is_level ? nm_least(right, to_right) : nm_least(down, to_down),
		is_level ? nm_most(right, to_right) : nm_most(down, to_down), is_level };
	nm start = surface_finished(surface, right, down), step = surface->levels->step;
	struct surface_span span = { start, start };

	look_at(&span, surface, to_right, to_down);
	if (surface->has_levels && !surface->has_finish)
		for (nm at = line.low - line.low % step; at < line.high; at += step)
			look_along(&span, surface, &line, at);
	for (size_t i = 0; surface->is_away && i < surface->houses->count; i++) {
		const struct house_edges edges = edges_of(surface, i);

		look_along(&span, surface, &line, is_level ? edges.left : edges.top);
		look_along(&span, surface, &line, is_level ? edges.right : edges.bottom);
	}
	return span;
}
