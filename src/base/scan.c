#include "base/scan.h"
#include "base/memory.h"
#include "base/utf8.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct scan scan_start(const char *text, size_t length, int line)
{
	return (struct scan){ .text = text, .length = length, .line = line };
}

void scan_blanks(struct scan *s)
{
	while (s->at < s->length && char_is_blank(s->text[s->at]))
		s->at++;
}

bool scan_is_done(struct scan *s)
{
	scan_blanks(s);
	return s->at == s->length;
}

char scan_peek(const struct scan *s)
{
	return s->at < s->length ? s->text[s->at] : '\0';
}

bool scan_take(struct scan *s, char c)
{
	scan_blanks(s);
	if (s->at == s->length || s->text[s->at] != c)
		return false;
	s->at++;
	return true;
}

static size_t word_end(const struct scan *s, size_t at)
{
	while (at < s->length && !char_is_blank(s->text[at]) && s->text[at] != ',')
		at++;
	return at;
}

const char *scan_word(struct scan *s, size_t *length)
{
	size_t start;

	scan_blanks(s);
	start = s->at;
	s->at = word_end(s, start);
	*length = s->at - start;
	return s->text + start;
}

bool scan_take_words(struct scan *s, const char *words)
{
	struct scan ahead = *s;

	while (*words) {
		size_t length, wanted = strcspn(words, " ");
		const char *word = scan_word(&ahead, &length);

		if (length != wanted || memcmp(word, words, length) != 0)
			return false;
		words += wanted;
		words += *words == ' ';
	}
	*s = ahead;
	return true;
}

bool scan_word_is(const char *word, size_t length, const char *name)
{
	return strlen(name) == length && memcmp(word, name, length) == 0;
}

/* Fails at the bytes from `at` up to `end`. */
__attribute__((format(printf, 5, 0)))
static bool fail_at(const struct scan *s, size_t at, size_t end, struct diag *d,
	const char *expected, va_list list)
{
	const char *word = NULL;
	char message[sizeof d->expected];

	vsnprintf(message, sizeof message, expected, list);
	if (at == s->length)
		word = "the end of the line";
	else if (end == at + 1 && s->text[at] == ' ')
		word = "a blank";
	return diag_set(d, s->line, (int)at + 1, word ? word : s->text + at,
		word ? strlen(word) : end - at, "%s", message);
}

bool scan_fail(const struct scan *s, size_t at, struct diag *d, const char *expected, ...)
{
	va_list list;
	size_t end;

	while (at < s->length && char_is_blank(s->text[at]))
		at++;
	end = word_end(s, at);
	if (end == at && at < s->length)
		end++;
	va_start(list, expected);
	fail_at(s, at, end, d, expected, list);
	va_end(list);
	return false;
}

bool scan_fail_here(const struct scan *s, struct diag *d, const char *expected, ...)
{
	size_t left = s->length - s->at, step = 0;
	uint32_t code;
	va_list list;

	if (left)
		step = utf8_decode(s->text + s->at, left, &code);
	if (left && step == 0)
		step = 1;
	va_start(list, expected);
	fail_at(s, s->at, s->at + step, d, expected, list);
	va_end(list);
	return false;
}

bool scan_end(struct scan *s, struct diag *d)
{
	return scan_is_done(s) || scan_fail(s, s->at, d, "the end of the line");
}

bool scan_decimal(struct scan *s, int places, int64_t *units)
{
	const int64_t most = INT64_C(900000000000000000); /* ten times it still fits */
	size_t at = s->at;
	int64_t value = 0;
	int after = -1; /* digits read after the point; -1: no point yet */

	for (; at < s->length; at++) {
		char c = s->text[at];

		if (c == '.' && after < 0 && places > 0 && at > s->at) {
			after = 0;
			continue;
		}
		if (!char_is_digit(c))
			break;
		if (after >= 0 && ++after > places)
			return false;
		value = value * 10 + (c - '0');
		if (value > most)
			return false;
	}
	if (at == s->at || after == 0)
		return false;
	for (int i = after < 0 ? 0 : after; i < places; i++) {
		value *= 10;
		if (value > most)
			return false;
	}
	s->at = at;
	*units = value;
	return true;
}

/* The length in bytes of the character that comes next of a quoted text, which begins at `first`,
 * without its escape, which is taken; 0 where it is refused. */
static size_t quoted_character(struct scan *s, size_t first)
{
	bool escaped = s->text[s->at] == '\\';
	size_t at = s->at + escaped, step;
	uint32_t code;

	if (at == s->length)
		return 0;
	if (!utf8_fits_text(s->text + first, s->length - first, at - first, &step))
		return 0;
	utf8_decode(s->text + at, step, &code);
	if (escaped && code != '"' && code != '\\')
		return 0;
	if (utf8_is_joiner(code) && s->text[at + step] == '"')
		return 0; /* the end of the text, not a character after it */
	s->at = at;
	return step;
}

bool scan_quoted(struct scan *s, size_t least, size_t most, char **text, struct diag *d)
{
	size_t start = s->at, used = 0, count = 0;
	char *copy;

	if (!scan_take(s, '"'))
		return scan_fail(s, start, d, "text in double quotes");
	start = s->at - 1;
	copy = memory_new(s->length - s->at + 1, 1);
	while (s->at < s->length && s->text[s->at] != '"') {
		size_t step = quoted_character(s, start + 1);

		if (step == 0) {
			free(copy);
			return scan_fail_here(s, d, "a printable character, \\\" or \\\\");
		}
		memcpy(copy + used, s->text + s->at, step);
		used += step;
		s->at += step;
		count++;
	}
	if (s->at == s->length) {
		free(copy);
		return scan_fail(s, s->at, d, "a closing double quote");
	}
	s->at++;
	if (count < least || count > most) {
		free(copy);
		return scan_fail(s, start, d, "%zu to %zu characters in the quotes", least, most);
	}
	*text = copy;
	return true;
}
