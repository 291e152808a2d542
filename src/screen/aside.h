/* Where something stands in front of the plan, the plan is shown moved aside, so that what is being
 * done stays in view. */
#ifndef SCREEN_ASIDE_H
#define SCREEN_ASIDE_H

#include "editor/editor.h"
#include "screen/layout.h"

/* The view to be drawn while so many rows and columns are left of the screen, from the top left
 * corner on: the editor's own, moved no farther than cursor and peg, bends, or the place of a stamp
 * need; the cursor alone where there is no room for all. */
struct view aside_view(const struct editor *editor, const struct layout *layout,
	const struct area *left);

#endif
