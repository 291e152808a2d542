/* Snags: what would not work on the ground. A snag is a code, a place and figures; the sentence
 * is made of them where it is shown. */
#ifndef TAKEOFF_COMMON_SNAGS_H
#define TAKEOFF_COMMON_SNAGS_H

#include "plot/mirror.h"
#include "survey/survey.h"

/* Beside each its `figures` in order: lengths, nm, where nothing else is said. */
enum snag_code {
	SNAG_WALL_JOG,    /* the side, the least it must be */
	SNAG_WALL_NARROW, /* the wall's depth */
	SNAG_WALL_BOND,   /* the side */
	SNAG_WALL_CORNER, /* the side, its shortest corner piece, the least that should be;
	                     `kind`: enum wall_corner */
	SNAG_WALL_HIGH,   /* above ground, the height that asks for care; from the footing, the
	                     height that asks for a permit; `kind`: enum wall_high */
	SNAG_WALL_EMBED,  /* the embed, the wall's height, the least embed */
	SNAG_WALL_SLENDER, /* above ground, the wall's depth, the most above ground, the side that
	                      counts as long; `kind`: enum wall_slender */
	SNAG_WALL_STEP,   /* how far the ground along it falls, the block's height */
	SNAG_BED_THIN,    /* the least ground between walls */
	SNAG_CAP_NARROW,  /* the cap's depth */
	SNAG_CAP_BOND,    /* the side */
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
	SNAG_GATE_BLOCKED, /* how near is too near */
	SNAG_HOLE_WALL,   /* the hole across; `kind`: 0 it meets a wall or its base, 1 it is in
	                     a bed */
	SNAG_BED_REACH,   /* the reach of an arm */
	SNAG_PATH_NARROW, /* the least clear width */
	SNAG_PATH_BARROW, /* the least clear width */
	SNAG_PATH_CUT_OFF, /* `kind`: enum path_cut_off */
	SNAG_LAWN_NARROW, /* the least width */
	SNAG_FIXTURE_TALL, /* its height, its width, the greatest height */
	SNAG_FIXTURE_NO_PATH,
	/* Of plants; a figure may be a plant's place among those of the plot. */
	SNAG_PLANT_PLACE, /* the plant; `kind`: enum plant_place */
	SNAG_PLANT_CLOSE, /* the plant that takes more than its share, the other one, how far apart
	                     they are, how far they should be; `kind`: enum plant_close */
	SNAG_PLANT_FRONT, /* the plant, its height, the one behind it, the height of that */
	SNAG_PLANT_WALL,  /* the plant, its height, the depth of the soil, the most height there */
	SNAG_PLANT_SOIL,  /* the plant, the soil it needs, the soil there is; `kind`: enum
	                     plant_soil */
	SNAG_PLANT_SUN,   /* the plant, minutes of sun it has, minutes it needs */
	SNAG_PLANT_REACH, /* the plant, the reach of an arm */
	SNAG_DRIFT_EMPTY, /* the plant; `kind`: enum drift_none */
	SNAG_DRIFT_THIN,  /* the plant, how many have room, how many by area, their spacing */
	SNAG_PLANT_MANY,  /* the most plants */
	SNAG_HOUSE_NEAR,  /* the least distance */
	SNAG_HOUSE_COVERED, /* no figures */
	SNAG_HOUSE_FENCE, /* how much of it stands within a house */
	SNAG_DROP_CUT_OFF, /* `kind`: enum drop_cut_off */
	SNAG_SERVICE_NEAR, /* how near is too near; `kind`: enum hand_kind */
	SNAG_KEEP_DUG,    /* `kind`: enum hand_kind */
	SNAG_TRENCH_HOLE, /* the post's fence, its number along that, the service, how far its
	                     middle has to be from the line; `kind`: enum trench_of */
	SNAG_WATER_FLOW,  /* ml an hour: what its drip lines take, the most of one zone */
	/* `kind`: enum water_line; of one too long its length, the most; of one that takes too much
	 * ml an hour: what it takes, the most */
	SNAG_WATER_LINE,
	SNAG_WATER_CUT_OFF, /* no figures */
	/* millionths of a percent: how much it falls towards the house, or away from it; how much
	 * it should fall away; within this distance. `kind`: enum fall_house */
	SNAG_FALL_HOUSE,
	SNAG_NAME_OPEN,   /* no figures */
	SNAG_MIRROR_BROKEN, /* the last */
	SNAG_CODES
};
enum { SNAG_FIGURES = 4, SNAG_SLOTS = 256 };

/* Of which the corner piece is. */
enum wall_corner { WALL_CORNER_WALL, WALL_CORNER_CAP };
/* Which of the two heights a wall exceeds. */
enum wall_high { WALL_HIGH_CARE, WALL_HIGH_PERMIT, WALL_HIGH_BOTH };
/* Why nothing is filled in: no depth is left above undug ground, or within a filled bed; of a
 * ground-level bed the mix has nothing but topsoil, or a depth is 0. */
enum fill_none {
	FILL_NONE_UNDUG, FILL_NONE_RAISED, FILL_NONE_MIX, FILL_NONE_REPLACED, FILL_NONE_AMENDED
};
/* Why a wall may stand so high and no higher: nothing else is the matter; a side is long; the
 * subsoil is clay. */
enum wall_slender { WALL_SLENDER, WALL_SLENDER_LONG, WALL_SLENDER_CLAY };
/* What is dug where it is to be dug by hand, or not at all: ground of a region, a post's hole, the
 * trench of a line to lay, that of the header of drip lines, a plant's hole. */
enum hand_kind { HAND_GROUND, HAND_HOLE, HAND_TRENCH, HAND_HEADER, HAND_PLANT };
/* Of a line to lay; of the header of drip lines, which is no service. */
enum trench_of { TRENCH_OF_LINE, TRENCH_OF_HEADER };
/* Nobody gets to the path; it leads to nothing; the same where it might have led to a house. */
enum path_cut_off { PATH_UNREACHED, PATH_TO_NOTHING, PATH_TO_NO_HOUSE };
/* No barrow gets from the drop to the region; to anything. */
enum drop_cut_off { DROP_REGION, DROP_WHOLLY };

/* A specimen on ground that nothing is planted in: a path, a fixture or a house; in a wall. */
enum plant_place { PLANT_ON_PATH, PLANT_ON_FIXTURE, PLANT_IN_HOUSE, PLANT_IN_WALL };
/* What stands too close: both were placed one by one, or not. */
enum plant_close { PLANT_CLOSE_SPECIMENS, PLANT_CLOSE_DRIFTS };
/* Of which bed the soil is. */
enum plant_soil { PLANT_SOIL_RAISED, PLANT_SOIL_LEVEL };
/* Why nothing stands in a drift: it is in no bed; its band has no ground there; none of it has
 * room. */
enum drift_none { DRIFT_NO_BED, DRIFT_NO_BAND, DRIFT_NO_ROOM };
/* What is too much of a drip line. */
enum water_line { WATER_LINE_LONG, WATER_LINE_THIRSTY };

/* Which way ground near a house falls: towards it, or away but too little. */
enum fall_house { FALL_TOWARDS, FALL_LITTLE };

/* The cells around what a snag touches, all inclusive: by it one tells which are images of one
 * another in the mirror. */
struct snag_box {
	int16_t left, top, right, bottom;
};

/* Every cell may have some: kept small. */
struct snag {
	enum snag_code code : 8;
	unsigned int kind : 8;
	int16_t fence;     /* in the plot's order, of the first 32,767; NO_FENCE: none is meant */
	int region;        /* NO_REGION: the plot as a whole */
	struct place cell; /* the first it touches, in reading order */
	int loop, side;    /* -1 where no side is meant */
	struct snag_box box;
	const nm *figures; /* SNAG_FIGURES of them, mostly shared with others */
};
enum { NO_FENCE = -1 };

struct snag_list {
	struct arena *arena;
	const struct survey *survey;
	struct snag *list;
	size_t count, capacity;
	const nm *lately[SNAG_SLOTS]; /* figures, by hash: to be shared */
};

/* Adds a snag of a region, at its first cell, around all of it, no side meant; without a region
 * at the first cell of the plan, to be put in its place. Returns it for more to be filled in; valid
 * until the next one is added. */
struct snag *snag_add(struct snag_list *list, enum snag_code code, int region,
	const nm figures[static SNAG_FIGURES]);
/* Puts a snag at one cell, or around some with the first of them in reading order. */
void snag_put(struct snag *snag, struct place cell);
void snag_put_around(struct snag *snag, struct place first, struct rectangle cells);
/* The snags from number `from` on are of that fence. */
void snags_of_fence(struct snag_list *list, size_t from, int fence);
/* Adds `count` of the snags from number `from` on once more, all of one region, for another region
 * of the same shape. */
void snags_repeat(struct snag_list *list, size_t from, size_t count, int region);
#define SNAG_FIGURES_OF(...) ((const nm[SNAG_FIGURES]){ __VA_ARGS__ })
/* Adds mirror-broken for each set of cells that mirror each other and are not of one letter. */
void snag_mirror(struct snag_list *list, const struct plot *plot);
/* Adds name-open for each name that is on open ground. */
void snag_names(struct snag_list *list, const struct plot *plot);
/* Sorts by code, then place. */
void snag_sort(struct snag_list *list);
/* Of sorted snags the first at a cell from index `from` on; their count where there is none. Takes
 * no longer where there are very many of them. */
size_t snag_at(const struct snag_list *sorted, struct place cell, size_t from);
/* True where both have the same sentence, but for the place. */
bool snag_is_alike(const struct snag *a, const struct snag *b);
/* The first, from the top and from the left, of what is around a snag and around its images: the
 * same of all snags that are images of one another. */
struct snag_box snag_first_image(const struct mirror *mirror, const struct snag *snag);
bool snag_box_equal(const struct snag_box *a, const struct snag_box *b);
/* The first snag after number `from` that has another code, of sorted snags; their count where
 * none has. */
size_t snag_next_code(const struct snag_list *sorted, size_t from);

#endif
