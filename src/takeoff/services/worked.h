/* All ground that is worked, for whoever has to know where somebody digs: the zones, what of beds
 * is only loosened or dug over where it lies, all other ground where it is graded, and the trenches
 * of lines to lay and of the header of drip lines. */
#ifndef TAKEOFF_SERVICES_WORKED_H
#define TAKEOFF_SERVICES_WORKED_H

#include "survey/near.h"
#include "takeoff/common/basis.h"
#include "takeoff/ground/zones.h"

/* Ground worked for one purpose. */
struct work_place {
	enum hand_kind kind; /* HAND_GROUND, HAND_TRENCH, HAND_HEADER */
	int region;        /* NO_REGION: a trench, or what is graded */
	const char *part;  /* as in JSON: the purpose of the dig, that of what is graded too, else
	                      "loosened", "dug-over", "trench", "header-trench" */
	const char *words; /* the same for people */
	const char *line;  /* HAND_TRENCH: the name of what is laid in it; else NULL */
	bool has_fabric;
};

/* Owners of the pieces are indices into the list. Trenches are dug through what is worked else, so
 * they have pieces of their own. */
struct worked {
	struct arena arena; /* of the pieces and all else; arena_clear */
	const struct work_place *list; /* zones, then beds, other ground, then trenches */
	int count;
	struct cover ground, trenches;
};

/* Holes for plants of one kind in one region, where nobody else works the ground. */
struct plant_holes {
	int kind;          /* in the plot's order of plants */
	int region;        /* NO_REGION: on open ground */
	char letter;
	const char *name;
	nm across;
	const struct spot *spots;
	int count;
};

/* What is worked but for beds. */
struct work_ground {
	const struct zones *zones;
	const struct cover *cover; /* of the zones */
	bool is_graded;            /* ground in none is cut or filled: all of it counts */
	const struct legs *header; /* of the trench from the tap to the drip lines */
	nm header_width;
	const struct plant_holes *holes;
	int holes_count;
};
/* Services of the plot in their order, those to lay alone; trenches as wide as service_values.h has
 * them, half of that on either side of the line, square at the ends. A bed that is not laid out is
 * taken to be loosened all over. It can be stopped. */
void worked_find(struct worked *out, const struct basis *basis, const struct work_ground *ground);

#endif
