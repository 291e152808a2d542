#include "report/words/labour_words.h"
#include "base/measure.h"
#include "base/number.h"

#include <math.h>
#include <string.h>

/* What is done, before and after the quantity; one: after a single one. */
static const struct { const char *doing, *many, *one; } works[] = {
#define AT(name) [RATE_##name - RATE_STRIP]
	AT(STRIP) = { "strip", "of sod", NULL }, AT(DIG) = { "dig", "", NULL },
	AT(HOLE) = { "dig", "post holes", "post hole" }, AT(POST) = { "set", "posts", "post" },
	AT(LOAD) = { "load", "", NULL }, AT(BARROW) = { "push a barrow", "", NULL },
	AT(TAMP) = { "tamp", "of ground", NULL }, AT(FABRIC) = { "lay", "of fabric", NULL },
	AT(BASE) = { "lay", "of base", NULL }, AT(FIXTURE) = { "set", "fixtures", "fixture" },
	AT(BLOCK) = { "lay", "blocks", "block" }, AT(CAP) = { "lay", "caps", "cap" },
	AT(CUT) = { "saw", "pieces", "piece" }, AT(BACKFILL) = { "backfill", "", NULL },
	AT(LOOSEN) = { "loosen", "", NULL }, AT(PREPARE) = { "dig over", "", NULL },
	AT(LINER) = { "line", "of wall", NULL }, AT(FILL) = { "fill in", "", NULL },
	AT(EDGING) = { "set", "of edging", NULL }, AT(SURFACE) = { "lay", "of surface", NULL },
	AT(PANEL) = { "hang", "panels", "panel" }, AT(GATE) = { "hang", "gates", "gate" },
	AT(PLANT) = { "set", "plants", "plant" },
	AT(MULCH) = { "spread", "of mulch", NULL },
	AT(TOPSOIL) = { "spread", "of topsoil", NULL },
	AT(TURF) = { "lay", "of turf", NULL }, AT(SEED) = { "sow", "", NULL },
#undef AT
};

static enum quantity quantity_of(enum attribute kind)
{
	return attribute_row(kind)->rule.quantity;
}

const char *word_way(const struct report *report, nm way)
{
	nm step = report->units == UNITS_METRIC ? 100 * NM_PER_MM : NM_PER_FOOT;

	return word_length(report, nm_most((way + step / 2) / step, 1) * step);
}

static const char *quantity_words(const struct report *report, const struct labour *labour)
{
	switch (quantity_of(labour->kind)) {
	case QUANTITY_HOURS_LENGTH: {
		nm length = llround(labour->quantity * (double)NM_PER_M);

		return labour->kind == RATE_BARROW ? word_way(report, length) :
			word_length(report, length);
	}
	case QUANTITY_HOURS_AREA:
		return word_area(report, labour->quantity);
	case QUANTITY_HOURS_VOLUME:
		return word_volume(report, labour->quantity);
	default:
		return plain_count(report, llround(labour->quantity));
	}
}

const char *labour_words(const struct report *report, const struct labour *labour)
{
	int kind = (int)labour->kind - (int)RATE_STRIP;
	bool is_one = works[kind].one && llround(labour->quantity) == 1;
	const char *after = is_one ? works[kind].one : works[kind].many;

	return say(report, "%s %s%s%s", works[kind].doing, quantity_words(report, labour),
		*after ? (char[]){ PAGE_TIE, '\0' } : "", tied(report, after));
}

const char *labour_unit(enum attribute kind)
{
	switch (quantity_of(kind)) {
	case QUANTITY_HOURS_LENGTH:
		return "m";
	case QUANTITY_HOURS_AREA:
		return "m2";
	case QUANTITY_HOURS_VOLUME:
		return "m3";
	default:
		return "each";
	}
}

const char *labour_line(const struct report *report, enum attribute kind)
{
	static const char *const units[][2] = { { "each", "each" }, { "ft", "m" },
		{ "sq-ft", "m2" }, { "cu-ft", "m3" } };

	return say(report, "rate %s N h per %s", attribute_row(kind)->keyword,
		units[quantity_of(kind) - QUANTITY_HOURS_EACH][report->units == UNITS_METRIC]);
}

/* The unit that a rate is shown by, and SI units in it. */
static const char *unit_shown(const struct report *report, enum attribute kind, double *si)
{
	bool is_metric = report->units == UNITS_METRIC;
	double foot = is_metric ? 1 : metres(NM_PER_FOOT);

	switch (quantity_of(kind)) {
	case QUANTITY_HOURS_LENGTH:
		*si = foot;
		return is_metric ? "m" : "ft";
	case QUANTITY_HOURS_AREA:
		*si = foot * foot;
		return is_metric ? "m2" : "sq ft";
	case QUANTITY_HOURS_VOLUME:
		*si = foot * foot * foot;
		return is_metric ? "m3" : "cu ft";
	default:
		*si = 1;
		return "each";
	}
}

/* So many that a rate times its quantity gives the hours that stand beside it: a barrow goes far in
 * little time. */
enum { RATE_PLACES = 4, BARROW_PLACES = 6 };

const char *labour_rate(const struct report *report, const struct labour *labour)
{
	double si;
	const char *unit = unit_shown(report, labour->kind, &si);

	return say(report, "%s h per %s",
		plain_decimal(report, labour->hours / labour->quantity * si,
		labour->kind == RATE_BARROW ? BARROW_PLACES : RATE_PLACES), unit);
}

const char *labour_source(const struct labour *labour)
{
	static const char *const words[] = { [RATE_UNKNOWN] = "", [RATE_OF_PLOT] = "the plot",
		[RATE_OF_BOOK] = "the price book", [RATE_USUAL] = "usual *" };

	return words[labour->source];
}

static const char *decimal_words(const struct report *report, double number, const char *one,
	const char *many)
{
	const char *shown = plain_decimal(report, number, 1);
	bool is_whole = strcmp(shown + strlen(shown) - 2, ".0") == 0;

	return say(report, "%.*s%c%s", (int)(strlen(shown) - (is_whole ? 2 : 0)), shown, PAGE_TIE,
		strcmp(shown, "1.0") == 0 ? one : many);
}

const char *word_hours(const struct report *report, double hours)
{
	if (hours > 0 && hours < 0.05)
		return say(report, "under 0.1%chours", PAGE_TIE);
	return decimal_words(report, hours, "hour", "hours");
}

const char *word_days(const struct report *report, double days)
{
	return decimal_words(report, days, "day", "days");
}
