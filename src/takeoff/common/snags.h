/* Snags: what would not work on the ground. A snag is a code, a place and figures; the sentence
 * is made of them where it is shown. */
#ifndef TAKEOFF_COMMON_SNAGS_H
#define TAKEOFF_COMMON_SNAGS_H

#include "survey/survey.h"

/* Beside each its `figures` in order: lengths, nm, where nothing else is said. */
enum snag_code {
	SNAG_WALL_JOG,    /* the side, the least it must be */
	SNAG_WALL_NARROW, /* the wall's depth */
	SNAG_WALL_BOND,   /* the side */
	SNAG_WALL_HIGH,   /* above ground, the height that asks for care; from the footing, the
	                     height that asks for a permit; `kind`: enum wall_high */
	SNAG_WALL_EMBED,  /* the embed, the wall's height, the least embed */
	SNAG_BED_THIN,    /* the least ground between walls */
	SNAG_CAP_NARROW,  /* the cap's depth */
	/* `kind`: enum fill_none; raised: the wall's height, freeboard, mulch, embed */
	SNAG_FILL_NONE,
	SNAG_SOIL_THIN,   /* the soil, the least soil */
	SNAG_FLOOR_STONE, /* millionths of a percent: stone between the walls, the most of it */
	SNAG_LAWN_THIN,   /* from a base up to the turf, the least soil there */
	SNAG_FENCE_TIGHT, /* centre to centre; `kind`: 1 of a gate, 0 of a panel */
	SNAG_FENCE_HOLE,  /* the hole across, the post */
	SNAG_FENCE_HIGH,  /* the fence's height, the height allowed for */
	SNAG_FENCE_PATH,  /* how much of it stands across the path */
	SNAG_GATE_NARROW, /* what is clear, what is allowed for */
	SNAG_GATE_BLOCKED,
	SNAG_HOLE_WALL,   /* the hole across; `kind`: 0 it meets a wall or its base, 1 it is in
	                     a bed */
	SNAG_MIRROR_BROKEN,
	SNAG_CODES
};
enum { SNAG_FIGURES = 4, SNAG_SLOTS = 256 };

/* Which of the two heights a wall exceeds. */
enum wall_high { WALL_HIGH_CARE, WALL_HIGH_PERMIT, WALL_HIGH_BOTH };
/* Why nothing is filled in: no depth is left above undug ground, or within a filled bed; of a
 * ground-level bed the mix has nothing but topsoil, or a depth is 0. */
enum fill_none {
	FILL_NONE_UNDUG, FILL_NONE_RAISED, FILL_NONE_MIX, FILL_NONE_REPLACED, FILL_NONE_AMENDED
};

/* Every cell may have some: kept small. */
struct snag {
	enum snag_code code : 8;
	unsigned int kind : 8;
	int region;        /* NO_REGION: the plot as a whole */
	struct place cell; /* the first it touches, in reading order */
	int loop, side;    /* -1 where no side is meant */
	const nm *figures; /* SNAG_FIGURES of them, mostly shared with others */
};

struct snag_list {
	struct arena *arena;
	const struct survey *survey;
	struct snag *list;
	size_t count, capacity;
	const nm *lately[SNAG_SLOTS]; /* figures, by hash: to be shared */
};

/* Adds a snag of a region, at its first cell, no side meant. Returns it for more to be filled
 * in; valid until the next one is added. */
struct snag *snag_add(struct snag_list *list, enum snag_code code, int region,
	const nm figures[static SNAG_FIGURES]);
/* Adds `count` of the snags from number `from` on once more, all of one region, for another region
 * of the same shape. */
void snags_repeat(struct snag_list *list, size_t from, size_t count, int region);
#define SNAG_FIGURES_OF(...) ((const nm[SNAG_FIGURES]){ __VA_ARGS__ })
/* Adds mirror-broken for each set of cells that mirror each other and are not of one letter. */
void snag_mirror(struct snag_list *list, const struct plot *plot);
/* Sorts by code, then place. */
void snag_sort(struct snag_list *list);
/* Of sorted snags the first at a cell from index `from` on; their count where there is none. Takes
 * no longer where there are very many of them. */
size_t snag_at(const struct snag_list *sorted, struct place cell, size_t from);
/* True where both have the same sentence, but for the place. */
bool snag_is_alike(const struct snag *a, const struct snag *b);
/* The first snag after number `from` that has another code, of sorted snags; their count where
 * none has. */
size_t snag_next_code(const struct snag_list *sorted, size_t from);

#endif
