#include "report/words/figures.h"
#include "base/number.h"
#include "report/words/words.h"

#include <string.h>

/* ---- Alike ----------------------------------------------------------------------------------- */

static int compare_reals(double a, double b)
{
	return (a > b) - (a < b);
}

static int compare_texts(const char *a, const char *b)
{
	return strcmp(a ? a : "", b ? b : "");
}

static int compare_lengths(const nm *a, const nm *b, int count)
{
	int order = 0;

	for (int i = 0; a != b && order == 0 && i < count; i++)
		order = compare(a[i], b[i]);
	return order;
}

/* Figures of several values: by how many there are, then one by one. */
static int compare_several(const struct figure *figure, const void *a, const void *b)
{
	int count, other, order;
	const char *one = figure_rows(figure, a, &count), *two = figure_rows(figure, b, &other);

	order = compare(count, other);
	if (order == 0 && figure->kind == FIGURE_LENGTHS)
		return compare_lengths((const void *)one, (const void *)two, count);
	for (int i = 0; order == 0 && i < count; i++)
		order = rows_compare(one + (size_t)i * figure->table->row_size,
			two + (size_t)i * figure->table->row_size, figure->table);
	return order;
}

static int figures_compare(const struct figure *figure, const void *a, const void *b)
{
	switch (figure->kind) {
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_MONEY:
	case FIGURE_WORD:
	case FIGURE_NUMBERED:
	case FIGURE_TRUTH:
		return compare(figure_whole(figure, a), figure_whole(figure, b));
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_NUMBER:
		return compare_reals(figure_real(figure, a), figure_real(figure, b));
	case FIGURE_TEXT:
		return compare_texts(figure_text(figure, a), figure_text(figure, b));
	case FIGURE_LENGTHS:
	case FIGURE_ROWS:
		return compare_several(figure, a, b);
	case FIGURE_OBJECT:
		return rows_compare(figure_field(figure, a), figure_field(figure, b),
			figure->table);
	case FIGURE_SIZE:
	case FIGURE_PLACE:
	case FIGURE_SPOT:
	case FIGURE_LETTER:
		return memcmp(figure_field(figure, a), figure_field(figure, b), figure->size);
	case FIGURE_ENTRY:
	case FIGURE_REGION:
	case FIGURE_CUTS:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return 0;
}

int rows_compare(const void *a, const void *b, const void *context)
{
	const struct figure_table *table = context;
	int order = 0;

	for (int i = 0; order == 0 && i < table->count; i++)
		order = figures_compare(&table->figures[i], a, b);
	return order;
}

struct groups rows_groups(const struct figure_table *table, const void *rows, int count)
{
	return groups_make(rows, count, table->row_size, rows_compare, table);
}

/* ---- Words ----------------------------------------------------------------------------------- */

const char *word_heading(const struct word *word)
{
	return word->heading ? word->heading : word->key;
}

const char *word_label(const struct word *word)
{
	return word->label ? word->label : word->key;
}

static const char *entry_words(const struct report *report, const void *field)
{
	const struct entry *entry;

	memcpy(&entry, field, sizeof entry);
	return say(report, "%c %s", entry->letter, entry->name);
}

static const char *enum_words(const struct report *report, const struct figure *figure,
	const void *row)
{
	const struct word *word = &figure->words[figure_whole(figure, row)];

	return report->wording == WORDING_PANEL ? word_label(word) : word_heading(word);
}

static const char *real_words(const struct report *report, enum figure_kind kind, double real)
{
	return kind == FIGURE_AREA ? plain_area(report, real) :
		kind == FIGURE_VOLUME ? plain_volume(report, real) :
		kind == FIGURE_WEIGHT ? plain_weight(report, real) :
		plain_decimal(report, real, 2);
}

static const char *place_words(const struct report *report, const struct place *place)
{
	return say(report, "%d,%d", place->x, place->y);
}

const char *figure_words(const struct report *report, const struct figure *figure, const void *row,
	int number)
{
	const void *field = figure_field(figure, row);

	switch (figure->kind) {
	case FIGURE_COUNT:
		return plain_count(report, figure_whole(figure, row));
	case FIGURE_LENGTH:
		return plain_length(report, figure_whole(figure, row));
	case FIGURE_INCHES:
		return plain_inches(report, figure_whole(figure, row));
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_NUMBER:
		return real_words(report, figure->kind, figure_real(figure, row));
	case FIGURE_MONEY:
		return plain_money(report, figure_whole(figure, row));
	case FIGURE_WORD:
		return enum_words(report, figure, row);
	case FIGURE_NUMBERED:
		return say(report, "%d %s", number, enum_words(report, figure, row));
	case FIGURE_TEXT:
		return figure_text(figure, row);
	case FIGURE_LETTER:
		return say(report, "%c", *(const char *)field);
	case FIGURE_ENTRY:
		return entry_words(report, field);
	case FIGURE_REGION:
		return plain_region(report, (int)figure_whole(figure, row));
	case FIGURE_PLACE:
		return place_words(report, field);
	case FIGURE_SIZE:
		return plain_size(report, field);
	case FIGURE_TRUTH:
	case FIGURE_SPOT:
	case FIGURE_LENGTHS:
	case FIGURE_CUTS:
	case FIGURE_ROWS:
	case FIGURE_OBJECT:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return "";
}
