#include "report/json/json_arrays.h"
#include "report/json/json_value.h"

void json_stone(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "stone");

	for (int i = 0; i < takeoff->stone_count; i++) {
		const struct stone *stone = &takeoff->stones[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "region", takeoff, stone->region);
		json_put_text(row, "layer", stone->layer == STONE_BASE ? "base" : "surface");
		json_put_text(row, "place", stone_place_word(stone->place));
		json_put_text(row, "stone", stone->grading == STONE_CLEAN ? "clean" : "fines");
		json_put(row, "area_m2", json_number(stone->area));
		json_put(row, "depth_m", json_length(stone->depth));
		json_put(row, "compacted_m3", json_number(stone->compacted));
		json_put(row, "loose_m3", json_number(stone->loose));
		json_put(row, "lifts", json_count(stone->lifts));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

void json_stone_orders(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "stone_orders");

	for (int kind = 0; kind < STONE_KINDS; kind++) {
		const struct stone_total *total = &takeoff->stone_totals[kind];
		cJSON *row;

		if (total->order <= 0)
			continue;
		row = cJSON_CreateObject();
		json_put_text(row, "item", stone_kind_word((enum stone_kind)kind));
		json_put(row, "compacted_m3", json_number(total->compacted));
		json_put(row, "order_m3", json_number(total->order));
		json_put(row, "order_kg", json_number(total->weight));
		json_put(row, "loads", json_loads(&total->loads));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static cJSON *fabric_pieces(const struct fabric *fabric)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < fabric->row_count; i++) {
		cJSON *row = cJSON_CreateObject();

		json_put(row, "pieces", json_count(fabric->rows[i].pieces));
		json_put(row, "length_m", json_length(fabric->rows[i].length));
		cJSON_AddItemToArray(array, row);
	}
	return array;
}

void json_fabric(struct text *out, const struct takeoff *takeoff)
{
	static const char *const edges[2][2] = { { "top", "bottom" }, { "left", "right" } };
	const struct fabric *fabric = &takeoff->fabric;
	struct json_rows rows = json_top_open(out, "fabric");

	if (fabric->rolls > 0) {
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "strips", fabric->way.is_upright ? "upright" : "level");
		json_put_text(row, "from", edges[fabric->way.is_upright][fabric->way.is_turned]);
		json_put(row, "width_m", json_length(fabric->width));
		json_put(row, "roll_m", json_length(fabric->roll));
		json_put(row, "lap_m", json_length(fabric->lap));
		json_put(row, "end_lap_m", json_length(fabric->end_lap));
		json_put(row, "area_m2", json_number(fabric->area));
		json_put(row, "cuts", fabric_pieces(fabric));
		json_put(row, "rolls", json_count(fabric->rolls));
		json_put(row, "used_m", json_length(fabric->used));
		json_put(row, "joins", json_count(fabric->joins));
		json_put(row, "pins", json_count(fabric->pins));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

void json_liners(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "liners");

	for (int i = 0; i < takeoff->liner_count; i++) {
		const struct liner *liner = &takeoff->liners[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "bed", takeoff, liner->region);
		json_put(row, "length_m", json_length(liner->length));
		json_put(row, "height_m", json_length(liner->height));
		json_put(row, "area_m2", json_number(liner->area));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void json_edging_cuts(struct text *out, const struct edging *edging)
{
	struct json_rows rows = json_top_open(out, "edging_cuts");

	for (int i = 0; i < edging->cut_count; i++) {
		const struct cut *cut = &edging->cuts[i];
		cJSON *row = cJSON_CreateObject();

		json_put(row, "pieces", json_count(cut->blocks));
		json_put(row, "lengths_m", json_lengths(cut->pieces, cut->piece_count));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

void json_edging(struct text *out, const struct takeoff *takeoff)
{
	const struct edging *edging = &takeoff->edging;
	struct json_rows rows = json_top_open(out, "edging");

	for (int i = 0; i < edging->row_count; i++) {
		cJSON *row = cJSON_CreateObject();

		json_put(row, "length_m", json_length(edging->rows[i].length));
		json_put(row, "runs", json_count(edging->rows[i].runs));
		json_put(row, "spikes_each", json_count(edging->rows[i].spikes));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
	json_edging_cuts(out, edging);
}

void json_lawn(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "lawn");

	for (int i = 0; i < takeoff->lawn_count; i++) {
		const struct lawn *lawn = &takeoff->lawns[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "region", takeoff, lawn->region);
		json_put_text(row, "cover", lawn->cover == COVER_SEED ? "seed" : "turf");
		json_put(row, "area_m2", json_number(lawn->area));
		json_put(row, "seed_kg", json_number(lawn->seed));
		json_put(row, "topsoil_depth_m", json_length(lawn->topsoil_depth));
		json_put(row, "topsoil_m3", json_number(lawn->topsoil));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}
