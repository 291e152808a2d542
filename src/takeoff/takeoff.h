/* The takeoff of a plot: everything counted, in one plain value that panel, text and JSON show. Pure:
 * the same plot gives the same takeoff; nothing is kept between calls.
 *
 * Lengths are nanometres, areas m2, volumes m3, weights kg. Nothing is rounded here but the whole
 * packs of an order. */
#ifndef TAKEOFF_TAKEOFF_H
#define TAKEOFF_TAKEOFF_H

#include "survey/outline.h"
#include "takeoff/costs/costs.h"
#include "takeoff/ground/dig.h"
#include "takeoff/fence/fencing.h"
#include "takeoff/ground/zones.h"
#include "takeoff/ground/edging.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/ground/lawn.h"
#include "takeoff/ground/liner.h"
#include "takeoff/ground/stone.h"
#include "takeoff/work.h"

/* ---- Walls ------------------------------------------------------------------------------------ */

/* One straight piece of one course, along one side of a bed's outline. */
struct wall_run {
	int loop, side;   /* of the outline */
	nm from;          /* where it starts along the side's outer face, from the side's first corner:
	                     0 or the wall's depth w at a convex corner, -w or 0 at a reflex one */
	nm length;
	const nm *pieces; /* places, in order along the side; they add up to length */
	int piece_count;
};

struct wall_course {
	const struct wall_run *runs; /* loop by loop, side by side: one each */
	int run_count;
	int64_t whole, cut; /* blocks in one such course */
	nm length;          /* of all runs */
};

/* The wall of one raised bed: odd courses are all alike, even ones too. */
struct wall {
	int region;
	const struct block *bed;
	struct size block;
	int courses;
	struct wall_course odd, even; /* even: without runs where courses is 1 */
	bool has_cap;                 /* a cap is laid */
	struct size cap_block;
	struct wall_course cap;
	double inner_area;            /* m2 */
	nm inner_perimeter;           /* of the inner face, all loops */
	int64_t whole_blocks, cut_pieces; /* over all courses, without cap */
	double block_weight, weight;  /* kg of one block; of all blocks of this wall, as laid */
	double bead;                  /* metres of adhesive bead, cap's included */
};

/* A raised bed that could not be laid out; a snag tells why. */
struct wall_not_laid {
	int region;
	int64_t about_blocks;
};

/* ---- Cutting ---------------------------------------------------------------------------------- */

enum block_use { USE_WALL, USE_CAP };

/* One way of cutting a block, and how many blocks are cut so. */
struct cut {
	const nm *pieces; /* places, longest first */
	int piece_count;
	int64_t blocks;
};

/* All pieces of one block size and use, over all beds. */
struct cutting {
	enum block_use use;
	struct size block;
	int64_t whole, cut_blocks, bought, floor, breakage;
	const struct cut *cuts;
	int cut_count;
	nm kerf, fit;
	double weight; /* kg of the blocks bought, without breakage */
};

/* ---- Fill ------------------------------------------------------------------------------------- */

struct fill_part {
	const char *name;
	double volume; /* m3 to order */
};

/* What a bed is filled with; also the amendment of a ground-level one. */
struct fill {
	int region;
	nm soil_depth;
	double soil;  /* m3 in place */
	double order; /* m3 with settlement; the parts add up to it */
	struct fill_part parts[MIX_PARTS_MOST];
	int part_count;
	double mulch; /* m3 */
	nm mulch_depth;
};

/* ---- Rows that all three views print alike ----------------------------------------------------- */

/* By trade, in the order the work is done. Stone: base, surface, fabric and edging too. */
enum section {
	SECTION_DIG, SECTION_STONE, SECTION_WALLS, SECTION_FILL, SECTION_LAWN, SECTION_FENCE
};

struct item {
	const char *id;    /* "block.wall", "soil.topsoil": lower-case words joined by dots */
	enum section section;
	const char *label; /* for people */
	enum item_unit unit;
	struct size block; /* of block rows; else all 0 */
	nm length;         /* of what is sold in several lengths; else 0 */
	double laid, spare, order; /* order = laid + spare - reused, up to whole pieces where sold so */
	double reused;     /* found on the plot */
	const char *note;  /* what the spare is, or NULL */
	double weight;     /* kg of what is bought; 0: not known */
	const struct pack *pack; /* how it is bought, by the price book; NULL: no price */
	double packs;      /* whole ones; of bulk times the pack's size, a whole number of steps */
	money cost;        /* of the packs */
};

/* ---- Snags ------------------------------------------------------------------------------------ */

enum snag_code {
	SNAG_WALL_JOG, SNAG_WALL_NARROW, SNAG_WALL_BOND, SNAG_WALL_HIGH, SNAG_WALL_EMBED,
	SNAG_BED_THIN, SNAG_CAP_NARROW, SNAG_FILL_NONE,
	SNAG_FENCE_TIGHT, SNAG_FENCE_HOLE, SNAG_MIRROR_BROKEN
};

/* Something that would not work on the ground. */
struct snag {
	enum snag_code code;
	int region;        /* NO_REGION: the plot as a whole */
	struct place cell; /* the first it touches, in reading order */
	int loop, side;    /* -1 where no side is meant */
	const char *text;  /* one sentence, with figures in the plot's units */
};

struct snag_rule {
	const char *word;   /* "wall-jog" */
	const char *source; /* of the rule: a publication, or common practice */
};

/* ---- The whole -------------------------------------------------------------------------------- */

struct area_row {
	const struct entry *entry; /* NULL: open ground */
	int64_t cells;
	double area;
};

struct takeoff {
	struct survey survey;
	const struct block *allow; /* in force: the plot's, else the price book's, else the default */
	const struct area_row *areas; /* legend order, then open ground */
	int area_count;
	const struct wall *walls; /* in region order */
	int wall_count;
	const struct wall_not_laid *not_laid;
	int not_laid_count;
	const struct cutting *cuttings; /* walls, then caps; sizes in order of first bed */
	int cutting_count;
	const struct fill *fills; /* in region order */
	int fill_count;
	struct zones zones;
	struct earthwork earthwork;
	const struct fencing *fencings; /* in the plot's order */
	int fencing_count;
	const struct stone *stones; /* in region order */
	int stone_count;
	struct stone_total stone_totals[STONE_KINDS];
	struct fabric fabric;
	const struct liner *liners; /* in region order */
	int liner_count;
	struct edging edging;
	const struct lawn *lawns;   /* in region order */
	int lawn_count;
	const struct item *items;
	int item_count;
	const struct work_step *work; /* in the order it is done */
	int work_count;
	const struct snag *snags; /* by code, then reading order */
	int snag_count;
	const struct book *book; /* NULL: none */
	struct costs costs;
	bool complete; /* every bed's wall and cap is laid out */
};

const struct snag_rule *snag_rule(enum snag_code code);
const char *item_unit_word(enum item_unit unit);   /* "each", "m", "m2", "m3", "kg" */
const char *section_word(enum section section);    /* "dig", "stone", "walls" ... */
/* NULL where the region has none. */
const struct wall *takeoff_wall(const struct takeoff *takeoff, int region);
const struct fill *takeoff_fill(const struct takeoff *takeoff, int region);
bool takeoff_is_raised(const struct region *region);

#endif
