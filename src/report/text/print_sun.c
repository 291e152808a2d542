#include "report/text/print_sun.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/drawing/scale.h"
#include "report/text/ruler.h"
#include "report/words/first_line.h"
#include "report/words/sun_words.h"

#include <math.h>

enum { APART_ACROSS = 10, APART_DOWN = 5, DAYS_A_TABLE = 7 };

/* ---- Days and classes ------------------------------------------------------------------------ */

static void print_days(const struct report *report, const struct sun_hours *sun)
{
	static const struct table_column columns[] = {
		{ "Day", COLUMN_LEFT }, { "Sunrise", COLUMN_RIGHT }, { "Sunset", COLUMN_RIGHT },
		{ "Day length", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, 4, 0);

	for (int i = 0; i < sun->day_count; i++) {
		const struct sun_date *day = &sun->days[i];
		char date[DATE_SIZE];

		date_write(day->date, date);
		TABLE_ROW(&table, date, sun_time_words(report, day->times.rise),
			sun_time_words(report, day->times.set),
			sun_length_words(report, &day->times));
		arena_clear(report->words);
	}
	print_blank(report);
	hand_table_print(&table, report->out);
}

static void print_classes(const struct report *report, const struct sun_hours *sun)
{
	static const struct table_column columns[] = {
		{ "Class", COLUMN_LEFT }, { "Hours a day", COLUMN_LEFT },
		{ "Cells", COLUMN_RIGHT }, { "Area", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, 4, 0);

	for (enum sun_class class = SUN_FULL; class <= SUN_SHADE; class++)
		TABLE_ROW(&table, word_label(&sun_class_words[class]),
			sun_class_hours(report, class),
			plain_count(report, sun->class_cells[class]), plain_area(report,
			survey_area(sun->class_cells[class], sun->scene.cell)));
	print_blank(report);
	hand_table_print(&table, report->out);
	arena_clear(report->words);
}

/* ---- The map --------------------------------------------------------------------------------- */

static char sign_of(const struct sun_hours *sun, struct place cell)
{
	return sun_has_cell(sun, cell) ? sun_sign(sun_mean(sun, cell)) : '#';
}

/* Columns left..end-1 of the plan. */
static void print_strip(const struct report *report, const struct sun_hours *sun, int left, int end)
{
	const struct survey *survey = &report->takeoff->survey;
	const struct ruler across = ruler_of(report, survey->columns, 1, APART_ACROSS);
	const struct ruler down = ruler_of(report, survey->rows, 1, APART_DOWN);
	int indent = ruler_columns(report);
	struct text line = TEXT_EMPTY;

	print_blank(report);
	ruler_across(report, &across, indent, left, end - 1);
	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		text_clear(&line);
		ruler_label(&line, &down, indent, y);
		for (int x = left; x < end; x++)
			text_add_repeat(&line, sign_of(sun, (struct place){ x, y }), 1);
		print_trimmed(report, &line);
	}
	text_fini(&line);
}

static void print_map(const struct report *report, const struct sun_hours *sun)
{
	int columns = report->takeoff->survey.columns;
	int width = PAGE_COLUMNS - ruler_columns(report);
	const char *north;

	for (int left = 0; left < columns && !stop_asked(); left += width)
		print_strip(report, sun, left, least(left + width, columns));
	north = north_words(report);
	print_note(report, "A cell's sign is its hours of sun a day, in the mean of these days, "
		"rounded down: + is 10 and more, # a fixture or a house. %s", *north ? north :
		"Where north is the plot does not say: up is taken for it.");
}

/* ---- Beds and lawns -------------------------------------------------------------------------- */

/* Of days first..end-1; the last table has means and classes. */
struct beds {
	struct table table; /* first */
	const struct report *report;
	const struct sun_hours *sun;
	int first, end, at;
};

static bool next_bed(struct table *table, const char *cells[])
{
	struct beds *beds = (struct beds *)table;
	const struct report *report = beds->report;
	const struct sun_region *region;
	int cell = 1;

	arena_clear(report->words);
	while (beds->at < beds->sun->region_count && beds->sun->regions[beds->at].cells == 0)
		beds->at++;
	if (beds->at == beds->sun->region_count || stop_asked()) {
		beds->at = 0;
		return false;
	}
	region = &beds->sun->regions[beds->at++];
	cells[0] = plain_named_region(report, region->region);
	for (int day = beds->first; day < beds->end; day++)
		cells[cell++] = sun_hours_words(report, region->hours[day]);
	if (beds->end == beds->sun->day_count) {
		cells[cell++] = sun_hours_words(report, region->mean);
		cells[cell] = word_label(&sun_class_words[region->class]);
	}
	return true;
}

static void print_beds_of(const struct report *report, const struct sun_hours *sun, int first)
{
	struct table_column columns[DAYS_A_TABLE + 3] = { { "Bed, lawn", COLUMN_WRAPS } };
	char dates[DAYS_A_TABLE][DATE_SIZE];
	struct beds beds = { .report = report, .sun = sun, .first = first,
		.end = least(first + DAYS_A_TABLE, sun->day_count) };
	int count = 1;

	for (int day = first; day < beds.end; day++) {
		date_write(sun->days[day].date, dates[day - first]);
		columns[count++] = (struct table_column){ dates[day - first] +
			sizeof "2026-" - 1, COLUMN_RIGHT };
	}
	if (beds.end == sun->day_count) {
		columns[count++] = (struct table_column){ "Mean", COLUMN_RIGHT };
		columns[count++] = (struct table_column){ "Class", COLUMN_LEFT };
	}
	beds.table = (struct table){ .columns = columns, .count = count, .next = next_bed };
	print_blank(report);
	table_print(&beds.table, report->out);
}

/* ---- Dials ----------------------------------------------------------------------------------- */

static void print_hour_lines(const struct report *report, const struct sun_hours *sun)
{
	static const struct table_column columns[] = {
		{ "Hours", COLUMN_LEFT }, { "Degrees from the noon line", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, 2, 0);

	for (int i = 0; i <= sun_dial_hours(sun->latitude); i++)
		TABLE_ROW(&table, i == 0 ? "12" : say(report, "%d and %d", 12 - i, i),
			plain_decimal(report, sun_dial_angle(sun->latitude, 12 + i), 1));
	print_blank(report);
	hand_table_print(&table, report->out);
	arena_clear(report->words);
}

static void print_dials(const struct report *report, const struct sun_hours *sun)
{
	const char *names = sun_dials_words(report);
	bool is_south = sun->latitude < 0;

	if (!names)
		return;
	print_note(report, "%s: hour lines of a level dial. Its noon line points to true %s; its "
		"gnomon stands over that and rises by %s degrees towards the pole. Morning hours "
		"are to the %s of the noon line as one looks along it. tan of the angle = sin of "
		"the latitude x tan of 15 degrees an hour.", names, is_south ? "south" : "north",
		plain_decimal(report, fabs(sun->latitude), 2), is_south ? "right" : "left");
	print_hour_lines(report, sun);
}

/* ---- The whole ------------------------------------------------------------------------------- */

static void print_manner(const struct report *report, const struct sun_hours *sun)
{
	const char *untold = sun_untold_words(report);

	print_note(report, "Latitude %s. Hours are solar time: at 12:00 the sun is highest. A "
		"clear sky and level ground are taken, fences and trees as solid. Shade is cast by "
		"fixtures, fences, raised beds, houses and shade that have a height in the "
		"plot.%s%s", sun_latitude_words(report, sun->latitude), untold ? " " : "",
		untold ? untold : "");
}

void report_sun(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, const struct date *days, int count)
{
	struct arena words = ARENA_EMPTY, arena = ARENA_EMPTY;
	const struct report report = report_of(out, &words, plot, takeoff, name);
	struct sun_hours sun;

	sink_print(out, "%s %d\n", FIRST_LINE_SUN, FIRST_LINE_VERSION);
	print_plan_head(&report);
	sun_begin(&sun, &arena, takeoff, days, count);
	while (sun.counted < count && sun_count(&sun)) {
	}
	if (sun.counted == count && sun_finish(&sun)) {
		print_manner(&report, &sun);
		print_days(&report, &sun);
		print_map(&report, &sun);
		print_classes(&report, &sun);
		print_note(&report, "%s", sun_source_words(&report));
		for (int first = 0; first < count && sun.region_count > 0; first += DAYS_A_TABLE)
			print_beds_of(&report, &sun, first);
		print_dials(&report, &sun);
	}
	arena_clear(&arena);
	arena_clear(&words);
}
