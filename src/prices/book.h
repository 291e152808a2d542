/* The price book: what things are sold in and cost, and what a supplier's figures set in place
 * of the plot's defaults. It is optional; without one every quantity still comes out.
 * parterre-prices(5) describes the file. */
#ifndef PRICES_BOOK_H
#define PRICES_BOOK_H

#include "base/memory.h"
#include "plot/plot.h"
#include "prices/good.h"

enum { BOOK_VERSION = 1, BOOK_BYTES_MOST = 1024 * 1024, CURRENCY_MOST = 8 };

/* Whole hundredths of the book's currency. */
typedef int64_t money;

/* Who delivers. */
struct supplier {
	const char *name;
	money delivery;  /* for each drop */
	double carries;  /* kg in a drop; 0: as much as the truck that is allowed for */
	double holds;    /* m3 of bulk in a drop; 0: the same */
};

/* What collected goods are fetched in. */
struct vehicle {
	const char *name; /* NULL: the pickup that is allowed for */
	double carries;   /* kg; 0: the same */
	double holds;     /* m3 of bulk; 0: any volume */
};

enum pack_kind { PACK_BULK, PACK_BAG, PACK_PALLET, PACK_ROLL, PACK_PIECE };

/* One way of buying. Bulk is loose, by volume or weight, in steps; all others are whole packs. */
struct pack {
	enum pack_kind kind;
	enum item_unit unit; /* of size and step */
	double size;         /* what the price buys, over 0 */
	/* of bulk; 0: the step that is allowed for, by weight the whole size */
	double step;
	const char *words;   /* the size as the book spells it: "2 cu ft", "90" */
	money price;
	double weight;       /* kg of one pack; 0: not told */
	int supplier;        /* index into the book's; NO_SUPPLIER: collected */
};
enum { NO_SUPPLIER = -1 };

/* All packs of one good, or of one kind of it. */
struct goods {
	enum good good;
	const char *name;  /* of a named one; else "" */
	struct size block; /* of blocks; else all 0 */
	nm length;         /* of what is sold in several lengths; 0: any */
	const struct pack *packs;
	int pack_count;
};

/* Owns all that it points to. */
struct book {
	struct block allow; /* what is set holds where the plot sets nothing */
	const char *note;   /* "": none */
	const char *currency;
	const struct supplier *suppliers;
	int supplier_count;
	const struct goods *goods; /* no two of one item, block and length */
	int goods_count;
	struct vehicle vehicle;
	struct arena arena;
};

/* What was wrong with a book: either the text is no JSON, and diag tells where, or a value is
 * not what its key asks for, and path tells which: "goods[2].packs[0].price", "" for the whole. */
struct book_fault {
	struct diag diag; /* line 0: see path */
	char path[96];
};

/* Reads a book from length bytes of JSON. On failure *book holds nothing, and fault tells the
 * first thing wrong. */
bool book_read(const char *bytes, size_t length, struct book *book, struct book_fault *fault);
void book_fini(struct book *book);

/* "bulk", "bag", "pallet", "roll", "piece". */
const char *pack_word(enum pack_kind kind);
/* What is wanted of a good. */
struct wanted_goods {
	enum good good;
	const char *name;  /* of a named one; else "" */
	struct size block; /* of blocks; else all 0 */
	nm length;         /* of what is sold in several lengths; else 0 */
};
/* The goods of that block, and of that length to a millimetre, else of any. NULL where the book
 * has none. */
const struct goods *book_goods(const struct book *book, const struct wanted_goods *wanted);
/* The index of the supplier with the name; NO_SUPPLIER where there is none. */
int book_supplier(const struct book *book, const char *name);

#endif
