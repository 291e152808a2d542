#include "plot/format/read_fence.h"
#include "base/memory.h"

#include <stdlib.h>

void fence_reader_fini(struct fence_reader *r)
{
	free(r->legs.items);
	free(r->gates.items);
}

bool fail_point(const struct scan *s, struct diag *d, const char *expected)
{
	size_t end = s->at;

	if (s->at == s->length)
		return scan_fail(s, s->at, d, "%s", expected);
	while (end < s->length && !char_is_blank(s->text[end]))
		end++;
	return diag_set(d, s->line, (int)s->at + 1, s->text + s->at, end - s->at, "%s", expected);
}

static bool point_scan(const struct fence_reader *r, struct scan *s, struct place *point,
	struct diag *d)
{
	static const struct value_rule place = { .kind = VALUE_PLACE };
	struct scan start = *s;
	struct value value;

	if (value_scan(s, &place, UNITS_IMPERIAL, &value, d) &&
		value.as.place.x <= r->ground->columns && value.as.place.y <= r->ground->rows) {
		*point = value.as.place;
		return true;
	}
	struct text expected = TEXT_EMPTY;
	text_print(&expected, "a grid point X,Y from 0,0 to %d,%d", r->ground->columns,
		r->ground->rows);
	fail_point(&start, d, expected.bytes);
	text_fini(&expected);
	return false;
}

/* The end of a leg that begins at `from`. */
static bool leg_scan(const struct fence_reader *r, struct scan *s, struct place from,
	struct leg *leg, struct diag *d)
{
	struct scan start = *s;

	leg->from = from;
	if (!point_scan(r, s, &leg->to, d))
		return false;
	return leg_is_straight(*leg) || fail_point(&start, d,
		"another point, level with the one before or straight above or below it");
}

static void place_add(struct leg_places *places, const struct scan *s)
{
	places->items = memory_grow(places->items, places->count, &places->capacity,
		sizeof *places->items);
	places->items[places->count++] = *s;
}

bool fence_reader_run(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d)
{
	struct fence_run *run;
	struct place point;
	struct leg leg;

	scan_blanks(s);
	if (!point_scan(r, s, &point, d))
		return false;
	run = fence_add_run(fence);
	fence_run_add(run, point);
	while (!scan_is_done(s) || run->count < FENCE_POINTS_LEAST) {
		if (run->count == FENCE_POINTS_MOST)
			return fail_point(s, d, "the end of the line: a run has at most 64 points");
		place_add(&r->legs, s);
		if (!leg_scan(r, s, run->points[run->count - 1], &leg, d))
			return false;
		fence_run_add(run, leg.to);
	}
	return true;
}

_Static_assert(FENCE_POINTS_MOST == 64, "as the message says");

bool fence_reader_gate(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d)
{
	struct place point;
	struct leg gate;

	scan_blanks(s);
	place_add(&r->gates, s);
	if (!point_scan(r, s, &point, d))
		return false;
	scan_blanks(s);
	if (!leg_scan(r, s, point, &gate, d))
		return false;
	if (!scan_is_done(s))
		return fail_point(s, d, "the end of the line: a gate has two points");
	legs_add(&fence->gates, gate);
	return true;
}

/* ---- What shows only when all is there ------------------------------------------------------- */

struct flaw {
	const struct scan *place; /* NULL: none */
	const char *expected;
};

/* No line has both legs and gates, and of each kind the first fault is found. */
static void flaw_add(struct flaw *first, const struct scan *place, const char *expected)
{
	if (!first->place || place->line < first->place->line)
		*first = (struct flaw){ place, expected };
}

bool fence_reader_end(struct fence_reader *r, const struct fence *fence, bool is_whole,
	struct diag *d)
{
	struct legs legs = LEGS_EMPTY;
	struct flaw first = { NULL, NULL };
	size_t leg, gate = legs_first_overlap(&fence->gates);

	fence_legs(fence, &legs);
	leg = legs_first_overlap(&legs);
	if (leg < legs.count)
		flaw_add(&first, &r->legs.items[leg], "a leg that lies over no other of its fence");
	if (gate < fence->gates.count)
		flaw_add(&first, &r->gates.items[gate], "a gate that lies over no other");
	if (is_whole && leg == legs.count && (gate = fence_first_stray(fence)) < fence->gates.count)
		flaw_add(&first, &r->gates.items[gate], "a gate that lies on one leg of a run");
	r->legs.count = r->gates.count = 0;
	legs_fini(&legs);
	return !first.place || fail_point(first.place, d, first.expected);
}
