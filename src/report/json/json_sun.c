#include "report/json/json_sun.h"
#include "base/stop.h"
#include "prices/book_json.h"
#include "report/json/json_plot.h"
#include "report/json/json_rows.h"
#include "report/words/first_line.h"
#include "report/words/sun_words.h"

/* ---- A value for each cell ------------------------------------------------------------------- */

/* Prints the value of a cell that has a figure. */
typedef void cell_print(struct sink *out, const struct sun_hours *sun, struct place cell);

static void print_hours(struct sink *out, double hours)
{
	json_print(out, json_number(hours));
}

static void print_day_hours(struct sink *out, const struct sun_hours *sun, struct place cell)
{
	print_hours(out, (double)sun->lit[(size_t)cell.y * (size_t)sun->scene.columns +
		(size_t)cell.x] / SUN_STEPS_AN_HOUR);
}

static void print_mean(struct sink *out, const struct sun_hours *sun, struct place cell)
{
	print_hours(out, sun_mean(sun, cell));
}

static void print_class(struct sink *out, const struct sun_hours *sun, struct place cell)
{
	sink_print(out, "\"%s\"",
		sun_class_words[sun_class_of(sun->takeoff, sun_mean(sun, cell))].key);
}

/* An array of rows of cells, one row a line. */
static void print_cells(struct sink *out, const struct sun_hours *sun, const char *between,
	cell_print *print)
{
	for (int y = 0; y < sun->scene.rows && !stop_asked(); y++) {
		sink_print(out, "%s%s[", y > 0 ? "," : "[", between);
		for (int x = 0; x < sun->scene.columns; x++) {
			struct place cell = { x, y };

			sink_add(out, x > 0 ? "," : "");
			if (sun_has_cell(sun, cell))
				print(out, sun, cell);
			else
				sink_add(out, "null");
		}
		sink_add(out, "]");
	}
	sink_print(out, "%s]", between);
}

/* ---- Parts ----------------------------------------------------------------------------------- */

static bool print_days(struct sink *out, struct sun_hours *sun)
{
	struct json_rows rows = json_top_open(out, "days");

	while (sun->counted < sun->day_count && sun_count(sun)) {
		const struct sun_date *day = &sun->days[sun->counted - 1];
		cJSON *row = cJSON_CreateObject();
		char date[DATE_SIZE];

		date_write(day->date, date);
		json_put(row, "date", json_text(date));
		json_put(row, "rise_h", json_number(day->times.rise));
		json_put(row, "set_h", json_number(day->times.set));
		json_put(row, "day_length_h", json_number(day->length));
		json_rows_next(&rows);
		json_print_open(out, row);
		sink_add(out, ",\n      \"hours\": ");
		print_cells(out, sun, "\n        ", print_day_hours);
		sink_add(out, "}");
	}
	json_top_close(&rows);
	return sun->counted == sun->day_count;
}

static void print_classes(struct sink *out, const struct sun_hours *sun)
{
	struct json_rows rows = json_top_open(out, "classes");

	for (int class = SUN_FULL; class < SUN_CLASSES; class++) {
		cJSON *row = cJSON_CreateObject();

		json_put(row, "class", json_text(sun_class_words[class].key));
		json_put(row, "from_h", json_number(sun_class_from(sun->takeoff,
			(enum sun_class)class)));
		json_put(row, "cells", json_count(sun->class_cells[class]));
		json_put(row, "area_m2", json_number(survey_area(sun->class_cells[class],
			sun->scene.cell)));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void print_regions(struct sink *out, const struct sun_hours *sun)
{
	struct json_rows rows = json_top_open(out, "regions");

	for (int i = 0; i < sun->region_count && !stop_asked(); i++) {
		const struct sun_region *region = &sun->regions[i];
		cJSON *row, *hours;

		if (row_is_left_out(&sun_region_table, region))
			continue;
		row = json_object(sun->takeoff, &sun_region_table, region);
		hours = cJSON_CreateArray();
		for (int day = 0; day < sun->day_count; day++)
			cJSON_AddItemToArray(hours, json_number(region->hours[day]));
		json_put(row, "hours", hours);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

static void print_dials(struct sink *out, const struct sun_hours *sun)
{
	const struct survey *survey = &sun->takeoff->survey;
	struct json_rows rows = json_top_open(out, "dials");
	int most = sun_dial_hours(sun->latitude);

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		cJSON *row, *lines;

		if (!sun_is_dial(sun->takeoff, i))
			continue;
		row = cJSON_CreateObject();
		lines = cJSON_CreateArray();
		for (int hour = 12 - most; hour <= 12 + most; hour++) {
			cJSON *line = cJSON_CreateObject();

			json_put(line, "hour", json_count(hour));
			json_put(line, "angle_deg",
				json_number(sun_dial_angle(sun->latitude, hour)));
			cJSON_AddItemToArray(lines, line);
		}
		json_put(row, "region", json_region(sun->takeoff, i));
		json_put(row, "hour_lines", lines);
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- The whole ------------------------------------------------------------------------------- */

void report_sun_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const struct date *days, int count)
{
	struct arena words = ARENA_EMPTY, arena = ARENA_EMPTY;
	const struct report report = { .out = out, .words = &words, .plot = plot,
		.takeoff = takeoff, .units = plot_units(plot) };
	struct sun_hours sun;

	json_start();
	sun_begin(&sun, &arena, takeoff, days, count);
	sink_print(out, "{\n  \"format\": \"%s\", \"version\": %d", FIRST_LINE_SUN_JSON,
		FIRST_LINE_VERSION);
	json_plot(&report);
	sink_add(out, ",\n  \"latitude_deg\": ");
	json_print(out, json_number(sun.latitude));
	sink_add(out, ",\n  \"north_deg\": ");
	json_print(out, json_number(sun.north));
	if (print_days(out, &sun) && sun_finish(&sun)) {
		sink_add(out, ",\n  \"mean_h\": ");
		print_cells(out, &sun, "\n    ", print_mean);
		sink_add(out, ",\n  \"class\": ");
		print_cells(out, &sun, "\n    ", print_class);
		print_classes(out, &sun);
		print_regions(out, &sun);
		print_dials(out, &sun);
		sink_print(out, ",\n  \"houses_without_height\": %d", sun.untold);
	}
	sink_add(out, "\n}\n");
	arena_clear(&arena);
	arena_clear(&words);
}
