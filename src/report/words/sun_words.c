#include "report/words/sun_words.h"
#include "base/number.h"
#include "base/stop.h"

#include <math.h>

static int minutes_shown(double hours)
{
	return (int)lround(hours * 60);
}

static const char *minutes_words(const struct report *report, int minutes)
{
	return say(report, "%d:%02d", minutes / 60, minutes % 60);
}

const char *sun_time_words(const struct report *report, double hours)
{
	return minutes_words(report, minutes_shown(hours));
}

const char *sun_length_words(const struct report *report, const struct sun_times *times)
{
	return minutes_words(report, minutes_shown(times->set) - minutes_shown(times->rise));
}

const char *sun_hours_words(const struct report *report, double hours)
{
	/* Sums of steps may be a little less than they are. */
	return plain_decimal(report, floor(hours * 10 + 1e-6) / 10, 1);
}

/* Without zeros at its end. */
static const char *number_words(const struct report *report, double number)
{
	struct text words = TEXT_EMPTY;

	text_add_number(&words, number, 6);
	return say_text(report, &words);
}

const char *sun_bound_words(const struct report *report, enum sun_class class)
{
	return number_words(report, sun_class_from(report->takeoff, class));
}

const char *sun_class_hours(const struct report *report, enum sun_class class)
{
	const char *from = sun_bound_words(report, class);

	if (class == SUN_FULL)
		return say(report, "%s and more", from);
	if (class == SUN_SHADE)
		return say(report, "under %s", sun_bound_words(report, SUN_PART_SHADE));
	return say(report, "%s to %s", from, sun_bound_words(report, class - 1));
}

char sun_sign(double hours)
{
	return (char)(hours >= 10 ? '+' : '0' + (int)hours);
}

const char *sun_latitude_words(const struct report *report, double latitude)
{
	return say(report, "%s%s", number_words(report, fabs(latitude)),
		latitude > 0 ? " north" : latitude < 0 ? " south" : "");
}

const char *sun_untold_words(const struct report *report)
{
	const struct obstacles *houses = &report->plot->details.around.houses;
	struct text names = TEXT_EMPTY;

	for (size_t i = 0; i < houses->count; i++)
		if (houses->items[i].height == 0)
			text_print(&names, "%s%s", names.length ? ", " : "", houses->items[i].name);
	if (names.length == 0)
		return NULL;
	text_add(&names, " has no height in the plot, and casts no shade here.");
	return say_text(report, &names);
}

const char *sun_source_words(const struct report *report)
{
	for (enum attribute a = ALLOW_SUN_FULL; a <= ALLOW_SUN_LEAST; a++)
		if (block_number(report->takeoff->allow, a) !=
			attribute_preset(a, report->units)->as.number)
			return "Classes have the bounds that the plot or the price book allows.";
	return say(report, "Classes: %s. The plot may allow others: sun-full, sun-part, "
		"sun-least.", attribute_source(ALLOW_SUN_FULL, report->units));
}

const char *sun_unchecked_words(const struct takeoff *takeoff)
{
	const struct planting *planting = &takeoff->planting;

	for (int i = 0; i < planting->plant_count && !sun_has_site(takeoff); i++)
		if (planting->plants[i].count > 0 && planting->plants[i].light < NEEDS_NO_SUN)
			return "Not checked: whether plants have the sun they need. The plot tells "
				"no latitude.";
	return NULL;
}

const char *sun_missing_words(void)
{
	return "hours of sun need the latitude: a line such as \"site 51.5\", degrees north, in "
		"the plot's head";
}

bool sun_is_dial(const struct takeoff *takeoff, int region)
{
	const struct entry *entry = takeoff->survey.regions[region].entry;

	return entry->class == CLASS_FIXTURE &&
		block_number(&entry->block, FIXTURE_DIAL) == CHOICE_YES &&
		block_number(&takeoff->plot.details.head, HEAD_SITE) != 0;
}

const char *sun_dials_words(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	struct text names = TEXT_EMPTY;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (sun_is_dial(report->takeoff, i))
			text_print(&names, "%s%s %s", names.length ? ", " : "",
				plain_named_region(report, i), survey->regions[i].entry->name);
	if (names.length == 0)
		return NULL;
	return say_text(report, &names);
}

int sun_dial_hours(double latitude)
{
	struct sun_day day = sun_day_of(latitude, sun_longest_day(latitude));

	return (int)(sun_times(&day, 0).set - 12);
}
