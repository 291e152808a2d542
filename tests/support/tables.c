#include "support/tables.h"

#include <assert.h>
#include <string.h>

static struct named_table tables[96];
static int table_count;

static bool is_found(const struct figure_table *table)
{
	for (int i = 0; i < table_count; i++)
		if (tables[i].table == table)
			return true;
	return false;
}

static void find(const struct figure_table *table, const char *name)
{
	if (is_found(table))
		return;
	assert(table_count < (int)(sizeof tables / sizeof *tables));
	tables[table_count++] = (struct named_table){ table, name };
	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];

		if (figure->table)
			find(figure->table, figure->key ? figure->key : name);
	}
}

const struct named_table *tables_all(int *count)
{
	for (int i = 0; i < takeoff_shown_count; i++)
		if (takeoff_shown[i].table)
			find(takeoff_shown[i].table, takeoff_shown[i].key);
	find(&costs_table, "costs");
	find(&supplier_cost_table, "suppliers");
	find(&stone_layer_table, "stone layers");
	find(&edging_table, "edging sums");
	*count = table_count;
	return tables;
}

bool table_is_declared(const struct figure_table *table)
{
	int count;

	tables_all(&count);
	return is_found(table);
}

/* ---- Rows ------------------------------------------------------------------------------------ */

enum { WITHIN = 2 }; /* lengths and rows within a row */

static void put(const struct figure *figure, char *row, const void *value)
{
	memcpy(row + figure->at, value, figure->size);
}

static void put_whole(const struct figure *figure, char *row)
{
	static const int number = 2;
	static const int64_t whole = 2;

	put(figure, row, figure->size == sizeof number ? (const void *)&number : &whole);
}

static void put_count(const struct figure *figure, char *row, int count)
{
	memcpy(row + figure->count_at, &count, sizeof count);
}

static void fill(struct arena *arena, const struct figure_table *table, char *row);

/* An array of so large things within the row, or one that the row is made to point to: that has one
 * more, for tests that make the count another. */
static char *put_array(struct arena *arena, const struct figure *figure, char *row, size_t size)
{
	char *array = row + figure->at;

	if (figure->size == sizeof array) {
		array = arena_new(arena, WITHIN + 1, size);
		memcpy(row + figure->at, &array, sizeof array);
	}
	put_count(figure, row, WITHIN);
	return array;
}

static void put_lengths(struct arena *arena, const struct figure *figure, char *row)
{
	char *lengths = put_array(arena, figure, row, sizeof(nm));

	for (nm i = 0; i < WITHIN; i++)
		memcpy(lengths + (size_t)i * sizeof i, &i, sizeof i);
}

static void put_rows(struct arena *arena, const struct figure *figure, char *row)
{
	char *rows = put_array(arena, figure, row, figure->table->row_size);

	for (int i = 0; i < WITHIN; i++)
		fill(arena, figure->table, rows + (size_t)i * figure->table->row_size);
}

static void fill_figure(struct arena *arena, const struct figure *figure, char *row)
{
	const char *text;

	switch (figure->kind) {
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_MONEY:
	case FIGURE_REGION:
		put_whole(figure, row);
		break;
	case FIGURE_WORD:
		put(figure, row, &(unsigned int){ 1 });
		break;
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
		put(figure, row, &(double){ 1.5 });
		break;
	case FIGURE_TEXT:
		text = arena_print(arena, "words");
		put(figure, row, &text);
		break;
	case FIGURE_LETTER:
		put(figure, row, &(char){ 'x' });
		break;
	case FIGURE_TRUTH:
		put(figure, row, &(bool){ true });
		break;
	case FIGURE_PLACE:
		put(figure, row, &(struct place){ 1, 2 });
		break;
	case FIGURE_SPOT:
		put(figure, row, &(struct spot){ 1, 2 });
		break;
	case FIGURE_SIZE:
		put(figure, row, &(struct size){ 1, 2, 3 });
		break;
	case FIGURE_OBJECT:
		fill(arena, figure->table, row + figure->at);
		break;
	case FIGURE_LENGTHS:
		put_lengths(arena, figure, row);
		break;
	case FIGURE_ROWS:
		put_rows(arena, figure, row);
		break;
	case FIGURE_ENTRY:
	case FIGURE_CUTS:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
}

/* What is counted comes last: it says itself how many there are, whatever else shows that. */
static void fill(struct arena *arena, const struct figure_table *table, char *row)
{
	for (int counted = 0; counted < 2; counted++) {
		for (int i = 0; i < table->count; i++) {
			enum figure_kind kind = table->figures[i].kind;
			bool is_counted = kind == FIGURE_LENGTHS || kind == FIGURE_ROWS;

			if (is_counted == (counted == 1))
				fill_figure(arena, &table->figures[i], row);
		}
	}
}

char *row_filled(struct arena *arena, const struct figure_table *table)
{
	char *row = arena_new(arena, 1, table->row_size);

	fill(arena, table, row);
	return row;
}
