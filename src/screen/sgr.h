/* Shortens what curses writes. It sets colours and attributes by one sequence each, ink and ground
 * anew where only one of them changes, and resets twice: a quarter of a stroke over a slow line.
 * Here they are sent once, in one sequence, and only what changes, when something is written with
 * them (ECMA-48, Control Functions for Coded Character Sets, 5th edition, 1991, 8.3.117, SGR). */
#ifndef SCREEN_SGR_H
#define SCREEN_SGR_H

#include "base/text.h"

enum { SGR_COLOUR_MOST = 16 };

/* What is written looks so. Each as the parameters that set it; "" is not known. */
struct pen {
	char ink[SGR_COLOUR_MOST], ground[SGR_COLOUR_MOST]; /* "38;5;16"; "39", "49": the default */
	int attributes; /* a bit for each parameter from 1 to 9 that is on; PEN_UNKNOWN */
	char set;       /* of characters: what follows ESC ( ; NUL: not known */
};
enum { PEN_UNKNOWN = -1 };

struct sgr {
	struct pen wanted, sent;
};
/* Nothing is known of the terminal. */
#define SGR_UNKNOWN ((struct sgr){ { .attributes = PEN_UNKNOWN }, { .attributes = PEN_UNKNOWN } })

/* Adds to *out what has the same effect as the bytes, whole sequences, which follow those of the
 * last call. */
void sgr_shorten(struct sgr *sgr, const char *bytes, size_t length, struct text *out);

#endif
