/* What one fence takes: panels, gates, posts in their holes, concrete and fixings.
 *
 * Runs are lines of post centres (stand.h). Every end, corner, tee and gate has a post, shared by
 * all that meet there, and so has every joint of two panels. */
#ifndef TAKEOFF_FENCE_FENCING_H
#define TAKEOFF_FENCE_FENCING_H

#include "plot/plot.h"
#include "takeoff/common/figure.h"

/* Direction of a leg or a gate from its first post. */
enum heading { HEADING_RIGHT, HEADING_DOWN, HEADING_LEFT, HEADING_UP };

/* Where along a leg the panels narrower than a section are; the first is at its first end. */
enum cut_at { CUT_LAST, CUT_FIRST, CUT_ENDS, CUT_MIDDLE };

/* A straight row of panels. Lengths are from centre to centre of posts; a panel is a post
 * narrower. */
struct fence_leg {
	struct leg on;        /* the plan's grid points */
	enum heading heading;
	enum cut_at cut_at;
	struct spot from, to; /* of the posts at its ends */
	nm length;
	int64_t whole;        /* panels of a full section */
	nm cut[2];            /* the narrower ones, in order */
	int cut_count;
	bool at_gate[2];      /* it begins, it ends at a post of a gate */
};

struct fence_gate {
	struct leg on;
	enum heading heading;
	int legs_before; /* how many legs come before it along the fence */
	struct spot from, to;
	nm length;  /* centre to centre */
	nm clear;   /* between the posts, 0 or more */
	nm leaf;    /* width of a leaf: its share of clear less the gaps */
	int leaves; /* 1, 2; 0 where there is no room for any */
};

/* All leaves of one width. */
struct fence_leaves {
	nm width;
	int64_t count;
	int64_t from_offcuts; /* how many of them are made of offcuts of panels */
};

/* LINE: between two panels, or where runs continue straight. */
enum post_kind { POST_END, POST_CORNER, POST_TEE, POST_GATE, POST_LINE };
enum { POST_KINDS = POST_LINE + 1 };

struct fence_post {
	struct spot at;
	enum post_kind kind;
	nm height; /* of its top over the ground at its foot */
};

/* Posts of one size that are bought in one length. */
struct post_stock {
	bool is_of_gates; /* whose posts are of another size */
	nm length;
	int count;
};

/* One post's hole. */
struct post_hole {
	nm across, depth;  /* depth: post in the ground and gravel under it */
	nm in_ground;      /* of the post */
	double area;       /* m2 */
	double concrete;   /* m3: round the post, as deep as the post is in the ground */
	double gravel;     /* m3 */
	double spoil;      /* m3 in the ground: the whole hole */
	double bags;       /* of concrete */
};

struct fencing {
	const struct fence *fence;
	const char *name;
	nm height, section, post;        /* section: centre to centre of its posts */
	nm gate_post;                    /* the square size of posts at gates; else `post` */
	int64_t rails;                   /* of a panel */
	nm length;                       /* of legs and gates, centre to centre */
	const struct fence_leg *legs;    /* run by run, along each */
	int leg_count;
	const struct fence_gate *gates;
	int gate_count;
	const struct fence_post *posts;  /* along the fence, as legs and gates follow each other */
	int post_count;
	/* Indices of posts as legs and gates follow each other: of each, where it has a length, all
	 * that stand on it, from its first to its last, so that one where two meet is there twice.
	 * A post's index is how many others are come to before it. */
	const int *along;
	int64_t of_kind[POST_KINDS];      /* how many posts */
	nm post_length, post_stock;      /* as needed; as bought: the longest */
	nm post_shortest;                /* as needed */
	const struct post_stock *stocks; /* shorter ones first; those at gates last */
	int stock_count;
	/* Where the plot tells how its ground lies (fence_levels.h), else 0. */
	int first_level, level_count;    /* which of all fences' */
	nm widest_gap;                   /* below panels and leaves */
	struct post_hole hole, gate_hole;
	double concrete_bags, gravel;    /* of all holes: bags; m3 */
	nm panel;                        /* clear width of a whole panel */
	int64_t panels_whole, panel_pieces; /* put up whole; cut narrower */
	int64_t panels_cut;              /* cut up for the pieces */
	int64_t panels_bought;           /* whole and cut up */
	const struct cut *cuts;          /* places: clear widths, and leaves from offcuts */
	int cut_count;
	nm kerf, fit;
	const struct fence_leaves *leaves; /* widest first */
	int leaves_count;
	int64_t brackets, hinges, latches, bolts; /* common practice, no published source */
};

/* How much more of a leg's end a post of a gate takes than another post; below 0: less. */
nm fencing_ease(const struct fencing *fencing, bool at_gate);
/* The hole of a post. */
const struct post_hole *fencing_hole(const struct fencing *fencing, enum post_kind kind);

extern const struct word heading_words[], post_words[POST_KINDS];
extern const struct figure_table fencing_table, fence_leg_table, fence_gate_table, fence_post_table;

#endif
