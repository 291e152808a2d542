/* The shadows of single moments of a day on a plan: cast by the same things on the same cells, by
 * the same sun, as where hours are counted (sun_hours.h). */
#ifndef TAKEOFF_SUN_SUN_SHADOWS_H
#define TAKEOFF_SUN_SUN_SHADOWS_H

#include "survey/sun.h"
#include "takeoff/sun/sun_scene.h"

struct sun_shadows {
	struct shade_scene scene;
	struct shade *shade;
	double north;
	struct sun_day day;
	struct sun_place sun; /* where it stands at the last moment cast */
	uint16_t *lit;        /* by cell, row by row: 1 where the sun shines then, else 0 */
};

/* Makes ready for a day; there is a latitude. All lives in the arena and points to the takeoff.
 * False where it was stopped. */
bool sun_shadows_begin(struct sun_shadows *out, struct arena *arena, const struct takeoff *takeoff,
	struct date date);
/* The shadows of an hour of solar time at which the sun is above the horizon, by geometry. False
 * where it was stopped: lit holds nothing then. */
bool sun_shadows_cast(struct sun_shadows *shadows, double hour);

/* Whether a cell has light and shade: fixtures and houses have none. */
bool sun_shadows_has_cell(const struct sun_shadows *shadows, struct place cell);
bool sun_shadows_is_lit(const struct sun_shadows *shadows, struct place cell);

#endif
