/* Block walls of raised beds, laid out block by block.
 *
 * The wall stands inside the bed's outline, outer face on it, of blocks l long, w deep, h high.
 * At each corner one run goes through and the other butts against it; the next course swaps
 * every corner. A run starts, from its side's first corner: convex going through 0, convex
 * butting w, reflex going through -w, reflex butting 0; its end likewise. So the runs of an
 * outer loop of perimeter P add up to P - 4w in every course, of a hole's to P + 4w, and as
 * rectangles they tile the wall exactly.
 *
 * Which run goes through at each corner is chosen for the fewest cut pieces over the courses
 * really laid (corners.h); each run is laid by bond.h. A cap is laid as the course that follows
 * the last one: its runs swap every corner against it, and its joints stand a quarter of the
 * shorter of both blocks from those below; no piece is under half a cap.
 *
 * Beds that are images of one another (survey/image.h), of blocks alike, are laid as images: the
 * first by itself, the others with its pieces. Where a bed is its own image and so has several
 * images to choose from, it is that which fits its place: left for right on the other side of
 * the plot's upright axis, top for bottom on that of the level one. */
#ifndef TAKEOFF_WALLS_WALL_H
#define TAKEOFF_WALLS_WALL_H

#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"
#include "takeoff/walls/ring.h"

/* The wall of one raised bed: all odd courses are alike, and all even ones. */
struct wall {
	int region;
	const struct block *bed;
	struct size block;
	nm joint;                     /* what of the block's length is joint; the cap's too */
	int courses;
	struct wall_course odd, even; /* even: without runs in a wall of one course */
	bool has_cap;                 /* a cap is laid */
	struct size cap_block;
	struct wall_course cap;
	double inner_area;            /* m2 */
	nm inner_perimeter;           /* of the inner face, all loops */
	int64_t whole_blocks, cut_pieces; /* over all courses, without cap */
	double block_weight, weight;  /* kg of one block; of all blocks as laid */
	double bead;                  /* metres of adhesive bead, with the cap's */
	int like;                     /* the region whose pieces it has, its own where it was laid
	                                 by itself */
	enum turn turn;               /* how they are turned */
};

/* A raised bed that could not be laid out; a snag says why. */
struct wall_not_laid {
	int region;
	int64_t about_blocks;
};

struct walls {
	const struct wall *list; /* in region order */
	int count;
	const struct wall_not_laid *not_laid;
	int not_laid_count;
	int caps_not_laid; /* walls whose cap has no room */
};

/* Views print the courses and cap of the first themselves. */
extern const struct figure_table wall_table, wall_not_laid_table;

/* Lays the walls of all raised beds and adds the snags wall-jog, wall-narrow, wall-bond,
 * wall-corner, bed-thin, cap-narrow, cap-bond. */
void walls_lay(struct walls *out, const struct basis *basis);
/* The wall of a region; NULL where none is laid out. */
const struct wall *walls_find(const struct walls *walls, int region);
/* Adds adhesive with its spare, in whole cartridges. */
void walls_items(struct item_list *items, const struct walls *walls);

/* What the wall of a bed is built of, by its block and the values in force. */
struct masonry wall_masonry(const struct block *allow, const struct block *bed);
/* Cubic metres of a length of one course of these blocks. */
double wall_volume(nm length, const struct size *block);
/* Kilograms per cubic metre of a bed's blocks and caps. */
double wall_density(const struct block *bed);

#endif
