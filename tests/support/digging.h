/* What is dug where, as GEOS finds it cell by cell, as an independent reference. */
#ifndef SUPPORT_DIGGING_H
#define SUPPORT_DIGGING_H

#include "support/geos.h"
#include "support/random.h"
#include "takeoff/takeoff.h"

struct digging {
	int region;
	enum dig_part part;
	GEOSGeometry *shape; /* in metres */
};

struct diggings {
	GEOSContextHandle_t geos;
	struct digging *list;
	int count;
	GEOSGeometry *taken; /* all of them together */
};

/* Widens cells to squares of the base's reach, cuts them at the plan's edges and at what is dug
 * already, zone after zone. Goes by the survey, by which walls are laid and by the attributes
 * alone. */
struct diggings diggings_find(GEOSContextHandle_t geos, const struct takeoff *takeoff);
void diggings_free(struct diggings *diggings);
/* NULL where there is none of that region and part. */
const struct digging *diggings_at(const struct diggings *diggings, int region, enum dig_part part);

/* A plot with paths, fixtures, lawns, raised and ground-level beds, all of them dug in all ways,
 * in cells of a size in use. */
void diggings_plot(struct plot *plot, struct random *random);

#endif
