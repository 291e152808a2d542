/* What comes from outside (names of files, options, the environment), made fit to be shown: each
 * byte of what is no character of a text (base/utf8.h) is spelled out as <XX>. So nothing that came
 * in works on the terminal, and everything can be told apart. What is spelled once stays as it is
 * when it is spelled again. */
#ifndef BASE_SPELL_H
#define BASE_SPELL_H

#include "base/text.h"

enum { SPELLED_MOST = 16 }; /* bytes of one character spelled out: four times <XX> */

/* Spells the character at the start of bytes (`left` of them, at least 1). Returns the bytes it
 * takes there; *length is how many it has in `out`. */
size_t spell_character(const char *bytes, size_t left, char out[SPELLED_MOST + 1], size_t *length);

/* Adds a string, spelled out where it needs it. */
void spell(struct text *out, const char *bytes);

/* The same for a terminal of the locale: beyond ASCII all is spelled out where that is not one of
 * UTF-8. */
void spell_for_locale(struct text *out, const char *bytes);

#endif
