/* What of a declared row can differ: each of its fields once, those of objects within it too. */
#ifndef REPORT_COMPARE_LEAF_H
#define REPORT_COMPARE_LEAF_H

#include "report/compare/comparison.h"

struct leaf {
	struct figure figure; /* its field counted from the outer row */
	const char *key;      /* "loads.barrow" */
	const char *label;    /* "Barrows" */
};

/* Those of a table, made once. */
const struct leaves *leaves_of(struct comparison *comparison, const struct figure_table *table);

/* A row of one of the versions. */
struct versioned {
	int version;
	const void *row;
};

/* Whether two rows of one table have the same there; numbers to nine places. Rows within are looked
 * at only where they have no name, as a whole. */
bool leaf_is_alike(const struct comparison *comparison, const struct leaf *leaf,
	const struct versioned *a, const struct versioned *b);
/* A hash of what is no number with a fraction: the same of rows that are alike there. */
uint64_t leaf_hash(const struct comparison *comparison, const struct leaf *leaf,
	const struct versioned *at, uint64_t before);

/* Whether rows within have a name: they are compared one by one. */
bool leaf_is_rows(const struct leaf *leaf);
/* Whether it is a number, so that two of them have a difference, new less old; a row that is NULL
 * has 0. */
bool leaf_is_number(const struct leaf *leaf);
double leaf_difference(const struct leaf *leaf, const void *old, const void *new);

/* Its words of both rows, "-" where a row is NULL, and the difference: "+12", "-3 ft"; "" where
 * there is none to tell. */
struct leaf_words {
	const char *versions[VERSIONS], *difference;
};
struct leaf_words leaf_say(const struct comparison *comparison, const struct leaf *leaf,
	const void *old, const void *new);
/* Of one row. */
const char *leaf_value_words(const struct report *report, const struct leaf *leaf, const void *row);

#endif
