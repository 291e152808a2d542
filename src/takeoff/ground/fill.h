/* What beds are filled with. */
#ifndef TAKEOFF_GROUND_FILL_H
#define TAKEOFF_GROUND_FILL_H

#include "takeoff/common/embed.h"
#include "takeoff/ground/over_base.h"

struct fill_part {
	const char *name;
	double volume;       /* m3 to order */
	double reused, buy;  /* of it: dug on the plot; bought */
};

/* How soil comes into a bed: put in, dug out and put in, mixed in. */
enum fill_way { FILL_RAISED, FILL_REPLACED, FILL_AMENDED };
enum { FILL_WAYS = FILL_AMENDED + 1 };

/* The fill of a bed, or the amendment of a ground-level one.
 *
 * In a raised bed soil lies between the freeboard and mulch under the wall's top and, where the
 * ground inside stays undug, finished ground, else the base's top. Where that ground stays undug
 * and a base reaches past the wall, soil goes down to it: strip_area x strip_depth more.
 *
 * On ground that falls a level wall stands deeper than its embed but where that is lowest: undug
 * ground inside counts with its mean (rise of wall_levels.h), soil is so much less deep on it, a
 * strip so much deeper. */
struct fill {
	int region;
	enum fill_way way;
	nm soil_depth;     /* on the mean */
	nm deepest;        /* where the ground is lowest; 0: not deeper than on the mean */
	double strip_area; /* m2 */
	nm strip_depth;    /* the embed, on the mean; 0 where there is no strip */
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

/* How much a mix settles, millionths of a percent: as allowed for, else 15 %, 20 % where half of it
 * or more is compost. Common practice, no published source. */
int64_t fill_settlement(const struct block *allow, const struct mix *mix);

/* What raised beds are filled by. */
struct fill_ground {
	const struct walls *walls;
	const struct embeds *embeds;
	const struct over_bases *over;
	const struct wall_levels *levels; /* none: on level ground */
};

/* Fills the beds and adds the snag fill-none. Raised beds whose wall is not laid out have no row.
 * Nothing is reused before fill_reuse. */
void fill_compute(struct fills *out, const struct basis *basis, const struct fill_ground *ground);
/* The row of a region; NULL where it has none. */
const struct fill *fills_find(const struct fills *fills, int region);
/* The topsoil that the mixes take, m3, loose. */
double fill_topsoil(const struct fills *fills);
/* Takes a share, 0 to 1, of each part that is topsoil from what was dug. */
void fill_reuse(struct fills *fills, double share);
/* Adds soil by the parts of the mixes, and mulch. */
void fill_items(struct item_list *items, const struct fills *fills);

#endif
