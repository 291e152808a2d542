#include "report/json/json_arrays.h"
#include "report/json/json_value.h"

static void put_earth(cJSON *object, const struct earth *earth)
{
	json_put(object, "sod_m3", json_number(earth->sod));
	json_put(object, "topsoil_m3", json_number(earth->topsoil));
	json_put(object, "subsoil_m3", json_number(earth->subsoil));
}

static cJSON *earth_object(const struct earth *earth)
{
	cJSON *object = cJSON_CreateObject();

	put_earth(object, earth);
	return object;
}

static void print_sums(struct text *out, const struct earthwork *work)
{
	cJSON *object = cJSON_CreateObject();

	json_put(object, "bank", earth_object(&work->bank));
	json_put(object, "loose", earth_object(&work->loose));
	json_put(object, "reused_m3", json_number(work->reused));
	json_put(object, "spoil_m3", json_number(work->spoil));
	json_put(object, "spoil_kg", json_number(work->spoil_weight));
	json_put(object, "loads", json_loads(&work->loads));
	text_add(out, ",\n  \"dig_sums\": ");
	json_print(out, object);
}

void json_dig(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "dig");

	for (int i = 0; i < takeoff->earthwork.count; i++) {
		const struct dig *dig = &takeoff->earthwork.rows[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "region", takeoff, dig->region);
		json_put_text(row, "part", dig_part_word(dig->part));
		json_put(row, "area_m2", json_number(dig->area));
		json_put(row, "depth_m", json_length(dig->depth));
		put_earth(row, &dig->bank);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
	print_sums(out, &takeoff->earthwork);
}
