/* How high raised walls are, and how deep they and fixtures stand in the ground.
 *
 * A wall's embed is what of it is below finished ground. Where a bed sets none it is the greatest
 * of: the deepest surface of paths, so that walls and paths share one formation; a tenth of the
 * wall's height; and, where a lawn touches the bed by a side or a corner, 2 in (50 mm) of soil and
 * the turf's thickness. It goes up to the next 1/2 in (10 mm). All that is common practice, no
 * published source. (For the tenth, a note 15-5 on small walls is quoted, by memory National
 * Concrete Masonry Association, TEK 15-5, Segmental Retaining Wall Design.) */
#ifndef TAKEOFF_COMMON_EMBED_H
#define TAKEOFF_COMMON_EMBED_H

#include "takeoff/common/basis.h"

#include <stdint.h>

/* A wall's height over what of it should at least be below ground. */
enum { HEIGHT_PER_EMBED = 10 };

struct embeds {
	const struct survey *survey;
	const struct entry *legend;
	enum units units;
	nm surface; /* the deepest among paths that have a cell; 2 in (50 mm) without one */
	/* By region: of a raised bed that touches lawns, 1 + the index in the legend of the one
	 * with the thickest turf; else 0. NULL: none touches. */
	const uint8_t *lawns;
	/* By index in the legend: beds of that entry have such values. */
	const uint64_t *touched;
};

void embeds_find(struct embeds *out, const struct basis *basis);
/* That of a raised bed. */
nm embed_of(const struct embeds *embeds, int region);
/* The least and the greatest of an entry's beds; it has a cell. */
struct embed_range {
	nm least, most;
};
struct embed_range embed_range(const struct embeds *embeds, const struct entry *bed);

/* From the base's top, without cap. */
nm wall_height(const struct block *bed);
/* Of the turf that is laid; 0 where none is. */
nm turf_thickness(const struct block *lawn);

#endif
