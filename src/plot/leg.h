/* Legs: straight pieces of a line from grid point to grid point, level or upright. */
#ifndef PLOT_LEG_H
#define PLOT_LEG_H

#include "plot/value.h"

struct leg {
	struct place from, to;
};

bool place_equal(struct place a, struct place b);
/* In reading order: below 0 where a comes before b. */
int place_order(struct place a, struct place b);

/* Level or upright, and of some length. What follows asks for such legs only. */
bool leg_is_straight(struct leg leg);
bool leg_is_upright(struct leg leg);
/* The same from its left or upper end. */
struct leg leg_forward(struct leg leg);
/* In sides of cells. */
int leg_length(struct leg leg);
bool leg_equal(struct leg a, struct leg b);

/* A leg as a stretch of the line that it lies on. */
struct stretch {
	bool is_upright;
	int line;      /* x of an upright one, y of a level one */
	int low, high; /* along it, low < high */
};
struct stretch leg_stretch(struct leg leg);
/* Level ones before upright ones, line by line, each line from its start: as qsort wants it. */
int stretch_compare(const struct stretch *a, const struct stretch *b);

/* They have more than a point in common; how many sides of cells, 0 where they have not. */
int leg_overlap(struct leg a, struct leg b);
/* All of `part` lies on the leg. */
bool leg_covers(struct leg leg, struct leg part);

/* What of a leg lies within a plan of so many cells; false where nothing does. */
bool leg_clip(struct leg leg, int columns, int rows, struct leg *within);

/* Many legs. Start from LEGS_EMPTY, end with legs_fini. */
struct legs {
	struct leg *items; /* owned */
	size_t count, capacity;
};
#define LEGS_EMPTY ((struct legs){ NULL, 0, 0 })

void legs_fini(struct legs *legs);
void legs_add(struct legs *legs, struct leg leg);
void legs_add_all(struct legs *legs, const struct legs *more);
/* The same legs in the same order. */
bool legs_equal(const struct legs *a, const struct legs *b);
/* Of all legs, in sides of cells. */
int64_t legs_length(const struct legs *legs);
/* All forward, in the order of their stretches. */
void legs_sort(struct legs *legs);
/* Sorts, and joins what overlaps or continues straight on: the longest legs that there can be. */
void legs_join(struct legs *legs);
/* Takes off all that lies on the other leg. */
void legs_cut(struct legs *legs, struct leg off);
/* Of sorted legs that do not overlap: whether one covers the leg. */
bool legs_cover(const struct legs *sorted, struct leg leg);
/* The first leg that overlaps one before it; the count where none does. */
size_t legs_first_overlap(const struct legs *legs);

#endif
