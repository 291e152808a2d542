#include "report/json/json_value.h"

#include <string.h>

enum { LENGTH_PLACES = 9, NUMBER_PLACES = 9, MONEY_PLACES = 2 };

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

static cJSON *decimal(int64_t value, int places)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, value, places);
	return raw(&text);
}

cJSON *json_count(int64_t value)
{
	return decimal(value, 0);
}

cJSON *json_money(money amount)
{
	return decimal(amount, MONEY_PLACES);
}

cJSON *json_length(nm value)
{
	return decimal(value, LENGTH_PLACES);
}

/* Of many numbers one value: an array may have hundreds of thousands. */
static cJSON *decimals(const int64_t *list, int how_many, int places)
{
	struct text text = TEXT_EMPTY;

	text_add(&text, "[");
	for (int i = 0; i < how_many; i++) {
		text_add(&text, i > 0 ? "," : "");
		text_add_decimal(&text, list[i], places);
	}
	text_add(&text, "]");
	return raw(&text);
}

cJSON *json_place(struct place at)
{
	return decimals((int64_t[]){ at.x, at.y }, 2, 0);
}

cJSON *json_lengths(const nm *list, int how_many)
{
	return decimals(list, how_many, LENGTH_PLACES);
}

cJSON *json_size(const struct size *block)
{
	return json_lengths((nm[]){ block->along, block->across, block->up }, 3);
}

cJSON *json_region(const struct takeoff *takeoff, int region)
{
	char name[REGION_NAME_MOST];

	if (region == NO_REGION)
		return cJSON_CreateNull();
	survey_region_name(&takeoff->survey.regions[region], name);
	return cJSON_CreateString(name);
}

cJSON *json_text(const char *text)
{
	return text ? cJSON_CreateString(text) : cJSON_CreateNull();
}

void json_put(cJSON *object, const char *key, cJSON *value)
{
	cJSON_AddItemToObject(object, key, value);
}

static void print(struct sink *out, cJSON *value, size_t less)
{
	char *bytes = cJSON_PrintUnformatted(value);

	sink_add_bytes(out, bytes, strlen(bytes) - less);
	cJSON_free(bytes);
	cJSON_Delete(value);
}

void json_print(struct sink *out, cJSON *value)
{
	print(out, value, 0);
}

void json_print_open(struct sink *out, cJSON *object)
{
	print(out, object, 1);
}
