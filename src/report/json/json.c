#include "report/json/json.h"
#include "report/json/json_costs.h"
#include "report/json/json_fence.h"
#include "report/json/json_arrays.h"
#include "report/json/json_value.h"
#include "report/words/mark.h"
#include "takeoff/ground/fill.h"

/* ---- Plot and survey --------------------------------------------------------------------------- */

static void print_plot(struct text *out, const struct plot *plot, const struct survey *survey)
{
	const struct value *title = block_value(&plot->details.head, HEAD_TITLE);
	cJSON *object = cJSON_CreateObject();

	json_put_text(object, "title", title->set ? title->as.text : "");
	json_put_text(object, "units", plot_units(plot) == UNITS_METRIC ? "metric" : "imperial");
	json_put(object, "cell_m", json_length(survey->cell));
	json_put(object, "columns", json_count(survey->columns));
	json_put(object, "rows", json_count(survey->rows));
	json_put(object, "width_m", json_length(survey->columns * survey->cell));
	json_put(object, "height_m", json_length(survey->rows * survey->cell));
	text_add(out, ",\n  \"plot\": ");
	json_print(out, object);
}

static void print_areas(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "areas");

	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *area = &takeoff->areas[i];
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "class",
			class_word(area->entry ? area->entry->class : CLASS_OPEN));
		json_put_letter(row, area->entry ? area->entry->letter : OPEN_GROUND);
		json_put_text(row, "name", area->entry ? area->entry->name : "Open ground");
		json_put(row, "cells", json_count(area->cells));
		json_put(row, "area_m2", json_number(area->area));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void print_edges(struct text *out, const struct survey *survey)
{
	struct json_rows rows = json_top_open(out, "edges");

	for (int a = 0; a < CLASSES; a++) {
		for (int b = a; b < CLASSES; b++) {
			const char *words[] = { class_word((enum plot_class)a),
				class_word((enum plot_class)b) };
			cJSON *row;

			if (survey->edges[a][b] == 0)
				continue;
			row = cJSON_CreateObject();
			json_put(row, "between", cJSON_CreateStringArray(words, 2));
			json_put(row, "length_m", json_length(survey->edges[a][b] * survey->cell));
			json_rows_add(&rows, row);
		}
	}
	json_top_close(&rows);
}

static void print_regions(struct text *out, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	struct json_rows rows = json_top_open(out, "regions");

	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];
		cJSON *row = cJSON_CreateObject(), *corners = cJSON_CreateObject();

		json_put_region(row, "id", takeoff, i);
		json_put_text(row, "class", class_word(region->entry->class));
		json_put_letter(row, region->entry->letter);
		json_put(row, "first_cell", json_place(region->first_cell));
		json_put(row, "cells", json_count(region->cells));
		json_put(row, "area_m2", json_number(survey_area(region->cells, survey->cell)));
		json_put(row, "perimeter_m", json_length(region->perimeter * survey->cell));
		json_put(row, "holes", json_count(region->holes));
		json_put(corners, "convex", json_count(region->convex));
		json_put(corners, "reflex", json_count(region->reflex));
		json_put(row, "corners", corners);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- Walls ------------------------------------------------------------------------------------ */

static void print_runs(struct text *out, const struct wall_course *course)
{
	struct json_rows rows = json_rows_open(out, "runs", " ", "");

	for (int i = 0; i < course->run_count; i++) {
		const struct wall_run *run = &course->runs[i];
		cJSON *row = cJSON_CreateObject();

		json_put(row, "loop", json_count(run->loop));
		json_put(row, "side", json_count(run->side));
		json_put(row, "from_m", json_length(run->from));
		json_put(row, "length_m", json_length(run->length));
		json_put(row, "pieces_m", json_lengths(run->pieces, run->piece_count));
		json_rows_add(&rows, row);
	}
	json_rows_close(&rows);
}

static void print_courses(struct text *out, const struct wall *wall)
{
	struct json_rows rows = json_rows_open(out, "courses", " ", "\n      ");

	for (int i = 1; i <= wall->courses; i++) {
		cJSON *course = cJSON_CreateObject();

		json_put(course, "course", json_count(i));
		json_rows_next(&rows);
		json_print_open(out, course);
		print_runs(out, i % 2 ? &wall->odd : &wall->even);
		text_add(out, "}");
	}
	json_rows_close(&rows);
}

static void print_cap(struct text *out, const struct wall *wall)
{
	cJSON *cap;

	text_add(out, ", \"cap\": ");
	if (!wall->has_cap) {
		text_add(out, "null");
		return;
	}
	cap = cJSON_CreateObject();
	json_put(cap, "block_m", json_size(&wall->cap_block));
	json_print_open(out, cap);
	print_runs(out, &wall->cap);
	text_add(out, "}");
}

static void print_walls(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "walls");

	for (int i = 0; i < takeoff->wall_count; i++) {
		const struct wall *wall = &takeoff->walls[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "bed", takeoff, wall->region);
		json_put(row, "block_m", json_size(&wall->block));
		json_put(row, "inner_area_m2", json_number(wall->inner_area));
		json_put(row, "whole_blocks", json_count(wall->whole_blocks));
		json_put(row, "cut_pieces", json_count(wall->cut_pieces));
		json_rows_next(&rows);
		json_print_open(out, row);
		print_courses(out, wall);
		print_cap(out, wall);
		text_add(out, "}");
	}
	json_top_close(&rows);
}

static void print_not_laid(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "walls_not_laid");

	for (int i = 0; i < takeoff->not_laid_count; i++) {
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "bed", takeoff, takeoff->not_laid[i].region);
		json_put(row, "about_blocks", json_count(takeoff->not_laid[i].about_blocks));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- Cutting, fills, items, snags ---------------------------------------------------------------- */

/* A row for each block that is cut up, so that the rows are as many as blocks_cut. */
static void print_cuts(struct text *out, const struct cutting *cutting)
{
	struct json_rows rows = json_rows_open(out, "cuts", " ", "");

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int64_t block = 0; block < cut->blocks; block++) {
			cJSON *row = cJSON_CreateObject();

			json_put(row, "pieces_m", json_lengths(cut->pieces, cut->piece_count));
			json_rows_add(&rows, row);
		}
	}
	json_rows_close(&rows);
}

static void print_cutting(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "cutting");

	for (int i = 0; i < takeoff->cutting_count; i++) {
		const struct cutting *cutting = &takeoff->cuttings[i];
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "use", cutting->use == USE_CAP ? "cap" : "wall");
		json_put(row, "block_m", json_size(&cutting->block));
		json_put(row, "blocks_whole", json_count(cutting->whole));
		json_put(row, "blocks_cut", json_count(cutting->cut_blocks));
		json_put(row, "blocks_bought", json_count(cutting->bought));
		json_put(row, "floor", json_count(cutting->floor));
		json_put(row, "breakage", json_count(cutting->breakage));
		json_rows_next(&rows);
		json_print_open(out, row);
		print_cuts(out, cutting);
		text_add(out, "}");
	}
	json_top_close(&rows);
}

static cJSON *parts(const struct takeoff *takeoff, const struct fill *fill)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < fill->part_count; i++) {
		double volume = fill->parts[i].volume;
		double reused = fill_reused(takeoff, &fill->parts[i]);
		cJSON *part = cJSON_CreateObject();

		json_put_text(part, "name", fill->parts[i].name);
		json_put(part, "m3", json_number(volume));
		json_put(part, "reused_m3", json_number(reused));
		json_put(part, "buy_m3", json_number(volume - reused));
		cJSON_AddItemToArray(array, part);
	}
	return array;
}

static void print_fills(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "fills");

	for (int i = 0; i < takeoff->fill_count; i++) {
		const struct fill *fill = &takeoff->fills[i];
		cJSON *row = cJSON_CreateObject();

		json_put_region(row, "bed", takeoff, fill->region);
		json_put(row, "soil_depth_m", json_length(fill->soil_depth));
		json_put(row, "soil_m3", json_number(fill->soil));
		json_put(row, "order_m3", json_number(fill->order));
		json_put(row, "parts", parts(takeoff, fill));
		json_put(row, "mulch_m3", json_number(fill->mulch));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void print_items(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "items");

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "id", item->id);
		json_put_text(row, "section", section_word(item->section));
		json_put_text(row, "name", item->label);
		json_put_text(row, "unit", item_unit_word(item->unit));
		if (!size_is_none(&item->block))
			json_put(row, "block_m", json_size(&item->block));
		if (item->length > 0)
			json_put(row, "length_m", json_length(item->length));
		json_put(row, "laid", json_number(item->laid));
		json_put(row, "spare", json_number(item->spare));
		if (item->reused > 0)
			json_put(row, "reused", json_number(item->reused));
		json_put(row, "order", json_number(item->order));
		json_put_price(row, takeoff, item);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void print_snags(struct text *out, const struct takeoff *takeoff)
{
	struct json_rows rows = json_top_open(out, "snags");

	for (int i = 0; i < takeoff->snag_count; i++) {
		const struct snag *snag = &takeoff->snags[i];
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "code", snag_rule(snag->code)->word);
		json_put_region(row, "region", takeoff, snag->region);
		json_put(row, "cell", json_place(snag->cell));
		if (snag->side >= 0) {
			json_put(row, "loop", json_count(snag->loop));
			json_put(row, "side", json_count(snag->side));
		}
		json_put_text(row, "text", snag->text);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- The whole -------------------------------------------------------------------------------- */

void report_json(struct text *out, const struct plot *plot, const struct takeoff *takeoff)
{
	json_start();
	text_print(out, "{\n  \"format\": \"%s\", \"version\": %d, \"complete\": %s", MARK_JSON,
		MARK_VERSION, takeoff->complete ? "true" : "false");
	print_plot(out, plot, &takeoff->survey);
	print_areas(out, takeoff);
	print_edges(out, &takeoff->survey);
	print_regions(out, takeoff);
	print_walls(out, takeoff);
	print_not_laid(out, takeoff);
	print_cutting(out, takeoff);
	json_dig(out, takeoff);
	print_fills(out, takeoff);
	json_fence(out, takeoff);
	json_stone(out, takeoff);
	json_stone_orders(out, takeoff);
	json_fabric(out, takeoff);
	json_liners(out, takeoff);
	json_edging(out, takeoff);
	json_lawn(out, takeoff);
	print_items(out, takeoff);
	json_costs(out, takeoff);
	json_work(out, takeoff);
	print_snags(out, takeoff);
	text_add(out, "\n}\n");
}
