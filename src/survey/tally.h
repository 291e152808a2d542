/* Counts, for each of many bits, in how many of some sets it is. The counts lie in planes, one of
 * all ones, one of all twos and so on, so that 64 of them are added up at a time; two sets of a
 * plane wait for one another before anything is carried to the next, so that a set costs one
 * addition of words however far it carries. */
#ifndef SURVEY_TALLY_H
#define SURVEY_TALLY_H

#include "base/memory.h"

#include <stdint.h>

enum { TALLY_PLANES = 9, TALLY_MOST = (1 << TALLY_PLANES) - 1, WORD_BITS = 64 };

struct tally {
	size_t words; /* of a set, and those that fill it up to be taken many at a time */
	uint64_t *set; /* to be filled in; empty at first */
	int sets; /* how many were added, up to TALLY_MOST */
	uint64_t *planes[TALLY_PLANES], *waiting[TALLY_PLANES]; /* in the arena */
};

/* Of sets of so many words: none yet. */
void tally_init(struct tally *tally, struct arena *arena, size_t words);
/* Adds the set, and begins another one in its place. */
void tally_add(struct tally *tally);
/* After the last set, before counts are read. */
void tally_end(struct tally *tally);
/* The counts of one word's bits, lowest first. */
void tally_counts(const struct tally *tally, size_t word, uint16_t counts[WORD_BITS]);
/* Begins anew, with an empty set. */
void tally_clear(struct tally *tally);

#endif
