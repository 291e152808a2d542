#include "report/compare/leaf.h"
#include "report/words/figures.h"
#include "report/words/words.h"

#include <math.h>
#include <string.h>

static const char *lengths_words(const struct report *report, const struct figure *figure,
	const void *row)
{
	struct text words = TEXT_EMPTY;
	int count, alike;
	const nm *lengths = figure_rows(figure, row, &count);

	for (int i = 0; i < count; i += alike) {
		for (alike = 1; i + alike < count && lengths[i + alike] == lengths[i];)
			alike++;
		text_print(&words, "%s%d of %s", i ? " + " : "", alike,
			plain_inches(report, lengths[i]));
	}
	return count == 0 ? "-" : say_text(report, &words);
}

const char *leaf_value_words(const struct report *report, const struct leaf *leaf, const void *row)
{
	const struct figure *figure = &leaf->figure;
	const struct spot *spot = figure_field(figure, row);
	const char *text;

	switch (figure->kind) {
	case FIGURE_TRUTH:
		return figure_whole(figure, row) ? "yes" : "no";
	case FIGURE_SPOT:
		return say(report, "%s, %s", plain_length(report, spot->x),
			plain_length(report, spot->y));
	case FIGURE_LENGTHS:
		return lengths_words(report, figure, row);
	case FIGURE_TEXT:
		text = figure_text(figure, row);
		return text && *text ? text : "-";
	default:
		break;
	}
	return figure_words(report, figure, row);
}

/* Pieces are whole, though what counts them may be more exact. */
static bool is_whole(const struct leaf *leaf, const void *row)
{
	double real = row ? figure_real(&leaf->figure, row) : 0;

	return real == floor(real);
}

static int decimal_places(const struct leaf *leaf, const void *old, const void *new)
{
	if (leaf->figure.kind != FIGURE_NUMBER)
		return 0;
	return is_whole(leaf, old) && is_whole(leaf, new) ? 0 : 2;
}

/* ---- Differences ----------------------------------------------------------------------------- */

/* What the words of both rows have in common: the unit of a volume, the places of a number. */
struct style {
	double volume;
	int places;
};

static double volume_most(const struct leaf *leaf, const void *old, const void *new)
{
	if (leaf->figure.kind != FIGURE_VOLUME)
		return 0;
	return fmax(old ? fabs(figure_real(&leaf->figure, old)) : 0,
		new ? fabs(figure_real(&leaf->figure, new)) : 0);
}

static const char *size_words(const struct report *report, enum figure_kind kind, double size,
	const struct style *style)
{
	switch (kind) {
	case FIGURE_COUNT:
		return plain_count(report, llround(size));
	case FIGURE_LENGTH:
		return plain_length(report, llround(size));
	case FIGURE_INCHES:
		return plain_inches(report, llround(size));
	case FIGURE_MONEY:
		return plain_money(report, llround(size));
	case FIGURE_AREA:
		return plain_area(report, size);
	case FIGURE_VOLUME:
		return plain_volume_like(report, size, style->volume);
	case FIGURE_WEIGHT:
		return plain_weight(report, size);
	case FIGURE_WATER:
		return plain_water(report, size);
	case FIGURE_FLOW:
		return plain_flow(report, size);
	default:
		return plain_decimal(report, size, style->places);
	}
}

static const char *difference_words(const struct comparison *comparison, const struct leaf *leaf,
	const struct leaf_words *words, const void *const rows[static VERSIONS],
	const struct style *style)
{
	const struct report *report = &comparison->versions[NEW];
	double difference;

	if (!rows[OLD] || !rows[NEW] || !leaf_is_number(leaf))
		return "";
	if (strcmp(words->versions[OLD], words->versions[NEW]) == 0)
		return "less than shown";
	difference = leaf_difference(leaf, rows[OLD], rows[NEW]);
	return say(report, "%s%s", difference < 0 ? "-" : "+",
		size_words(report, leaf->figure.kind, fabs(difference), style));
}

static const char *version_words(const struct report *report, const struct leaf *leaf,
	const void *row, const struct style *style)
{
	const enum figure_kind kind = leaf->figure.kind;

	if (!row)
		return "-";
	return kind == FIGURE_VOLUME || kind == FIGURE_NUMBER ?
		size_words(report, kind, figure_real(&leaf->figure, row), style) :
		leaf_value_words(report, leaf, row);
}

struct leaf_words leaf_say(const struct comparison *comparison, const struct leaf *leaf,
	const void *old, const void *new)
{
	const void *const rows[VERSIONS] = { old, new };
	const struct style style = { volume_most(leaf, old, new), decimal_places(leaf, old, new) };
	struct leaf_words words = { { "so", "otherwise" }, "" };

	if (leaf->figure.kind == FIGURE_OBJECT)
		return words;
	for (int i = 0; i < VERSIONS; i++)
		words.versions[i] = version_words(&comparison->versions[i], leaf, rows[i], &style);
	words.difference = difference_words(comparison, leaf, &words, rows, &style);
	return words;
}
