/* Trying a proposal: the plot is really changed, and its whole takeoff counted anew. */
#ifndef TAKEOFF_ADVICE_ATTEMPT_H
#define TAKEOFF_ADVICE_ATTEMPT_H

#include "takeoff/advice/proposal.h"
#include "takeoff/takeoff.h"

/* What may be tried of a plot, and what was kept. */
struct attempts {
	struct arena *arena;            /* for what is kept */
	const struct plot *plot;
	const struct takeoff *takeoff;  /* of it */
	int64_t snags[SNAG_CODES];      /* how many it has */
	int64_t work_each, work_left;   /* about microseconds of a takeoff; of all that remain */
	bool is_short;                  /* something was not tried: it would take too long */
	struct proposal *kept;
	size_t count, capacity;
};

/* False, with nothing to be tried, where one takeoff of the plot is so long that few could be
 * counted. */
bool attempts_begin(struct attempts *out, struct arena *arena, const struct plot *plot,
	const struct takeoff *takeoff);

/* Whether there is work left for one more, and it is not stopped. */
bool attempts_go_on(struct attempts *attempts);
/* Tries a proposal and fills in its difference. True where it is one to tell of: it spares what its
 * kind is for,
 *
 *	SIZE             pieces of block to saw
 *	COURSES, JOINED  blocks
 *	BLOCK            money, or pieces to saw
 *	FENCE            panels to saw
 *
 * no snag of any code is added, nor a plant that lacks sun (sun/plant_sun.h), as many beds are laid
 * out as before, and of COURSES the soil of those beds is still as deep as beds need. Names of
 * regions do not count. False too where no work is left for it, or it is stopped. */
bool attempt(struct attempts *attempts, struct proposal *proposal);
/* Keeps one that was tried. */
void attempts_keep(struct attempts *attempts, const struct proposal *proposal);

/* What a plot's takeoff has more than that of another, with the same price book or none. */
struct difference difference_of(const struct takeoff *before, const struct takeoff *after);

#endif
