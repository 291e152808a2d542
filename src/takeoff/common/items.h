/* The rows of what is bought and hauled, while each trade adds its own. */
#ifndef TAKEOFF_COMMON_ITEMS_H
#define TAKEOFF_COMMON_ITEMS_H

#include "base/memory.h"
#include "prices/book.h"

/* By trade, in the order the work is done. Stone: base, surface, fabric and edging too. */
enum section {
	SECTION_DIG, SECTION_STONE, SECTION_WALLS, SECTION_FILL, SECTION_LAWN, SECTION_FENCE
};
enum { SECTIONS = SECTION_FENCE + 1 };

/* What is said beside an item, with what it is said of. */
enum note_kind {
	NOTE_NONE,
	NOTE_BREAKAGE, NOTE_SETTLEMENT, NOTE_TRIMMING, /* percent */
	NOTE_STONE,       /* factor: loose over compacted; percent: spare */
	NOTE_CARTRIDGE,   /* lengths: the bead of one */
	NOTE_SPOIL,
	NOTE_ROLL,        /* lengths: width, length of a roll */
	NOTE_LINER,       /* lengths: what is turned under */
	NOTE_PIECE,       /* lengths: of a piece */
	NOTE_POST,        /* lengths: as bought, square */
	NOTE_PANEL,       /* name: of the fence; lengths: width, height; count: of them cut up */
	NOTE_LEAF,        /* the same; count: of more leaves made of offcuts */
	NOTE_CONCRETE,    /* amount: the yield of a bag */
	NOTE_BRACKET, NOTE_HINGE, NOTE_LATCH, NOTE_BOLT
};
enum { NOTE_LENGTHS = 2 };

struct note {
	enum note_kind kind;
	nm lengths[NOTE_LENGTHS];
	int64_t percent; /* millionths of a percent */
	int64_t count;
	double factor;
	const char *name;
	struct amount amount;
};

struct item {
	enum good good;
	const char *name;  /* of a good that is named; else "" */
	enum section section;
	struct size block; /* of block rows; else all 0 */
	nm length;         /* of what is sold in several lengths; else 0 */
	/* order = laid + spare - reused, up to whole pieces where sold so */
	double laid, spare, order;
	double reused;     /* found on the plot */
	struct note note;
	double unit_weight; /* kg of one unit; 0: not known */
	double weight;     /* kg of what is bought; 0: not known */
	const struct pack *pack; /* how it is bought, by the price book; NULL: no price */
	double packs;      /* whole ones; of bulk times the pack's size, a whole number of steps */
	money cost;        /* of the packs */
};

struct item_list {
	struct arena *arena;
	const struct block *allow; /* in force: it has the densities */
	struct item *list;
	size_t count, capacity;
};

/* Adds a copy of the row. A unit weight of 0 becomes what the good's density says, 1 for what
 * goes by weight. Returns the row for more to be added up in it; valid until the next is added. */
struct item *item_add(struct item_list *items, const struct item *item);
/* Adds the row, if anything is laid, with so many millionths of a percent of that as spare. */
void item_add_spare(struct item_list *items, const struct item *item, int64_t spare);
/* Adds a row of `laid` of which as much is ordered, if it is any. */
void item_add_bare(struct item_list *items, enum good good, enum section section, double laid);
/* What the row is counted in. */
enum item_unit item_unit(const struct item *item);

#endif
