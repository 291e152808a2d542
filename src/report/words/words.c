#include "report/words/words.h"
#include "report/words/page.h"
#include "base/show.h"

#include <ctype.h>

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

const char *exact_length(const struct report *report, nm length)
{
	struct text text = TEXT_EMPTY;

	length_write(&text, length, report->units);
	return say_text(report, &text);
}

/* A measure as show_NAME shows it in the plot's units, and the same tied. */
#define MEASURE(name, type) \
	const char *plain_##name(const struct report *report, type measure) \
	{ \
		struct text text = TEXT_EMPTY; \
		show_##name(&text, measure, report->units); \
		return say_text(report, &text); \
	} \
	const char *word_##name(const struct report *report, type measure) \
	{ \
		return tied(report, plain_##name(report, measure)); \
	}
MEASURE(length, nm)
MEASURE(inches, nm)
MEASURE(piece, nm)
MEASURE(area, double)
MEASURE(volume, double)
MEASURE(weight, double)
#undef MEASURE

const char *plain_volume_like(const struct report *report, double volume, double like)
{
	struct text text = TEXT_EMPTY;

	show_volume_like(&text, volume, like, report->units);
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

const char *plain_sides(const struct report *report, int64_t sides)
{
	return plain_length(report, sides * plot_cell(report->plot));
}

const char *plain_cells(const struct report *report, int64_t columns, int64_t rows)
{
	return say(report, "%s x %s", plain_sides(report, columns), plain_sides(report, rows));
}

const char *plain_place(const struct report *report, struct place cell)
{
	return say(report, "%s across, %s down", plain_sides(report, cell.x),
		plain_sides(report, cell.y));
}

const char *plain_corner(const struct report *report, struct place cell)
{
	return say(report, "%s, %s", plain_sides(report, cell.x), plain_sides(report, cell.y));
}

const char *plain_letter(const struct report *report, char letter)
{
	const struct entry *entry = plot_entry(report->plot, letter);

	const struct plant *plant = plants_find(&report->plot->details.plants, letter);

	return say(report, "%c %s", letter, entry ? entry->name : plant ? plant->name :
		"open ground");
}

const char *plain_region(const struct report *report, int region)
{
	char name[REGION_NAME_MOST] = "";

	if (region != NO_REGION)
		survey_region_name(&report->takeoff->survey.regions[region], name);
	return say(report, "%s", name);
}

const char *plain_named_region(const struct report *report, int region)
{
	const char *own = survey_own_name(&report->takeoff->survey, region);

	return say(report, "%s%s%s", plain_region(report, region), own ? " " : "", own ? own : "");
}

static const char *replaced(const struct report *report, const char *words, char from, char to)
{
	char *copy = arena_print(report->words, "%s", words);

	for (char *c = copy; *c; c++)
		if (*c == from)
			*c = to;
	return copy;
}

const char *tied(const struct report *report, const char *words)
{
	return replaced(report, words, ' ', PAGE_TIE);
}

const char *untied(const struct report *report, const char *words)
{
	return replaced(report, words, PAGE_TIE, ' ');
}

const char *word_size(const struct report *report, const struct size *size)
{
	return say(report, "%s x %s x %s", word_inches(report, size->along),
		word_inches(report, size->across), word_inches(report, size->up));
}

const char *word_count(const struct report *report, int64_t count, const char *one,
	const char *many)
{
	return tied(report, say(report, "%s %s", plain_count(report, count),
		count == 1 ? one : many));
}

const char *capital(const struct report *report, const char *words)
{
	return say(report, "%c%s", toupper((unsigned char)words[0]), words[0] ? words + 1 : "");
}
