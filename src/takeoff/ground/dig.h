/* What is dug, how it swells, what of it is used again and what leaves the plot.
 *
 * Depths: paths base and surface; walls base and embed; fixtures their base and the surface that
 * walls go by (fill_surface); the inside of beds embed where it is filled, base and embed where
 * it stands on base; lawns topsoil and the turf's thickness, if turf is laid; ground-level beds
 * what is replaced. From the top down the ground is sod, then topsoil, both as deep as the plot
 * says, then subsoil.
 *
 * Loose = bank x (1 + swell), by kind; sod swells as topsoil does. Of the loose topsoil as much
 * is used again as the mixes of the beds take; the rest and all else is spoil. */
#ifndef TAKEOFF_GROUND_DIG_H
#define TAKEOFF_GROUND_DIG_H

#include "takeoff/common/loads.h"
#include "takeoff/ground/zones.h"

/* m3, by kind. */
struct earth {
	double sod, topsoil, subsoil;
};

struct dig {
	int region; /* NO_REGION: none */
	enum dig_part part;
	double area; /* m2 */
	nm depth;
	struct earth bank;
};

/* All that is dug for one purpose. */
struct dig_sum {
	enum dig_part part;
	double bank; /* m3 */
};

struct earthwork {
	/* in region order, then those of none; what has no area or depth has no row */
	const struct dig *rows;
	int count;
	struct dig_sum sums[DIG_PARTS];
	struct earth bank, loose;
	double bank_all, loose_all; /* m3, of all kinds */
	double reused;       /* m3, loose, of the topsoil */
	double reused_share; /* of the mixes' topsoil, 0 to 1: each part takes as large a share */
	double spoil;        /* m3, loose; reused and spoil make up all that is loose */
	double spoil_weight; /* kg */
	struct loads loads;  /* of the spoil */
};

/* Rows so far, while what is dug is gathered. */
struct dig_list {
	struct arena *arena;
	const struct block *allow; /* the values in force */
	struct dig *rows;
	size_t count, capacity;
};

/* Adds a row of an area dug from the ground's surface to a depth; bank is reckoned here. No row
 * without area or depth. */
void dig_add(struct dig_list *list, struct dig dig);
/* A row for each zone. surface: from fill_surface. */
void dig_zones(struct dig_list *list, const struct zones *zones, const struct survey *survey,
	nm surface);
/* Sums all rows up; so much topsoil is wanted for beds, m3, loose. */
void dig_finish(struct earthwork *out, const struct dig_list *list, double wanted);

/* Adds the row spoil: what is hauled away, loose. */
void dig_items(struct item_list *items, const struct earthwork *work);

extern const struct word dig_words[DIG_PARTS];
extern const struct figure_table dig_table, earthwork_table;

double earth_sum(const struct earth *earth);

#endif
