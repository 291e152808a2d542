/* Figures: what of a trade's results is shown, declared once. Of a figure the text makes a
 * column of a table, the panel a line and JSON a key, each only where its name is given.
 *
 * A figure is bound to a field of a row. FIELD does not compile where the kind of figure and
 * the type of the field disagree. Keys say their unit: _m, _m2, _m3, _kg,
 * _m3_h. */
#ifndef TAKEOFF_COMMON_FIGURE_H
#define TAKEOFF_COMMON_FIGURE_H

#include "plot/plot.h"
#include "takeoff/common/packing.h"
#include "takeoff/common/spot.h"

#include <stddef.h>

enum figure_kind {
	FIGURE_COUNT,    /* int, int64_t */
	FIGURE_LENGTH,   /* nm, shown in feet and inches */
	FIGURE_INCHES,   /* nm, shown as read off a rule */
	FIGURE_AREA,     /* double, m2 */
	FIGURE_VOLUME,   /* double, m3 */
	FIGURE_WEIGHT,   /* double, kg */
	FIGURE_WATER,    /* double, m3, shown in gallons or litres */
	FIGURE_FLOW,     /* double, m3/h, shown so by the hour */
	FIGURE_NUMBER,   /* double */
	FIGURE_MONEY,    /* int64_t, hundredths */
	FIGURE_WORD,     /* an enum, an index into `words` */
	FIGURE_TEXT,     /* const char *; NULL: null in JSON */
	FIGURE_LETTER,   /* char */
	FIGURE_TRUTH,    /* bool; JSON only */
	FIGURE_ENTRY,    /* const struct entry *: letter and name; no JSON */
	FIGURE_REGION,   /* int; NO_REGION: null in JSON; in the text, of all rows alike */
	FIGURE_PLACE,    /* struct place */
	FIGURE_SPOT,     /* struct spot */
	FIGURE_SIZE,     /* struct size */
	/* JSON only: */
	FIGURE_LENGTHS,  /* const nm *, as many as the field `count_at` says */
	FIGURE_CUTS,     /* const struct cut *, each repeated for each of its blocks */
	FIGURE_ROWS,     /* rows of `table` */
	FIGURE_OBJECT,   /* one row of `table`, within this one */
	/* Without a field: */
	FIGURE_ALIKE,    /* how many rows are alike; text only */
	FIGURE_HEADING   /* a heading on the page of the panel */
};

/* What an enum's value is called in each view; NULL: as in JSON. */
struct word {
	const char *key, *heading, *label;
};

enum figure_flags {
	TEXT_DASHED = 1,     /* "-" where it is 0; no column where it is 0 in all rows */
	TEXT_WRAPS = 64,     /* broken where the column would be too wide */
	PANEL_OPTIONAL = 2,  /* no line where it is 0 */
	PANEL_TITLE = 4,     /* part of the heading above the row's lines */
	ROW_NEEDED = 8,      /* a row in which it is 0 is shown nowhere */
	JSON_SPACED = 16,    /* rows within a row follow it, with blanks between */
	JSON_LINES = 32,     /* the same, each on a line of its own */
	ROW_KEY = 128,       /* what its row is of: rows of two takeoffs go together by it */
	JSON_OPTIONAL = 256, /* no key where it is 0 */
	ALIKE_ANYWAY = 512   /* rows that differ in it alone are alike in the text */
};

struct figure {
	const char *key;     /* in JSON */
	const char *heading; /* of its column in the text */
	const char *label;   /* on a page of the panel */
	enum figure_kind kind;
	size_t at, size;     /* of the field */
	size_t count_at;     /* of the int that counts them */
	const struct word *words;
	const struct figure_table *table;
	int flags;
};

/* Rows of one type. */
struct figure_table {
	size_t row_size;
	const struct figure *figures;
	int count;
};

#define FIGURE_IS_COUNT(f)    _Generic((f), int: 1, int64_t: 1)
#define FIGURE_IS_LENGTH(f)   _Generic((f), nm: 1)
#define FIGURE_IS_INCHES(f)   _Generic((f), nm: 1)
#define FIGURE_IS_AREA(f)     _Generic((f), double: 1)
#define FIGURE_IS_VOLUME(f)   _Generic((f), double: 1)
#define FIGURE_IS_WEIGHT(f)   _Generic((f), double: 1)
#define FIGURE_IS_WATER(f)    _Generic((f), double: 1)
#define FIGURE_IS_FLOW(f)     _Generic((f), double: 1)
#define FIGURE_IS_NUMBER(f)   _Generic((f), double: 1)
#define FIGURE_IS_MONEY(f)    _Generic((f), int64_t: 1)
#define FIGURE_IS_WORD(f)     _Generic((f), unsigned int: 1)
#define FIGURE_IS_TEXT(f)     _Generic((f), const char *: 1)
#define FIGURE_IS_TRUTH(f)    _Generic((f), bool: 1)
#define FIGURE_IS_LETTER(f)   _Generic((f), char: 1)
#define FIGURE_IS_ENTRY(f)    _Generic((f), const struct entry *: 1)
#define FIGURE_IS_REGION(f)   _Generic((f), int: 1)
#define FIGURE_IS_PLACE(f)    _Generic((f), struct place: 1)
#define FIGURE_IS_SPOT(f)     _Generic((f), struct spot: 1)
#define FIGURE_IS_SIZE(f)     _Generic((f), struct size: 1)
#define FIGURE_IS_LENGTHS(f)  _Generic((f), const nm *: 1, nm *: 1)
#define FIGURE_IS_CUTS(f)     _Generic((f), const struct cut *: 1)
#define FIGURE_IS_ROWS(f)     (sizeof *(f) > 0)
#define FIGURE_IS_OBJECT(f)   (sizeof (f) > 0)

/* A whole row again, as an object within it. */
#define SAME_ROW .kind = FIGURE_OBJECT, .at = 0

#define FIGURE_FIELD_OF(type, field) (((const struct type *)NULL)->field)
/* Binds a figure to a field: FIELD(AREA, lawn, area). */
#define FIELD(kind_, type, field) .kind = FIGURE_##kind_, \
	.at = offsetof(struct type, field) * \
		(FIGURE_IS_##kind_(FIGURE_FIELD_OF(type, field)) > 0), \
	.size = sizeof FIGURE_FIELD_OF(type, field)
/* The same of several, with the field that counts them: FIELDS(CUTS, cutting, cuts, cut_count). */
#define FIELDS(kind_, type, field, count) FIELD(kind_, type, field), \
	.count_at = offsetof(struct type, count) * \
		(FIGURE_IS_REGION(FIGURE_FIELD_OF(type, count)) > 0)
#define FIGURE_TABLE(type, figures_) \
	{ sizeof(struct type), figures_, (int)(sizeof (figures_) / sizeof *(figures_)) }

/* ---- Their values --------------------------------------------------------------------- */

/* Of a COUNT, LENGTH, INCHES, MONEY, WORD, REGION or TRUTH. */
int64_t figure_whole(const struct figure *figure, const void *row);
/* Of an AREA, VOLUME, WEIGHT, WATER, FLOW or NUMBER. */
double figure_real(const struct figure *figure, const void *row);
const char *figure_text(const struct figure *figure, const void *row);
/* Of a LENGTHS, CUTS or ROWS: the first, *count of them. */
const void *figure_rows(const struct figure *figure, const void *row, int *count);
const void *figure_field(const struct figure *figure, const void *row);
bool figure_is_none(const struct figure *figure, const void *row);
/* True where a figure that the row needs is 0: the row is shown nowhere. */
bool row_is_left_out(const struct figure_table *table, const void *row);

#endif
