#include "plot/history/change.h"
#include "base/scan.h"
#include "plot/format/format.h"

#include <limits.h>
#include <string.h>

#define CELLS "cells"

/* Bytes of a line of letters besides those, and of all of a plot besides its rows. */
enum { LINE_OVERHEAD = sizeof CELLS " 2047 2047 \n" - 1, DETAILS_USUAL = 1000 };

/* Whether the letters line by line would take about more than all of the plot. */
static bool is_mostly_new(const struct step *step, const struct ground *ground)
{
	size_t bytes = 0;

	for (size_t i = 0; i < step->changed_count; i++)
		bytes += LINE_OVERHEAD + (size_t)step->changed[i].length;
	return bytes > ground_count(ground) + DETAILS_USUAL;
}

void change_write(const struct step *step, const struct plot *plot, struct text *out)
{
	if (step->grounds || is_mostly_new(step, &plot->ground)) {
		format_write(plot, out);
		return;
	}
	if (step->details)
		format_write_details(plot, out);
	for (size_t i = 0; i < step->changed_count; i++) {
		const struct changed *changed = &step->changed[i];

		text_print(out, CELLS " %d %d %.*s\n", changed->x, changed->y,
			changed->length, ground_at(&plot->ground, changed->x, changed->y));
	}
}

/* Reads a line of letters; false where it is none, or leaves the plan. */
static bool cells_scan(struct scan *s, const struct ground *ground, struct changed *to,
	const char **letters)
{
	size_t length;
	const char *word = scan_word(s, &length);
	int64_t x, y;

	if (!scan_word_is(word, length, CELLS))
		return false;
	scan_blanks(s);
	if (!scan_decimal(s, 0, &x))
		return false;
	scan_blanks(s);
	if (!scan_decimal(s, 0, &y))
		return false;
	*letters = scan_word(s, &length);
	if (!scan_is_done(s) || length == 0 || y >= ground->rows ||
	    x + (int64_t)length > ground->columns)
		return false;
	*to = (struct changed){ (int)x, (int)y, (int)length };
	return true;
}

static bool has_entries(const struct plot *plot, const char *letters, size_t length)
{
	bool is_known[UCHAR_MAX + 1] = { [OPEN_GROUND] = true };

	for (size_t i = 0; i < plot->details.legend_count; i++)
		is_known[(unsigned char)plot->details.legend[i].letter] = true;
	for (size_t i = 0; i < length; i++)
		if (!is_known[(unsigned char)letters[i]])
			return false;
	return true;
}

/* Looks at all lines of letters, and puts them into the ground where there is one. */
static bool cells_read(const char *bytes, size_t length, const struct plot *plot,
	struct ground *ground)
{
	const char *end = bytes + length;

	while (bytes < end) {
		const char *line_end = memchr(bytes, '\n', (size_t)(end - bytes)), *letters;
		struct changed to;
		struct scan s;

		if (!line_end)
			return false;
		s = scan_start(bytes, (size_t)(line_end - bytes), 0);
		if (!cells_scan(&s, &plot->ground, &to, &letters) ||
		    !has_entries(plot, letters, (size_t)to.length))
			return false;
		if (ground)
			memcpy(ground_at(ground, to.x, to.y), letters, (size_t)to.length);
		bytes = line_end + 1;
	}
	return true;
}

/* How much of the text comes before the lines of letters. */
static size_t details_length(const char *bytes, size_t length)
{
	static const char first[] = "\n" CELLS " ";
	const char *found;

	if (length >= sizeof first - 2 && memcmp(bytes, first + 1, sizeof first - 2) == 0)
		return 0;
	found = memmem(bytes, length, first, sizeof first - 1);
	return found ? (size_t)(found - bytes) + 1 : length;
}

static bool whole_read(const char *bytes, size_t length, struct plot *plot)
{
	struct plot read;
	struct diag d;

	plot_init(&read);
	if (!format_read(bytes, length, &read, &d))
		return false;
	plot_fini(plot);
	*plot = read;
	return true;
}

/* The details go round ground that has the letters of before and the new ones. */
static bool details_read(const char *bytes, size_t length, size_t before, struct plot *plot)
{
	struct ground *old = &plot->ground;
	struct plot read;
	struct diag d;
	bool is_good;

	plot_init(&read);
	is_good = format_read_details(bytes, before, &read, &d) &&
		read.ground.columns == old->columns && read.ground.rows == old->rows;
	if (is_good) {
		memcpy(read.ground.cells, old->cells, ground_count(old));
		is_good = cells_read(bytes + before, length - before, &read, &read.ground) &&
			has_entries(&read, read.ground.cells, ground_count(old));
	}
	plot_fini(is_good ? plot : &read);
	if (is_good)
		*plot = read;
	return is_good;
}

bool change_read(const char *bytes, size_t length, struct plot *plot)
{
	size_t before = details_length(bytes, length);

	if (before == 0 && !cells_read(bytes, length, plot, NULL))
		return false;
	if (before == 0)
		return cells_read(bytes, length, plot, &plot->ground);
	if (before == length && whole_read(bytes, length, plot))
		return true;
	return details_read(bytes, length, before, plot);
}
