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
	unsigned int side;    /* enum header_side; HEADER_UNTOLD, the rest 0: nobody knows where it
	                         comes in */
	struct spot comes_in; /* on the bed's outline, taped as slabs.h has it */
	nm beside;            /* across: where it goes along a side, as far as `at` */
	nm at;                /* along: where it goes across the lines */
	struct chord across;  /* from where to where it does; with `beside` */
};

struct bed_header bed_header_from(const struct drip *drip, struct spot comes_in);
/* How long the tube is for so many of the lines one after the other: from where the header comes in
 * along and across to them and on over them; untold: over them alone. */
nm bed_header_tube(const struct bed_header *header, const struct drip *drip, int first, int lines);

#endif
