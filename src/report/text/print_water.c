#include "report/text/print.h"
#include "report/words/water_words.h"
#include "base/stop.h"

/* More of a bed's lines than these, those that lie evenly being one, are not listed. */
enum { LISTED_MOST = 12 };
/* Of more even lines than these not each is told where it lies. */
enum { PLACES_MOST = 3 };

static void print_supply(const struct report *report, const struct watering *watering)
{
	print_lines(report, 0, 0, "Supply: %s, %s. One zone takes at most %s of it.",
		word_flow(report, watering->supply), watering->is_measured ? "as measured" :
		"ASSUMED until it is measured", word_flow(report, watering->most));
	if (!watering->is_measured)
		print_lines(report, 0, 0, "Measure it: hold a bucket under the tap, with the taps "
			"in the house shut. %s times 3,600, over the seconds it takes to fill, is "
			"the supply in %s/h. Put that in the plot before parts are bought.",
			report->units == UNITS_METRIC ? "Its litres" : "Its gallons",
			show_water_unit(report->units));
}

/* ---- Lines ----------------------------------------------------------------------------------- */

static bool is_same(const struct drip_line *a, const struct drip_line *b)
{
	return a->chord.from == b->chord.from && a->chord.to == b->chord.to &&
		a->is_added == b->is_added;
}

/* How many, the first of them and those after it, are as long, begin alike and lie evenly: to the
 * nanometre that spreading them rounds. */
static int even_count(const struct drip_line *lines, int count)
{
	int even = 1;

	for (; even < count && is_same(&lines[0], &lines[even]); even++) {
		nm more = lines[even].across - lines[even - 1].across -
			(lines[1].across - lines[0].across);

		if (more < -1 || more > 1)
			break;
	}
	return even;
}

/* Where lines lie that are even: "12 in and 2 ft", "6 in, then each 1 ft on to 15 ft 6 in". */
static const char *places_words(const struct report *report, const struct drip_line *lines,
	int count)
{
	struct text words = TEXT_EMPTY;

	if (count > PLACES_MOST)
		return say(report, "%s, then each %s on to %s",
			word_length(report, lines[0].across),
			word_length(report, lines[1].across - lines[0].across),
			word_length(report, lines[count - 1].across));
	for (int i = 0; i < count; i++)
		text_print(&words, "%s%s", i == 0 ? "" : i + 1 == count ? " and " : ", ",
			word_length(report, lines[i].across));
	return say_text(report, &words);
}

/* "line 1", "lines 2 to 4". */
static const char *number_words(const struct report *report, int first, int count)
{
	return count == 1 ? say(report, "line%c%d", PAGE_TIE, first) :
		say(report, "lines%c%d%cto%c%d", PAGE_TIE, first, PAGE_TIE, PAGE_TIE,
		first + count - 1);
}

/* "lines 1 to 2 at 1 ft and 2 ft down, from 8 in to 7 ft 4 in across, 8 emitters each". */
static const char *lines_words(const struct report *report, const struct drip *drip,
	const struct drip_line *lines, int count)
{
	return say(report, "%s at %s %s, from %s to %s %s, %s%s%s",
		number_words(report, (int)(lines - drip->lines) + 1, count),
		places_words(report, lines, count), drip->ground.is_upright ? "across" : "down",
		word_length(report, lines->chord.from), word_length(report, lines->chord.to),
		drip->ground.is_upright ? "down" : "across",
		word_count(report, lines->emitters, "emitter", "emitters"),
		count > 1 ? " each" : "", lines->is_added ? ", where no other line reaches" : "");
}

static void print_layout(const struct report *report, const char *beds, const struct drip *drip)
{
	struct text words = TEXT_EMPTY;
	int shown = 0;

	for (int i = 0; shown < drip->count && i < LISTED_MOST; i++) {
		const struct drip_line *first = &drip->lines[shown];
		int count = even_count(first, drip->count - shown);

		text_print(&words, "%s%s", i ? "; " : "", lines_words(report, drip, first, count));
		shown += count;
	}
	if (shown < drip->count)
		text_print(&words, "; and %s more: JSON has them (takeoff --json)",
			plain_count(report, drip->count - shown));
	print_lines(report, 2, 4, "%s: %s.", beds, words.bytes);
	text_fini(&words);
}

static void print_layouts(const struct report *report, const struct watering *watering)
{
	struct groups groups = rows_groups(&watered_table, watering->list, watering->count);

	print_blank(report);
	print_lines(report, 0, 0, "Where lines lie, taped from the upper left corner of the bed:");
	for (int i = 0; i < groups.count && i < NAMED_MOST && !stop_asked(); i++)
		print_layout(report, group_words(report, &watered_table, watering->list,
			&groups.list[i]), &watering->list[groups.list[i].members[0]].drip);
	if (groups.count > NAMED_MOST)
		print_lines(report, 2, 4, "And beds of %s more kinds: JSON has their lines "
			"(takeoff --json).",
			plain_count(report, groups.count - NAMED_MOST));
	groups_fini(&groups);
}

/* ---- Zones ----------------------------------------------------------------------------------- */

/* "B1, B2 (lines 1 to 3)". */
static const char *zone_words(const struct report *report, const struct water_zone *zone)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < zone->bed_count && i < NAMED_MOST; i++) {
		const struct zone_bed *bed = &zone->beds[i];

		text_print(&words, "%s%s", i ? ", " : "", plain_region(report, bed->region));
		if (bed->is_part)
			text_print(&words, " (%s)", number_words(report, bed->first + 1,
				bed->lines));
	}
	if (zone->bed_count > NAMED_MOST)
		text_print(&words, " and %s more",
			plain_count(report, zone->bed_count - NAMED_MOST));
	return say_text(report, &words);
}

/* What beds get more than they ask for, since they run with slower ones. */
static void print_over(const struct report *report, const struct watering *watering)
{
	struct text words = TEXT_EMPTY;
	double over = 0;
	int count = 0;

	for (int i = 0; i < watering->count; i++) {
		if (watering->list[i].over <= 0)
			continue;
		over += watering->list[i].over;
		if (count++ < NAMED_MOST)
			text_print(&words, "%s%s", words.length ? ", " : "",
				plain_region(report, watering->list[i].region));
	}
	if (count > NAMED_MOST)
		text_print(&words, " and %s more", plain_count(report, count - NAMED_MOST));
	if (count > 0)
		print_lines(report, 0, 0, "Over a tenth more than asked for, as long as the others "
			"of the zone run: %s. %s would spare %s a week.", words.bytes, count > 1 ?
			"Zones of their own" : "A zone of its own", word_water(report, over));
	text_fini(&words);
}

static void print_zones(const struct report *report, const struct watering *watering)
{
	static const struct table_column columns[] = {
		{ "Zone", COLUMN_RIGHT }, { "Beds", COLUMN_WRAPS }, { "Emitters", COLUMN_RIGHT },
		{ "Flow", COLUMN_RIGHT }, { "Each time", COLUMN_RIGHT },
		{ "A week", COLUMN_RIGHT }, { "Water", COLUMN_RIGHT } };
	struct hand_table table = hand_table(columns, 7, 0);

	print_section(report, "Zones");
	for (int i = 0; i < watering->zone_count && i < NAMED_MOST && !stop_asked(); i++) {
		const struct water_zone *zone = &watering->zones[i];

		TABLE_ROW(&table, plain_count(report, zone->number), zone_words(report, zone),
			plain_count(report, zone->emitters), plain_flow(report, zone->flow),
			say(report, "%s min", plain_count(report, zone->run)),
			say(report, "%s min", plain_count(report, zone->minutes)),
			word_water(report, zone->water));
	}
	if (watering->zone_count > NAMED_MOST)
		hand_table_across(&table, say(report, "and %s more.",
			plain_count(report, watering->zone_count - NAMED_MOST)));
	hand_table_print(&table, report->out);
	print_lines(report, 0, 0, "Minutes are for %s of water a week, %s, each time whole ones; a "
		"zone runs as long as the bed of it that takes longest. In all %s a week in %s "
		"minutes, where the beds ask for %s.",
		word_inches(report, block_length(report->takeoff->allow, ALLOW_WATER_WEEK)),
		watering->runs == 1 ? "at once" : say(report, "in %s times",
		plain_count(report, watering->runs)), word_water(report, watering->water),
		plain_count(report, watering->minutes), word_water(report, watering->asked));
	print_over(report, watering);
}

void print_water(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;

	if (watering->count == 0)
		return;
	print_supply(report, watering);
	print_blank(report);
	print_alike(report, &watered_table, watering->list, watering->count);
	print_layouts(report, watering);
	print_zones(report, watering);
	print_explained(report, "Lines lie on the soil, under the mulch. Rows: as many as leave "
		"none farther from the next than allowed for, evenly, half a gap at either side of "
		"the bed's inner area; emitters along each alike. Flow = emitters x %s. Common "
		"practice, no published source.", word_flow(report,
		block_amount(report->takeoff->allow, ALLOW_EMITTER_RATE)));
}

/* ---- Weeks ----------------------------------------------------------------------------------- */

#define DEPTH_SOURCE "Depth in a week, 1 to 1.5 in: Penn State Extension, 2013, as quoted, title " \
	"not noted."

/* Months that follow each other and ask for as much: one column. */
struct season {
	int first, last;
};

static int seasons_of(const struct watering *watering, struct season seasons[static MONTHS])
{
	int count = 0;

	for (int i = 0; i < watering->month_count; i++) {
		if (i > 0 && watering->months[i].depth == watering->months[i - 1].depth)
			seasons[count - 1].last = i;
		else
			seasons[count++] = (struct season){ i, i };
	}
	return count;
}

/* "January to March". */
static const char *season_words(const struct report *report, const struct season *season)
{
	const char *first = word_heading(&month_words[season->first]);

	return season->first == season->last ? first : say(report, "%s to %s", first,
		word_heading(&month_words[season->last]));
}

/* A row for each zone, then all of them; the months and their depth with the first. */
static void add_zone_season(struct hand_table *table, const struct report *report,
	const struct season *season)
{
	const struct watering *watering = &report->takeoff->watering;
	const struct water_month *all = &watering->months[season->first];
	const char *months = season_words(report, season), *depth = word_inches(report, all->depth);

	if (all->depth == 0) {
		TABLE_ROW(table, months, depth, "none", "", "", "");
		return;
	}
	for (int i = 0; i < watering->zone_count && i < NAMED_MOST && !stop_asked(); i++) {
		const struct zone_week *week = &watering->zone_weeks[i * MONTHS + season->first];

		TABLE_ROW(table, i == 0 ? months : "", i == 0 ? depth : "",
			plain_count(report, week->zone),
			say(report, "%s min", plain_count(report, week->run)),
			say(report, "%s min", plain_count(report, week->minutes)),
			word_water(report, week->water));
	}
	if (watering->zone_count > 1)
		TABLE_ROW(table, "", "", "all", "", say(report, "%s min",
			plain_count(report, all->minutes)), word_water(report, all->water));
}

static void print_zone_weeks(const struct report *report, const struct season *seasons, int count)
{
	static const struct table_column columns[] = { { "Months", COLUMN_LEFT },
		{ "Depth", COLUMN_RIGHT }, { "Zone", COLUMN_RIGHT }, { "Each time", COLUMN_RIGHT },
		{ "A week", COLUMN_RIGHT }, { "Water", COLUMN_RIGHT } };
	struct hand_table table = hand_table(columns, 6, 0);

	print_section(report, "In a week, by month and zone");
	for (int i = 0; i < count && !stop_asked(); i++)
		add_zone_season(&table, report, &seasons[i]);
	hand_table_print(&table, report->out);
}

/* A row for each kind of bed, the months and their depth with the first. */
static void add_bed_season(struct hand_table *table, const struct report *report,
	const struct groups *groups, const struct season *season)
{
	const struct watering *watering = &report->takeoff->watering;
	nm depth = watering->months[season->first].depth;

	for (int i = 0; depth > 0 && i < groups->count && i < NAMED_MOST && !stop_asked(); i++) {
		const struct water_week *week = &watering->weeks[groups->list[i].members[0] *
			MONTHS + season->first];

		TABLE_ROW(table, i == 0 ? season_words(report, season) : "",
			i == 0 ? word_inches(report, depth) : "",
			group_words(report, &watered_table, watering->list, &groups->list[i]),
			word_water(report, week->water), word_water(report, week->gets));
	}
}

static void print_bed_weeks(const struct report *report, const struct season *seasons, int count)
{
	static const struct table_column columns[] = { { "Months", COLUMN_LEFT },
		{ "Depth", COLUMN_RIGHT }, { "Beds", COLUMN_WRAPS },
		{ "Each asks for", COLUMN_RIGHT }, { "Each gets", COLUMN_RIGHT } };
	const struct watering *watering = &report->takeoff->watering;
	struct hand_table table = hand_table(columns, 5, 0);
	struct groups groups = rows_groups(&watered_table, watering->list, watering->count);

	print_section(report, "In a week, by month and bed");
	for (int i = 0; i < count && !stop_asked(); i++)
		add_bed_season(&table, report, &groups, &seasons[i]);
	groups_fini(&groups);
	hand_table_print(&table, report->out);
}

/* Where no month asks for water. */
static void print_no_weeks(const struct report *report)
{
	print_section(report, "In a week");
	print_lines(report, 0, 0, "%s Say which ask for some, a line each: water june 1 in. New "
		"plants: %s. " DEPTH_SOURCE, water_even_words(report), water_new_words(report));
}

void print_water_weeks(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;
	struct season seasons[MONTHS];
	int count;

	if (watering->count == 0)
		return;
	if (water_months(report) == 0) {
		print_no_weeks(report);
		return;
	}
	count = seasons_of(watering, seasons);
	print_zone_weeks(report, seasons, count);
	print_bed_weeks(report, seasons, count);
	print_lines(report, 0, 0, "Rain counts: leave off as much as has fallen; feel the soil a "
		"finger deep. New plants: %s. " DEPTH_SOURCE, water_new_words(report));
	if (*water_even_words(report))
		print_lines(report, 0, 0, "%s Say which ask for less, or for none where it "
			"freezes, a line each: water november 0 in.", water_even_words(report));
}
