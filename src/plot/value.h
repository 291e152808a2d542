/* The value of one attribute, of any kind the plot format knows: how it is held, read, written. */
#ifndef PLOT_VALUE_H
#define PLOT_VALUE_H

#include "base/length.h"
#include "plot/amount.h"

#include <stdbool.h>

enum value_kind {
	VALUE_TEXT,    /* quoted text */
	VALUE_LENGTH,  /* nanometres */
	VALUE_COUNT,   /* whole number */
	VALUE_DECIMAL, /* whole millionths */
	VALUE_PERCENT, /* whole millionths of a percent */
	VALUE_CHOICE,  /* index into the attribute's words */
	VALUE_SIZE,    /* of a block */
	VALUE_CAP,     /* a size, or none: all three lengths 0 */
	VALUE_AMOUNT, /* a number with a unit of its quantity */
	VALUE_MIX,
	VALUE_PLACE,
	VALUE_SIDES    /* of the plan: none, or some of left, top, right, bottom */
};

/* A block as laid, joints included: along the wall, across it, up. */
struct size {
	nm along, across, up;
};

/* Sides of the plan, added up. */
enum plan_side { SIDE_LEFT = 1, SIDE_TOP = 2, SIDE_RIGHT = 4, SIDE_BOTTOM = 8 };
enum { PLAN_SIDES = 4 };
extern const char *const plan_side_words[PLAN_SIDES]; /* in that order */

enum { DECIMAL_PLACES = 6, SHARE_PLACES = 3 }; /* of decimals and percents; of shares */

enum { MIX_PARTS_MOST = 8, MIX_NAME_MOST = 60 };

struct mix_part {
	char name[MIX_NAME_MOST + 1]; /* lower-case words joined by hyphens */
	int64_t thousandths;          /* share of the whole, 1..1,000,000 */
};

struct mix {
	int count; /* 1..MIX_PARTS_MOST, names distinct */
	struct mix_part parts[MIX_PARTS_MOST];
};

struct place {
	int x, y;
};

/* A patch of whole cells: left..right, top..bottom, all inclusive. */
struct rectangle {
	int left, top, right, bottom;
};

/* An attribute is set or unset; while unset `as` is meaningless. Texts and mixes are owned. */
struct value {
	bool set;
	union {
		const char *text;
		nm length;
		int64_t number; /* count, millionths, index of a choice, sides of the plan */
		struct size size;
		struct amount amount;
		const struct mix *mix;
		struct place place;
	} as;
};

/* What may be read for an attribute: its kind and range. */
struct value_rule {
	enum value_kind kind;
	/* Least and most: nanometres, counts, millionths, millionths of a percent, characters,
	 * or millionths of whatever unit an amount has; unused for choices, mixes, places and
	 * sides. */
	int64_t least, most;
	const char *const *words; /* of a choice, NULL at the end */
	bool is_signed;           /* a decimal that may have a minus */
	enum quantity quantity;   /* of an amount */
};

/* Reads a value and checks its range; the scan may hold more after it. *out owns what it holds.
 * False with d filled; *out then untouched. */
bool value_scan(struct scan *s, const struct value_rule *rule, enum units units, struct value *out,
	struct diag *d);
/* Writes a set value in the format's own form. */
void value_write(struct text *out, const struct value_rule *rule, const struct value *value,
	enum units units);
struct value value_copy(enum value_kind kind, const struct value *value);
void value_fini(enum value_kind kind, struct value *value);
/* Two unset values are equal. */
bool value_equal(enum value_kind kind, const struct value *a, const struct value *b);

bool size_equal(const struct size *a, const struct size *b);
bool size_is_none(const struct size *size);

#endif
