/* Panels between the posts of a fence, and which panel each narrower one is cut from. */
#ifndef TAKEOFF_FENCE_PANELS_H
#define TAKEOFF_FENCE_PANELS_H

#include "plot/mirror.h"
#include "takeoff/fence/fencing.h"

/* Divides a leg, as much of it as posts of gates at its ends leave. lead: from mirror_leg_lead; the
 * whole sections begin at the end that leads. Of k whole sections and a rest r:
 *
 *	r = 0               k whole
 *	k = 0               one panel, however short
 *	r < half a section  k - 1 whole, then two of (section + r) / 2
 *	else                k whole, then one of r
 *
 * A leg that the mirror turns onto itself is the same from both ends: where r is under half a
 * section one of the two stands at each end, else r in the middle if k is even, two of
 * (section + r) / 2 in the middle if it is odd. Halves to the nanometre. No panels where posts
 * leave no room between them. Common practice, no published source. */
void panels_divide(struct fence_leg *leg, const struct fencing *fencing, int lead);

/* Equal panels side by side. */
struct panel_group {
	nm place; /* of each, centre to centre */
	int64_t count;
};
enum { PANEL_GROUPS_MOST = 4 };
/* The panels of a leg in order from its first end; returns how many groups. */
int panels_in_order(const struct fence_leg *leg, nm section,
	struct panel_group groups[PANEL_GROUPS_MOST]);

/* Finds which legs end at a gate, and divides all of them; `legs` are the fence's own. */
void panels_lay(const struct fencing *fencing, struct fence_leg *legs, struct mirror mirror);

/* Counts the panels of all legs and plans their cutting: longest first; then, where the fence says
 * so, leaves of gates from the offcuts that are long enough. Fills panel .. leaves_count; needs
 * fencing->kerf and fencing->fit. */
void panels_cut(struct fencing *fencing, struct arena *arena);

#endif
