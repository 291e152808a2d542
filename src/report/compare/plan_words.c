#include "report/compare/plan_words.h"
#include "base/stop.h"
#include "report/words/words.h"

#include <string.h>

/* More than these are not named. */
enum { CHANGES_NAMED = 12 };

const char *region_title(const struct report *report, int region)
{
	const struct survey *survey = &report->takeoff->survey;
	const char *own = region == NO_REGION ? NULL : survey_own_name(survey, region);

	return region == NO_REGION ? "" : say(report, "%s %s", plain_region(report, region),
		own ? own : survey->regions[region].entry->name);
}

static bool is_same_size(const struct comparison *comparison)
{
	const struct survey *old = comparison->regions.old, *new = comparison->regions.new;

	return old->cell == new->cell && old->columns == new->columns && old->rows == new->rows;
}

bool plan_is_same(const struct comparison *comparison)
{
	const struct region_pairs *pairs = &comparison->regions;

	if (!is_same_size(comparison) || pairs->old->region_count != pairs->new->region_count)
		return false;
	for (int i = 0; i < pairs->new->region_count && !stop_asked(); i++)
		if (region_change(pairs, i) != REGION_SAME)
			return false;
	return true;
}

/* ---- Size ------------------------------------------------------------------------------------ */

static const char *size_words(const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;

	return say(report, "%s, %d x %d cells of %s",
		tied(report, plain_cells(report, survey->columns, survey->rows)), survey->columns,
		survey->rows, word_length(report, survey->cell));
}

static void add_size(struct text *words, const struct comparison *comparison)
{
	const char *now = size_words(&comparison->versions[NEW]);

	if (is_same_size(comparison))
		text_print(words, "The plan has the same size, %s.", now);
	else
		text_print(words, "The plan is %s; before it was %s.", now,
			size_words(&comparison->versions[OLD]));
}

/* ---- Regions --------------------------------------------------------------------------------- */

static enum region_change change_of(const struct region_pairs *pairs, int version, int region)
{
	if (version == NEW)
		return region_change(pairs, region);
	return pairs->new_of[region] == NO_REGION ? REGION_WENT : REGION_SAME;
}

/* "B4 Sage", and what it was called where that was otherwise: ", before B5", ", before B4 Mint". */
static const char *change_words(const struct comparison *comparison, int version, int region)
{
	const struct region_pairs *pairs = &comparison->regions;
	const struct report *report = &comparison->versions[version];
	const struct report *before = &comparison->versions[OLD];
	const char *title = region_title(report, region), *other;
	int old = version == NEW ? pairs->old_of[region] : NO_REGION;

	if (old == NO_REGION)
		return title;
	other = region_title(before, old);
	if (strcmp(title, other) == 0)
		return title;
	if (strcmp(strchr(title, ' '), strchr(other, ' ')) == 0)
		other = plain_region(before, old);
	return say(report, "%s, before %s", title, other);
}

/* " New: B3 Sage; P2 Gravel; and 7 more." */
static bool add_changes(struct text *words, const struct comparison *comparison,
	enum region_change change, const char *what)
{
	const int version = change == REGION_WENT ? OLD : NEW;
	const struct report *report = &comparison->versions[version];
	const struct survey *survey = &report->takeoff->survey;
	int count = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (change_of(&comparison->regions, version, i) == change &&
			count++ < CHANGES_NAMED)
			text_print(words, "%s %s", count > 1 ? ";" : what,
				change_words(comparison, version, i));
	if (count > CHANGES_NAMED)
		text_print(words, "; and %s more", plain_count(report, count - CHANGES_NAMED));
	text_add(words, count ? "." : "");
	return count > 0;
}

const char *plan_words(const struct comparison *comparison)
{
	static const char *const whats[REGION_CHANGES] = {
		[REGION_CAME] = " New:", [REGION_WENT] = " Gone:", [REGION_CHANGED] = " Changed:",
		[REGION_RENUMBERED] = " Only numbered otherwise:",
	};
	const struct report *report = &comparison->versions[NEW];
	struct text words = TEXT_EMPTY;
	bool is_any = false;

	add_size(&words, comparison);
	for (int i = REGION_CAME; i < REGION_CHANGES; i++)
		is_any = add_changes(&words, comparison, (enum region_change)i, whats[i]) || is_any;
	if (!is_any)
		text_add(&words, " All regions are the same.");
	if (plot_units(comparison->versions[OLD].plot) != report->units)
		text_print(&words, " The plot before is in %s; here all is in %s.",
			report->units == UNITS_METRIC ? "feet and inches" : "metres",
			report->units == UNITS_METRIC ? "metres" : "feet and inches");
	return say_text(report, &words);
}
