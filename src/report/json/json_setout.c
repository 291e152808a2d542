#include "report/json/json_setout.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/json/json_rows.h"
#include "takeoff/setout/point_levels.h"

static cJSON *spot(struct spot at)
{
	return json_lengths((nm[]){ at.x, at.y }, 2);
}

/* ---- Points ---------------------------------------------------------------------------------- */

static void put_mark(cJSON *row, const struct takeoff *takeoff, const struct setout_point *point,
	const char *key)
{
	json_put(row, "fence", json_text(takeoff->fences.list[point->mark.fence].name));
	json_put(row, key, json_count(point->mark.index + 1));
}

/* The ground there, and the formation of each wall that turns there. */
static void put_levels(cJSON *row, const struct takeoff *takeoff, const struct surface *surface,
	const struct setout_point *point)
{
	struct point_levels levels;
	cJSON *formations;

	point_levels_find(&levels, point, surface, &takeoff->wall_levels);
	json_put(row, "ground_m", json_length(levels.ground));
	if (levels.wall_count == 0)
		return;
	formations = cJSON_CreateArray();
	for (int i = 0; i < levels.wall_count; i++) {
		cJSON *formation = cJSON_CreateObject();

		json_put(formation, "bed", json_region(takeoff, levels.walls[i]->region));
		json_put(formation, "formation_m", json_length(levels.walls[i]->formation));
		cJSON_AddItemToArray(formations, formation);
	}
	json_put(row, "formations", formations);
}

static cJSON *point_object(const struct takeoff *takeoff, const struct surface *surface,
	const struct setout_point *point)
{
	cJSON *row = cJSON_CreateObject(), *regions;

	json_put(row, "at_m", spot(point->at));
	if (surface_is_told(surface))
		put_levels(row, takeoff, surface, point);
	switch (point->kind) {
	case SETOUT_CORNER:
		json_put(row, "point", json_count(point->number));
		regions = cJSON_CreateArray();
		for (int i = 0; i < point->region_count; i++)
			cJSON_AddItemToArray(regions, json_region(takeoff, point->regions[i]));
		json_put(row, "regions", regions);
		break;
	case SETOUT_POST:
		put_mark(row, takeoff, point, "post");
		break;
	case SETOUT_GATE:
		put_mark(row, takeoff, point, "gate");
		json_put(row, "to_m", spot(point->to));
		break;
	}
	return row;
}

/* ---- Strings --------------------------------------------------------------------------------- */

static cJSON *guides_array(const struct takeoff *takeoff, const struct setout_string *string)
{
	cJSON *array = cJSON_CreateArray();

	for (int i = 0; i < least(string->guide_count, SETOUT_NAMED_MOST); i++) {
		const struct setout_guided *guided = &string->guides[i];
		cJSON *row = cJSON_CreateObject();

		if (guided->is_fence)
			json_put(row, "fence", json_text(
				takeoff->fences.list[guided->index].name));
		else
			json_put(row, "region", json_region(takeoff, guided->index));
		cJSON_AddItemToArray(array, row);
	}
	return array;
}

static void print_string(struct json_rows *rows, const struct takeoff *takeoff,
	const struct setout *setout, const struct setout_string *string)
{
	const struct surface surface = surface_of(&takeoff->plot);
	struct setout_walk walk = setout_along(setout, string);
	struct setout_point point;
	struct json_rows points;
	cJSON *row = cJSON_CreateObject();

	json_put(row, "is", json_text(string->is_upright ? "across" : "down"));
	json_put(row, "offset_m", json_length(string->at));
	json_put(row, "from_m", spot(string->from));
	json_put(row, "to_m", spot(string->to));
	json_put(row, "for", json_text(setout_use_words[string->use].key));
	json_put(row, "guides", guides_array(takeoff, string));
	json_put(row, "guided", json_count(string->guide_count));
	json_rows_next(rows);
	json_print_open(rows->out, row);
	points = json_rows_open(rows->out, "points", " ", "\n        ");
	while (!stop_asked() && setout_next(&walk, &point))
		json_rows_add(&points, point_object(takeoff, &surface, &point));
	json_rows_close(&points);
	sink_add(rows->out, "}");
}

/* ---- The frame ------------------------------------------------------------------------------- */

static void put_tie(cJSON *array, const struct takeoff *takeoff, const struct tie *tie)
{
	nm cell = takeoff->survey.cell;
	cJSON *row = cJSON_CreateObject();

	json_put(row, "at_m", spot((struct spot){ tie->at.x * cell, tie->at.y * cell }));
	json_put(row, "to", json_text(tie->name));
	json_put(row, "length_m", json_length(tie->length));
	cJSON_AddItemToArray(array, row);
}

/* Those of the datum first; none: no key. */
static void put_ties(cJSON *object, const struct takeoff *takeoff, const struct setout *setout)
{
	cJSON *ties;

	if (setout->datum_tie_count + setout->more_tie_count == 0)
		return;
	ties = cJSON_CreateArray();
	for (int i = 0; i < setout->datum_tie_count; i++)
		put_tie(ties, takeoff, setout->datum_ties[i]);
	for (int i = 0; i < setout->more_tie_count; i++)
		put_tie(ties, takeoff, setout->more_ties[i]);
	json_put(object, "ties", ties);
}

static void print_frame(const struct report *report, const struct setout *setout)
{
	cJSON *object = cJSON_CreateObject(), *ends = cJSON_CreateObject();

	for (int i = 0; i < SETOUT_SIDES; i++) {
		cJSON *end = cJSON_CreateObject();

		json_put(end, "offset_m", json_length(setout->ends[i].at));
		json_put(end, "is", json_text(setout->ends[i].is_stake ? "stake" : "board"));
		json_put(ends, setout_side_words[i].key, end);
	}
	json_put(object, "datum", json_text("top left"));
	put_ties(object, report->takeoff, setout);
	json_put(object, "base_m", json_length(setout->width));
	json_put(object, "diagonal_m", json_length(setout->diagonal));
	json_put(object, "square_m", json_lengths((nm[]){
		setout->square[setout->is_long_across ? 1 : 0],
		setout->square[setout->is_long_across ? 0 : 1], setout->square[2] }, 3));
	json_put(object, "ends", ends);
	json_put(object, "stakes", json_place((struct place){ setout->level_stakes,
		setout->upright_stakes }));
	json_print_open(report->out, object);
}

static cJSON *rectangle_object(const struct takeoff *takeoff,
	const struct setout_rectangle *rectangle)
{
	nm cell = takeoff->survey.cell;
	cJSON *row = cJSON_CreateObject(), *regions = cJSON_CreateArray();

	json_put(row, "size_m", spot((struct spot){ rectangle->columns * cell,
		rectangle->rows * cell }));
	json_put(row, "diagonal_m", json_length(rectangle->diagonal));
	json_put(row, "count", json_count(rectangle->count));
	for (int i = 0; i < least(rectangle->count, SETOUT_NAMED_MOST); i++)
		cJSON_AddItemToArray(regions, json_region(takeoff, rectangle->regions[i]));
	json_put(row, "regions", regions);
	return row;
}

void json_setout(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct arena arena = ARENA_EMPTY;
	struct setout setout;
	struct json_rows rows;

	setout_make(&setout, &arena, &takeoff->plot, &takeoff->survey, &takeoff->fences);
	sink_add(report->out, ",\n  \"setout\": ");
	print_frame(report, &setout);
	rows = json_rows_open(report->out, "strings", "\n    ", "\n      ");
	for (int i = 0; i < setout.string_count && !stop_asked(); i++)
		print_string(&rows, takeoff, &setout, &setout.strings[i]);
	json_rows_close(&rows);
	rows = json_rows_open(report->out, "rectangles", "\n    ", "\n      ");
	for (int i = 0; i < setout.rectangle_count && !stop_asked(); i++)
		json_rows_add(&rows, rectangle_object(takeoff, &setout.rectangles[i]));
	json_rows_close(&rows);
	sink_add(report->out, " }");
	arena_clear(&arena);
}
