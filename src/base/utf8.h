/* UTF-8, and which characters the project's texts may hold. */
#ifndef BASE_UTF8_H
#define BASE_UTF8_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* Decodes the character at the start of text (length bytes, at least 1) into *code. Returns its
 * length in bytes, 1 to 4, or 0 where the bytes are not valid UTF-8 (overlong forms, surrogates and
 * codes over 10FFFF are not). */
size_t utf8_decode(const char *text, size_t length, uint32_t *code);

/* Writes the character's bytes, up to UTF8_MOST of them, and returns how many. The code is one
 * that utf8_decode gives. */
enum { UTF8_MOST = 4 };
size_t utf8_encode(uint32_t code, char *bytes);

/* True for a character that may be in a name, a title or a note: no control or format
 * character (so none that turns the direction of text or has no width), no line or paragraph
 * separator, nothing for private use, no noncharacter. */
bool utf8_is_text(uint32_t code);

/* True for the two format characters that a text may hold between two others: the joiners, which
 * bind letters and emoji, or keep letters apart. */
bool utf8_is_joiner(uint32_t code);

/* True where the character at `at` in a text of `length` bytes may be there: utf8_is_text, or a
 * joiner between two such. *step is its bytes; 0 where they are not valid UTF-8. */
bool utf8_fits_text(const char *text, size_t length, size_t at, size_t *step);

/* Number of characters in valid UTF-8. */
size_t utf8_count(const char *text, size_t length);

/* Columns a character takes on a terminal or in a fixed-width print: 0 for joiners and common
 * combining marks, 2 for wide ones, else 1. Where terminals differ, the greater: a line measured so
 * never runs over. */
int utf8_columns(uint32_t code);

#endif
