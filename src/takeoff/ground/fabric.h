/* Fabric under paths and all bases: strips cut from rolls.
 *
 * It lies under paths that have it, walls' bases, bases inside beds and pads. Strips run level
 * or upright, from either edge (strips.h): of the four ways the one that takes the fewest rolls
 * is laid, then the shortest length of them, then the earliest: level from the top, level from
 * the bottom, upright from the left, upright from the right.
 *
 * Pieces are cut one after the other. Where a piece runs over the end of a roll, the next roll
 * goes on with an end lap. What is left on a roll, less than an offcut worth keeping or no more
 * than an end lap where it would have to be joined, is waste.
 *
 * Pins: along all long edges, a lap being one edge, at both ends and no farther apart than
 * allowed for; so across the ends, and across each end lap. Common practice, no published
 * source. */
#ifndef TAKEOFF_GROUND_FABRIC_H
#define TAKEOFF_GROUND_FABRIC_H

#include "takeoff/ground/strips.h"
#include "takeoff/ground/zones.h"

/* Pieces of one length. */
struct fabric_row {
	nm length;
	int64_t pieces;
};

/* The way the strips run and where the first one lies. */
enum fabric_way { FABRIC_FROM_TOP, FABRIC_FROM_BOTTOM, FABRIC_FROM_LEFT, FABRIC_FROM_RIGHT };

struct fabric {
	nm width, roll, lap, end_lap; /* of the roll; lap: as laid, at most half the width */
	enum fabric_way way;
	double area;                  /* m2 of ground that is covered */
	const struct fabric_row *rows; /* longest first, without end laps */
	int row_count;
	int64_t level_pieces, upright_pieces; /* of which one is 0 */
	int64_t pieces, joins, rolls, pins; /* 0 rolls: none is needed */
	nm used;                      /* of the rolls, with end laps */
};

extern const struct word fabric_way_words[];
extern const struct figure_table fabric_table, fabric_row_table;

void fabric_compute(struct fabric *out, const struct basis *basis, const struct zones *zones);
/* Adds fabric.roll and fabric.pin. */
void fabric_items(struct item_list *items, const struct fabric *fabric);

#endif
