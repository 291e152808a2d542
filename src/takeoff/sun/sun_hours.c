#include "takeoff/sun/sun_hours.h"
#include "base/stop.h"

#include <assert.h>
#include <string.h>

/* The days stand for any year: from one to another the sun differs by less than half a degree. */
enum { USUAL_YEAR = 2026, USUAL_DAY = 21, MARCH = 3, JUNE = 6, SEPTEMBER = 9,
	DECEMBER = 12 };
enum { STEPS_A_DAY = 24 * SUN_STEPS_AN_HOUR, NO_ROW = -1 };

bool sun_has_site(const struct takeoff *takeoff)
{
	return block_value(&takeoff->plot.details.head, HEAD_SITE)->set;
}

double sun_latitude(const struct takeoff *takeoff)
{
	return (double)block_number(&takeoff->plot.details.head, HEAD_SITE) / MILLION;
}

void sun_usual_days(double latitude, struct date days[SUN_USUAL_DAYS])
{
	int first = latitude < 0 ? SEPTEMBER : MARCH;

	for (int i = 0; i < SUN_USUAL_DAYS; i++) {
		int month = first + i;

		days[i] = (struct date){ USUAL_YEAR + (month > MONTHS),
			month > MONTHS ? month - MONTHS : month, USUAL_DAY };
	}
}

struct date sun_longest_day(double latitude)
{
	return (struct date){ USUAL_YEAR, latitude < 0 ? DECEMBER : JUNE, USUAL_DAY };
}

static void regions_begin(struct sun_hours *sun, struct arena *arena)
{
	const struct survey *survey = &sun->takeoff->survey;
	size_t capacity = 0;

	sun->rows = arena_new(arena, (size_t)survey->region_count, sizeof *sun->rows);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		enum plot_class class = survey->regions[i].entry->class;

		sun->rows[i] = NO_ROW;
		if (class != CLASS_BED && class != CLASS_LAWN)
			continue;
		sun->rows[i] = sun->region_count;
		sun->regions = arena_grow(arena, sun->regions, (size_t)sun->region_count,
			&capacity, sizeof *sun->regions);
		sun->regions[sun->region_count++] = (struct sun_region){ .region = i,
			.hours = arena_new(arena, (size_t)sun->day_count, sizeof(double)) };
	}
}

void sun_begin(struct sun_hours *out, struct arena *arena, const struct takeoff *takeoff,
	const struct date *days, int count)
{
	const struct obstacles *houses = &takeoff->plot.details.around.houses;
	size_t cells = ground_count(&takeoff->plot.ground);

	*out = (struct sun_hours){ .takeoff = takeoff, .day_count = count,
		.latitude = sun_latitude(takeoff), .north = (double)block_number(
			&takeoff->plot.details.head, HEAD_NORTH) / MILLION,
		.days = arena_new(arena, (size_t)count, sizeof *out->days),
		.lit = arena_new(arena, cells, sizeof *out->lit),
		.steps = arena_new(arena, cells, sizeof *out->steps) };
	for (int i = 0; i < count; i++) {
		struct sun_day day = sun_day_of(out->latitude, days[i]);
		struct sun_times times = sun_times(&day, SUN_SET_HEIGHT);

		out->days[i] = (struct sun_date){ days[i], times, times.set - times.rise };
	}
	for (size_t i = 0; i < houses->count; i++)
		out->untold += houses->items[i].height == 0;
	sun_scene_make(&out->scene, arena, takeoff);
	if (!stop_asked())
		out->shade = shade_new(arena, &out->scene);
	sun_soil_find(&out->soil, arena, &takeoff->survey, &out->scene);
	regions_begin(out, arena);
}

/* ---- Classes --------------------------------------------------------------------------------- */

double sun_class_from(const struct takeoff *takeoff, enum sun_class class)
{
	static const enum attribute bounds[] = { ALLOW_SUN_FULL, ALLOW_SUN_PART, ALLOW_SUN_LEAST };

	return class == SUN_SHADE ? 0 : (double)block_number(takeoff->allow, bounds[class]) /
		MILLION;
}

/* From how many hours on each class is, the last one from 0. */
static void bounds_of(const struct takeoff *takeoff, double from[SUN_CLASSES])
{
	for (int i = 0; i < SUN_CLASSES; i++)
		from[i] = sun_class_from(takeoff, (enum sun_class)i);
}

static enum sun_class class_by(const double from[SUN_CLASSES], double hours)
{
	enum sun_class class = SUN_FULL;

	while (hours < from[class])
		class++;
	return class;
}

enum sun_class sun_class_of(const struct takeoff *takeoff, double hours)
{
	double from[SUN_CLASSES];

	bounds_of(takeoff, from);
	return class_by(from, hours);
}

/* ---- Counting -------------------------------------------------------------------------------- */

static int rays_of(const struct sun_hours *sun, struct date date, struct ray rays[STEPS_A_DAY])
{
	const struct sun_day day = sun_day_of(sun->latitude, date);
	int count = 0;

	for (int i = 0; i < STEPS_A_DAY; i++) {
		struct sun_place place = sun_place(&day, (i + 0.5) / SUN_STEPS_AN_HOUR);

		if (place.height > 0)
			rays[count++] = ray_from(place.height, place.azimuth, sun->north);
	}
	return count;
}

static void row_sum(struct sun_hours *sun, int y, int day)
{
	const struct survey *survey = &sun->takeoff->survey;
	size_t first = (size_t)y * (size_t)survey->columns;

	for (size_t i = first; i < first + (size_t)survey->columns; i++)
		sun->steps[i] += sun->lit[i];
	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];
		int row = run->region == NO_REGION ? NO_ROW : sun->rows[run->region];
		int64_t steps = 0;
		int cells = 0;

		if (row == NO_ROW)
			continue;
		for (size_t at = first + (size_t)run->left; at < first + (size_t)run->right; at++) {
			bool has_figure = sun->scene.levels[at] != SHADE_NO_LEVEL;

			steps += has_figure ? sun->lit[at] : 0;
			cells += has_figure;
		}
		sun->regions[row].hours[day] += (double)steps;
		sun->regions[row].cells += day == 0 ? cells : 0;
	}
}

bool sun_count(struct sun_hours *sun)
{
	const struct survey *survey = &sun->takeoff->survey;
	struct ray rays[STEPS_A_DAY];
	int day = sun->counted, count = rays_of(sun, sun->days[day].date, rays);

	if (stop_asked())
		return false;
	shade_count(sun->shade, rays, count, sun->lit);
	sun_soil_take(&sun->soil, sun->lit);
	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		row_sum(sun, y, day);
	sun->counted++;
	return !stop_asked();
}

static void region_finish(struct sun_region *region, const struct sun_hours *sun)
{
	double all = 0;

	for (int day = 0; day < sun->counted && region->cells > 0; day++) {
		region->hours[day] /= (double)region->cells * SUN_STEPS_AN_HOUR;
		all += region->hours[day];
	}
	region->mean = all / sun->counted;
	region->class = sun_class_of(sun->takeoff, region->mean);
}

static void cells_class(struct sun_hours *sun)
{
	double from[SUN_CLASSES];

	bounds_of(sun->takeoff, from);
	for (int y = 0; y < sun->scene.rows && !stop_asked(); y++) {
		for (int x = 0; x < sun->scene.columns; x++) {
			struct place cell = { x, y };

			if (sun_has_cell(sun, cell))
				sun->class_cells[class_by(from, sun_mean(sun, cell))]++;
		}
	}
}

bool sun_finish(struct sun_hours *sun)
{
	for (int i = 0; i < sun->region_count && !stop_asked(); i++)
		region_finish(&sun->regions[i], sun);
	cells_class(sun);
	return !stop_asked();
}

/* ---- Cells ----------------------------------------------------------------------------------- */

static size_t index_of(const struct sun_hours *sun, struct place cell)
{
	return (size_t)cell.y * (size_t)sun->scene.columns + (size_t)cell.x;
}

bool sun_has_cell(const struct sun_hours *sun, struct place cell)
{
	return sun->scene.levels[index_of(sun, cell)] != SHADE_NO_LEVEL;
}

double sun_steps_mean(uint32_t steps, int days)
{
	return steps / ((double)days * SUN_STEPS_AN_HOUR);
}

double sun_mean(const struct sun_hours *sun, struct place cell)
{
	return sun_steps_mean(sun->steps[index_of(sun, cell)], sun->counted);
}

const struct word sun_class_words[SUN_CLASSES] = {
	[SUN_FULL] = { .key = "full-sun", .label = "full sun", .heading = "full sun" },
	[SUN_PART] = { .key = "part-sun", .label = "part sun", .heading = "part sun" },
	[SUN_PART_SHADE] = { .key = "part-shade", .label = "part shade", .heading = "part shade" },
	[SUN_SHADE] = { .key = "shade", .label = "shade", .heading = "shade" },
};
static const struct figure figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, sun_region, region), .flags = PANEL_TITLE | ROW_KEY },
	{ "cells", NULL, NULL, FIELD(COUNT, sun_region, cells), .flags = ROW_NEEDED },
	{ "mean_h", NULL, "Hours a day", FIELD(NUMBER, sun_region, mean) },
	{ "class", NULL, "Class", FIELD(WORD, sun_region, class), .words = sun_class_words },
};
const struct figure_table sun_region_table = FIGURE_TABLE(sun_region, figures);
