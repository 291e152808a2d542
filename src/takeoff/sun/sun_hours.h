/* Hours of sun on a plan: for how long of a day the sun comes to the middle of each cell
 * (sun_scene.h), in steps of 5 minutes of solar time, each looked at in its middle, while the sun's
 * middle is above the horizon by geometry. Over the wall of a raised bed stands what comes to the
 * soil beside it (sun_soil.h). Clouds and hills are not reckoned with.
 *
 * A place is classed by the mean of its days: usually the 21st of seven months, from March to
 * September, south of the equator from September to March. Where a plan has full or part sun and
 * part shade: University of Nebraska Extension, as quoted, title and year not noted; the plot's
 * `allow` may set other bounds. */
#ifndef TAKEOFF_SUN_SUN_HOURS_H
#define TAKEOFF_SUN_SUN_HOURS_H

#include "survey/sun.h"
#include "takeoff/common/figure.h"
#include "takeoff/sun/sun_scene.h"
#include "takeoff/sun/sun_soil.h"

enum sun_class { SUN_FULL, SUN_PART, SUN_PART_SHADE, SUN_SHADE };
enum { SUN_CLASSES = SUN_SHADE + 1, SUN_DAYS_MOST = 366, SUN_USUAL_DAYS = 7,
	SUN_STEPS_AN_HOUR = 12 };

struct sun_date {
	struct date date;
	struct sun_times times; /* of rise and set as almanacs count them, in solar time */
	double length;          /* hours from rise to set */
};

/* A bed or lawn. */
struct sun_region {
	int region;
	int cells;      /* with a figure */
	double *hours;  /* by day: the mean of those cells */
	double mean;    /* over all days counted */
	unsigned int class; /* enum sun_class */
};

struct sun_hours {
	const struct takeoff *takeoff;
	struct shade_scene scene;
	struct shade *shade;
	struct sun_soil soil;
	double latitude, north;
	struct sun_date *days; /* in the order they are asked for */
	int day_count;
	int counted;           /* how many of them are, the first ones */
	uint16_t *lit;         /* of the last day counted, by cell: steps with sun */
	uint32_t *steps;       /* the same over all days counted */
	struct sun_region *regions; /* in reading order, also those whose cells have no figure */
	int region_count;
	int *rows;             /* by region of the survey: its index above, -1: it has none */
	int64_t class_cells[SUN_CLASSES]; /* after sun_finish */
	int untold;            /* houses whose height is not told */
};

/* Region, mean and class of a sun_region. */
extern const struct figure_table sun_region_table;
extern const struct word sun_class_words[SUN_CLASSES];

/* Whether the plot says at what latitude it lies: no hours are counted without. */
bool sun_has_site(const struct takeoff *takeoff);
/* The latitude, in degrees; there is one. */
double sun_latitude(const struct takeoff *takeoff);
/* The days that are usually asked for. */
void sun_usual_days(double latitude, struct date days[SUN_USUAL_DAYS]);

/* The day on which the sun is up longest. */
struct date sun_longest_day(double latitude);

/* Makes ready for days, 1 to SUN_DAYS_MOST; none is counted yet. There is a latitude. All lives in
 * the arena and points to the takeoff. */
void sun_begin(struct sun_hours *out, struct arena *arena, const struct takeoff *takeoff,
	const struct date *days, int count);
/* Counts the next day: lit has it until the one after it. False where it was stopped. */
bool sun_count(struct sun_hours *sun);
/* Means and classes, after the last day. False where it was stopped. */
bool sun_finish(struct sun_hours *sun);

/* Whether a cell has a figure; the mean of its days, in hours; its class. */
bool sun_has_cell(const struct sun_hours *sun, struct place cell);
double sun_mean(const struct sun_hours *sun, struct place cell);
/* The mean of a day, in hours, where so many steps of so many days have sun. */
double sun_steps_mean(uint32_t steps, int days);
enum sun_class sun_class_of(const struct takeoff *takeoff, double hours);
/* The least hours of a class; 0 for shade. */
double sun_class_from(const struct takeoff *takeoff, enum sun_class class);

#endif
