/* What is dug, how it swells, how much is put back and reused and how much leaves the plot.
 *
 * Depths: paths base and surface; walls base and embed; fixtures base and the deepest surface of
 * paths; the inside of beds embed where it is filled, base and embed where it is on base; lawns
 * topsoil and the turf's thickness, if turf is laid; ground-level beds what is replaced. All these
 * are below the finished ground; where the plot has levels each part of a cell is dug, or filled,
 * from the existing ground to there (cut_fill.h). Sod under what is filled stays, grass down. How
 * deep each is dug is common practice, no published source.
 *
 * Loose volume = bank x (1 + swell); tamped = bank x shrink. (Pearson, Estimating in Building
 * Construction, its edition not noted, chapter 9.)
 *
 * Backfill is tamped: its volume in place / shrink is taken off the bank, of subsoil first, then
 * of topsoil. Of the topsoil that is left the beds' mixes take what they can, then the lawns. Low
 * ground is filled with what then is left, in the same way, sod never; what it lacks is brought.
 * All the rest is spoil. */
#ifndef TAKEOFF_GROUND_DIG_H
#define TAKEOFF_GROUND_DIG_H

#include "takeoff/common/loads.h"
#include "takeoff/ground/cut_fill.h"

struct dig {
	int region; /* NO_REGION: none */
	enum dig_part part;
	double area; /* m2 */
	nm depth;    /* below the finished ground; under level walls, where it is lowest */
	struct earth bank;
};

/* What of it is low and filled up to its formation: few have any. */
struct dig_fill {
	int region; /* NO_REGION: none */
	enum dig_part part;
	double fill; /* m3 in place, tamped */
};

/* All that is dug for one purpose. */
struct dig_sum {
	enum dig_part part;
	double bank; /* m3 */
};

struct earthwork {
	/* in region order, then ground in none that is graded, then post holes, fence by fence;
	 * none without area or depth */
	const struct dig *rows;
	int count;
	const struct dig_fill *fills; /* in the same order, none without fill */
	int fill_count;
	struct dig_sum sums[DIG_PARTS];
	struct earth bank, loose;
	double bank_all, loose_all; /* m3, of all kinds */
	double backfill;       /* m3 in place, tamped */
	double backfill_loose; /* m3 of what is loose that it takes */
	double stripped;       /* m2 that sod is taken off, post holes apart */
	nm deepest;            /* below the existing ground, post holes too */
	double fill;           /* m3 in place, tamped, of low ground up to the formation */
	double fill_loose;     /* m3 of what is loose that it takes */
	double fill_short;     /* m3 in place, of it, for which nothing is left: to be brought */
	double fill_bought;    /* m3 of that, loose, as subsoil swells */
	double loosened;       /* m2 of ground within beds, forked over where it lies */
	double reused;         /* m3, loose, of the topsoil */
	/* Of what the mixes take, of what the lawns take, 0 to 1: the same for each part, each
	 * lawn. */
	double mixes_share, lawns_share;
	double spoil;          /* m3, loose; with what is put back, filled in and reused all */
	double spoil_weight; /* kg */
	struct loads loads;  /* of the spoil */
};

/* Rows while they are gathered. */
struct dig_list {
	struct arena *arena;
	const struct block *allow; /* the values in force */
	struct dig *rows;
	size_t count, capacity;
	struct dig_fill *fills;
	size_t fill_count, fill_capacity;
	double stripped; /* as in struct earthwork */
	nm deepest;
};

/* Adds a row of an area dug from the ground's surface to a depth, and works out its bank. Adds
 * nothing without area or depth. */
void dig_add(struct dig_list *list, struct dig dig);
/* Adds a row for each zone, and one for ground in none that is graded. */
void dig_zones(struct dig_list *list, const struct zones *zones, const struct embeds *embeds,
	const struct cut_fills *cut_fills);

/* What can be made of earth that is dug. */
struct earth_wanted {
	double mixes, lawns; /* topsoil: m3, loose */
	double backfill;     /* m3 in place */
	double loosened;     /* m2, to be shown beside them */
};
/* Sums all rows up. */
void dig_finish(struct earthwork *out, const struct dig_list *list,
	const struct earth_wanted *wanted);

/* m3 in place of the sod that lies on the loosened ground within beds: taken off and laid back, so
 * in no sum of what is dug. */
double earthwork_sod_kept(const struct earthwork *work, const struct block *allow);

/* Adds what is hauled away, loose, and what is brought to fill low ground. */
void dig_items(struct item_list *items, const struct earthwork *work);

extern const struct word dig_words[DIG_PARTS];
extern const struct figure_table dig_table, dig_fill_table, earthwork_table;

#endif
