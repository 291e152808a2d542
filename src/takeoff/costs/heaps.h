/* What ground at the drop the goods of a day take, and the spoil before it is hauled: loose goods
 * on heaps of their own, blocks and bags on pallets, as if all of the day's lay there at once, and
 * without gaps.
 *
 * A heap is a cone with sides of 35 degrees; one that would be higher than 1.5 m is a ridge of that
 * height with half a cone at either end:
 *
 *	cone    V = pi r2 h / 3,            h = r tan 35
 *	ridge   V = pi r2 h / 3 + r h L,    A = pi r2 + 2 r L
 *
 * A pallet carries 1 t and takes 4 ft x 4 ft, in a metric plot 1.2 m x 1.0 m. All this is common
 * practice, no published source. */
#ifndef TAKEOFF_COSTS_HEAPS_H
#define TAKEOFF_COSTS_HEAPS_H

#include "takeoff/costs/days.h"

/* A heap of one good, or the pallets of a day. */
struct heap {
	enum day day;
	int item;        /* of the takeoff, that the heap is of; NO_ITEM: these are pallets */
	const char *id;  /* of its good; "pallets" */
	double volume;   /* m3, loose; 0: pallets */
	nm height;       /* of a heap; 0: pallets */
	int64_t pallets; /* 0: a heap */
	double area;     /* m2 */
};
enum { NO_ITEM = -1 };

struct heaps {
	const struct heap *list; /* by day, heaps in the order of the items, then the pallets */
	int count;
};

/* Of items that are bought. None where the plot has no drop. */
void heaps_find(struct heaps *out, const struct item_list *items, const struct plot *plot);
/* The area and height of a heap of so many cubic metres, over 0. */
double heap_area(double volume, nm *height);

extern const struct figure_table heap_table;

#endif
