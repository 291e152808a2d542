#include "plot/format/read_fence.h"

#include <stdlib.h>

void fence_reader_fini(struct fence_reader *r)
{
	free(r->legs.items);
	free(r->gates.items);
}

bool fence_reader_run(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d)
{
	return read_route(r->ground, s, fence_add_run(fence), &r->legs, d);
}

bool fence_reader_gate(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d)
{
	struct place point;
	struct leg gate;

	scan_blanks(s);
	leg_places_add(&r->gates, s);
	if (!read_point(r->ground, s, &point, d))
		return false;
	if (!read_leg(r->ground, s, point, &gate, d))
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
