/* Rows of plants in a rectangle of ground, and the places in them.
 *
 * Rows run along the rectangle's longer side. The first row and the first place of it stand half a
 * spacing from the edges that the rows begin at; places of a row are a spacing apart. Square rows
 * are a spacing apart too. Triangular ones are spacing x sqrt(3) / 2 apart, rounded up once to a
 * whole nanometre, and every other row is shifted by half a spacing: so no two places are nearer to
 * one another than the spacing (geometry; rows begin half a spacing from an edge, and bands and
 * rows as a whole: common practice, no published source).
 *
 * Where the ground is its own image, places may be asked to have images. Then shifted rows that lie
 * square to the axis, and would be as long as the others, are one place shorter; of an even number
 * of rows that lie along it the two in the middle are alike, a spacing apart, or there is one row
 * less where that does not fit. Rows turned halfway round are both, but where an even number of
 * rows, all as long, are one another's images as they are. */
#ifndef TAKEOFF_PLANTING_LATTICE_H
#define TAKEOFF_PLANTING_LATTICE_H

#include "takeoff/common/spot.h"

#include <stdbool.h>
#include <stdint.h>

/* Where rows begin on a side of the rectangle: at its left or top, at its right or bottom, or in
 * the middle, with as much left at both ends. */
enum lattice_start { START_LOW, START_HIGH, START_MIDDLE_LOW, START_MIDDLE_HIGH };

/* One of the two ways across the ground: from low to high, low <= high. Where there is less than a
 * spacing between them there is one row, or one place a row, in the middle of what a place may be
 * on, clear_low to clear_high; none where that is empty. */
struct lattice_way {
	nm low, high;
	nm clear_low, clear_high;
	enum lattice_start start;
};

/* What images are asked for: turned over left for right, top for bottom, or turned halfway round.
 * Ways that have some start in the middle. */
struct lattice_images {
	bool across, down, turned;
};

struct lattice_ground {
	struct lattice_way across, down; /* to the right; down */
	nm spacing;                      /* over 0 */
	bool is_square;
	struct lattice_images images;
};

/* Places along a way: at `first`, then `step` farther each, in either direction. */
struct lattice_line {
	nm first, step;
	int64_t count;
};

struct lattice {
	bool is_upright;            /* rows run down, not across */
	struct lattice_line rows;   /* where each row lies */
	struct lattice_line places; /* of the first, third ... row */
	struct lattice_line others; /* of the second, fourth ... */
	int64_t back;               /* rows from this one on are counted from the last one */
	nm wider;                   /* how much farther that one is from the row before it */
};

/* Half a spacing, rounded up. */
nm lattice_half(nm spacing);
/* How far rows are apart. */
nm lattice_pitch(nm spacing, bool is_square);
void lattice_make(struct lattice *out, const struct lattice_ground *ground);
/* The places of a row, and one of them. */
int64_t lattice_count(const struct lattice *lattice, int64_t row);
struct spot lattice_place(const struct lattice *lattice, int64_t row, int64_t place);

#endif
