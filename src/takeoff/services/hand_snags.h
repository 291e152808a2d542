/* Snags of what is dug by hand. */
#ifndef TAKEOFF_SERVICES_HAND_SNAGS_H
#define TAKEOFF_SERVICES_HAND_SNAGS_H

#include "takeoff/services/by_hand.h"

/* What is near something. */
struct hand_touch {
	enum hand_kind kind;
	int which;                /* region; post of the fence; place (worked.h) of a trench; kind
	                             of plant */
	int among;                /* fence of a post, region of a plant; else 0 */
	struct place first;       /* cell, in reading order */
	struct rectangle cells;   /* around all that is near */
};

/* Start zeroed, end with hand_touches_fini. */
struct hand_touches {
	struct hand_touch *list;  /* owned */
	size_t count, capacity;
};

/* Adds what is near one service or thing that is kept. */
void hand_touches_add(struct hand_touches *touches, const struct survey *survey,
	const struct hand *hand);
/* Adds one snag of the code for each region, post and trench, and for each kind of plant in a
 * region. */
void hand_touches_warn(struct hand_touches *touches, const struct basis *basis,
	enum snag_code code);
void hand_touches_fini(struct hand_touches *touches);

#endif
