#include "report/json/json_arrays.h"
#include "report/json/json_value.h"

void json_work(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "work");

	for (int i = 0; i < takeoff->work_count; i++) {
		const struct work_step *step = &takeoff->work[i];
		cJSON *row = cJSON_CreateObject(), *items = cJSON_CreateArray();

		json_put_text(row, "step", step->title);
		for (int j = 0; j < step->item_count; j++)
			cJSON_AddItemToArray(items,
				cJSON_CreateString(takeoff->items[step->items[j]].id));
		json_put(row, "items", items);
		json_put(row, "barrows", json_count(step->barrows));
		json_put(row, "hours", step->rate ? json_number(step->hours) : cJSON_CreateNull());
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}
