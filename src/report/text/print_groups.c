#include "report/text/print.h"

/* Of many regions the first ranges of numbers are named. */
enum { RANGES_MOST = 10 };

/* Rows of a group, one after another. */
struct members {
	const struct report *report;
	const struct figure_table *table;
	const char *rows;
	const struct group *group;
};

static int region_of(const struct members *members, int at)
{
	const struct figure_table *table = members->table;
	const char *row = members->rows + (size_t)members->group->members[at] * table->row_size;

	for (int i = 0; i < table->count; i++)
		if (table->figures[i].kind == FIGURE_REGION)
			return (int)figure_whole(&table->figures[i], row);
	return NO_REGION;
}

static const char *name_of(const struct members *members, int at)
{
	return plain_region(members->report, region_of(members, at));
}

/* "B1, B2 and B5". */
static const char *names(const struct members *members)
{
	struct text words = TEXT_EMPTY;
	int count = members->group->count;

	for (int i = 0; i < count; i++)
		text_print(&words, "%s%s", i == 0 ? "" : i + 1 < count ? ", " : " and ",
			name_of(members, i));
	return say_text(members->report, &words);
}

static bool follows(const struct members *members, int at)
{
	const struct survey *survey = &members->report->takeoff->survey;
	int before = region_of(members, at - 1), here = region_of(members, at);

	return before != NO_REGION && here != NO_REGION &&
		survey->regions[before].entry->class == survey->regions[here].entry->class &&
		survey->regions[before].number + 1 == survey->regions[here].number;
}

/* "B1 to B7, B9 to B900 and 6,000 more". */
static const char *ranges(const struct members *members)
{
	struct text words = TEXT_EMPTY;
	int count = members->group->count, from = 0;

	for (int range = 0, end; from < count && range < RANGES_MOST; range++, from = end) {
		for (end = from + 1; end < count && follows(members, end);)
			end++;
		text_print(&words, "%s%s", range == 0 ? "" : end < count ? ", " : " and ",
			name_of(members, from));
		if (end - from > 1)
			text_print(&words, " to %s", name_of(members, end - 1));
	}
	if (from < count)
		text_print(&words, " and %s more", plain_count(members->report, count - from));
	return say_text(members->report, &words);
}

const char *group_words(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group)
{
	const struct members members = { report, table, rows, group };

	return group->count > NAMED_MOST ? ranges(&members) : names(&members);
}

const char *group_title(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group, const char *more)
{
	const char *words = group_words(report, table, rows, group);

	return group->count == 1 ? words : say(report, "%s: %s%s", words,
		word_count(report, group->count, "bed", "beds"), more);
}
