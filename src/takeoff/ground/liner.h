/* Liner that keeps soil off the inner face of raised walls: strips cut from rolls.
 *
 * A strip goes round the inner face of each loop and closes with a lap; it is as high as the soil
 * at the wall, down to the base where that reaches past the wall, and the edge turned under at the
 * bottom. Where that is more than a roll is wide, strips lie one above another with the same lap;
 * where one is longer than a roll, pieces follow each other with it.
 *
 * Rolls are cut across into lengths, each as long as its longest strip, in which strips lie side
 * by side; or slit along their length into heights, of which strips are cut one after another:
 * whichever takes fewer rolls. Longest, or highest, first (packing.h); cuts take nothing. Common
 * practice, no published source. */
#ifndef TAKEOFF_GROUND_LINER_H
#define TAKEOFF_GROUND_LINER_H

#include "takeoff/ground/fill.h"

/* The liner of one raised bed. */
struct liner {
	int region;
	nm length; /* along the wall's inner face, holes included, without laps */
	nm height; /* as cut */
	double area; /* m2 = length x height */
};

/* Pieces as cut, of one height and length. */
struct liner_cut {
	int64_t pieces;
	nm height, length;
};

/* What a roll is cut into first: lengths or heights. */
enum liner_way { LINER_ACROSS, LINER_SLIT };

struct liners {
	const struct liner *list; /* in region order */
	int count;
	nm width, roll, lap;      /* of a roll; the lap at most half of either */
	const struct liner_cut *cuts; /* highest first, then longest */
	int cut_count;
	enum liner_way way;
	int64_t joins;            /* where a piece goes on with another, or lies above it */
	int64_t rolls;            /* 0: no liner */
	double used;              /* of the rolls: the pieces' area over that of a roll */
};

extern const struct word liner_way_words[];
extern const struct figure_table liner_table, liner_cut_table, liners_table;

/* No row for beds without liner, without soil or with a wall that is not laid out. */
void liner_compute(struct liners *out, const struct basis *basis, const struct walls *walls,
	const struct fills *fills);
/* Adds liner, by area: what is cut, what is left of the rolls, and whole rolls as the order. */
void liner_items(struct item_list *items, const struct liners *liners);

#endif
