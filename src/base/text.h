/* A growing text. Start from TEXT_EMPTY, end with text_fini. bytes is always ended by a NUL, which
 * is written only once anything was added; NUL bytes may be added like any other. */
#ifndef BASE_TEXT_H
#define BASE_TEXT_H

#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct arena;

struct text {
	char *bytes;
	size_t length, capacity;
};
#define TEXT_EMPTY ((struct text){ text_nothing, 0, 0 })
extern char text_nothing[1]; /* "", never written to: of a text without memory of its own */

void text_fini(struct text *t);
/* Leaves its first `length` bytes and keeps its memory. */
void text_cut(struct text *t, size_t length);
/* The same of none. */
void text_clear(struct text *t);
void text_add(struct text *t, const char *string);
void text_add_bytes(struct text *t, const char *bytes, size_t length);
void text_add_repeat(struct text *t, char c, size_t count);
void text_print(struct text *t, const char *format, ...) __attribute__((format(printf, 2, 3)));
void text_vprint(struct text *t, const char *format, va_list list)
	__attribute__((format(printf, 2, 0)));
/* Prints a sentence, with a blank before it where it is not the first. */
void text_add_sentence(struct text *t, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* Hands over what the text holds, to be passed to free(), and empties the text. */
char *text_take(struct text *t);
/* Moves what the text holds into the arena and frees the text. */
char *text_keep(struct text *t, struct arena *arena);
/* In double quotes, with \" and \\ escaped. */
void text_add_quoted(struct text *t, const char *string);
/* One more word of a list that is all of the text: "a", "a, b", and at last "a, b or c". */
void text_add_listed(struct text *t, const char *word, bool is_last);
/* units of 10^-places as a decimal without trailing zeros: 1500000, 6 -> "1.5". */
void text_add_decimal(struct text *t, int64_t units, int places);
/* value rounded to at most `places` (0..9) places, without trailing zeros, never an exponent,
 * never "-0". |value| < 1e15. */
void text_add_number(struct text *t, double value, int places);

#endif
