/* How a plot is marked out on the ground with tape, stakes and string.
 *
 * The datum is the plan's top left corner. Two taped measures of it to two fixed points tie it;
 * what of these the plot does not say is written down on the ground. The base line runs from the
 * datum along the plan's top edge; `across` is along it, `down` square to it. The plan's four edges
 * are the first strings; each of its corners is squared by 3-4-5, the whole by its diagonals.
 *
 * Each line on which an edge of a bed, path, lawn or fixture lies, or the posts of a fence, has one
 * string over the whole plan, whatever shares it. It is pulled from board to board, 4 ft (1.2 m)
 * outside the outermost dig; where a board would leave the plan, from a stake 1 ft (300 mm) inside
 * its edge. One more stake stands under it for each further 30 ft (9 m) begun. The first up are the
 * last down: those of what stands longest come first, those of paths last, so that a barrow gets
 * through. Common practice, no published source.
 *
 * Walls: their outer faces are the outlines of their beds, their inner ones lie a block's depth
 * inside.
 *
 * Points are corners of outlines, posts and gates. Each is on one string: a level one (along the
 * base line) where one goes through it, else, of posts and gates, the upright one. They are never
 * held, but read off the survey, string by string, as the tape meets them. */
#ifndef TAKEOFF_SETOUT_SETOUT_H
#define TAKEOFF_SETOUT_SETOUT_H

#include "takeoff/fence/fences.h"
#include "takeoff/setout/grid_line.h"

/* What a string is for, in the order of pulling. */
enum setout_use {
	USE_FRAME, USE_POSTS, USE_WALLS, USE_FIXTURES, USE_BEDS, USE_LAWNS, USE_PATHS
};

/* A region, or a fence by its index. */
struct setout_guided {
	bool is_fence;
	int index;
};

/* Of what is named, so many are named; the rest are counted. */
enum { SETOUT_NAMED_MOST = 12 };

/* A post or a gate. */
struct setout_mark {
	int fence, index;
};

struct setout_string {
	bool is_upright;
	bool is_frame;        /* an edge of the plan, from corner to corner */
	nm at;                /* across of an upright one, down of a level one */
	enum setout_use use;  /* the first of what it guides */
	struct spot from, to; /* where it crosses the boards */
	const struct setout_guided *guides; /* the first of them: fences, then regions along it */
	int guide_count;      /* how many it guides */
	int first_corner;     /* number of the first corner on it; level ones alone have any */
	int corner_count;
	const struct setout_mark *posts, *gates; /* along it */
	int post_count, gate_count;
};

/* The datum is tied to so many fixed points. */
enum { SETOUT_DATUM_TIES = 2 };

/* Where strings end at one side of the plan. */
enum setout_side { SETOUT_LEFT, SETOUT_TOP, SETOUT_RIGHT, SETOUT_BOTTOM };
enum { SETOUT_SIDES = SETOUT_BOTTOM + 1 };
struct setout_end {
	nm at;         /* across of the left and right ones, down of the others */
	bool is_stake; /* a board would leave the plan */
};

/* Rectangles of one size. */
struct setout_rectangle {
	int columns, rows;
	nm diagonal; /* of each of the two */
	int count;
	int regions[SETOUT_NAMED_MOST]; /* the first of them */
};

struct setout {
	const struct survey *survey;
	const struct fences *fences;
	nm width, height;       /* of the plan: the frame's */
	nm diagonal;            /* of the frame, each */
	nm square[3];           /* at each of its corners: 3, 4 and 5 of a length; 0: no room */
	bool is_long_across;    /* the 4 is along level strings */
	/* The datum's first ones to different fixed points; all others, in the plot's order. */
	const struct tie *datum_ties[SETOUT_DATUM_TIES];
	int datum_tie_count;
	const struct tie *const *more_ties;
	int more_tie_count;
	struct setout_end ends[SETOUT_SIDES];
	int level_stakes, upright_stakes; /* between the ends of a string that is no frame's */
	const struct setout_string *strings; /* in the order of pulling */
	int string_count;
	int corner_count, post_count, gate_count; /* over all strings */
	const struct setout_rectangle *rectangles; /* smaller ones first */
	int rectangle_count;
};

/* Sets a plot in force out. All lives in the arena and points to the plot, the survey and the
 * fences. Time: O(cells), with the logarithm of the posts. It can be stopped. */
void setout_make(struct setout *out, struct arena *arena, const struct plot *plot,
	const struct survey *survey, const struct fences *fences);

/* ---- Points along a string ------------------------------------------------------------------- */

enum setout_kind { SETOUT_CORNER, SETOUT_POST, SETOUT_GATE };

struct setout_point {
	enum setout_kind kind;
	struct spot at, to;       /* to: the far end of a gate */
	int number;               /* of a corner: from 1, in the order of strings */
	int regions[4];           /* of a corner: those that turn there, in reading order */
	int region_count;
	struct setout_mark mark;  /* of a post or a gate */
};

/* A walk along a string; begin with setout_along. */
struct setout_walk {
	const struct setout *setout;
	const struct setout_string *string;
	struct grid_line line;      /* where the next corner is looked for */
	int number, corners_left, post, gate; /* the next ones */
};
struct setout_walk setout_along(const struct setout *setout, const struct setout_string *string);
/* The next point as the tape meets them from the string's left or upper end, where several are at
 * one place corners first, then posts, then gates. False after the last. */
bool setout_next(struct setout_walk *walk, struct setout_point *point);

/* The lengths as marked on the ground: to 1/8 in or 1 mm, rounded once; ties away from 0. */
nm setout_rounded(nm length, enum units units);

extern const struct word setout_use_words[], setout_side_words[SETOUT_SIDES];

#endif
