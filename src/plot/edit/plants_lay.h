/* Setting specimens, lifting them and filling bands of beds, each with the mirror's images. */
#ifndef PLOT_EDIT_PLANTS_LAY_H
#define PLOT_EDIT_PLANTS_LAY_H

#include "plot/mirror.h"

/* Whether a plant may stand on ground of that class: a bed, a lawn or open ground. */
bool class_takes_plant(enum plot_class class);

struct planted {
	int64_t changed; /* specimens or drifts that came or went */
	bool outside;    /* some image fell outside the plan, and was left out */
	bool is_barred;  /* the same on ground that takes none; of a drift, no bed of that letter */
};

/* Sets a specimen of the plant with that letter in a cell, in place of any other that stands
 * there. */
struct planted plants_set(struct plot *plot, char letter, struct place at);
/* Lifts all specimens that stand in a cell, and those of the same kinds in its images; returns how
 * many. */
int64_t plants_lift(struct plot *plot, struct place at);
/* Fills a band of the bed at the cell with the plant; or of all beds of its letter, those filled
 * one by one among them. No bed has a band filled twice, from whatever cells. */
struct planted plants_fill(struct plot *plot, char letter, struct place at, enum band band,
	bool is_all);
/* Takes a drift away, of a single bed with those at the images of its cell; returns how many. */
int64_t plants_empty(struct plot *plot, char letter, struct drift drift);

#endif
