/* Zones: drip lines that run at once, behind a valve of their own.
 *
 * Beds are taken in region order. One joins the zone at hand where that then takes no more than is
 * used of the supply, else it begins the next. A bed that takes more by itself begins a zone and
 * is split between its lines, in their order. A line that takes more by itself has a zone of its
 * own all the same. Common practice, no published source. */
#ifndef TAKEOFF_WATERING_WATER_ZONES_H
#define TAKEOFF_WATERING_WATER_ZONES_H

#include "takeoff/common/figure.h"
#include "takeoff/watering/drip.h"

/* A bed, or the lines of one that are in a zone. */
struct zone_bed {
	int region;
	int bed;          /* index into the beds that are watered */
	int first, lines; /* of its drip lines */
	int64_t emitters;
	bool is_part;     /* the bed has lines in other zones */
};

struct water_zone {
	int64_t number;   /* from 1 */
	const struct zone_bed *beds;
	int bed_count;
	int64_t emitters;
	double flow;      /* m3/h */
	double pace;      /* minutes for a metre of water, of its bed that takes longest */
	int64_t run;      /* whole minutes each time, in a usual week */
	int64_t minutes;  /* of all times */
	double water;     /* m3 that flow in them */
	nm header;        /* to its beds from the tap; 0: there is none */
};

struct zone_list {
	struct water_zone *list; /* in the arena */
	int count;
};

/* What zones are made of. */
struct zone_load {
	int region;
	const struct drip *drip;
};

/* most: emitters that one zone may have. Emitters and beds of each zone are filled in. */
void water_zones_make(struct zone_list *out, struct arena *arena, const struct zone_load *loads,
	int count, int64_t most);

extern const struct figure_table water_zone_table;

#endif
