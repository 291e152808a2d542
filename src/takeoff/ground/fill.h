/* What beds are filled with. */
#ifndef TAKEOFF_GROUND_FILL_H
#define TAKEOFF_GROUND_FILL_H

#include "takeoff/walls/wall.h"

struct fill_part {
	const char *name;
	double volume;       /* m3 to order */
	double reused, buy;  /* of it: dug on the plot; bought */
};

/* How soil comes into a bed: put in, dug out and put in, mixed in. */
enum fill_way { FILL_RAISED, FILL_REPLACED, FILL_AMENDED };
enum { FILL_WAYS = FILL_AMENDED + 1 };

/* The fill of a bed, or the amendment of a ground-level one. */
struct fill {
	int region;
	enum fill_way way;
	nm soil_depth;
	nm filled_depth; /* the same; 0 where nothing is filled in */
	double soil;  /* m3 in place */
	double order; /* m3 with settlement; the parts add up to it */
	int64_t settlement; /* millionths of a percent */
	struct fill_part *parts;
	int part_count;
	double mulch; /* m3 */
	nm mulch_depth;
};

struct fills {
	struct fill *list; /* in region order */
	int count;
};

extern const struct word fill_words[FILL_WAYS];
extern const struct figure_table fill_table;

/* Height of the wall from the base's top, without cap. */
nm fill_wall_height(const struct block *bed);
/* The deepest surface among the plan's paths, 1 1/2 in without paths: walls and fixtures are
 * set as deep, so that they share one formation with the paths. */
nm fill_surface(const struct survey *survey);
/* Depth of the wall below finished ground: the bed's own embed, else the surface, from
 * fill_surface. */
nm fill_embed(const struct block *bed, nm surface);

/* How much a mix settles, millionths of a percent: as allowed for, else 15 %, 20 % where half of it
 * or more is compost. */
int64_t fill_settlement(const struct block *allow, const struct mix *mix);

/* Fills the beds and adds the snags fill-none, wall-embed and wall-high. Raised beds whose wall
 * is not laid out have no row. Nothing is reused before fill_reuse. */
void fill_compute(struct fills *out, const struct basis *basis, const struct walls *walls,
	nm surface);
/* The row of a region; NULL where it has none. */
const struct fill *fills_find(const struct fills *fills, int region);
/* The topsoil that the mixes take, m3, loose. */
double fill_topsoil(const struct fills *fills);
/* Takes a share, 0 to 1, of each part that is topsoil from what was dug. */
void fill_reuse(struct fills *fills, double share);
/* Adds soil by the parts of the mixes, and mulch. */
void fill_items(struct item_list *items, const struct fills *fills);

#endif
