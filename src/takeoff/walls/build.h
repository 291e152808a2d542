/* The wall and the cap of one bed: laid by themselves, or as the image of another's. */
#ifndef TAKEOFF_WALLS_BUILD_H
#define TAKEOFF_WALLS_BUILD_H

#include "takeoff/walls/site.h"

struct build {
	struct ring wall, cap; /* cap: empty where there is none */
	bool has_cap;
	unsigned int turns; /* in which both are their own images, bit by turn */
};

/* Lays both with the fewest cuts. Of a bed that is its own image a layout that is so too is taken
 * where it costs no more; symmetry.h has the order. Adds the snags wall-bond, wall-corner,
 * cap-bond and cap-narrow. The site must take the wall. */
void build_lay(struct build *out, const struct site *site);
/* The same as an image of what was laid along another outline. */
void build_image(struct build *out, const struct site *site, const struct build *build,
	const struct outline *from, const struct image *image);
/* Fills in the wall's figures, and adds bed-thin. */
void build_measure(struct wall *wall, const struct site *site, const struct build *build);
/* The outline's length, less `less` for the outer loop and more by it for each hole. */
nm build_outline_length(const struct site *site, nm less);

#endif
