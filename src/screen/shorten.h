/* Shortens what curses writes: of a stroke over a slow line two thirds are left. Colours are sent
 * once, and only what changes (screen/sgr.h); the cursor goes the shortest way (screen/steer.h);
 * and what is written goes out in another order, so that neither goes to and fro: what looks
 * alike, or is near, comes next. Pure. */
#ifndef SCREEN_SHORTEN_H
#define SCREEN_SHORTEN_H

#include "screen/sgr.h"
#include "screen/steer.h"

/* What is known of a terminal between two frames. */
struct shortener {
	struct stand size;      /* rows and columns; 0 and 0: the order stays, and every move */
	bool has_margins;       /* some rows are to scroll by themselves */
	struct pen wanted, sent;
	struct stand wanted_at, at;
};

/* Of a terminal of that size nothing else is known. */
struct shortener shortener_of(struct stand size);

/* Adds to *out what has the same effect as the bytes, whole sequences, which follow those of the
 * last call. They neither insert by a mode nor set where lines wrap; the terminal takes a new line
 * for a step down. Characters have one column where width_is_plain says so; of all others nothing
 * is taken for granted, nor of what is not known here. */
void shorten(struct shortener *s, const char *bytes, size_t length, struct text *out);

#endif
