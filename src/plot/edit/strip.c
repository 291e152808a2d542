#include "plot/edit/strip.h"
#include "base/memory.h"
#include "base/number.h"
#include "plot/edit/fence_remake.h"
#include "plot/edit/names.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

/* One direction of the plan: how often each column or row is there afterwards, and where each line
 * of the grid goes. */
struct lines_map {
	int count;
	int *copies; /* owned: 1: as before */
	int *lines;  /* owned, count + 1 */
	bool is_short; /* some that were to be taken out are not there */
};

static int side_of(const struct plot *plot, bool is_level)
{
	return is_level ? plot->ground.rows : plot->ground.columns;
}

/* ---- How often each is there ----------------------------------------------------------------- */

/* Cells beyond the plan are left out, as images are. */
static void copy(struct lines_map *map, int cell, int more)
{
	if (cell >= 0 && cell < map->count)
		map->copies[cell] += more;
}

static void leave_out(struct lines_map *map, int first, int count)
{
	for (int i = first; i < first + count; i++)
		if (i >= 0 && i < map->count)
			map->copies[i] = 0;
}

static void put_on_axis(struct lines_map *map, int axis, int count)
{
	if (axis % 2) {
		copy(map, axis / 2, count);
		return;
	}
	copy(map, axis / 2 - 1, count - count / 2);
	copy(map, axis / 2, count / 2);
}

/* The middle column stays as long as it can: what stands in it alone would be lost. Where the axis
 * is a line the two beside it are each other's images, and of an odd number it takes one. */
static void take_on_axis(struct lines_map *map, int axis, int count)
{
	int middle = axis / 2, half = count / 2, is_odd = count % 2;

	if (axis % 2 && !is_odd) {
		leave_out(map, middle - half, half);
		leave_out(map, middle + 1, half);
	} else {
		leave_out(map, middle - half - (axis % 2 ? 0 : is_odd), count);
	}
}

/* At the cell, and at its image where it has one. */
static void change_at(struct lines_map *map, const struct strip *strip, bool has_image, int image)
{
	if (strip->is_out) {
		map->is_short = strip->cell + strip->count > map->count;
		leave_out(map, strip->cell, strip->count);
		if (has_image)
			leave_out(map, image - strip->count + 1, strip->count);
		return;
	}
	copy(map, strip->cell, strip->count);
	if (has_image)
		copy(map, image, strip->count);
}

static struct lines_map map_of(const struct plot *plot, const struct strip *strip)
{
	struct mirror mirror = mirror_of(plot);
	struct lines_map map = { .count = side_of(plot, strip->is_level) };
	int axis = mirror_axis(&mirror, strip->is_level), image = axis - 1 - strip->cell;
	bool has_axis = mirror_has_axis(&mirror, strip->is_level);

	map.copies = memory_new((size_t)map.count, sizeof *map.copies);
	map.lines = memory_new((size_t)map.count + 1, sizeof *map.lines);
	for (int i = 0; i < map.count; i++)
		map.copies[i] = 1;
	if (!strip->is_on_axis && (!has_axis || image != strip->cell))
		change_at(&map, strip, has_axis, image);
	else if (strip->is_out)
		take_on_axis(&map, axis, strip->count);
	else
		put_on_axis(&map, axis, strip->count);
	for (int i = 0; i < map.count; i++)
		map.lines[i + 1] = map.lines[i] + map.copies[i];
	return map;
}

static void map_fini(struct lines_map *map)
{
	free(map->copies);
	free(map->lines);
}

int strip_side(const struct plot *plot, const struct strip *strip)
{
	struct lines_map map = map_of(plot, strip);
	int side = map.is_short ? 0 : map.lines[map.count];

	map_fini(&map);
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
	int side = map->lines[map->count];

	ground_init(ground, is_level ? old.columns : side, is_level ? side : old.rows);
	if (is_level)
		ground_copy_rows(ground, &old, map);
	else
		ground_copy_columns(ground, &old, map);
	names_move(&plot->details.names, &old, cell_way,
		&(struct cell_way){ &old, map, is_level });
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
	struct lines_map map = map_of(plot, strip);
	int *at = strip->is_level ? &cell.y : &cell.x;

	*at = cell_moved(&map, *at);
	map_fini(&map);
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

void strip_do(struct plot *plot, const struct strip *strip)
{
	struct lines_map map = map_of(plot, strip);
	const struct fence_change change = { mirror_of(plot), &map, strip->is_level };

	assert(strip_check(plot, strip) == STRIP_FITS);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_change(&change, &plot->details.fences[i]);
	axis_move(plot, &map, strip->is_level);
	ground_change(plot, &map, strip->is_level);
	map_fini(&map);
}
