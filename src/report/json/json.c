#include "report/json/json.h"
#include "base/stop.h"
#include "prices/book_json.h"
#include "report/json/json_plot.h"
#include "report/json/json_rows.h"
#include "report/json/json_setout.h"
#include "report/json/json_snags.h"
#include "report/words/item_words.h"
#include "report/words/first_line.h"
#include "report/words/labour_words.h"
#include "report/words/work_words.h"

#include <string.h>

/* ---- Survey ---------------------------------------------------------------------------------- */

static void json_edges(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct json_rows rows = json_top_open(report->out, "edges");

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

static void json_regions(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct json_rows rows = json_top_open(report->out, "regions");

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct region *region = &survey->regions[i];
		cJSON *row = cJSON_CreateObject(), *corners = cJSON_CreateObject();

		json_put(row, "id", json_region(report->takeoff, i));
		json_put(row, "class", json_text(class_word(region->entry->class)));
		json_put(row, "letter", json_text((char[]){ region->entry->letter, '\0' }));
		if (survey_own_name(survey, i))
			json_put(row, "name", json_text(survey_own_name(survey, i)));
		json_put(row, "first_cell", json_place(region->first_cell));
		json_put(row, "cells", json_count(region->cells));
		json_put(row, "area_m2", json_number(survey_area(region->cells, survey->cell)));
		json_put(row, "perimeter_m", json_length(region->perimeter * survey->cell));
		json_put(row, "holes", json_count(region_holes(region)));
		json_put(corners, "convex", json_count(region->convex));
		json_put(corners, "reflex", json_count(region->reflex));
		json_put(row, "corners", corners);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- Walls ----------------------------------------------------------------------------------- */

static void json_runs(struct sink *out, const struct wall_course *course)
{
	json_after(out, NULL, wall_course_table.figures, course);
	sink_add(out, "}");
}

/* All courses, every other one the same, and the cap. */
static void json_courses(struct sink *out, const void *row)
{
	const struct wall *wall = row;
	struct json_rows rows = json_rows_open(out, "courses", " ", "\n      ");

	for (int i = 1; i <= wall->courses; i++) {
		json_rows_next(&rows);
		sink_print(out, "{\"course\":%d", i);
		json_runs(out, i % 2 ? &wall->odd : &wall->even);
	}
	json_rows_close(&rows);
	sink_add(out, ", \"cap\": ");
	if (!wall->has_cap) {
		sink_add(out, "null");
		return;
	}
	cJSON *cap = cJSON_CreateObject();

	json_put(cap, "block_m", json_size(&wall->cap_block));
	json_print_open(out, cap);
	json_runs(out, &wall->cap);
}

/* ---- Items, costs, work ---------------------------------------------------------------------- */

static cJSON *supplier_text(const struct report *report, const struct pack *pack)
{
	return json_text(pack->supplier == NO_SUPPLIER ? NULL :
		report->takeoff->book->suppliers[pack->supplier].name);
}

static void put_bought(cJSON *row, const struct report *report, const struct bought *bought)
{
	const struct pack *pack = bought->pack;

	json_put(row, "packs", json_number(bought->packs));
	json_put(row, "pack", json_text(pack_words(report, pack)));
	json_put(row, "unit_price", pack->price == NO_PRICE ? cJSON_CreateNull() :
		json_money(pack->price));
	json_put(row, "cost", pack->price == NO_PRICE ? cJSON_CreateNull() :
		json_money(bought->cost));
	json_put(row, "supplier", supplier_text(report, pack));
}

/* Packs of one kind stand in the row of the item too. */
static void put_purchase(cJSON *row, const struct report *report, const struct item *item)
{
	const struct purchase *purchase = item->purchase;
	cJSON *list = cJSON_CreateArray();

	if (purchase->is_priced && purchase->count == 1)
		put_bought(row, report, purchase->list);
	else if (purchase->is_priced)
		json_put(row, "cost", json_money(purchase->cost));
	if (purchase->is_own_price)
		json_put(row, "price_from", json_text("plot"));
	for (int i = 0; i < purchase->count; i++) {
		cJSON *bought = cJSON_CreateObject();

		put_bought(bought, report, &purchase->list[i]);
		cJSON_AddItemToArray(list, bought);
	}
	json_put(row, "purchase", list);
}

static void put_price(cJSON *row, const struct report *report, const struct item *item)
{
	const struct item_list *items = &report->takeoff->items;

	if (item->weight > 0)
		json_put(row, "weight_kg", json_number(item->weight));
	if (item->purchase)
		put_purchase(row, report, item);
	else if (item_purchase(items, item))
		json_put(row, "bought_with", json_text(item_id(report, &items->list[item->with])));
	if (*item_spec(report, item))
		json_put(row, "spec", json_text(item_spec(report, item)));
}

static cJSON *item_object(const struct report *report, const struct item *item)
{
	cJSON *row = cJSON_CreateObject();

	json_put(row, "id", json_text(item_id(report, item)));
	json_put(row, "section", json_text(section_words[item->section].key));
	json_put(row, "name", json_text(item_label(report, item)));
	json_put(row, "unit", json_text(item_unit_word(item_unit(item))));
	if (!size_is_none(&item->block))
		json_put(row, "block_m", json_size(&item->block));
	if (item->length > 0)
		json_put(row, "length_m", json_length(item->length));
	if (item->height > 0)
		json_put(row, "height_m", json_length(item->height));
	if (item->across > 0)
		json_put(row, "post_m", json_length(item->across));
	json_put(row, "laid", json_number(item->laid));
	json_put(row, "spare", json_number(item->spare));
	if (item->reused > 0)
		json_put(row, "reused", json_number(item->reused));
	json_put(row, "order", json_number(item->order));
	put_price(row, report, item);
	return row;
}

static void json_items(const struct report *report)
{
	const struct item_list *items = &report->takeoff->items;
	struct json_rows rows = json_top_open(report->out, "items");

	for (size_t i = 0; i < items->count; i++)
		json_rows_add(&rows, item_object(report, &items->list[i]));
	json_top_close(&rows);
}

static cJSON *unpriced(const struct report *report)
{
	const struct item_list *items = &report->takeoff->items;
	cJSON *rows = cJSON_CreateArray();

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];
		const struct purchase *purchase = item_purchase(items, item);
		cJSON *row;

		if (!purchase || purchase->is_priced)
			continue;
		row = cJSON_CreateObject();
		json_put(row, "id", json_text(item_id(report, item)));
		json_put(row, "name", json_text(item_label(report, item)));
		if (!size_is_none(&item->block))
			json_put(row, "block_m", json_size(&item->block));
		cJSON_AddItemToArray(rows, row);
	}
	return rows;
}

static void json_costs(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	cJSON *object;

	sink_add(report->out, ",\n  \"costs\": ");
	if (!takeoff->book) {
		sink_add(report->out, "null");
		return;
	}
	object = json_object(takeoff, &costs_table, &takeoff->costs);
	json_put(object, "unpriced", unpriced(report));
	json_print(report->out, object);
}

static cJSON *labour_rows(const struct planned_step *step)
{
	cJSON *rows = cJSON_CreateArray();

	for (int i = 0; i < step->labour_count; i++) {
		const struct labour *labour = &step->labour[i];
		const bool has_rate = labour->source != RATE_UNKNOWN;
		cJSON *row = cJSON_CreateObject();

		json_put(row, "kind", json_text(attribute_row(labour->kind)->keyword));
		json_put(row, "unit", json_text(labour_unit(labour->kind)));
		json_put(row, "quantity", json_number(labour->quantity));
		json_put(row, "hours", has_rate ? json_number(labour->hours) : cJSON_CreateNull());
		json_put(row, "rate_from", json_text(rate_source_word(labour->source)));
		cJSON_AddItemToArray(rows, row);
	}
	return rows;
}

static void json_work(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct json_rows rows = json_top_open(report->out, "work");

	for (int i = 0; i < takeoff->work.count; i++) {
		const struct planned_step *step = &takeoff->work.list[i];
		cJSON *row = cJSON_CreateObject(), *items = cJSON_CreateArray();

		json_put(row, "step", json_text(step_title(report, step->step)));
		json_put(row, "id", json_text(work_step_word(step->step)));
		for (int j = 0; j < step->item_count; j++)
			cJSON_AddItemToArray(items, json_text(item_id(report,
				&takeoff->items.list[step->items[j]])));
		json_put(row, "items", items);
		json_put(row, "barrows", json_count(step->barrow.loads));
		if (step->barrow.way > 0)
			json_put(row, "barrow_m", json_length(step->barrow.way));
		json_put(row, "hours",
			step->has_hours ? json_number(step->hours) : cJSON_CreateNull());
		json_put(row, "labour", labour_rows(step));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* What declared figures do not give, or not alone. */
static const struct {
	const char *key;
	void (*print)(const struct report *report);
	void (*more)(struct sink *out, const void *row);
} by_hand[] = {
	{ "edges", json_edges, NULL },
	{ "regions", json_regions, NULL },
	{ "walls", NULL, json_courses },
	{ "items", json_items, NULL },
	{ "costs", json_costs, NULL },
	{ "work", json_work, NULL },
	{ "snags", json_snags, NULL },
};

static void json_shown(const struct report *report, const struct shown *shown)
{
	void (*more)(struct sink *out, const void *row) = NULL;
	struct json_rows rows;
	const char *row;
	int count;

	for (size_t i = 0; i < sizeof by_hand / sizeof *by_hand; i++) {
		if (strcmp(by_hand[i].key, shown->key) != 0)
			continue;
		more = by_hand[i].more;
		if (by_hand[i].print) {
			by_hand[i].print(report);
			return;
		}
	}
	if (shown->is_optional && !shown_has_any(shown, report->takeoff))
		return;
	row = shown_rows(shown, report->takeoff, &count);
	if (shown->is_object) {
		sink_print(report->out, ",\n  \"%s\": ", shown->key);
		json_print(report->out, json_object(report->takeoff, shown->table, row));
		return;
	}
	rows = json_top_open(report->out, shown->key);
	for (int i = 0; i < count && !stop_asked(); i++, row += shown->table->row_size)
		json_rows_print(&rows, report->takeoff, shown->table, row, more);
	json_top_close(&rows);
}

void report_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = { .out = out, .words = &words, .plot = plot,
		.takeoff = takeoff, .units = plot_units(plot) };

	json_start();
	sink_print(out, "{\n  \"format\": \"%s\", \"version\": %d, \"complete\": %s",
		FIRST_LINE_JSON, FIRST_LINE_VERSION, takeoff->complete ? "true" : "false");
	json_plot(&report);
	for (int i = 0; i < takeoff_shown_count; i++) {
		json_shown(&report, &takeoff_shown[i]);
		arena_clear(&words);
	}
	json_setout(&report);
	sink_add(out, "\n}\n");
}
