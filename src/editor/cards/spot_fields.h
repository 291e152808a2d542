/* Fields for places of the grid: how far from the plan's left and top edges, in lengths that are
 * rounded to whole cells, or in cells. */
#ifndef EDITOR_CARDS_SPOT_FIELDS_H
#define EDITOR_CARDS_SPOT_FIELDS_H

#include "editor/cards/card_ask.h"

/* What such a field may come to, in cells. */
struct reach {
	int least, most;
	const char *limit; /* why it is no more; NULL: the plan's own limit */
};

/* Of a grid point of the plan: its edges are among them. */
struct reach spot_reach(const struct editor *editor, bool is_down);
/* The grid point that the cursor is at: its cell's upper left corner, but in the last column and
 * the last row the plan's far edge, which no other cell has. */
struct place spot_meant(const struct editor *editor);

/* A field that has to be filled, offering so many cells; below 0: left of the plan, or above it.
 * Its text is in the report's words. */
struct field_spec spot_field(const struct report *report, const char *label, const char *meaning,
	int cells);
/* False, the fault filled, where it is wrong or out of reach; spot_check is for struct card. */
bool spot_read(const struct card *card, int field, const struct editor *editor, struct reach reach,
	int *cells, struct fault *fault);
bool spot_check(const struct card *card, int field, const struct value *value,
	const struct editor *editor, struct reach reach, struct fault *fault);
/* A grid point of the plan: how far across in a field, how far down in the next. */
bool spot_point_read(const struct card *card, int across, const struct editor *editor,
	struct place *at, struct fault *fault);

#endif
