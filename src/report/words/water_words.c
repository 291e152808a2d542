#include "report/words/water_words.h"
#include "report/words/plant_words.h"

/* A week of new plants: every second or third day. */
enum { NEW_RUNS = 3 };

int water_months(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;
	int count = 0;

	for (int i = 0; i < watering->month_count; i++)
		count += watering->months[i].depth > 0;
	return count;
}

static const char *run_words(const struct report *report, int64_t runs)
{
	if (runs >= NEW_RUNS)
		return say(report, "%s times a week, as ever", plain_count(report, runs));
	return say(report, "%d times a week, not %s, for two weeks, %s minutes each time", NEW_RUNS,
		runs == 1 ? "once" : plain_count(report, runs),
		runs == 1 ? "half the" : "as many");
}

const char *water_new_words(const struct report *report)
{
	if (water_months(report) == 0)
		return say(report, "%s, all by hand", care_words[CARE_PLANTED].words);
	return say(report, "water in by hand, then let the timer run %s",
		run_words(report, report->takeoff->watering.runs));
}

static bool is_any_told(const struct block *allow)
{
	for (int month = 0; month < MONTHS; month++)
		if (block_value(allow, (enum attribute)(ALLOW_WATER_JANUARY + month))->set)
			return true;
	return false;
}

const char *water_even_words(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;

	for (int i = 1; i < watering->month_count; i++)
		if (watering->months[i].depth != watering->months[0].depth)
			return "";
	if (water_months(report) == 0)
		return "No month asks for water: the timer does not run.";
	return is_any_told(report->takeoff->allow) ?
		"Months ask for the same, as they are told, winter too." :
		"Months are not told: each asks for as much, winter too.";
}
