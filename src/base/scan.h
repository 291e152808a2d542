/* A place in one line of text, read word by word. The plot reader scans lines of a file with it and
 * the forms scan a field, so that a value is read, and refused, alike in both. */
#ifndef BASE_SCAN_H
#define BASE_SCAN_H

#include "base/diag.h"

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct scan {
	const char *text; /* the whole line, not ended by NUL */
	size_t length;
	size_t at;        /* next byte to read, 0..length */
	int line;         /* for messages */
};

static inline bool char_is_blank(char c)
{
	return c == ' ' || c == '\t';
}

static inline bool char_is_digit(char c)
{
	return c >= '0' && c <= '9';
}

struct scan scan_start(const char *text, size_t length, int line);

/* Skips blanks and tabs. */
void scan_blanks(struct scan *s);
/* True when nothing but blanks is left; skips them. */
bool scan_is_done(struct scan *s);
/* The same; else fails there: fills d. */
bool scan_end(struct scan *s, struct diag *d);
/* The next byte, or NUL at the end. */
char scan_peek(const struct scan *s);
/* Skips blanks, then takes c if it is next. */
bool scan_take(struct scan *s, char c);
/* The word from here: up to a blank, a comma or the end. Takes it; may be empty. */
const char *scan_word(struct scan *s, size_t *length);
/* Takes the words, a blank between each and the next in `words`, any blanks in the line; false,
 * nothing taken, where others come. */
bool scan_take_words(struct scan *s, const char *words);
/* True when the word of that length equals name. */
bool scan_word_is(const char *word, size_t length, const char *name);

/* Fails at the first word at or after byte `at`: fills d, returns false. */
bool scan_fail(const struct scan *s, size_t at, struct diag *d, const char *expected, ...)
	__attribute__((format(printf, 4, 5)));
/* Fails at the one character that comes next, blanks too. */
bool scan_fail_here(const struct scan *s, struct diag *d, const char *expected, ...)
	__attribute__((format(printf, 3, 4)));

/* A decimal number without sign or exponent, `places` digits at most after the point (0: a whole
 * number), as whole units of 10^-places. Digits must follow a point. False, nothing taken, where
 * there is none or it exceeds 9 x 10^17 units. */
bool scan_decimal(struct scan *s, int places, int64_t *units);

/* Text in double quotes, \" and \\ its only escapes, least..most characters, each as
 * utf8_fits_text demands. *text is new memory for the caller to free, set only on success. */
bool scan_quoted(struct scan *s, size_t least, size_t most, char **text, struct diag *d);

#endif
