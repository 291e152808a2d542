/* Whether walls stand by their own weight against the soil they hold: adds wall-slender.
 *
 * What of a wall is above ground, courses and cap less the embed, is at most so many times as high
 * as its block is deep: ALLOW_SLENDER, or ALLOW_SLENDER_LONG where a straight side of the bed is
 * longer than 6 ft (1.8 m) or the subsoil is clay; of a block lighter than the default less, by the
 * root of its density over that. Common practice, no published source: tests check it by statics.
 * It is no design. */
#ifndef TAKEOFF_GROUND_SLENDER_H
#define TAKEOFF_GROUND_SLENDER_H

#include "takeoff/common/embed.h"
#include "takeoff/walls/wall.h"

/* Looks at the walls that are laid out. */
void slender_check(const struct basis *basis, const struct walls *walls,
	const struct embeds *embeds);

#endif
