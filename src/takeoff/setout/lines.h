/* Which lines of a plot get a string, and what each guides. */
#ifndef TAKEOFF_SETOUT_LINES_H
#define TAKEOFF_SETOUT_LINES_H

#include "takeoff/setout/setout.h"

/* Gives `out` its strings in the order of pulling: the frame's, and one for each line of the plan
 * along which an edge of a region runs or the legs and gates of a fence; with what they guide and
 * how many corners are on them. In the arena; returned to be written to. */
struct setout_string *lines_find(struct setout *out, struct arena *arena);

/* The strings by the lines they are on. */
struct line_index {
	const struct setout *setout;
	int *level, *upright; /* by line of the grid: the string on it, NO_STRING */
	int *between;         /* those on no line of the grid */
	int between_count;
};
enum { NO_STRING = -1 };

/* To be ended with line_index_fini. */
struct line_index line_index_of(const struct setout *setout);
void line_index_fini(struct line_index *index);
int line_index_find(const struct line_index *index, bool is_upright, nm at);
bool heading_is_upright(enum heading heading);

#endif
