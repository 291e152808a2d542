#include "report/text/print.h"
#include "report/words/plant_words.h"
#include "report/words/water_words.h"
#include "base/date.h"
#include "takeoff/sun/sun_hours.h"

#include <stdlib.h>

/* How a kind gets its water: one that stands in several beds may get it in both ways. */
enum { BY_HAND = 1, BY_TIMER = 2 };

struct first_year {
	const struct report *report;
	unsigned char *ways; /* by kind; owned */
	bool has_timer;      /* some have BY_TIMER */
};

static bool has_timer(const struct watering *watering, int region)
{
	int from = 0, end = watering->count;

	while (from < end) {
		int middle = from + (end - from) / 2;

		if (watering->list[middle].region < region)
			from = middle + 1;
		else
			end = middle;
	}
	return from < watering->count && watering->list[from].region == region;
}

static void find_ways(struct first_year *year)
{
	const struct takeoff *takeoff = year->report->takeoff;
	const struct planting *planting = &takeoff->planting;
	bool is_running = water_months(year->report) > 0; /* the timer */

	year->ways = memory_new((size_t)planting->plant_count, 1);
	for (int i = 0; i < planting->count; i++) {
		const struct planting_row *row = &planting->list[i];
		bool by_timer = is_running && has_timer(&takeoff->watering, row->region);

		if (row->count == 0)
			continue;
		year->ways[row->kind] |= by_timer ? BY_TIMER : BY_HAND;
		year->has_timer = year->has_timer || by_timer;
	}
}

/* "Shrub rose, Thyme": those that are planted from that month on and get their water so. */
static const char *planted_in(const struct first_year *year, int month, int way)
{
	const struct planting *planting = &year->report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];

		if (year->ways[i] & way && plant_first_month(sum) == month)
			text_print(&words, "%s%s", words.length ? ", " : "",
				tied(year->report, sum->name));
	}
	return say_text(year->report, &words);
}

/* "March", "April to June", "October to February of the next year". */
static const char *when(const struct report *report, int month, const struct care_span *span)
{
	int from = month - 1 + span->from, until = month - 1 + span->until;
	const char *year = until >= MONTHS ? " of the next year" : "";
	const char *last = month_name(until % MONTHS + 1);

	return from == until ? say(report, "%s%s", last, year) :
		say(report, "%s to %s%s", month_name(from % MONTHS + 1), last, year);
}

/* month: of planting; 0: not told. A month without minutes has none for new plants either. */
static const char *timer_words(const struct report *report, int month, enum care care)
{
	const struct watering *watering = &report->takeoff->watering;
	const char *planted;

	if (care != CARE_PLANTED)
		return care_words[care].drip;
	if (month > 0 && watering->months[month - 1].depth == 0)
		planted = care_words[care].words;
	else
		planted = say(report, "%s, where it does not rain%s", water_new_words(report),
			month > 0 || water_months(report) == MONTHS ? "" :
			", by hand as often in a month without minutes");
	return say(report, "%s; from then on by the timer, each month as Watering has it, and by "
		"hand in drought where it has no minutes", planted);
}

static void print_care(const struct report *report, const char *when, enum care care,
	const char *by_timer)
{
	const struct care_words *words = &care_words[care];
	bool is_metric = report->units == UNITS_METRIC && words->metric;

	print_lines(report, 2, 4, "%s: %s.", when, by_timer ? by_timer :
		is_metric ? words->metric : words->words);
}

static bool is_south(const struct takeoff *takeoff)
{
	return sun_has_site(takeoff) && sun_latitude(takeoff) < 0;
}

/* Where some plants are on drip lines, which. */
static const char *way_words(const struct first_year *year, int way)
{
	return !year->has_timer ? "" : way == BY_TIMER ? ", on drip lines" : ", not on drip lines";
}

static void print_from(const struct first_year *year, int month, int way)
{
	const struct report *report = year->report;
	const char *names = planted_in(year, month, way);
	struct care_span spans[CARE_SPANS_MOST];
	int count;

	if (!*names)
		return;
	print_lines(report, 0, 2, "%s, planted in %s%s:", names, month_name(month),
		way_words(year, way));
	count = first_year(month, is_south(report->takeoff), spans);
	for (int i = 0; i < count; i++)
		print_care(report, when(report, month, &spans[i]), spans[i].care,
			way == BY_TIMER ? timer_words(report, month, spans[i].care) : NULL);
}

/* Those of which no month is told. */
static void print_by_season(const struct first_year *year, int way)
{
	const struct report *report = year->report;
	const char *names = planted_in(year, 0, way);

	if (!*names)
		return;
	print_lines(report, 0, 2, "%s%s:", names, way_words(year, way));
	for (int care = 0; care < CARES; care++)
		print_care(report, care_words[care].season, (enum care)care, way == BY_TIMER ?
			timer_words(report, 0, (enum care)care) : NULL);
}

void print_first_year(const struct report *report)
{
	struct first_year year = { .report = report };

	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	find_ways(&year);
	print_section(report, "The first year");
	for (int month = 1; month <= MONTHS; month++)
		for (int way = BY_HAND; way <= BY_TIMER; way++)
			print_from(&year, month, way);
	for (int way = BY_HAND; way <= BY_TIMER; way++)
		print_by_season(&year, way);
	free(year.ways);
	print_explained(report, "Common practice, no published source; how much water: "
		"Penn State Extension, 2013, as quoted, title not noted. What a plant's own label "
		"says goes first.%s", sun_has_site(report->takeoff) ? "" :
		" The plot tells no latitude: seasons are those north of the equator.");
}
