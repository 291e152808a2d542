#include "report/text/print.h"
#include "report/words/plant_words.h"
#include "base/date.h"
#include "takeoff/sun/sun_hours.h"

#include <string.h>

/* "Shrub rose and Thyme": those that are planted from that month on. */
static const char *planted_in(const struct report *report, int month)
{
	const struct planting *planting = &report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];

		if (sum->count > 0 && plant_first_month(sum) == month)
			text_print(&words, "%s%s", words.length ? ", " : "",
				tied(report, sum->name));
	}
	return say_text(report, &words);
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

static void print_care(const struct report *report, const char *when, enum care care)
{
	const struct care_words *words = &care_words[care];
	bool is_metric = report->units == UNITS_METRIC && words->metric;

	print_lines(report, 2, 4, "%s: %s.", when, is_metric ? words->metric : words->words);
}

static bool is_south(const struct takeoff *takeoff)
{
	return sun_has_site(takeoff) && sun_latitude(takeoff) < 0;
}

static void print_from(const struct report *report, int month)
{
	const char *names = planted_in(report, month);
	struct care_span spans[CARE_SPANS_MOST];
	int count;

	if (!*names)
		return;
	print_lines(report, 0, 2, "%s, planted in %s:", names, month_name(month));
	count = first_year(month, is_south(report->takeoff), spans);
	for (int i = 0; i < count; i++)
		print_care(report, when(report, month, &spans[i]), spans[i].care);
}

/* Those of which no month is told. */
static void print_by_season(const struct report *report)
{
	const char *names = planted_in(report, 0);

	if (!*names)
		return;
	print_lines(report, 0, 2, "%s:", names);
	for (int care = 0; care < CARES; care++)
		print_care(report, care_words[care].season, (enum care)care);
}

void print_first_year(const struct report *report)
{
	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	print_section(report, "The first year");
	for (int month = 1; month <= MONTHS; month++)
		print_from(report, month);
	print_by_season(report);
	print_explained(report, "Common practice, no published source; how much water: "
		"Penn State Extension, 2013, as quoted, title not noted. What a plant's own label "
		"says goes first.%s", sun_has_site(report->takeoff) ? "" :
		" The plot tells no latitude: seasons are those north of the equator.");
}
