#include "report/text/ruler.h"
#include "report/drawing/scale.h"

struct ruler ruler_of(const struct report *report, int cells, int pitch, int apart)
{
	nm cell = plot_cell(report->plot);

	return (struct ruler){ report->units, cell, cells * cell,
		scale_step(report->units, apart * cell / pitch), pitch };
}

/* The character nearest to a length from the plan's edge. */
static int character(const struct ruler *ruler, nm at)
{
	return (int)((2 * at * ruler->pitch + ruler->cell) / (2 * ruler->cell));
}

/* The first label at the character or after it. */
static nm first_label(const struct ruler *ruler, int from)
{
	nm at = from * ruler->cell / ruler->pitch / ruler->step * ruler->step;

	while (character(ruler, at) < from)
		at += ruler->step;
	return at;
}

int ruler_columns(const struct report *report)
{
	struct text words = TEXT_EMPTY;
	int columns;

	scale_words(&words, report->takeoff->survey.rows * plot_cell(report->plot), report->units);
	columns = (int)words.length + 1;
	text_fini(&words);
	return columns;
}

void print_trimmed(const struct report *report, struct text *line)
{
	size_t length = line->length;

	while (length > 0 && line->bytes[length - 1] == ' ')
		length--;
	text_cut(line, length);
	text_add(line, "\n");
	sink_add_bytes(report->out, line->bytes, line->length);
}

void ruler_across(const struct report *report, const struct ruler *ruler, int indent, int left,
	int right)
{
	struct text labels = TEXT_EMPTY, ticks = TEXT_EMPTY;

	for (nm at = first_label(ruler, left); at <= ruler->end && character(ruler, at) <= right;
	     at += ruler->step) {
		size_t column = (size_t)(indent + character(ruler, at) - left);

		text_add_repeat(&labels, ' ', column - labels.length);
		text_add_repeat(&ticks, ' ', column - ticks.length);
		scale_words(&labels, at, ruler->units);
		text_add(&ticks, "|");
		if (labels.length > PAGE_COLUMNS)
			text_cut(&labels, column);
	}
	print_trimmed(report, &labels);
	print_trimmed(report, &ticks);
	text_fini(&labels);
	text_fini(&ticks);
}

void ruler_label(struct text *line, const struct ruler *ruler, int columns, int row)
{
	nm at = first_label(ruler, row);
	struct text words = TEXT_EMPTY;

	if (at <= ruler->end && character(ruler, at) == row)
		scale_words(&words, at, ruler->units);
	text_add_repeat(line, ' ', (size_t)columns - 1 - words.length);
	text_add(line, words.bytes);
	text_add(line, words.length ? "-" : " ");
	text_fini(&words);
}
