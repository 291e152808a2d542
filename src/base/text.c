#include "base/text.h"
#include "base/memory.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

char text_nothing[1] = "";

static char *text_room(struct text *t, size_t more)
{
	char *own = t->capacity ? t->bytes : NULL;

	if (t->length + more + 1 > t->capacity) {
		size_t grown = t->capacity * 2;

		t->capacity = grown > t->length + more + 1 ? grown : t->length + more + 1;
		t->bytes = memory_resize(own, t->capacity, 1);
	}
	return t->bytes + t->length;
}

void text_fini(struct text *t)
{
	if (t->capacity)
		free(t->bytes);
	*t = TEXT_EMPTY;
}

void text_cut(struct text *t, size_t length)
{
	t->length = length;
	if (t->capacity)
		t->bytes[length] = '\0';
	else
		*t = TEXT_EMPTY;
}

void text_clear(struct text *t)
{
	text_cut(t, 0);
}

void text_add(struct text *t, const char *string)
{
	text_add_bytes(t, string, strlen(string));
}

void text_add_bytes(struct text *t, const char *bytes, size_t length)
{
	char *end = text_room(t, length);

	if (length)
		memcpy(end, bytes, length);
	end[length] = '\0';
	t->length += length;
}

void text_add_repeat(struct text *t, char c, size_t count)
{
	char *end = text_room(t, count);

	memset(end, c, count);
	end[count] = '\0';
	t->length += count;
}

void text_vprint(struct text *t, const char *format, va_list list)
{
	enum { USUAL = 100 };
	va_list again;
	int length;

	va_copy(again, list);
	length = vsnprintf(text_room(t, USUAL), USUAL + 1, format, again);
	va_end(again);
	if (length > USUAL)
		vsnprintf(text_room(t, (size_t)length), (size_t)length + 1, format, list);
	t->length += (size_t)length;
}

void text_print(struct text *t, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	text_vprint(t, format, list);
	va_end(list);
}

void text_add_sentence(struct text *t, const char *format, ...)
{
	va_list list;

	text_add(t, t->length ? " " : "");
	va_start(list, format);
	text_vprint(t, format, list);
	va_end(list);
}

char *text_take(struct text *t)
{
	char *taken = t->capacity ? t->bytes : memory_string("");

	*t = TEXT_EMPTY;
	return taken;
}

char *text_keep(struct text *t, struct arena *arena)
{
	char *kept = arena_new(arena, t->length + 1, 1);

	memcpy(kept, t->bytes, t->length);
	text_fini(t);
	return kept;
}

void text_add_quoted(struct text *t, const char *string)
{
	text_add(t, "\"");
	for (const char *c = string; *c; c++) {
		if (*c == '"' || *c == '\\')
			text_add(t, "\\");
		text_add_bytes(t, c, 1);
	}
	text_add(t, "\"");
}

void text_add_listed(struct text *t, const char *word, bool is_last)
{
	if (t->length)
		text_add(t, is_last ? " or " : ", ");
	text_add(t, word);
}

/* Cuts trailing zeros after the point, and the point itself if nothing is left after it. */
static void trim_zeros(struct text *t)
{
	size_t length = t->length;

	while (t->bytes[length - 1] == '0')
		length--;
	if (t->bytes[length - 1] == '.')
		length--;
	text_cut(t, length);
}

/* A sign, the digits of any whole number or as many places, a point. */
enum { DECIMAL_MOST = 40 };

void text_add_decimal(struct text *t, int64_t units, int places)
{
	uint64_t left = units < 0 ? -(uint64_t)units : (uint64_t)units;
	char digits[DECIMAL_MOST], *end = digits + sizeof digits, *at = end;

	/* From the last digit on, without zeros at the end of the places. */
	for (int place = 0; left > 0 || place <= places; place++, left /= 10) {
		if (place == places && at < end)
			*--at = '.';
		if (place >= places || left % 10 > 0 || at < end)
			*--at = (char)('0' + left % 10);
	}
	if (units < 0)
		*--at = '-';
	text_add_bytes(t, at, (size_t)(end - at));
}

void text_add_number(struct text *t, double value, int places)
{
	size_t start = t->length;

	text_print(t, "%.*f", places, value);
	if (places > 0)
		trim_zeros(t);
	if (strcmp(t->bytes + start, "-0") == 0) {
		t->length = start;
		text_add(t, "0");
	}
}
