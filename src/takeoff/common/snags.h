/* Collecting snags while the trades are computed. */
#ifndef TAKEOFF_COMMON_SNAGS_H
#define TAKEOFF_COMMON_SNAGS_H

#include "takeoff/takeoff.h"

struct snag_list {
	struct arena *arena;
	struct snag *snags;
	size_t count, capacity;
};

/* Adds a snag of a region, at its first cell, no side meant. Returns it for more to be filled in; valid
 * until the next one is added. text lives in the arena. */
struct snag *snag_add(struct snag_list *list, enum snag_code code, const struct takeoff *takeoff,
	int region, const char *text);
/* A length as sentences show it, in the plot's units; lives in the arena. */
const char *snag_length(struct arena *arena, const struct plot *plot, nm length);
/* Adds mirror-broken for each orbit with more than one letter. */
void snag_mirror(struct snag_list *list, const struct plot *plot);
/* Puts the list, sorted by code, then place, into *takeoff. */
void snag_finish(struct snag_list *list, struct takeoff *takeoff);

#endif
