#include "report/words/figures.h"
#include "report/words/words.h"

#include <string.h>

const char *word_heading(const struct word *word)
{
	return word->heading ? word->heading : word->key;
}

const char *word_label(const struct word *word)
{
	return word->label ? word->label : word->key;
}

static const char *entry_words(const struct report *report, const void *field)
{
	const struct entry *entry;

	memcpy(&entry, field, sizeof entry);
	return say(report, "%c %s", entry->letter, entry->name);
}

static const char *enum_words(const struct report *report, const struct figure *figure,
	const void *row)
{
	const struct word *word = &figure->words[figure_whole(figure, row)];

	return report->wording == WORDING_PANEL ? word_label(word) : word_heading(word);
}

static const char *real_words(const struct report *report, enum figure_kind kind, double real)
{
	return kind == FIGURE_AREA ? plain_area(report, real) :
		kind == FIGURE_VOLUME ? plain_volume(report, real) :
		kind == FIGURE_WEIGHT ? plain_weight(report, real) :
		kind == FIGURE_WATER ? plain_water(report, real) :
		kind == FIGURE_FLOW ? plain_flow(report, real) :
		plain_decimal(report, real, 2);
}

const char *figure_words(const struct report *report, const struct figure *figure, const void *row)
{
	const void *field = figure_field(figure, row);

	switch (figure->kind) {
	case FIGURE_COUNT:
		return plain_count(report, figure_whole(figure, row));
	case FIGURE_LENGTH:
		return plain_length(report, figure_whole(figure, row));
	case FIGURE_INCHES:
		return plain_inches(report, figure_whole(figure, row));
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
		return real_words(report, figure->kind, figure_real(figure, row));
	case FIGURE_MONEY:
		return plain_money(report, figure_whole(figure, row));
	case FIGURE_WORD:
		return enum_words(report, figure, row);
	case FIGURE_TEXT:
		return figure_text(figure, row);
	case FIGURE_LETTER:
		return say(report, "%c", *(const char *)field);
	case FIGURE_ENTRY:
		return entry_words(report, field);
	case FIGURE_REGION:
		return plain_region(report, (int)figure_whole(figure, row));
	case FIGURE_PLACE:
		return plain_corner(report, *(const struct place *)field);
	case FIGURE_SIZE:
		return plain_size(report, field);
	case FIGURE_TRUTH:
	case FIGURE_SPOT:
	case FIGURE_LENGTHS:
	case FIGURE_CUTS:
	case FIGURE_ROWS:
	case FIGURE_OBJECT:
	case FIGURE_ALIKE:
	case FIGURE_HEADING:
		break;
	}
	return "";
}
