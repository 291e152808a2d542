/* Fabric under paths and all bases: strips cut from rolls.
 *
 * It lies on ground that is dug for stone: under paths that have it, walls' bases, bases inside
 * beds and pads, not on the floor of a bed that stays undug. Strips run level or upright, from
 * either edge (strips.h). Of these four ways the one of fewest rolls is laid, then of the least
 * length used, then the earliest of: level from the top, level from the bottom, upright from the
 * left, upright from the right.
 *
 * A strip runs on through a gap shorter than an offcut worth keeping (common practice, no
 * published source): what would be saved there could not be used. What lies over ground that is
 * not dug is cut away in place.
 *
 * Pieces are cut one after another. Where a roll ends within a piece, the next roll continues
 * with an end lap. A rest is waste if it is shorter than an offcut worth keeping, or if it
 * would have to be joined and is no longer than an end lap.
 *
 * Pins: along all long edges (a lap is one edge), at both ends of each and no farther apart
 * than allowed for; likewise across the ends and each end lap. Common practice, no published
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
	nm width, roll, lap, end_lap; /* of the roll; lap: between strips, at most half the width */
	enum fabric_way way;
	double area;                  /* m2 of ground covered */
	const struct fabric_row *rows; /* longest first, without end laps */
	int row_count;
	int64_t level_pieces, upright_pieces; /* of which one is 0 */
	int64_t pieces, joins, rolls, pins; /* 0 rolls: no fabric */
	nm used;                      /* length used, with end laps */
};

extern const struct word fabric_way_words[];
extern const struct figure_table fabric_table, fabric_row_table;

/* Whether there is fabric under what is built on a zone. */
bool fabric_is_under(const struct survey *survey, const struct zone *zone);

void fabric_compute(struct fabric *out, const struct basis *basis, const struct zones *zones,
	const struct zones_ground *ground);
/* Adds fabric.roll and fabric.pin. */
void fabric_items(struct item_list *items, const struct fabric *fabric);

#endif
