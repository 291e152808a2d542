/* What is dug, how it swells, how much is reused and how much leaves the plot.
 *
 * Depths: paths base and surface; walls base and embed; fixtures base and fill_surface; the
 * inside of beds embed where it is filled, base and embed where it is on base; lawns topsoil
 * and the turf's thickness, if turf is laid; ground-level beds what is replaced. From the top
 * down the ground is sod, then topsoil, each as deep as the plot says, then subsoil.
 *
 * Loose = bank x (1 + swell), by kind; sod swells as topsoil does. Loose topsoil is reused as
 * far as the beds' mixes take it; all the rest is spoil. */
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
	/* in region order, those of no region last; none without area or depth */
	const struct dig *rows;
	int count;
	struct dig_sum sums[DIG_PARTS];
	struct earth bank, loose;
	double bank_all, loose_all; /* m3, of all kinds */
	double reused;       /* m3, loose, of the topsoil */
	double reused_share; /* of the mixes' topsoil, 0 to 1: the same for each part */
	double spoil;        /* m3, loose; with `reused` all that is loose */
	double spoil_weight; /* kg */
	struct loads loads;  /* of the spoil */
};

/* Rows while they are gathered. */
struct dig_list {
	struct arena *arena;
	const struct block *allow; /* the values in force */
	struct dig *rows;
	size_t count, capacity;
};

/* Adds a row of an area dug from the ground's surface to a depth, and works out its bank. Adds
 * nothing without area or depth. */
void dig_add(struct dig_list *list, struct dig dig);
/* Adds a row for each zone. surface: from fill_surface. */
void dig_zones(struct dig_list *list, const struct zones *zones, const struct survey *survey,
	nm surface);
/* Sums all rows up. wanted: topsoil that the beds take, m3, loose. */
void dig_finish(struct earthwork *out, const struct dig_list *list, double wanted);

/* Adds the row spoil: what is hauled away, loose. */
void dig_items(struct item_list *items, const struct earthwork *work);

extern const struct word dig_words[DIG_PARTS];
extern const struct figure_table dig_table, earthwork_table;

double earth_sum(const struct earth *earth);

#endif
