/* A small change to a plot, as plain values, and what it makes of it.
 *
 * Nobody need ask whether it can be done: proposal_apply says so. In a mirrored plot whatever is
 * changed is changed with its images, and what is not mirrored is let be. */
#ifndef TAKEOFF_ADVICE_PROPOSAL_H
#define TAKEOFF_ADVICE_PROPOSAL_H

#include "plot/mirror.h"
#include "prices/book.h"

/* In the order in which they are tried. */
enum proposal_kind {
	PROPOSE_COURSES, /* raised beds of a letter have a course less */
	PROPOSE_BLOCK,   /* they are of another block of the price book, as high as they were */
	PROPOSE_JOINED,  /* two beds wall to wall, built alike, are one */
	PROPOSE_FENCE,   /* a leg of a fence is moved by whole cells; those beside it follow */
	PROPOSE_SIZE     /* a rectangular bed is larger or smaller by whole cells */
};
enum { PROPOSAL_KINDS = PROPOSE_SIZE + 1 };

/* The takeoff of the changed plot less that of the plot as it is: below 0 is spared. */
struct difference {
	int64_t blocks;      /* to order, of walls and caps, with spares */
	int64_t cuts;        /* pieces of block sawn */
	int64_t panels;      /* of fences, bought */
	int64_t panel_pieces; /* panels put up narrower than they are bought */
	double weight;       /* kg of all that is carried, as far as known; to a gram */
	bool has_cost;       /* there is a price book, and all that differs has a price */
	money cost;          /* with deliveries; 0 without has_cost */
};

struct proposal {
	enum proposal_kind kind;
	/* Of the takeoff that is advised on. SIZE: the bed and its images; JOINED: two that are
	 * joined, then likewise those of each image. */
	int regions[2 * IMAGES_MOST];
	int region_count;
	char letter; /* of the beds; JOINED: that the one bed has */
	struct rectangle from, to; /* SIZE: the cells of regions[0], as they are and would be */
	int courses;               /* COURSES, BLOCK: as they would be */
	struct size block;         /* BLOCK: the same */
	struct place at[IMAGES_MOST]; /* JOINED: a cell of regions[1], regions[3] ... */
	int fence;                 /* FENCE: its index */
	struct leg leg;            /* which of its legs, and how many with its images there */
	int leg_count;
	int right, down;           /* by how many cells */
	struct difference difference;
};

/* Changes the plot. False where that cannot be done, and the plot is then half changed, to be
 * thrown away:
 *
 *	SIZE     the bed takes open ground, path and lawn only; what it gives up becomes what
 *	         lies beyond it at its left or right, else above or below: one of those three too,
 *	         and beyond the plan open ground. It stays apart from other beds of its letter
 *	FENCE    the leg goes over such ground only; others of its fence meet it at its ends,
 *	         before and after; all keep some length, and all gates their place along them
 *	JOINED   the mirror must hold where the bed is */
bool proposal_apply(struct plot *plot, const struct proposal *proposal);

/* For proposal_apply. */
bool resize_bed(struct plot *plot, const struct proposal *proposal);
bool move_fence_leg(struct plot *plot, const struct proposal *proposal);
/* Whether all of the rectangle, as far as it is in the plan, is open ground, path and lawn. */
bool ground_is_free(const struct plot *plot, struct rectangle r);

#endif
