#include "report/mark.h"
#include "report/report.h"
#include "base/memory.h"

#include <cjson/cJSON.h>

/* Each row of an array is built, printed and freed by itself. Numbers are put in as raw text: cJSON's
 * own printing may choose an exponent or lose digits. */

enum { LENGTH_PLACES = 9, NUMBER_PLACES = 9 };

/* ---- Values ----------------------------------------------------------------------------------- */

static cJSON *raw(struct text *text)
{
	cJSON *item = cJSON_CreateRaw(text->bytes);

	text_fini(text);
	return item;
}

static cJSON *number(double value)
{
	struct text text = TEXT_EMPTY;

	text_add_number(&text, value, NUMBER_PLACES);
	return raw(&text);
}

static cJSON *count(int64_t value)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, value, 0);
	return raw(&text);
}

static cJSON *length(nm value)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, value, LENGTH_PLACES);
	return raw(&text);
}

static cJSON *place(struct place at)
{
	cJSON *array = cJSON_CreateArray();

	cJSON_AddItemToArray(array, count(at.x));
	cJSON_AddItemToArray(array, count(at.y));
	return array;
}

static cJSON *lengths(const nm *list, int how_many)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < how_many; i++)
		cJSON_AddItemToArray(array, length(list[i]));
	return array;
}

static cJSON *size(const struct size *block)
{
	return lengths((nm[]){ block->along, block->across, block->up }, 3);
}

static void put(cJSON *object, const char *key, cJSON *value)
{
	cJSON_AddItemToObject(object, key, value);
}

static void put_text(cJSON *object, const char *key, const char *value)
{
	put(object, key, cJSON_CreateString(value));
}

static void put_letter(cJSON *object, char letter)
{
	put_text(object, "letter", (char[]){ letter, '\0' });
}

static void put_region(cJSON *object, const char *key, const struct takeoff *takeoff, int region)
{
	char name[REGION_NAME_MOST];

	if (region == NO_REGION) {
		put(object, key, cJSON_CreateNull());
		return;
	}
	survey_region_name(&takeoff->survey.regions[region], name);
	put_text(object, key, name);
}

/* ---- Rows ------------------------------------------------------------------------------------- */

static void print(struct text *out, cJSON *value)
{
	char *bytes = cJSON_PrintUnformatted(value);

	text_add(out, bytes);
	cJSON_free(bytes);
	cJSON_Delete(value);
}

/* An object with at least one key whose further keys are printed behind it. */
static void print_open(struct text *out, cJSON *object)
{
	print(out, object);
	out->bytes[--out->length] = '\0';
}

/* An array printed row by row: `lead` stands before its key, `between` before each row and the end. */
struct rows {
	struct text *out;
	const char *between;
	int64_t printed;
};

static struct rows rows_open(struct text *out, const char *key, const char *lead,
	const char *between)
{
	text_print(out, ",%s\"%s\": [", lead, key);
	return (struct rows){ out, between, 0 };
}

static void rows_next(struct rows *rows)
{
	text_print(rows->out, "%s%s", rows->printed++ ? "," : "", rows->between);
}

static void rows_add(struct rows *rows, cJSON *row)
{
	rows_next(rows);
	print(rows->out, row);
}

static void rows_close(struct rows *rows)
{
	text_print(rows->out, "%s]", rows->printed ? rows->between : "");
}

/* The arrays of the whole takeoff: one row a line. */
static struct rows top_open(struct text *out, const char *key)
{
	return rows_open(out, key, "\n  ", "\n    ");
}

static void top_close(struct rows *rows)
{
	text_add(rows->out, rows->printed ? "\n  ]" : "]");
}

/* ---- Plot and survey --------------------------------------------------------------------------- */

static void print_plot(struct text *out, const struct plot *plot, const struct survey *survey)
{
	const struct value *title = block_value(&plot->details.head, HEAD_TITLE);
	cJSON *object = cJSON_CreateObject();

	put_text(object, "title", title->set ? title->as.text : "");
	put_text(object, "units", plot_units(plot) == UNITS_METRIC ? "metric" : "imperial");
	put(object, "cell_m", length(survey->cell));
	put(object, "columns", count(survey->columns));
	put(object, "rows", count(survey->rows));
	put(object, "width_m", length(survey->columns * survey->cell));
	put(object, "height_m", length(survey->rows * survey->cell));
	text_add(out, ",\n  \"plot\": ");
	print(out, object);
}

static void print_areas(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "areas");

	for (int i = 0; i < takeoff->area_count; i++) {
		const struct area_row *area = &takeoff->areas[i];
		cJSON *row = cJSON_CreateObject();

		put_text(row, "class", class_word(area->entry ? area->entry->class : CLASS_OPEN));
		put_letter(row, area->entry ? area->entry->letter : OPEN_GROUND);
		put_text(row, "name", area->entry ? area->entry->name : "Open ground");
		put(row, "cells", count(area->cells));
		put(row, "area_m2", number(area->area));
		rows_add(&rows, row);
	}
	top_close(&rows);
}

static void print_edges(struct text *out, const struct survey *survey)
{
	struct rows rows = top_open(out, "edges");

	for (int a = 0; a < CLASSES; a++) {
		for (int b = a; b < CLASSES; b++) {
			const char *words[] = { class_word((enum plot_class)a),
				class_word((enum plot_class)b) };
			cJSON *row;

			if (survey->edges[a][b] == 0)
				continue;
			row = cJSON_CreateObject();
			put(row, "between", cJSON_CreateStringArray(words, 2));
			put(row, "length_m", length(survey->edges[a][b] * survey->cell));
			rows_add(&rows, row);
		}
	}
	top_close(&rows);
}

static void print_regions(struct text *out, const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	struct rows rows = top_open(out, "regions");

	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];
		cJSON *row = cJSON_CreateObject(), *corners = cJSON_CreateObject();

		put_region(row, "id", takeoff, i);
		put_text(row, "class", class_word(region->entry->class));
		put_letter(row, region->entry->letter);
		put(row, "first_cell", place(region->first_cell));
		put(row, "cells", count(region->cells));
		put(row, "area_m2", number(survey_area(region->cells, survey->cell)));
		put(row, "perimeter_m", length(region->perimeter * survey->cell));
		put(row, "holes", count(region->holes));
		put(corners, "convex", count(region->convex));
		put(corners, "reflex", count(region->reflex));
		put(row, "corners", corners);
		rows_add(&rows, row);
	}
	top_close(&rows);
}

/* ---- Walls ------------------------------------------------------------------------------------ */

static void print_runs(struct text *out, const struct wall_course *course)
{
	struct rows rows = rows_open(out, "runs", " ", "");

	for (int i = 0; i < course->run_count; i++) {
		const struct wall_run *run = &course->runs[i];
		cJSON *row = cJSON_CreateObject();

		put(row, "loop", count(run->loop));
		put(row, "side", count(run->side));
		put(row, "from_m", length(run->from));
		put(row, "length_m", length(run->length));
		put(row, "pieces_m", lengths(run->pieces, run->piece_count));
		rows_add(&rows, row);
	}
	rows_close(&rows);
}

static void print_courses(struct text *out, const struct wall *wall)
{
	struct rows rows = rows_open(out, "courses", " ", "\n      ");

	for (int i = 1; i <= wall->courses; i++) {
		cJSON *course = cJSON_CreateObject();

		put(course, "course", count(i));
		rows_next(&rows);
		print_open(out, course);
		print_runs(out, i % 2 ? &wall->odd : &wall->even);
		text_add(out, "}");
	}
	rows_close(&rows);
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
	put(cap, "block_m", size(&wall->cap_block));
	print_open(out, cap);
	print_runs(out, &wall->cap);
	text_add(out, "}");
}

static void print_walls(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "walls");

	for (int i = 0; i < takeoff->wall_count; i++) {
		const struct wall *wall = &takeoff->walls[i];
		cJSON *row = cJSON_CreateObject();

		put_region(row, "bed", takeoff, wall->region);
		put(row, "block_m", size(&wall->block));
		put(row, "inner_area_m2", number(wall->inner_area));
		put(row, "whole_blocks", count(wall->whole_blocks));
		put(row, "cut_pieces", count(wall->cut_pieces));
		rows_next(&rows);
		print_open(out, row);
		print_courses(out, wall);
		print_cap(out, wall);
		text_add(out, "}");
	}
	top_close(&rows);
}

static void print_not_laid(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "walls_not_laid");

	for (int i = 0; i < takeoff->not_laid_count; i++) {
		cJSON *row = cJSON_CreateObject();

		put_region(row, "bed", takeoff, takeoff->not_laid[i].region);
		put(row, "about_blocks", count(takeoff->not_laid[i].about_blocks));
		rows_add(&rows, row);
	}
	top_close(&rows);
}

/* ---- Cutting, fills, items, snags ---------------------------------------------------------------- */

/* A row for each block that is cut up, so that the rows are as many as blocks_cut. */
static void print_cuts(struct text *out, const struct cutting *cutting)
{
	struct rows rows = rows_open(out, "cuts", " ", "");

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int64_t block = 0; block < cut->blocks; block++) {
			cJSON *row = cJSON_CreateObject();

			put(row, "pieces_m", lengths(cut->pieces, cut->piece_count));
			rows_add(&rows, row);
		}
	}
	rows_close(&rows);
}

static void print_cutting(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "cutting");

	for (int i = 0; i < takeoff->cutting_count; i++) {
		const struct cutting *cutting = &takeoff->cuttings[i];
		cJSON *row = cJSON_CreateObject();

		put_text(row, "use", cutting->use == USE_CAP ? "cap" : "wall");
		put(row, "block_m", size(&cutting->block));
		put(row, "blocks_whole", count(cutting->whole));
		put(row, "blocks_cut", count(cutting->cut_blocks));
		put(row, "blocks_bought", count(cutting->bought));
		put(row, "floor", count(cutting->floor));
		put(row, "breakage", count(cutting->breakage));
		rows_next(&rows);
		print_open(out, row);
		print_cuts(out, cutting);
		text_add(out, "}");
	}
	top_close(&rows);
}

static cJSON *parts(const struct fill *fill)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < fill->part_count; i++) {
		cJSON *part = cJSON_CreateObject();

		put_text(part, "name", fill->parts[i].name);
		put(part, "m3", number(fill->parts[i].volume));
		cJSON_AddItemToArray(array, part);
	}
	return array;
}

static void print_fills(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "fills");

	for (int i = 0; i < takeoff->fill_count; i++) {
		const struct fill *fill = &takeoff->fills[i];
		cJSON *row = cJSON_CreateObject();

		put_region(row, "bed", takeoff, fill->region);
		put(row, "soil_depth_m", length(fill->soil_depth));
		put(row, "soil_m3", number(fill->soil));
		put(row, "order_m3", number(fill->order));
		put(row, "parts", parts(fill));
		put(row, "mulch_m3", number(fill->mulch));
		rows_add(&rows, row);
	}
	top_close(&rows);
}

static void print_items(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "items");

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		cJSON *row = cJSON_CreateObject();

		put_text(row, "id", item->id);
		put_text(row, "section", section_word(item->section));
		put_text(row, "name", item->label);
		put_text(row, "unit", item_unit_word(item->unit));
		if (!size_is_none(&item->block))
			put(row, "block_m", size(&item->block));
		put(row, "laid", number(item->laid));
		put(row, "spare", number(item->spare));
		put(row, "order", number(item->order));
		rows_add(&rows, row);
	}
	top_close(&rows);
}

static void print_snags(struct text *out, const struct takeoff *takeoff)
{
	struct rows rows = top_open(out, "snags");

	for (int i = 0; i < takeoff->snag_count; i++) {
		const struct snag *snag = &takeoff->snags[i];
		cJSON *row = cJSON_CreateObject();

		put_text(row, "code", snag_rule(snag->code)->word);
		put_region(row, "region", takeoff, snag->region);
		put(row, "cell", place(snag->cell));
		if (snag->side >= 0) {
			put(row, "loop", count(snag->loop));
			put(row, "side", count(snag->side));
		}
		put_text(row, "text", snag->text);
		rows_add(&rows, row);
	}
	top_close(&rows);
}

/* ---- The whole -------------------------------------------------------------------------------- */

static void *json_memory(size_t bytes)
{
	return memory_new(bytes, 1);
}

void report_json(struct text *out, const struct plot *plot, const struct takeoff *takeoff)
{
	/* Running out of memory is then met in one place, as everywhere. */
	cJSON_InitHooks(&(cJSON_Hooks){ .malloc_fn = json_memory });
	text_print(out, "{\n  \"format\": \"%s\", \"version\": %d, \"complete\": %s", MARK_JSON,
		MARK_VERSION, takeoff->complete ? "true" : "false");
	print_plot(out, plot, &takeoff->survey);
	print_areas(out, takeoff);
	print_edges(out, &takeoff->survey);
	print_regions(out, takeoff);
	print_walls(out, takeoff);
	print_not_laid(out, takeoff);
	print_cutting(out, takeoff);
	print_fills(out, takeoff);
	print_items(out, takeoff);
	print_snags(out, takeoff);
	text_add(out, "\n}\n");
}
