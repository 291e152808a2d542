/* Where plants stand, and how many of them there are to buy.
 *
 * Specimens stand in the middle of their cells, whatever is there. Then drifts are laid bed by bed
 * (drifts.h), in each in the order of the plot. The count is what stands; beside it what the area
 * alone would say: area / spacing^2 of square rows, area / (0.866 spacing^2) of triangular ones
 * (geometry: what one plant takes of endless rows). */
#ifndef TAKEOFF_PLANTING_PLANTING_H
#define TAKEOFF_PLANTING_PLANTING_H

#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"
#include "takeoff/planting/drifts.h"

struct planted_spot {
	struct spot at;
};

/* Plants of one kind in one region. */
struct planting_row {
	int region;        /* NO_REGION: on open ground */
	int kind;          /* in the plot's order of plants */
	char letter;
	const char *name;
	int64_t specimens, in_drifts, count; /* count: both */
	int64_t room;      /* of places in its drifts, also where they are too near to others */
	double area;       /* m2 of its bands within the inner face and under no house, once */
	double by_area;    /* what that alone would say */
	nm bed_needs;      /* of soil, for all that is planted there; 0: not told, or no bed */
	bool is_soil_known; /* how deep it is: not of open ground, nor of walls not laid out */
	nm bed_soil;       /* how deep, where that is known */
	const struct planted_spot *spots; /* `count` of them, specimens first, then row by row */
	int spot_count;
};

/* All plants of a kind. */
struct plant_sum {
	const struct plant *plant; /* in force */
	char letter;
	const char *name;
	nm spacing, spread;
	nm height, soil, pot; /* 0: not told */
	unsigned int pattern; /* enum plant_pattern */
	unsigned int light;   /* enum plant_sun; PLANT_LIGHT_UNTOLD */
	int from, until;      /* months, 1 to 12; 0: not told */
	int64_t specimens, in_drifts, count;
	int64_t order;        /* whole plants, with what is spare of those in drifts */
};
enum { PLANT_LIGHT_UNTOLD = NEEDS_NO_SUN + 1 };

struct planting {
	struct planting_row *list; /* by region, those on open ground last; then by kind */
	int count;
	const struct plant_sum *plants;  /* in the plot's order */
	int plant_count;
	struct placed placed;        /* planting_end */
	bool is_cut;       /* there are more plants than PLACED_MOST: those past are left out */
};

extern const struct figure_table planting_table, plant_table;
extern const struct word plant_pattern_words[], plant_light_words[];

/* Places all plants; adds the snags drift-empty, of each bed without room, drift-thin, of drifts
 * with room for fewer than half of what their area says, and plant-many. All lives in the arena but
 * what is near to what: planting_end. The soil of beds: planting_soil.h. Where the plot has no
 * plants nothing is done. */
void planting_find(struct planting *out, const struct basis *basis);
/* The sums by kind, of what was placed. */
void planting_sum(struct planting *planting, const struct plants *plants,
	const struct basis *basis);
/* Nothing is asked any more of what is near. */
void planting_end(struct planting *planting);
/* Adds the plants, those in drifts with some to spare: what stands alone is seen when it dies. */
void planting_items(struct item_list *items, const struct planting *planting);

#endif
