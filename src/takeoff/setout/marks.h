/* Which posts and gates are on which string. */
#ifndef TAKEOFF_SETOUT_MARKS_H
#define TAKEOFF_SETOUT_MARKS_H

#include "takeoff/setout/setout.h"

/* Gives the strings their posts and gates, each in the order of the tape. A post is on the level
 * string through it, else on the upright one; a gate on that along which it lies. In the arena. */
void marks_find(struct setout *setout, struct setout_string *strings, struct arena *arena);

/* Where a post stands; the left or upper end of a gate, and the other. */
struct spot mark_post(const struct setout *setout, struct setout_mark post);
struct spot mark_gate(const struct setout *setout, struct setout_mark gate, struct spot *to);

#endif
