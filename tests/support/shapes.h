/* The plots that are hardest on memory and time, of any size: what a hand would never draw beside
 * what one might, only larger. Imperial, cells of one foot. */
#ifndef SUPPORT_SHAPES_H
#define SUPPORT_SHAPES_H

#include "plot/plot.h"

/* Each fills an uninitialised plot of size x size cells; plot_fini frees it. Counts are those of
 * 2048 x 2048. */

/* Quarters in beds, paths, lawns and urns, mirrored four ways: 1,024 beds. */
void shape_formal(struct plot *plot, int size);
/* 409 raised beds from side to side, of 100 lengths. */
void shape_long_beds(struct plot *plot, int size);
/* 7,225 raised beds, alike. */
void shape_small_beds(struct plot *plot, int size);
/* 28,900 snags: as many raised beds with a step in a side, each hardly embedded. */
void shape_snags(struct plot *plot, int size);
/* A letter at random in each cell, of 52. */
void shape_noise(struct plot *plot, int size);
/* Raised beds of one cell, of two letters by turns. */
void shape_checkerboard(struct plot *plot, int size);
/* Raised beds and paths of one cell by turns. */
void shape_beds_and_paths(struct plot *plot, int size);
/* One raised bed wound up to the middle. */
void shape_spiral(struct plot *plot, int size);
/* One raised bed with a tooth at every sixth cell. */
void shape_comb(struct plot *plot, int size);
/* One raised bed with a million holes. */
void shape_sieve(struct plot *plot, int size);
/* A fence in stairs, of legs of one cell: nearly as many bytes as a plot file may have. */
void shape_fences(struct plot *plot, int size);

struct shape {
	const char *name; /* as above, "long beds" */
	void (*draw)(struct plot *plot, int size);
};
extern const struct shape shapes[];
extern const int shape_count;

/* The shape of that name; NULL where there is none. */
const struct shape *shape_named(const char *name);
/* Writes a shape as a plot file; fails the test where that cannot be done. */
void shape_write(const struct shape *shape, int size, const char *path);

#endif
