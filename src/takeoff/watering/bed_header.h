/* The header within a bed: from where it comes in along a side of the watered ground to that end
 * of the drip lines which is nearer, and there straight across all of them, with a tee for each. A
 * line that it does not meet there, in a bed that is no rectangle, is joined to it by a tube
 * along. Common practice, no published source. */
#ifndef TAKEOFF_WATERING_BED_HEADER_H
#define TAKEOFF_WATERING_BED_HEADER_H

#include "takeoff/common/spot.h"
#include "takeoff/watering/drip.h"

/* At which end of the lines: where they begin, or where they end. */
enum header_side { HEADER_UNTOLD, HEADER_FROM, HEADER_TO };

struct bed_header {
	unsigned int side;    /* enum header_side; HEADER_UNTOLD: nobody knows where it comes in */
	struct spot comes_in; /* on the bed's outline, taped as slabs.h has it */
	nm beside;            /* across: where it goes along a side, as far as `at` */
	nm at;                /* along: where it goes across the lines */
	struct chord across;  /* from where to where it does; with `beside` */
	nm length;            /* of the tube; untold: what goes across the lines alone */
};

/* Without a tap. */
struct bed_header bed_header_untold(const struct drip *drip);
struct bed_header bed_header_from(const struct drip *drip, struct spot comes_in);
/* How far it is from where it comes in to one of the lines, beside the header: for a tube that has
 * no other lines to meet before. Untold: from the first line. */
nm bed_header_way(const struct bed_header *header, const struct drip *drip, int line);

#endif
