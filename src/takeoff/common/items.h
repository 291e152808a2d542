/* What is bought and hauled: rows that the trades add. */
#ifndef TAKEOFF_COMMON_ITEMS_H
#define TAKEOFF_COMMON_ITEMS_H

#include "base/memory.h"
#include "takeoff/common/purchase.h"

/* In the order of listing. Stone includes base, surface, fabric, liner and edging; other goods are
 * sleeves and the plot's own. */
enum section {
	SECTION_DIG, SECTION_STONE, SECTION_WALLS, SECTION_FILL, SECTION_LAWN, SECTION_FENCE,
	SECTION_PLANTS, SECTION_WATER, SECTION_OTHER
};
enum { SECTIONS = SECTION_OTHER + 1 };

/* The note beside an item, and which values it has. */
enum note_kind {
	NOTE_NONE,
	NOTE_BREAKAGE,    /* percent; count: at least so many, 0 where it is not more than that */
	NOTE_TRIMMING,    /* percent */
	NOTE_SETTLEMENT,  /* percent; 0: not the same of all that is in it */
	NOTE_STONE,       /* factor: loose over compacted; percent: spare */
	NOTE_CARTRIDGE,   /* lengths: the bead of one; percent: spare */
	NOTE_SPOIL,
	NOTE_ROLL,        /* lengths: width, length of a roll */
	NOTE_LINER,       /* lengths: width, length of a roll; count: rolls */
	NOTE_PIECE,       /* lengths: of a piece */
	NOTE_PANEL,       /* name: of the fence; lengths: clear width, section; count: cut up */
	NOTE_LEAF,        /* name: of the fence; count: leaves made of offcuts besides */
	NOTE_CONCRETE,    /* amount: the yield of a bag */
	NOTE_PLANT,       /* lengths: across the pot, 0 where not told; percent: spare */
	NOTE_BRACKET, NOTE_HINGE, NOTE_LATCH, NOTE_BOLT,
	NOTE_STAKE, NOTE_LICENCE
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

/* What the plot itself says that one costs. */
struct own_price {
	bool is_told;
	money each; /* 0 or more */
};

struct item {
	enum good good;
	const char *name;  /* of a named good, or one of the plot's own; else "" */
	enum item_unit unit; /* of one of the plot's own; for all others see item_unit */
	enum section section;
	struct size block; /* of block rows; else all 0 */
	nm length;         /* of what is sold in several lengths; else 0 */
	nm height;         /* of what is sold in several heights; else 0 */
	nm across;         /* of posts, square; else 0 */
	/* order = laid + spare - reused, rounded up to whole pieces where sold so */
	double laid, spare, order;
	double reused;     /* found on the plot */
	struct note note;
	struct own_price own_price; /* goes before the book's packs */
	double unit_weight; /* kg of one unit; 0: not known */
	double weight;     /* kg of what is bought with its purchase; 0: not known, or none */
	/* How it is bought, from costs_compute; NULL: not at all. With others that are the same
	 * thing the first of them has the purchase, and all others come `with` it. */
	const struct purchase *purchase;
	int with;          /* index of the first of them; its own where it has the purchase */
};

struct item_list {
	struct arena *arena;
	const struct block *allow; /* in force, for the densities */
	struct item *list;
	size_t count, capacity;
};

/* Adds a copy of the item. A unit weight of 0 becomes the good's density (1 where counted in
 * kg). Returns the copy, for more to be filled in; valid until the next one is added. */
struct item *item_add(struct item_list *items, const struct item *item);
/* Adds the item, if anything is laid, with `spare` millionths of a percent more. */
void item_add_spare(struct item_list *items, const struct item *item, int64_t spare);
/* Adds an item that is ordered as laid, if that is over 0. */
void item_add_bare(struct item_list *items, enum good good, enum section section, double laid);
/* Adds what the plot lists as extra. */
void items_add_extras(struct item_list *items, const struct details *details);
/* The unit it is counted in. */
enum item_unit item_unit(const struct item *item);
/* What a price book has of it. */
struct wanted_goods item_wanted(const struct item *item);
/* The purchase that it is bought with, its own or that of another; NULL: none. */
const struct purchase *item_purchase(const struct item_list *items, const struct item *item);

#endif
