#include "report/drawing/fence_lines.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/fence/stand.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { LEVEL = '=', UPRIGHT = '#', POST = 'o' };

/* "2." of the second fence, "" of the first. */
static void write_prefix(int fence, char *prefix, size_t size)
{
	prefix[0] = '\0';
	if (fence > 0)
		snprintf(prefix, size, "%d.", fence + 1);
}

void fence_gate_name(int fence, int gate, char name[FENCE_NAME_MOST])
{
	char prefix[FENCE_NAME_MOST / 2];

	write_prefix(fence, prefix, sizeof prefix);
	snprintf(name, FENCE_NAME_MOST, "G%s%d", prefix, gate + 1);
}

void fence_post_name(int fence, int post, char name[FENCE_NAME_MOST])
{
	char prefix[FENCE_NAME_MOST / 2];

	write_prefix(fence, prefix, sizeof prefix);
	snprintf(name, FENCE_NAME_MOST, "%s%d", prefix, post + 1);
}

static bool is_fence(char c)
{
	return c == LEVEL || c == UPRIGHT || c == POST;
}

/* ---- Legs and gates -------------------------------------------------------------------------- */

/* From the first to the last point of a leg or gate, in reading order. */
static struct rectangle extent(const struct points *points, struct leg leg)
{
	struct leg f = leg_forward(leg);

	return (struct rectangle){ f.from.x * points->cuts.across, f.from.y * points->cuts.down,
		f.to.x * points->cuts.across, f.to.y * points->cuts.down };
}

/* Where legs meet, the upright one is seen. */
static void draw_leg(struct points *points, struct leg leg)
{
	struct rectangle on = extent(points, leg);

	if (leg_is_upright(leg))
		for (int row = on.top; row <= on.bottom; row++)
			points_put(points, on.left, row, UPRIGHT);
	else
		for (int column = on.left; column <= on.right; column++)
			if (points_at(points, column, on.top) != UPRIGHT)
				points_put(points, column, on.top, LEVEL);
}

/* Both ends have posts, and so are fence. */
static void draw_gate(struct points *points, struct leg gate)
{
	struct rectangle on = extent(points, gate);
	bool is_upright = leg_is_upright(gate);
	int length = on.right - on.left + on.bottom - on.top;

	for (int i = 0; i <= length; i++) {
		int column = is_upright ? on.left : on.left + i;
		int row = is_upright ? on.top + i : on.top;

		if (i > 0 && i < length)
			points_put(points, column, row, POINT_GAP);
		else if (!is_fence(points_at(points, column, row)))
			points_put(points, column, row, is_upright ? UPRIGHT : LEVEL);
	}
}

/* In the gap of a level gate, beside its posts if need be; across the gap of an upright one. */
static bool name_gate(struct points *points, struct leg gate, const char *name)
{
	struct rectangle on = extent(points, gate);
	int columns = (int)strlen(name), first = on.left + (on.right - on.left - columns + 1) / 2;

	if (leg_is_upright(gate))
		return points_write_across(points, on.left, (on.top + on.bottom) / 2, name,
			POINT_GAP);
	for (int i = 0; i < columns; i++)
		if (points_at(points, first + i, on.top) != POINT_GAP)
			return false;
	if (!points_are_together(points, first, columns))
		return false;
	points_write(points, first, on.top, name);
	return true;
}

/* ---- Posts ----------------------------------------------------------------------------------- */

/* One direction of the plan, for posts of one fence. */
struct axis {
	nm cell, size, inset; /* size: the plan's */
	int pitch;            /* characters to a cell */
	int middle;           /* of the mirror, in half characters */
};

/* The points from which a post may have been moved in to where it stands: low to high, of which
 * the one at the plan's edge comes first. */
struct reach {
	int first, last;
};

/* What is midway between two points goes towards the middle of the mirror. */
static int nearest_point(const struct axis *axis, nm at)
{
	nm twice = 2 * at * axis->pitch, point = twice / (2 * axis->cell);
	nm rest = twice % (2 * axis->cell);
	bool is_before = 2 * point + 1 <= axis->middle;

	return (int)(point + (rest > axis->cell || (rest == axis->cell && is_before)));
}

static struct reach reach_of(const struct axis *axis, nm at)
{
	nm inset = nm_least(axis->inset, axis->size / 2);
	int end = (int)(axis->size / axis->cell) * axis->pitch;

	if (at <= inset)
		return (struct reach){ 0, nearest_point(axis, at) };
	if (at >= axis->size - inset)
		return (struct reach){ end, nearest_point(axis, at) };
	return (struct reach){ nearest_point(axis, at), nearest_point(axis, at) };
}

/* The first of the points in reach that is on a fence; else the nearest one. */
static struct place post_point(const struct points *points, const struct axis *across,
	const struct axis *down, struct spot at)
{
	struct reach x = reach_of(across, at.x), y = reach_of(down, at.y);
	int dx = x.first <= x.last ? 1 : -1, dy = y.first <= y.last ? 1 : -1;

	for (int row = y.first; row != y.last + dy; row += dy)
		for (int column = x.first; column != x.last + dx; column += dx)
			if (is_fence(points_at(points, column, row)))
				return (struct place){ column, row };
	return (struct place){ x.last, y.last };
}

/* Goes over the posts of all fences, with the point of each. */
static void each_post(struct points *points, const struct plot *plot, const struct fences *fences,
	void (*act)(struct points *points, struct place at, int fence, int post))
{
	const struct mirror mirror = mirror_of(plot);
	struct place middle = points_middle(points, &mirror);

	for (int f = 0; f < fences->count; f++) {
		const struct fencing *fencing = &fences->list[f];
		struct stand stand = stand_of(plot, &fencing->fence->block);
		struct axis across = { stand.cell, stand.width, stand.inset, points->cuts.across,
			middle.x };
		struct axis down = { stand.cell, stand.height, stand.inset, points->cuts.down,
			middle.y };

		for (int i = 0; i < fencing->post_count && !stop_asked(); i++)
			act(points, post_point(points, &across, &down, fencing->posts[i].at), f, i);
	}
}

static void draw_post(struct points *points, struct place at, int fence, int post)
{
	(void)fence;
	(void)post;
	points_put(points, at.x, at.y, POST);
}

static bool is_ground(char c)
{
	return c == POINT_FREE || c == POINT_BLANK || c == '.';
}

/* Whether a number may stand there, away from the word beyond: along a level leg so that some of it
 * is left to see, or on free ground and dots. */
static bool takes_number(const struct points *points, int column, int row, int columns, int beyond)
{
	char after = points_at(points, beyond, row);
	int legs = 0, ground = 0;

	for (int i = column; i < column + columns; i++) {
		char here = points_at(points, i, row);

		legs += here == LEVEL;
		ground += is_ground(here);
	}
	return points_are_together(points, column, columns) &&
		((legs == columns && after == LEVEL) ||
		(ground == columns && !points_is_word(after)));
}

static void number_post(struct points *points, struct place at, int fence, int post)
{
	char number[FENCE_NAME_MOST];
	int columns;

	fence_post_name(fence, post, number);
	columns = (int)strlen(number);
	if (isdigit((unsigned char)points_at(points, at.x + 1, at.y)) ||
	    isdigit((unsigned char)points_at(points, at.x - 1, at.y)))
		return; /* of another post, as near as characters are */
	if (takes_number(points, at.x + 1, at.y, columns, at.x + columns + 1))
		points_write(points, at.x + 1, at.y, number);
	else if (takes_number(points, at.x - columns, at.y, columns, at.x - columns - 1))
		points_write(points, at.x - columns, at.y, number);
}

/* ---- All of it ------------------------------------------------------------------------------- */

void fence_lines_draw(struct fence_lines *out, struct points *points, const struct plot *plot,
	const struct fences *fences, struct arena *arena)
{
	struct nameless_gate *nameless = NULL;
	char name[FENCE_NAME_MOST];

	*out = (struct fence_lines){ .nameless = NULL };
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].leg_count && !stop_asked(); i++)
			draw_leg(points, fences->list[f].legs[i].on);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].gate_count; i++)
			draw_gate(points, fences->list[f].gates[i].on);
	each_post(points, plot, fences, draw_post);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].gate_count && !stop_asked(); i++) {
			fence_gate_name(f, i, name);
			if (name_gate(points, fences->list[f].gates[i].on, name))
				continue;
			nameless = arena_grow(arena, nameless, out->nameless_count,
				&out->nameless_capacity, sizeof *nameless);
			nameless[out->nameless_count++] = (struct nameless_gate){ f, i };
		}
	out->nameless = nameless;
}

void fence_lines_number(struct points *points, const struct plot *plot,
	const struct fences *fences)
{
	each_post(points, plot, fences, number_post);
}
