/* Unions of axis-parallel rectangles, taken apart exactly: who covers what where they overlap.
 *
 * Rectangles are painted in the order given and the first keeps its ground, so each point
 * belongs to the first rectangle over it. A sweep from top to bottom cuts the ground into bands
 * in which nothing begins or ends, and finds from left to right who shows; what shows alike in
 * neighbouring bands is one piece. Time: O(sum over bands of the boxes in the band, times the
 * logarithm of how many overlap). */
#ifndef SURVEY_COVER_H
#define SURVEY_COVER_H

#include "base/length.h"
#include "base/memory.h"

/* Square nanometres, exact: a plan of 2048 by 2048 cells of 10 ft is 4e25 of them. */
__extension__ typedef __int128 nm2;

/* Ground from left to right and top to bottom; none where left >= right or top >= bottom. */
struct cover_box {
	nm left, top, right, bottom;
	int owner;
};

struct cover {
	const struct cover_box *pieces; /* none empty, no two overlap; by top, then left */
	size_t count;
};

/* Boxes in the order they are painted. Start zeroed. */
struct cover_boxes {
	struct cover_box *list; /* owned */
	size_t count, capacity;
};
void cover_boxes_add(struct cover_boxes *boxes, struct cover_box box);

/* What shows of the boxes, first painted first; the pieces live in the arena. */
void cover_sweep(struct cover *out, struct arena *arena, const struct cover_box *boxes,
	size_t count);
/* Adds what each owner shows to areas[owner]. */
void cover_areas(const struct cover *cover, nm2 *areas);
/* What of a box is within another. */
struct cover_box cover_clip(struct cover_box box, const struct cover_box *within);
nm2 cover_box_area(const struct cover_box *box);
/* Square metres. */
double cover_m2(nm2 area);

#endif
