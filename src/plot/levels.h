/* The lie of the ground: drops measured from a level string line, and what the finished ground is
 * to be. A drop is a length downwards from the string, the same string for all of them. */
#ifndef PLOT_LEVELS_H
#define PLOT_LEVELS_H

#include "plot/value.h"

/* So many in a row, and so many rows: more would not fit on a line of the plot's file. */
enum { LEVELS_SIDE_LEAST = 2, LEVELS_SIDE_MOST = 200 };

/* Drops as measured, one at each point of a square grid of its own, which begins at the datum and
 * covers the plan. Start from LEVELS_NONE, end with levels_fini. */
struct levels {
	nm step;           /* from one to the next; 0: nothing is measured */
	int columns, rows; /* of drops, LEVELS_SIDE_LEAST..LEVELS_SIDE_MOST */
	nm *drops;         /* owned, row by row */
};
#define LEVELS_NONE ((struct levels){ 0, 0, 0, NULL })

/* How many drops in a row cover so many cells. */
int64_t levels_count(int cells, nm cell, nm step);
/* All drops 0. */
void levels_init(struct levels *levels, nm step, int columns, int rows);
void levels_fini(struct levels *levels);
struct levels levels_copy(const struct levels *levels);
bool levels_equal(const struct levels *a, const struct levels *b);
/* The drop at a spot of the ground, to the nearest nanometre: between the four drops around it
 * bilinear, beyond the outermost ones as the nearest. Something must be measured. */
nm levels_drop(const struct levels *levels, nm right, nm down);

/* The highest ground, by its drop, and the lowest. Something must be measured. */
struct drop_range {
	nm least, most;
};
struct drop_range levels_range(const struct levels *levels);

/* What the finished ground is to be: a drop at one grid point, and which way it falls from there.
 * Each may be there without the other. */
struct finish {
	bool has_level, has_fall;
	struct place at; /* a grid point */
	nm drop;
	bool is_away;     /* it falls away from the house; else towards a bearing */
	int64_t percent;  /* millionths of a percent */
	int64_t bearing;  /* millionths of a degree, clockwise from true north; 0 where is_away */
};
bool finish_equal(const struct finish *a, const struct finish *b);

/* Which way it falls, as in the format, by is_away: "towards", "away"; NULL at the end. */
extern const char *const fall_words[];
/* What may be read: of the step, of a drop, of a fall, of its bearing. */
extern const struct value_rule step_rule, drop_rule, fall_rule, bearing_rule;

#endif
