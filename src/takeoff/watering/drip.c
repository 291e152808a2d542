#include "takeoff/watering/drip.h"
#include "base/number.h"
#include "base/stop.h"

#include <assert.h>
#include <math.h>

struct laying {
	struct drip *drip;
	struct arena *arena;
	const struct slabs *slabs;
	nm emitter;
	int64_t rows; /* across */
	nm reach;     /* that a line waters to either side of it */
	struct drip_line *lines;
	size_t capacity;
};

static int64_t how_many(nm length, nm apart)
{
	return nm_most(1, (length + apart - 1) / apart);
}

/* Where it lies, rounded down; count: 1 or more. */
static nm spread_at(nm length, int64_t count, int64_t number)
{
	const nm2 half_gaps = 2 * (nm2)number + 1, halves = 2 * (nm2)count;

	return (nm)(length * half_gaps / halves);
}

nm drip_place(nm length, int64_t count, int64_t number)
{
	int64_t from_end = count - 1 - number;

	assert(count > 0);
	return number <= from_end ? spread_at(length, count, number) :
		length - spread_at(length, count, from_end);
}

/* Where the row with that number lies across. */
static nm row_at(const struct laying *laying, int64_t number)
{
	const struct slabs *slabs = laying->slabs;

	return slabs->near + drip_place(slabs->far - slabs->near, laying->rows, number);
}

static void lay(struct laying *laying, nm across, struct chord chord, bool is_added)
{
	struct drip *drip = laying->drip;
	struct drip_line line = { across, chord, how_many(chord.to - chord.from, laying->emitter),
		is_added };

	laying->lines = arena_grow(laying->arena, laying->lines, (size_t)drip->count,
		&laying->capacity, sizeof *laying->lines);
	laying->lines[drip->count++] = line;
	drip->emitters += line.emitters;
	drip->length += chord.to - chord.from;
}

static void lay_rows(struct laying *laying)
{
	for (int64_t i = 0; i < laying->rows && !stop_asked(); i++) {
		nm across = row_at(laying, i);
		int count;
		const struct chord *chords = slabs_at(laying->slabs, laying->arena, across, &count);

		for (int j = 0; j < count; j++)
			lay(laying, across, chords[j], false);
	}
}

/* ---- What no row reaches --------------------------------------------------------------------- */

/* How far across from a slab the ground goes on that holds all of the chord, looking no farther
 * than a row reaches: the number of the last such slab. */
static int holding_slab(const struct laying *laying, int slab, const struct chord *chord, int step)
{
	const struct slabs *slabs = laying->slabs;
	const struct slab *from = &slabs->list[slab];

	for (int next = slab + step; next >= 0 && next < slabs->count; next += step) {
		const struct slab *to = &slabs->list[next];
		nm far = step < 0 ? from->from - to->to : to->from - from->to;

		if (far > laying->reach || !slab_holding(to, chord))
			break;
		slab = next;
	}
	return slab;
}

/* The first row at `across` or behind it; how many there are where none is. */
static int64_t row_from(const struct laying *laying, nm across)
{
	int64_t low = 0, high = laying->rows;

	while (low < high) {
		int64_t middle = low + (high - low) / 2;

		if (row_at(laying, middle) < across)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

/* One line more in the middle of what is beyond the reach of the rows that lie beside all of a
 * chord, on either side of them. */
static void add_lines(struct laying *laying, int slab, const struct chord *chord)
{
	const struct slab *at = &laying->slabs->list[slab];
	nm near = laying->slabs->list[holding_slab(laying, slab, chord, -1)].from;
	nm far = laying->slabs->list[holding_slab(laying, slab, chord, 1)].to;
	int64_t first = row_from(laying, near), last = row_from(laying, far + 1) - 1;

	if (last < first) {
		lay(laying, at->from + (at->to - at->from) / 2, *chord, true);
		return;
	}
	near = row_at(laying, first);
	far = row_at(laying, last);
	if (near - at->from > laying->reach)
		lay(laying, at->from + (near - at->from) / 2, *chord, true);
	if (at->to - far > laying->reach)
		lay(laying, far + (at->to - far) / 2, *chord, true);
}

/* Along a line an emitter is at most half a spacing away: so far across does it reach what is no
 * farther than the larger spacing. Rounded down. */
static nm reach_of(nm row, nm emitter)
{
	double far = (double)nm_most(row, emitter), half = (double)emitter / 2;

	return (nm)floor(sqrt(far * far - half * half)) - 1;
}

void drip_lay(struct drip *out, struct arena *arena, const struct slabs *slabs, nm row,
	nm emitter)
{
	struct laying laying = { .drip = out, .arena = arena, .slabs = slabs,
		.emitter = emitter, .rows = how_many(slabs->far - slabs->near, row),
		.reach = reach_of(row, emitter) };

	*out = (struct drip){ .ground = *slabs };
	if (slabs->count == 0)
		return;
	lay_rows(&laying);
	for (int i = 0; i < slabs->count && !stop_asked(); i++)
		for (int j = 0; j < slabs->list[i].count; j++)
			add_lines(&laying, i, &slabs->list[i].chords[j]);
	out->lines = laying.lines;
}
