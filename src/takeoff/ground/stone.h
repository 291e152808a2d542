/* Crushed stone: bases of paths, walls and pads, and the paths' surfaces.
 *
 * Compacted volume = area x depth; loose = compacted x factor, by the stone: with fines or
 * clean. Bases are of stone with fines. Stone is ordered loose, with a spare on top; its weight
 * is that of loose stone. The factors are common practice, no published source.
 *
 * Areas are those of the zones that are dug (zones.h): nothing is counted twice. */
#ifndef TAKEOFF_GROUND_STONE_H
#define TAKEOFF_GROUND_STONE_H

#include "takeoff/common/loads.h"
#include "takeoff/ground/zones.h"

/* Thickest layer that is spread and tamped at one time: 4 in, by hand 2 in; 100 and 50 mm in a
 * metric plot. Common practice, no published source. */
nm stone_layer_most(enum tamper tamper, enum units units);

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
	int lifts;                /* of a base: layers in which it is tamped */
};

/* A kind that is bought: bases, surfaces with fines, clean surfaces. */
enum stone_kind { STONE_KIND_BASE, STONE_KIND_FINES, STONE_KIND_CLEAN };
enum { STONE_KINDS = STONE_KIND_CLEAN + 1 };

struct stone_total {
	enum stone_kind kind;
	double compacted, loose, spare, order; /* m3; order = loose + spare */
	double weight;                         /* kg, of the order */
	struct loads loads;                    /* of the order */
};

/* The sum of one kind of layer over all regions of one entry. */
enum layer_kind { LAYER_BASE, LAYER_SURFACE_FINES, LAYER_SURFACE_CLEAN, LAYER_WALL, LAYER_INSIDE,
	LAYER_PAD };
enum { LAYER_KINDS = LAYER_PAD + 1 };

struct stone_layer_sum {
	const struct entry *entry;
	enum layer_kind kind;
	double area, compacted;
	nm depth;
	int lifts; /* 0: a surface */
};

struct stones {
	const struct stone *list; /* in region order */
	int count;
	const struct stone_layer_sum *layers; /* legend order */
	int layer_count;
	struct stone_total totals[STONE_KINDS];
};

extern const struct figure_table stone_table, stone_layer_table, stone_total_table;

void stone_compute(struct stones *out, const struct basis *basis, const struct zones *zones);
/* Adds stone.base, stone.surface.fines and stone.surface.clean. */
void stone_items(struct item_list *items, const struct stones *stones);
/* Layers in which a base is tamped. */
int stone_lifts(nm depth, enum tamper tamper, enum units units);

#endif
