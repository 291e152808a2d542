/* Sequences that a program sends to a terminal, by their form (ECMA-48, Control Functions for Coded
 * Character Sets, 5th edition, 1991, 5.4). What keys send is screen/sequence.h. Pure. */
#ifndef SCREEN_CONTROL_H
#define SCREEN_CONTROL_H

#include <stddef.h>

enum { CONTROL_ESCAPE = 033, CONTROL_NUMBERS = 32 };

/* ESC [, numbers between semicolons, a final byte. */
struct control {
	size_t length; /* of all of it in bytes; 0: there is no such sequence, or it is cut off */
	char final;
	int count;     /* at least 1 */
	int numbers[CONTROL_NUMBERS]; /* those left out are 0 */
};

/* That with which the bytes begin. */
struct control control_read(const char *bytes, size_t length);
/* Up to the end of a sequence of any kind that begins with ESC [; else 1. */
size_t control_length(const char *bytes, size_t length);
/* A number that is 1 where it is left out. */
int control_number(const struct control *control, int index);

#endif
