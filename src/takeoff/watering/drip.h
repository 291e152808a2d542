/* Where the drip lines of a bed lie and where their emitters are.
 *
 *	lines     along the longer side of the box around the bed's inner area, clipped to it;
 *	          max(1, ceil(width of the box / row)) of them across, spread evenly, half a gap
 *	          at either side. Where the area is cut by a line more than once, each piece is a
 *	          line of its own.
 *	added     where some of the area is farther from those lines than half an emitter spacing
 *	          leaves (an arm between two lines, a shoulder): one more line, in the middle of
 *	          the stretch that none reaches
 *	emitters  max(1, ceil(length / emitter)) on each, spread evenly, half a gap at either end
 *
 * So no point of the area is farther from an emitter than the larger of row and emitter: common
 * practice, no published source, but proved by geometry. Beds that are images of one another in
 * the mirror have lines that are images, but that the middle of an odd number of nanometres is
 * rounded down. */
#ifndef TAKEOFF_WATERING_DRIP_H
#define TAKEOFF_WATERING_DRIP_H

#include "takeoff/watering/slabs.h"

struct drip_line {
	nm across;        /* as slabs.h has it */
	struct chord chord;
	int64_t emitters; /* 1 or more */
	bool is_added;
};

struct drip {
	struct slabs ground;
	const struct drip_line *lines;  /* across, then along; those that are added come last */
	int count;
	int64_t emitters;               /* of all lines */
	nm length;                      /* of all lines */
};

/* row, emitter: over 0. In the arena, as the slabs must be: they are kept. It can be stopped. */
void drip_lay(struct drip *out, struct arena *arena, const struct slabs *slabs, nm row,
	nm emitter);
/* Where the one with that number (from 0) of so many, 1 or more, lies that are spread over a
 * length, half a gap at either end: as far from its start. */
nm drip_place(nm length, int64_t count, int64_t number);

#endif
