/* Crushed stone: bases of paths, walls and pads, and the paths' surfaces.
 *
 * Compacted volume = area x depth; loose = compacted x factor, by the stone: with fines or clean. Bases
 * are of stone with fines. Stone is ordered loose, with what is spare on top, and weighs what its loose
 * density says.
 *
 * Areas are those of the zones that are dug (zones.h): nothing is counted twice. */
#ifndef TAKEOFF_GROUND_STONE_H
#define TAKEOFF_GROUND_STONE_H

#include "survey/survey.h"
#include "takeoff/common/loads.h"

struct takeoff;
struct items;

enum stone_layer { STONE_BASE, STONE_SURFACE };
/* What the stone lies under, or on. */
enum stone_place { STONE_PATH, STONE_WALL, STONE_INSIDE, STONE_PAD };

/* One layer of one region. */
struct stone {
	int region;
	enum stone_layer layer;
	enum stone_place place;
	enum stone_grading grading;
	double area;              /* m2 */
	nm depth;                 /* compacted */
	double compacted, loose;  /* m3 */
	int lifts;                /* of a base: the layers it is tamped in */
};

/* What is bought of one kind: bases, surfaces with fines, clean surfaces. */
enum stone_kind { STONE_KIND_BASE, STONE_KIND_FINES, STONE_KIND_CLEAN };
enum { STONE_KINDS = STONE_KIND_CLEAN + 1 };

struct stone_total {
	double compacted, loose, spare, order; /* m3; order = loose + spare */
	double weight;                         /* kg, of the order */
	struct loads loads;                    /* of the order */
};

/* Fills stones and stone_totals of *takeoff, whose zones are known. */
void stone_compute(struct takeoff *takeoff, struct arena *arena);
/* Adds stone.base, stone.surface.fines and stone.surface.clean. */
void stone_items(struct items *items, const struct takeoff *takeoff);
/* Layers of at most 4 in, by hand 2 in: trade press on paving has 4 in; the other is common practice, no
 * published source. */
int stone_lifts(nm depth, enum tamper tamper);
enum stone_kind stone_kind_of(const struct stone *stone);
/* "stone.base" and so on: the row of items. */
const char *stone_kind_word(enum stone_kind kind);
/* "path", "wall", "inside", "fixture". */
const char *stone_place_word(enum stone_place place);

#endif
