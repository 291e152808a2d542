#include "plot/edit/strip.h"
#include "base/number.h"
#include "plot/edit/fence_remake.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/lines_map.h"
#include "plot/edit/plants_move.h"
#include "plot/edit/surroundings_move.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

int strip_side(const struct plot *plot, const struct strip *strip)
{
	struct lines_map map = lines_map_of(plot, strip);
	int side = map.is_short ? 0 : map.lines[map.count];

	lines_map_fini(&map);
	return side;
}

enum strip_fault strip_check(const struct plot *plot, const struct strip *strip)
{
	struct mirror mirror = mirror_of(plot);
	int side = strip_side(plot, strip);

	if (strip->is_on_axis && mirror.kind == MIRROR_HALF_TURN && strip->count % 2 &&
		mirror_axis(&mirror, strip->is_level) % 2 == 0)
		return STRIP_UNEVEN;
	if (side > SIDE_MOST)
		return STRIP_TOO_LARGE;
	return side < 1 ? STRIP_TOO_FEW : STRIP_FITS;
}

/* ---- Ground, names and axis ------------------------------------------------------------------ */

static void ground_copy_rows(struct ground *to, const struct ground *from,
	const struct lines_map *map)
{
	for (int y = 0; y < from->rows; y++)
		for (int i = map->lines[y]; i < map->lines[y + 1]; i++)
			memcpy(ground_at(to, 0, i), ground_at(from, 0, y), (size_t)to->columns);
}

static void ground_copy_columns(struct ground *to, const struct ground *from,
	const struct lines_map *map)
{
	for (int y = 0; y < from->rows; y++)
		for (int x = 0; x < from->columns; x++)
			memset(ground_at(to, 0, y) + map->lines[x], ground_cell(from, x, y),
				(size_t)map->copies[x]);
}

struct cell_way {
	const struct ground *ground;
	const struct lines_map *map;
	bool is_level;
};

/* To the first of its copies; where there is none to what comes next, if that is of its letter:
 * so a name comes back from a strip that was put in and is taken out again. */
static bool cell_way(const void *how, struct place *at)
{
	const struct cell_way *way = how;
	int *cell = way->is_level ? &at->y : &at->x;
	char letter = ground_cell(way->ground, at->x, at->y);

	while (*cell < way->map->count && way->map->copies[*cell] == 0 &&
		ground_cell(way->ground, at->x, at->y) == letter)
		++*cell;
	if (*cell == way->map->count || ground_cell(way->ground, at->x, at->y) != letter)
		return false;
	*cell = way->map->lines[*cell];
	return true;
}

static void ground_change(struct plot *plot, const struct lines_map *map, bool is_level)
{
	struct ground old = plot->ground, *ground = &plot->ground;
	const struct cell_way cells = { &old, map, is_level };
	int side = map->lines[map->count];

	ground_init(ground, is_level ? old.columns : side, is_level ? side : old.rows);
	if (is_level)
		ground_copy_rows(ground, &old, map);
	else
		ground_copy_columns(ground, &old, map);
	names_move(&plot->details.names, &old, cell_way, &cells);
	drifts_move(&plot->details.plants, &old, cell_way, &cells);
	ground_fini(&old);
}

/* In half cells. An axis that is mirrored at stays between what has images: from the outermost line
 * on one side that has one to that image. Any other goes where its cell or line does. */
static int axis_moved(const struct lines_map *map, int axis, bool is_mirrored)
{
	int from = most(0, axis - map->count);

	if (is_mirrored)
		return map->lines[from] + map->lines[axis - from];
	return 2 * map->lines[axis / 2] + axis % 2;
}

static void axis_move(struct plot *plot, const struct lines_map *map, bool is_level)
{
	struct value axis = *block_value(&plot->details.head, HEAD_AXIS);
	struct mirror mirror = mirror_of(plot);
	int *at = is_level ? &axis.as.place.y : &axis.as.place.x;

	if (!axis.set)
		return;
	*at = axis_moved(map, *at, mirror_has_axis(&mirror, is_level));
	axis.set = *at >= 1 && *at <= 2 * map->lines[map->count] - 1;
	block_set(&plot->details.head, HEAD_AXIS, axis);
}

static int cell_moved(const struct lines_map *map, int cell)
{
	return least(map->lines[cell], map->lines[map->count] - 1);
}

struct place strip_cell(const struct plot *plot, const struct strip *strip, struct place cell)
{
	struct lines_map map = lines_map_of(plot, strip);
	int *at = strip->is_level ? &cell.y : &cell.x;

	*at = cell_moved(&map, *at);
	lines_map_fini(&map);
	return cell;
}

/* ---- Fences ---------------------------------------------------------------------------------- */

struct fence_change {
	struct mirror mirror; /* as it was */
	const struct lines_map *map;
	bool is_level;
};

static struct place point_moved(const struct fence_change *change, struct place point)
{
	int *at = change->is_level ? &point.y : &point.x;

	*at = change->map->lines[*at];
	return point;
}

static struct leg leg_moved(const struct fence_change *change, struct leg leg)
{
	return (struct leg){ point_moved(change, leg.from), point_moved(change, leg.to) };
}

/* A leg that the strip crosses, from `low` on, the same way round. */
static struct leg leg_from(struct leg leg, bool is_level, int low, int length)
{
	bool is_forward = leg_equal(leg, leg_forward(leg));
	int from = is_forward ? low : low + length, to = is_forward ? low + length : low;

	*(is_level ? &leg.from.y : &leg.from.x) = from;
	*(is_level ? &leg.to.y : &leg.to.x) = to;
	return leg;
}

/* Where a gate begins whose ground is `ground` now. The end that leads stays with its ground, so
 * that the image of a gate is again its image; one on the axis stays there, as near as it can. */
static int gate_low(const struct fence_change *change, struct leg gate, struct leg ground)
{
	bool is_level = change->is_level;
	int lead = mirror_leg_lead(&change->mirror, gate), length = leg_length(gate);
	int axis = mirror_axis(&change->mirror, is_level);
	int ends = is_level ? gate.from.y + gate.to.y : gate.from.x + gate.to.x;
	int first = is_level ? ground.from.y : ground.from.x;
	int last = (is_level ? ground.to.y : ground.to.x) - length;

	if (mirror_has_axis(&change->mirror, is_level) && abs(ends - axis) <= 1) {
		int room = axis_moved(change->map, axis, true) - length;

		room += lead < 0 ? room & 1 : -(room & 1);
		return held(room / 2, least(first, last), most(first, last));
	}
	return lead < 0 ? last : first;
}

/* Adds a gate where it goes, of its own width; by its other end where the fence is too short at
 * the first. */
static void gate_add(const struct fence_change *change, struct leg gate, const struct legs *fence,
	struct legs *gates)
{
	struct leg forward = leg_forward(gate), ground = leg_moved(change, forward), placed;
	bool is_level = change->is_level;
	int length = leg_length(gate), low, ends;

	if (leg_is_upright(gate) != is_level || leg_length(ground) == length) {
		legs_add(gates, leg_moved(change, gate));
		return;
	}
	low = gate_low(change, forward, ground);
	ends = is_level ? ground.from.y + ground.to.y : ground.from.x + ground.to.x;
	placed = leg_from(gate, is_level, low, length);
	if (!legs_cover(fence, placed))
		placed = leg_from(gate, is_level, ends - length - low, length);
	legs_add(gates, placed);
}

/* Points and gates go where they are to go, and the runs are as they were drawn; false where legs
 * or gates are then not as those of a fence are, which is to be made anew. */
static bool runs_move(const struct fence_change *change, struct fence *fence,
	const struct legs *gates)
{
	struct legs legs = LEGS_EMPTY;
	bool are_straight = true;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 0; j < fence->runs[i].count; j++)
			fence->runs[i].points[j] = point_moved(change,
				fence->runs[i].points[j]);
	fence->gates.count = 0;
	legs_add_all(&fence->gates, gates);
	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count; i++)
		are_straight = are_straight && leg_is_straight(legs.items[i]);
	are_straight = are_straight && legs_first_overlap(&legs) == legs.count &&
		legs_first_overlap(gates) == gates->count &&
		fence_first_stray(fence) == gates->count;
	legs_fini(&legs);
	return are_straight;
}

/* Gates that lose all their ground go beside it, where no other is in their way. */
static struct legs gates_moved(const struct fence_change *change, const struct legs *old,
	const struct legs *fence)
{
	struct legs gates = LEGS_EMPTY;

	for (int some = 0; some <= 1; some++) {
		gates.count = 0;
		for (size_t i = 0; i < old->count; i++) {
			struct leg ground = leg_moved(change, old->items[i]);

			if (!some || leg_is_straight(ground))
				gate_add(change, old->items[i], fence, &gates);
		}
		if (legs_first_overlap(&gates) == gates.count)
			break;
	}
	return gates;
}

static void fence_change(const struct fence_change *change, struct fence *fence)
{
	struct legs old = LEGS_EMPTY, legs = LEGS_EMPTY, gates;

	fence_legs(fence, &old);
	for (size_t i = 0; i < old.count; i++) {
		struct leg leg = leg_moved(change, old.items[i]);

		if (leg_is_straight(leg))
			legs_add(&legs, leg);
	}
	legs_join(&legs);
	gates = gates_moved(change, &fence->gates, &legs);
	if (!runs_move(change, fence, &gates))
		fence_remake(fence, &legs, &gates);
	legs_fini(&old);
	legs_fini(&legs);
	legs_fini(&gates);
}

/* ---- What is around -------------------------------------------------------------------------- */

struct around_change {
	const struct lines_map *map;
	bool is_level;
	nm cell;
};

/* What is beyond the plan keeps its distance from the edge. */
static struct place corner_moved(const void *how, struct place corner)
{
	const struct around_change *change = how;
	int *at = change->is_level ? &corner.y : &corner.x;
	int on = held(*at, 0, change->map->count);

	*at += change->map->lines[on] - on;
	return corner;
}

/* Ground that is put in is that of the column or row it has its letters of, drawn out. */
static nm spot_before(const void *how, bool is_down, nm at)
{
	const struct around_change *change = how;
	const struct lines_map *map = change->map;
	int i = 0;

	if (is_down != change->is_level)
		return at;
	while (i < map->count && (nm)map->lines[i + 1] * change->cell <= at)
		i++;
	at -= map->lines[i] * change->cell;
	return i * change->cell + (i < map->count ? at / map->copies[i] : at);
}

static void around_change(struct plot *plot, const struct lines_map *map, bool is_level)
{
	const struct around_change change = { map, is_level, plot_cell(plot) };
	const struct points_way points = { &plot->ground, corner_moved, &change };
	const struct spots_way spots = { &plot->ground, change.cell, spot_before, &change };

	surroundings_move(&plot->details.around, &points);
	finish_move(&plot->details.finish, &points);
	levels_move(&plot->details.levels, &spots);
}

/* ---- Specimens ------------------------------------------------------------------------------- */

struct specimen_way {
	struct mirror mirror; /* as it was */
	const struct lines_map *map;
	const struct strip *strip;
};

/* Before the axis, on it or after it: less than 0, 0, more than 0; without one: before. */
static int side_of(const struct specimen_way *way, int cell)
{
	bool is_level = way->strip->is_level;

	return mirror_has_axis(&way->mirror, is_level) ?
		2 * cell + 1 - mirror_axis(&way->mirror, is_level) : -1;
}

/* Columns that are put in where it stands come before it, on the other side of the axis after it:
 * so images stay images, and none goes where they are taken out again. Those on the axis come
 * between the two sides. */
static bool specimen_way(const void *how, struct place *at)
{
	const struct specimen_way *way = how;
	int *cell = way->strip->is_level ? &at->y : &at->x, side = side_of(way, *cell);
	int last = way->map->copies[*cell] - 1;

	if (!way->strip->is_on_axis && side_of(way, way->strip->cell) <= 0)
		side = -side;
	*cell = way->map->lines[*cell] + (side < 0 ? 0 : side > 0 ? last : last / 2);
	return last >= 0;
}

void strip_do(struct plot *plot, const struct strip *strip)
{
	struct lines_map map = lines_map_of(plot, strip);
	const struct fence_change change = { mirror_of(plot), &map, strip->is_level };
	const struct specimen_way specimens = { change.mirror, &map, strip };

	assert(strip_check(plot, strip) == STRIP_FITS);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_change(&change, &plot->details.fences[i]);
	axis_move(plot, &map, strip->is_level);
	ground_change(plot, &map, strip->is_level);
	specimens_move(&plot->details.plants, &plot->ground, specimen_way, &specimens);
	around_change(plot, &map, strip->is_level);
	lines_map_fini(&map);
}
