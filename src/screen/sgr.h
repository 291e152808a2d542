/* How what is written looks: read off the sequences that say so, and said in one sequence with only
 * what changes. Curses sets colours and attributes by one sequence each, ink and ground anew where
 * only one of them changes, and resets twice (ECMA-48, Control Functions for Coded Character Sets,
 * 5th edition, 1991, 8.3.117, SGR). */
#ifndef SCREEN_SGR_H
#define SCREEN_SGR_H

#include "base/text.h"

/* A colour is its number in the table of 256, or SGR_CODE and the parameter that sets it: 39 and 49
 * are the terminal's own. */
enum { SGR_CODE = 256, SGR_UNKNOWN = -1 };

/* What is written looks so. */
struct pen {
	int ink, ground; /* SGR_UNKNOWN: not known, as below */
	int attributes;  /* a bit for each parameter from 1 to 9 that is on */
	char set;        /* of characters: what follows ESC ( ; NUL: not known */
	char shift;      /* to another set: the byte that says so; NUL: not known */
};
/* Nothing is known of it; after a reset. */
#define PEN_UNKNOWN ((struct pen){ SGR_UNKNOWN, SGR_UNKNOWN, SGR_UNKNOWN, '\0', '\0' })
#define PEN_PLAIN ((struct pen){ SGR_CODE + 39, SGR_CODE + 49, 0, '\0', '\0' })

/* Takes what the bytes begin with where that only says how things look; returns its length, 0 where
 * it is something else, or says what is not known here: then the pen is left as it was. */
size_t sgr_read(struct pen *pen, const char *bytes, size_t length);
/* Colours and attributes are known. */
bool sgr_is_known(const struct pen *pen);
/* Bytes that it takes to have the terminal write so; and adds them. What is not known of the pen
 * that is wanted stays as it was sent; then it counts as not known any more. */
int sgr_cost(const struct pen *sent, const struct pen *wanted);
void sgr_send(struct pen *sent, const struct pen *wanted, struct text *out);

#endif
