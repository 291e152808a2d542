#include "report/words/alike.h"
#include "base/hash.h"

#include <string.h>

/* What of a figure's field has to be equal. */
enum content {
	CONTENT_NOTHING, CONTENT_WHOLE, CONTENT_REAL, CONTENT_TEXT, CONTENT_BYTES, CONTENT_LENGTHS,
	CONTENT_ROWS, CONTENT_OBJECT
};

static enum content content_of(const struct figure *figure)
{
	if (figure->flags & ALIKE_ANYWAY)
		return CONTENT_NOTHING;
	switch (figure->kind) {
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_MONEY:
	case FIGURE_WORD:
	case FIGURE_TRUTH:
		return CONTENT_WHOLE;
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
		return CONTENT_REAL;
	case FIGURE_TEXT:
		return CONTENT_TEXT;
	case FIGURE_SIZE:
	case FIGURE_PLACE:
	case FIGURE_SPOT:
	case FIGURE_LETTER:
		return CONTENT_BYTES;
	case FIGURE_LENGTHS:
		return CONTENT_LENGTHS;
	case FIGURE_ROWS:
		return CONTENT_ROWS;
	case FIGURE_OBJECT:
		return CONTENT_OBJECT;
	case FIGURE_ENTRY:
	case FIGURE_REGION:
	case FIGURE_CUTS:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return CONTENT_NOTHING;
}

/* No text is as an empty one. */
static const char *text_of(const struct figure *figure, const void *row)
{
	const char *text = figure_text(figure, row);

	return text ? text : "";
}

/* ---- Equal ----------------------------------------------------------------------------------- */

static bool are_equal_lengths(const struct figure *figure, const void *a, const void *b)
{
	int count, other;
	const char *one = figure_rows(figure, a, &count), *two = figure_rows(figure, b, &other);

	return count == other && (count == 0 || one == two ||
		memcmp(one, two, (size_t)count * sizeof(nm)) == 0);
}

static bool are_equal_rows(const struct figure *figure, const void *a, const void *b)
{
	const struct figure_table *table = figure->table;
	int count, other;
	const char *one = figure_rows(figure, a, &count), *two = figure_rows(figure, b, &other);
	bool is_equal = count == other;

	for (int i = 0; is_equal && i < count; i++)
		is_equal = rows_are_alike(one + (size_t)i * table->row_size,
			two + (size_t)i * table->row_size, table);
	return is_equal;
}

static bool is_equal_figure(const struct figure *figure, const void *a, const void *b)
{
	const void *one = figure_field(figure, a), *two = figure_field(figure, b);

	switch (content_of(figure)) {
	case CONTENT_WHOLE:
		return figure_whole(figure, a) == figure_whole(figure, b);
	case CONTENT_REAL:
		return figure_real(figure, a) == figure_real(figure, b);
	case CONTENT_TEXT:
		return strcmp(text_of(figure, a), text_of(figure, b)) == 0;
	case CONTENT_BYTES:
		return memcmp(one, two, figure->size) == 0;
	case CONTENT_LENGTHS:
		return are_equal_lengths(figure, a, b);
	case CONTENT_ROWS:
		return are_equal_rows(figure, a, b);
	case CONTENT_OBJECT:
		return rows_are_alike(one, two, figure->table);
	case CONTENT_NOTHING:
		break;
	}
	return true;
}

bool rows_are_alike(const void *a, const void *b, const void *context)
{
	const struct figure_table *table = context;

	for (int i = 0; i < table->count; i++)
		if (!is_equal_figure(&table->figures[i], a, b))
			return false;
	return true;
}

/* ---- The same as a hash ---------------------------------------------------------------------- */

static uint64_t hash_real(uint64_t before, double real)
{
	double whole = real == 0 ? 0 : real; /* a zero has no sign */

	return hash_bytes(before, &whole, sizeof whole);
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
	const void *field = figure_field(figure, row);
	const char *text;
	int64_t whole;

	switch (content_of(figure)) {
	case CONTENT_WHOLE:
		whole = figure_whole(figure, row);
		return hash_bytes(before, &whole, sizeof whole);
	case CONTENT_REAL:
		return hash_real(before, figure_real(figure, row));
	case CONTENT_TEXT:
		text = text_of(figure, row);
		return hash_bytes(before, text, strlen(text));
	case CONTENT_BYTES:
		return hash_bytes(before, field, figure->size);
	case CONTENT_LENGTHS:
	case CONTENT_ROWS:
		return hash_several(before, figure, row);
	case CONTENT_OBJECT:
		return hash_rows(before, field, figure->table);
	case CONTENT_NOTHING:
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
		&(struct alike){ rows_are_alike, rows_hash, table });
}
