#include "base/diag.h"
#include "base/spell.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

/* Copies what can be shown into found[]; where it does not fit, all that leaves room for "...". */
static void found_copy(char *found, size_t room, const char *bytes, size_t length)
{
	size_t used = 0, cut = 0;

	for (size_t i = 0; i < length;) {
		char spelled[SPELLED_MOST + 1];
		size_t width;

		i += spell_character(bytes + i, length - i, spelled, &width);
		if (used + width + 1 > room) {
			memcpy(found + cut, "...", 4);
			return;
		}
		memcpy(found + used, spelled, width);
		used += width;
		cut = used + 4 <= room ? used : cut;
	}
	found[used] = '\0';
}

static void place_set(struct diag *d, int line, int column, const char *found, size_t length)
{
	d->line = line;
	d->column = column;
	if (length == 0)
		snprintf(d->found, sizeof d->found, "nothing");
	else
		found_copy(d->found, sizeof d->found, found, length);
}

bool diag_set(struct diag *d, int line, int column, const char *found, size_t found_length,
	const char *expected, ...)
{
	va_list list;

	place_set(d, line, column, found, found_length);
	va_start(list, expected);
	vsnprintf(d->expected, sizeof d->expected, expected, list);
	va_end(list);
	return false;
}

bool diag_set_words(struct diag *d, int line, int column, const char *found,
	const char *expected, ...)
{
	va_list list;

	place_set(d, line, column, found, strlen(found));
	va_start(list, expected);
	vsnprintf(d->expected, sizeof d->expected, expected, list);
	va_end(list);
	return false;
}
