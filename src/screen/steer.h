/* Where the terminal's cursor stands, and the shortest way to have it elsewhere (ECMA-48, Control
 * Functions for Coded Character Sets, 5th edition, 1991, 8.3: CUP, CHA, VPA, CUU, CUD, CUF, CUB,
 * CR, BS, LF). Curses goes far by row and column even along a row. */
#ifndef SCREEN_STEER_H
#define SCREEN_STEER_H

#include "base/text.h"

/* From 0. Not known is both, or none. */
struct stand {
	int row, column;
};
#define STAND_UNKNOWN ((struct stand){ -1, -1 })

bool stand_is_known(struct stand stand);

/* Takes the move that the bytes begin with, on a screen of so many rows and columns; returns its
 * length, 0 where it is no move, where it goes on from a place that is not known, and where the
 * screen would scroll. */
size_t steer_read(struct stand *stand, struct stand size, const char *bytes, size_t length);
/* The length of such a move, whether or not it is known from where. */
size_t steer_length(const char *bytes, size_t length);
/* Bytes that it takes to get to a place that is known; and adds them. */
int steer_cost(struct stand from, struct stand to);
void steer_send(struct stand from, struct stand to, struct text *out);

#endif
