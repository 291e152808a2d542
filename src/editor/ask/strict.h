/* What somebody typed for a value, in the strict words of the plot format. People write .5 and
 * 1,25, 3 feet, 7 ft 6 and numbers alone; the format has 0.5, 1.25, 3 ft, 7 ft 6 in and a unit each
 * time. */
#ifndef EDITOR_ASK_STRICT_H
#define EDITOR_ASK_STRICT_H

#include "plot/value.h"

/* What a number alone is in, the first that fits: */
enum span {
	SPAN_SMALL, /* inches or feet; millimetres, centimetres or metres; by or in cubic feet */
	SPAN_LONG,  /* feet or inches; metres, millimetres or centimetres; of a density or a
	             * volume, cubic yards or feet, cubic metres or litres */
	SPAN_PLAN   /* of the plan's own size: feet; metres or centimetres */
};

/* What was asked for. */
struct asked {
	const struct value_rule *rule;
	enum units units;
	enum span span;
	bool is_cells; /* of a text: a length, or so many cells, with or without a minus */
};

/* The unit that a number alone is in, in a word: "feet", "%". NULL: such a field takes numbers
 * without one, or none. */
const char *strict_unit(const struct asked *asked);
/* Writes into *out what was typed. Numbers alone get the unit named above where `which` is 0; 1 and
 * on are the units that may have been meant where that one makes no good value. A side of a size
 * without a unit has that of its last side, if there is one. False where there is no such unit, or
 * no number stood alone. What cannot be understood is left as it is, for the reader to refuse. */
bool strict_put(const struct asked *asked, const char *typed, int which, struct text *out);
/* What nobody can be sure of, or no unit, in words: "1,250 may be 1250 or 1.250: ...". False, *why
 * untouched, where it is neither. */
bool strict_doubt(const struct asked *asked, const char *typed, struct text *why);

#endif
