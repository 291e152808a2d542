#include "report/json/json_rows.h"
#include "base/stop.h"

struct json_rows json_rows_open(struct sink *out, const char *key, const char *lead,
	const char *between)
{
	sink_print(out, ",%s\"%s\": [", lead, key);
	return (struct json_rows){ out, between, 0 };
}

void json_rows_next(struct json_rows *rows)
{
	sink_print(rows->out, "%s%s", rows->printed++ ? "," : "", rows->between);
}

void json_rows_add(struct json_rows *rows, cJSON *row)
{
	json_rows_next(rows);
	json_print(rows->out, row);
}

void json_rows_close(struct json_rows *rows)
{
	sink_print(rows->out, "%s]", rows->printed ? rows->between : "");
}

struct json_rows json_top_open(struct sink *out, const char *key)
{
	return json_rows_open(out, key, "\n  ", "\n    ");
}

void json_top_close(struct json_rows *rows)
{
	sink_add(rows->out, rows->printed ? "\n  ]" : "]");
}

/* ---- Figures --------------------------------------------------------------------------------- */

static cJSON *rows_array(const struct takeoff *takeoff, const struct figure *figure,
	const void *row)
{
	cJSON *array = cJSON_CreateArray();
	int count;
	const char *rows = figure_rows(figure, row, &count);

	for (int i = 0; i < count && !stop_asked(); i++, rows += figure->table->row_size)
		if (!row_is_left_out(figure->table, rows))
			cJSON_AddItemToArray(array, json_object(takeoff, figure->table, rows));
	return array;
}

static cJSON *lengths_of(const struct figure *figure, const void *row)
{
	const struct spot *spot = figure_field(figure, row);
	const nm *lengths;
	int count;

	if (figure->kind == FIGURE_SPOT)
		return json_lengths((nm[]){ spot->x, spot->y }, 2);
	lengths = figure_rows(figure, row, &count);
	return json_lengths(lengths, count);
}

cJSON *json_figure(const struct takeoff *takeoff, const struct figure *figure, const void *row)
{
	switch (figure->kind) {
	case FIGURE_COUNT:
		return json_count(figure_whole(figure, row));
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
		return json_length(figure_whole(figure, row));
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
		return json_number(figure_real(figure, row));
	case FIGURE_MONEY:
		return json_money(figure_whole(figure, row));
	case FIGURE_WORD:
		return cJSON_CreateString(figure->words[figure_whole(figure, row)].key);
	case FIGURE_TEXT:
		return json_text(figure_text(figure, row));
	case FIGURE_LETTER:
		return cJSON_CreateString((char[]){ *(const char *)figure_field(figure, row),
			'\0' });
	case FIGURE_TRUTH:
		return cJSON_CreateBool(figure_whole(figure, row) != 0);
	case FIGURE_REGION:
		return json_region(takeoff, (int)figure_whole(figure, row));
	case FIGURE_PLACE:
		return json_place(*(const struct place *)figure_field(figure, row));
	case FIGURE_SIZE:
		return json_size(figure_field(figure, row));
	case FIGURE_SPOT:
	case FIGURE_LENGTHS:
		return lengths_of(figure, row);
	case FIGURE_ROWS:
		return rows_array(takeoff, figure, row);
	case FIGURE_OBJECT:
		return json_object(takeoff, figure->table, figure_field(figure, row));
	case FIGURE_ENTRY:
	case FIGURE_CUTS:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return cJSON_CreateNull();
}

static bool comes_after(const struct figure *figure)
{
	return (figure->flags & (JSON_SPACED | JSON_LINES)) != 0;
}

cJSON *json_object(const struct takeoff *takeoff, const struct figure_table *table, const void *row)
{
	cJSON *object = cJSON_CreateObject();

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];

		if (figure->key && !comes_after(figure) &&
			!((figure->flags & JSON_OPTIONAL) && figure_is_none(figure, row)))
			json_put(object, figure->key, json_figure(takeoff, figure, row));
	}
	return object;
}

/* A row for each block cut up. */
static void json_cuts(struct json_rows *rows, const struct figure *figure, const void *row)
{
	int count;
	const struct cut *cuts = figure_rows(figure, row, &count);

	for (int i = 0; i < count; i++) {
		for (int64_t block = 0; block < cuts[i].blocks && !stop_asked(); block++) {
			cJSON *pieces = cJSON_CreateObject();

			json_put(pieces, "pieces_m",
				json_lengths(cuts[i].pieces, cuts[i].piece_count));
			json_rows_add(rows, pieces);
		}
	}
}

void json_after(struct sink *out, const struct takeoff *takeoff, const struct figure *figure,
	const void *row)
{
	struct json_rows rows = json_rows_open(out, figure->key, " ",
		(figure->flags & JSON_LINES) ? "\n      " : "");
	int count;

	if (figure->kind == FIGURE_CUTS) {
		json_cuts(&rows, figure, row);
	} else {
		const char *at = figure_rows(figure, row, &count);

		for (int i = 0; i < count && !stop_asked(); i++, at += figure->table->row_size)
			if (!row_is_left_out(figure->table, at))
				json_rows_add(&rows, json_object(takeoff, figure->table, at));
	}
	json_rows_close(&rows);
}

void json_rows_print(struct json_rows *rows, const struct takeoff *takeoff,
	const struct figure_table *table, const void *row,
	void (*more)(struct sink *out, const void *row))
{
	if (row_is_left_out(table, row))
		return;
	json_rows_next(rows);
	json_print_open(rows->out, json_object(takeoff, table, row));
	for (int i = 0; i < table->count; i++)
		if (table->figures[i].key && comes_after(&table->figures[i]))
			json_after(rows->out, takeoff, &table->figures[i], row);
	if (more)
		more(rows->out, row);
	sink_add(rows->out, "}");
}
