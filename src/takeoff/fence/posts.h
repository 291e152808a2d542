/* The posts of a fence, and the holes they stand in. */
#ifndef TAKEOFF_FENCE_POSTS_H
#define TAKEOFF_FENCE_POSTS_H

#include "takeoff/fence/fencing.h"

/* Finds posts .. of_kind of *fencing from its legs and gates: each post once, in the order in
 * which they are come to along the fence, each as high as on level ground: height + gap. Returns
 * the fence's posts, to be made higher. */
struct fence_post *posts_place(struct fencing *fencing, struct arena *arena);

/* Works out post_length .. stock_count, the holes and the fillings of all of them, of *fencing:
 *
 *	post length = its height + in-ground, bought rounded up to a multiple of post-stock
 *	hole        = a cylinder, in-ground + gravel deep
 *	concrete    = (circle of the hole - post's square) x in-ground, 0 where the post fills it
 *	gravel      = circle of the hole x gravel
 *
 * Geometry; how deep a post goes and how wide its hole is are common practice, no published source,
 * and so is how many bags it takes. */
void posts_dig(struct fencing *fencing, const struct plot *plot, struct arena *arena);

#endif
