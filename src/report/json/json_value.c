#include "report/json/json_value.h"
#include "base/memory.h"

enum { LENGTH_PLACES = 9, NUMBER_PLACES = 9 };

/* ---- Values ----------------------------------------------------------------------------------- */

static cJSON *raw(struct text *text)
{
	cJSON *item = cJSON_CreateRaw(text->bytes);

	text_fini(text);
	return item;
}

cJSON *json_number(double value)
{
	struct text text = TEXT_EMPTY;

	text_add_number(&text, value, NUMBER_PLACES);
	return raw(&text);
}

cJSON *json_count(int64_t value)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, value, 0);
	return raw(&text);
}

cJSON *json_length(nm value)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, value, LENGTH_PLACES);
	return raw(&text);
}

cJSON *json_place(struct place at)
{
	cJSON *array = cJSON_CreateArray();

	cJSON_AddItemToArray(array, json_count(at.x));
	cJSON_AddItemToArray(array, json_count(at.y));
	return array;
}

cJSON *json_lengths(const nm *list, int how_many)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < how_many; i++)
		cJSON_AddItemToArray(array, json_length(list[i]));
	return array;
}

cJSON *json_size(const struct size *block)
{
	return json_lengths((nm[]){ block->along, block->across, block->up }, 3);
}

void json_put(cJSON *object, const char *key, cJSON *value)
{
	cJSON_AddItemToObject(object, key, value);
}

void json_put_text(cJSON *object, const char *key, const char *value)
{
	json_put(object, key, cJSON_CreateString(value));
}

void json_put_letter(cJSON *object, char letter)
{
	json_put_text(object, "letter", (char[]){ letter, '\0' });
}

void json_put_region(cJSON *object, const char *key, const struct takeoff *takeoff, int region)
{
	char name[REGION_NAME_MOST];

	if (region == NO_REGION) {
		json_put(object, key, cJSON_CreateNull());
		return;
	}
	survey_region_name(&takeoff->survey.regions[region], name);
	json_put_text(object, key, name);
}

cJSON *json_loads(const struct loads *loads)
{
	cJSON *object = cJSON_CreateObject();

	json_put(object, "barrow", json_count(loads->barrow));
	json_put(object, "pickup", json_count(loads->pickup));
	json_put(object, "truck", json_count(loads->truck));
	return object;
}

/* ---- Rows ------------------------------------------------------------------------------------- */

void json_print(struct text *out, cJSON *value)
{
	char *bytes = cJSON_PrintUnformatted(value);

	text_add(out, bytes);
	cJSON_free(bytes);
	cJSON_Delete(value);
}

void json_print_open(struct text *out, cJSON *object)
{
	json_print(out, object);
	out->bytes[--out->length] = '\0';
}

struct json_rows json_rows_open(struct text *out, const char *key, const char *lead,
	const char *between)
{
	text_print(out, ",%s\"%s\": [", lead, key);
	return (struct json_rows){ out, between, 0 };
}

void json_rows_next(struct json_rows *rows)
{
	text_print(rows->out, "%s%s", rows->printed++ ? "," : "", rows->between);
}

void json_rows_add(struct json_rows *rows, cJSON *row)
{
	json_rows_next(rows);
	json_print(rows->out, row);
}

void json_rows_close(struct json_rows *rows)
{
	text_print(rows->out, "%s]", rows->printed ? rows->between : "");
}

struct json_rows json_top_open(struct text *out, const char *key)
{
	return json_rows_open(out, key, "\n  ", "\n    ");
}

void json_top_close(struct json_rows *rows)
{
	text_add(rows->out, rows->printed ? "\n  ]" : "]");
}

static void *json_memory(size_t bytes)
{
	return memory_new(bytes, 1);
}

void json_start(void)
{
	cJSON_InitHooks(&(cJSON_Hooks){ .malloc_fn = json_memory });
}
