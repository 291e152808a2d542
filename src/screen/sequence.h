/* Sequences that begin with Esc: how far one goes, and what it is by its form alone. Pure. */
#ifndef SCREEN_SEQUENCE_H
#define SCREEN_SEQUENCE_H

#include <stdbool.h>
#include <stddef.h>

enum { ESCAPE = 27, REPORT_BYTES = 6 };

/* Of `count` bytes, the first of them Esc, how many make the sequence. 0: its end is still to come.
 * 1: Esc is a key alone. A sequence that is cut off by a byte which no sequence has ends there. */
size_t sequence_length(const unsigned char *bytes, size_t count);
/* Whether it has its last byte. */
bool sequence_is_whole(const unsigned char *bytes, size_t length);
/* Whether Esc and the byte after it begin a string of the terminal. */
bool sequence_begins_string(const unsigned char *bytes, size_t count);
/* The character of a keypad's key, 0: it is none. */
int sequence_keypad(const unsigned char *bytes, size_t length);
/* Whether it is a key, of whatever name, rather than an answer or a report. */
bool sequence_is_key(const unsigned char *bytes, size_t length);

#endif
