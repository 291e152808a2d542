#include "takeoff/common/figure.h"

#include <string.h>

const void *figure_field(const struct figure *figure, const void *row)
{
	return (const char *)row + figure->at;
}

int64_t figure_whole(const struct figure *figure, const void *row)
{
	const void *field = figure_field(figure, row);
	unsigned int word;
	int64_t whole;
	int number;

	switch (figure->kind) {
	case FIGURE_WORD:
		memcpy(&word, field, sizeof word);
		return word;
	case FIGURE_TRUTH:
		return *(const bool *)field;
	default:
		break;
	}
	if (figure->size == sizeof number) {
		memcpy(&number, field, sizeof number);
		return number;
	}
	memcpy(&whole, field, sizeof whole);
	return whole;
}

double figure_real(const struct figure *figure, const void *row)
{
	double real;

	memcpy(&real, figure_field(figure, row), sizeof real);
	return real;
}

const char *figure_text(const struct figure *figure, const void *row)
{
	const char *text;

	memcpy(&text, figure_field(figure, row), sizeof text);
	return text;
}

const void *figure_rows(const struct figure *figure, const void *row, int *count)
{
	const void *field = figure_field(figure, row), *rows;

	memcpy(count, (const char *)row + figure->count_at, sizeof *count);
	/* An array within the row, else a pointer to one. */
	if (figure->size != sizeof rows)
		return field;
	memcpy(&rows, field, sizeof rows);
	return rows;
}

bool figure_is_none(const struct figure *figure, const void *row)
{
	switch (figure->kind) {
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
		return figure_real(figure, row) <= 0;
	case FIGURE_TEXT:
		return !figure_text(figure, row);
	case FIGURE_SIZE:
		return size_is_none(figure_field(figure, row));
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_MONEY:
	case FIGURE_TRUTH:
		return figure_whole(figure, row) == 0;
	default:
		return false;
	}
}

bool row_is_left_out(const struct figure_table *table, const void *row)
{
	for (int i = 0; i < table->count; i++)
		if ((table->figures[i].flags & ROW_NEEDED) &&
			figure_is_none(&table->figures[i], row))
			return true;
	return false;
}
