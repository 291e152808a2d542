/* Width and depth of what the cursor is in, as brackets on the rulers: of the region, or while
 * pegged of the rectangle from the peg. */
#ifndef SCREEN_BRACKET_H
#define SCREEN_BRACKET_H

#include "editor/editor.h"
#include "screen/layout.h"

/* A bracket on a ruler, in characters from the ruler's start; both ends are in view. */
struct bracket {
	int first, last;
	bool goes_before, goes_after; /* it goes on out of view */
	nm length;
};

struct measure {
	bool is_shown;
	struct bracket across, down;
};

/* Not shown where the person has not asked for it, or on open ground, nor before it is
 * counted. */
struct measure measure_of(const struct editor *editor);
/* mark: where the cursor's mark is on the ruler; the words keep clear of it. Returns what bracket
 * and words take of the ruler. */
struct bracket measure_draw_across(const struct editor *editor, const struct area *ruler,
	const struct bracket *bracket, int mark);
/* Draws in no rows but the bracket's. */
void measure_draw_down(const struct editor *editor, const struct area *ruler,
	const struct bracket *bracket, int mark);

#endif
