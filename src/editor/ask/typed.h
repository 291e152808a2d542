/* What comes next in a value as somebody typed it: a number, a word, a unit of length. Nothing here
 * knows what was asked for. All lengths are bytes; 0: there is none. */
#ifndef EDITOR_ASK_TYPED_H
#define EDITOR_ASK_TYPED_H

#include <stdbool.h>
#include <stddef.h>

/* A number as typed: digits, then perhaps a point or a comma and more of them; either may be
 * missing. */
struct typed_number {
	size_t whole, after, length; /* the length is that of all of it */
	bool is_doubtful;            /* a comma that may stand between thousands; several of them */
};

/* Digits, and ASCII letters, that come next. */
size_t typed_digits(const char *at);
size_t typed_letters(const char *at);
struct typed_number typed_number(const char *at);
/* Nothing but a number, blanks aside. */
bool typed_is_number(const char *typed);
/* The format's word for a unit of length, as people write and spell it; NULL: it is none. */
const char *typed_unit(const char *word, size_t length);

#endif
