#include "report/words/water_words.h"

/* A week of new plants: every second or third day. */
enum { NEW_RUNS = 3 };

const char *water_new_words(const struct report *report)
{
	int64_t runs = report->takeoff->watering.runs;
	const char *usual = plain_count(report, runs);

	return runs >= NEW_RUNS ? say(report, "%s times a week, as ever", usual) :
		say(report, "%d times a week, not %s, for two weeks, as many minutes each time",
		NEW_RUNS, runs == 1 ? "once" : usual);
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
	return is_any_told(report->takeoff->allow) ?
		"Months ask for the same, as they are told, winter too." :
		"Months are not told: each asks for as much, winter too.";
}
