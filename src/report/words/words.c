#include "report/words/words.h"
#include "report/words/page.h"
#include "base/show.h"

#include <string.h>

const char *say(const struct report *report, const char *format, ...)
{
	const char *words;
	va_list list;

	va_start(list, format);
	words = arena_vprint(report->words, format, list);
	va_end(list);
	return words;
}

const char *say_text(const struct report *report, struct text *text)
{
	return text_keep(text, report->words);
}

const char *plain_count(const struct report *report, int64_t count)
{
	struct text text = TEXT_EMPTY;

	show_count(&text, count);
	return say_text(report, &text);
}

const char *plain_decimal(const struct report *report, double number, int places)
{
	struct text text = TEXT_EMPTY;

	show_decimal(&text, number, places);
	return say_text(report, &text);
}

const char *plain_length(const struct report *report, nm length)
{
	struct text text = TEXT_EMPTY;

	show_length(&text, length, report->units);
	return say_text(report, &text);
}

const char *plain_inches(const struct report *report, nm length)
{
	struct text text = TEXT_EMPTY;

	show_inches(&text, length, report->units);
	return say_text(report, &text);
}

const char *plain_area(const struct report *report, double area)
{
	struct text text = TEXT_EMPTY;

	show_area(&text, area, report->units);
	return say_text(report, &text);
}

const char *plain_volume(const struct report *report, double volume)
{
	struct text text = TEXT_EMPTY;

	show_volume(&text, volume, report->units);
	return say_text(report, &text);
}

const char *plain_weight(const struct report *report, double weight)
{
	struct text text = TEXT_EMPTY;

	show_weight(&text, weight, report->units);
	return say_text(report, &text);
}

const char *plain_money(const struct report *report, money amount)
{
	return say(report, "%s.%02d", plain_count(report, amount / 100), (int)(amount % 100));
}

const char *plain_size(const struct report *report, const struct size *size)
{
	return say(report, "%s x %s x %s", plain_inches(report, size->along),
		plain_inches(report, size->across), plain_inches(report, size->up));
}

const char *plain_region(const struct report *report, int region)
{
	char name[REGION_NAME_MOST] = "";

	if (region != NO_REGION)
		survey_region_name(&report->takeoff->survey.regions[region], name);
	return say(report, "%s", name);
}

const char *tied(const struct report *report, const char *words)
{
	char *copy = arena_print(report->words, "%s", words);

	for (char *c = copy; *c; c++)
		if (*c == ' ')
			*c = PAGE_TIE;
	return copy;
}

const char *word_length(const struct report *report, nm length)
{
	return tied(report, plain_length(report, length));
}

const char *word_inches(const struct report *report, nm length)
{
	return tied(report, plain_inches(report, length));
}

const char *word_area(const struct report *report, double area)
{
	return tied(report, plain_area(report, area));
}

const char *word_volume(const struct report *report, double volume)
{
	return tied(report, plain_volume(report, volume));
}

const char *word_weight(const struct report *report, double weight)
{
	return tied(report, plain_weight(report, weight));
}

const char *word_size(const struct report *report, const struct size *size)
{
	return say(report, "%s x %s x %s", word_inches(report, size->along),
		word_inches(report, size->across), word_inches(report, size->up));
}

const char *word_count(const struct report *report, int64_t count, const char *one, const char *many)
{
	return tied(report, say(report, "%s %s", plain_count(report, count),
		count == 1 ? one : many));
}
