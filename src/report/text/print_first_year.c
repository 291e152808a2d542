#include "report/text/print.h"
#include "report/words/plant_words.h"

#include <string.h>

/* The first month in which a kind is planted; 0: not told. */
static int first_month(const struct plant_sum *sum)
{
	return sum->from ? sum->from : sum->until;
}

/* "Shrub rose and Thyme": those that are planted from that month on. */
static const char *planted_in(const struct report *report, int month)
{
	const struct planting *planting = &report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];

		if (sum->count > 0 && first_month(sum) == month)
			text_print(&words, "%s%s", words.length ? ", " : "",
				tied(report, sum->name));
	}
	return say_text(report, &words);
}

/* "March", "after 3 months", "April of the next year". */
static const char *when(const struct report *report, int month, int after)
{
	int at = month - 1 + after;

	if (month == 0)
		return after == 0 ? "When planted" :
			say(report, "After %d month%s", after, after == 1 ? "" : "s");
	return say(report, "%s%s", month_name(at % 12 + 1), at >= 12 ? " of the next year" : "");
}

static void print_from(const struct report *report, int month)
{
	const char *names = planted_in(report, month);

	if (!*names)
		return;
	print_lines(report, 0, 2, month == 0 ? "%s:" : "%s, planted in %s:", names,
		month == 0 ? "" : month_name(month));
	for (int i = 0; i < first_year_step_count; i++) {
		const struct first_year_step *step = &first_year_steps[i];
		bool is_metric = report->units == UNITS_METRIC && step->metric;

		print_lines(report, 2, 4, "%s: %s.", when(report, month, step->months),
			is_metric ? step->metric : step->words);
	}
}

void print_first_year(const struct report *report)
{
	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	print_section(report, "The first year");
	for (int month = 0; month <= 12; month++)
		print_from(report, month == 12 ? 0 : month + 1);
	print_explained(report, "Common practice, no published source; how much water: "
		"Penn State Extension, 2013, as quoted, title not noted. What a plant's own label "
		"says goes first.");
}
