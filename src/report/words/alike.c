#include "report/words/alike.h"
#include "base/hash.h"
#include "base/number.h"

#include <string.h>

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

/* ---- The same as a hash ---------------------------------------------------------------------- */

static uint64_t hash_real(uint64_t before, double real)
{
	double whole = real == 0 ? 0 : real; /* a zero has no sign */

	return hash_bytes(before, &whole, sizeof whole);
}

static uint64_t hash_text(uint64_t before, const char *text)
{
	return hash_bytes(before, text ? text : "", text ? strlen(text) : 0);
}

static uint64_t hash_rows(uint64_t before, const void *row, const struct figure_table *table);

static uint64_t hash_several(uint64_t before, const struct figure *figure, const void *row)
{
	int count;
	const char *rows = figure_rows(figure, row, &count);

	before = hash_bytes(before, &count, sizeof count);
	if (figure->kind == FIGURE_LENGTHS)
		return hash_bytes(before, rows, (size_t)count * sizeof(nm));
	for (int i = 0; i < count; i++)
		before = hash_rows(before, rows + (size_t)i * figure->table->row_size,
			figure->table);
	return before;
}

static uint64_t hash_figure(uint64_t before, const struct figure *figure, const void *row)
{
	int64_t whole;

	switch (figure->kind) {
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_MONEY:
	case FIGURE_WORD:
	case FIGURE_NUMBERED:
	case FIGURE_TRUTH:
		whole = figure_whole(figure, row);
		return hash_bytes(before, &whole, sizeof whole);
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_NUMBER:
		return hash_real(before, figure_real(figure, row));
	case FIGURE_TEXT:
		return hash_text(before, figure_text(figure, row));
	case FIGURE_LENGTHS:
	case FIGURE_ROWS:
		return hash_several(before, figure, row);
	case FIGURE_OBJECT:
		return hash_rows(before, figure_field(figure, row), figure->table);
	case FIGURE_SIZE:
	case FIGURE_PLACE:
	case FIGURE_SPOT:
	case FIGURE_LETTER:
		return hash_bytes(before, figure_field(figure, row), figure->size);
	case FIGURE_ENTRY:
	case FIGURE_REGION:
	case FIGURE_CUTS:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return before;
}

static uint64_t hash_rows(uint64_t before, const void *row, const struct figure_table *table)
{
	for (int i = 0; i < table->count; i++)
		before = hash_figure(before, &table->figures[i], row);
	return before;
}

uint64_t rows_hash(const void *row, const void *context)
{
	return hash_rows(HASH_EMPTY, row, context);
}

struct groups rows_groups(const struct figure_table *table, const void *rows, int count)
{
	return groups_make(rows, count, table->row_size,
		&(struct alike){ rows_compare, rows_hash, table });
}
