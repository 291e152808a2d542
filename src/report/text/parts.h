/* The parts of the takeoff as text: a paper each for who buys, digs, lays. */
#ifndef REPORT_TEXT_PARTS_H
#define REPORT_TEXT_PARTS_H

#include <stdbool.h>
#include <stddef.h>

/* In the order they are printed. */
enum part {
	PART_FRONT, PART_SHOPPING, PART_PROGRAMME, PART_SETOUT, PART_LEVELS, PART_SERVICES,
	PART_DIG, PART_WALLS, PART_FILL, PART_FENCE, PART_LAWN, PART_PLANTING, PART_WATERING,
	PART_ADVICE, PART_AREAS, PART_ASSUMED
};
enum { PARTS = PART_ASSUMED + 1 };

/* A set of parts has 1u << part for each. */
/* All that are printed together: the set-out sheet is a paper of its own. */
enum { PARTS_ALL = ((1u << PARTS) - 1) & ~(1u << PART_SETOUT) };
/* Besides: on pages for a printer (paged.h). */
enum { PARTS_PAGED = 1u << PARTS };

/* "shopping", as it is asked for; "Shopping", as it is headed; what it tells, in a line. */
const char *part_word(enum part part);
const char *part_title(enum part part);
const char *part_tells(enum part part);
/* What the plot lacks where the part has nothing to say; NULL: it always has. Printed where not all
 * parts are. */
const char *part_lacks(enum part part);

/* Reads "shopping,walls" into a set. False where a word between commas names no part: *unknown is
 * where it begins, *length how long it is. */
bool parts_read(const char *words, unsigned *parts, const char **unknown, size_t *length);

#endif
