/* The price book: packs and prices of goods, and allowances in place of the defaults. It is
 * optional; without one every quantity is still computed. parterre-prices(5) describes the
 * file. */
#ifndef PRICES_BOOK_H
#define PRICES_BOOK_H

#include "base/memory.h"
#include "plot/plot.h"
#include "prices/good.h"

enum { BOOK_VERSION = 1, BOOK_BYTES_MOST = 1024 * 1024, CURRENCY_MOST = 8, SPEC_MOST = 80 };

/* Whole hundredths of the book's currency. */
typedef int64_t money;

struct supplier {
	const char *name;
	money delivery;  /* for each drop */
	double carries;  /* kg in a drop; 0: what is allowed for a truck */
	double holds;    /* m3 of bulk in a drop; 0: the same */
};

/* What collected goods are fetched in. */
struct vehicle {
	const char *name; /* NULL: a pickup */
	double carries;   /* kg; 0: what is allowed for a pickup */
	double holds;     /* m3 of bulk; 0: any volume */
};

enum pack_kind {
	PACK_BULK, PACK_BAG, PACK_BOX, PACK_BUNDLE, PACK_PALLET, PACK_ROLL, PACK_PIECE
};
enum { PACK_KINDS = PACK_PIECE + 1 };

/* One way of buying a good. Bulk is measured out, loose or by length or area, in steps; all else
 * comes in whole packs. */
struct pack {
	enum pack_kind kind;
	enum item_unit unit; /* of size and step */
	double size;         /* what the price buys, over 0 */
	/* of bulk; 0: by volume the step allowed for, else the whole size */
	double step;
	const char *words;   /* the size as the book spells it: "2 cu ft", "90" */
	money price;         /* NO_PRICE: not given */
	double weight;       /* kg of one pack; 0: not given */
	int supplier;        /* index into the book's; NO_SUPPLIER: collected */
};
enum { NO_SUPPLIER = -1, NO_PRICE = -1 };

/* All packs of one good, or of one kind of it. */
struct goods {
	enum good good;
	const char *name;  /* of a named one, or one of the plot's own; else "" */
	struct size block; /* of blocks; else all 0 */
	/* Of what is sold in several lengths, heights, or thicknesses across; 0: any. */
	nm length, height, across;
	const char *spec;  /* what to ask for besides: grade, colour, treatment; "": nothing */
	const struct pack *packs;
	int pack_count;    /* 0: only the spec is given */
};

/* Owns all that it points to. */
struct book {
	struct block allow, rates; /* used where the plot sets nothing */
	const char *note;   /* "": none */
	const char *currency;
	const struct supplier *suppliers;
	int supplier_count;
	const struct goods *goods; /* no two for the same goods */
	int goods_count;
	struct vehicle vehicle;
	struct arena arena;
};

/* What is wrong with a book: it is not JSON, and diag says where; or a value is not what its
 * key asks for, and path names it: "goods[2].packs[0].price", "" for the whole. */
struct book_fault {
	struct diag diag; /* line 0: see path */
	char path[96];
};

/* Reads a book from length bytes of JSON. On failure *book needs no book_fini, and *fault says
 * the first thing wrong. */
bool book_read(const char *bytes, size_t length, struct book *book, struct book_fault *fault);
/* The same; for metric units a fault names no others. */
bool book_read_in(const char *bytes, size_t length, enum units units, struct book *book,
	struct book_fault *fault);
void book_fini(struct book *book);

/* "bulk", "bag", "box", "bundle", "pallet", "roll", "piece". */
const char *pack_word(enum pack_kind kind);
extern const char *const pack_kind_words[PACK_KINDS + 1]; /* all of them, and NULL */

struct wanted_goods {
	enum good good;
	const char *name;  /* as in struct goods */
	struct size block;
	nm length, height, across; /* 0: it has none */
};
/* The goods wanted. Lengths, heights and thicknesses that the book gives fit to within a
 * millimetre; of rows that fit the one that gives most of them, else the earlier. NULL where the
 * book has none. */
const struct goods *book_goods(const struct book *book, const struct wanted_goods *wanted);
/* The index of the supplier with the name; NO_SUPPLIER where there is none. */
int book_supplier(const struct book *book, const char *name);

#endif
