#include "editor/ask/strict.h"
#include "editor/ask/typed.h"
#include "plot/attribute.h"

#include <ctype.h>
#include <string.h>
#include <strings.h>

/* ---- Units ----------------------------------------------------------------------------------- */

static bool is_length(const struct asked *asked)
{
	enum value_kind kind = asked->rule->kind;

	return asked->is_cells || kind == VALUE_LENGTH || kind == VALUE_SIZE || kind == VALUE_CAP;
}

static const char *const *lengths_of(const struct asked *asked)
{
	static const char *const units[][2][4] = {
		[SPAN_SMALL] = { { "in", "ft", NULL }, { "mm", "cm", "m", NULL } },
		[SPAN_LONG] = { { "ft", "in", NULL }, { "m", "mm", "cm", NULL } },
		[SPAN_PLAN] = { { "ft", NULL }, { "m", "cm", NULL } },
	};

	return units[asked->span][asked->units];
}

static const char *const *units_of(const struct asked *asked)
{
	static const char *const amounts[][2][3] = {
		[QUANTITY_DENSITY] = { { "lb/cu ft", "lb/cu yd", NULL }, { "kg/m3", NULL } },
		[QUANTITY_VOLUME] = { { "cu ft", "cu yd", NULL }, { "L", "m3", NULL } },
		[QUANTITY_WEIGHT] = { { "lb", NULL }, { "kg", NULL } },
		[QUANTITY_RATE] = { { "lb/1000 sq ft", NULL }, { "g/m2", NULL } },
		[QUANTITY_AREA] = { { "sq ft", "sq yd", NULL }, { "m2", NULL } },
		[QUANTITY_FLOW] = { { "gal/h", NULL }, { "L/h", NULL } },
		[QUANTITY_HOURS_EACH] = { { "h per each", NULL }, { "h per each", NULL } },
		[QUANTITY_HOURS_LENGTH] = { { "h per ft", NULL }, { "h per m", NULL } },
		[QUANTITY_HOURS_AREA] = { { "h per sq-ft", NULL }, { "h per m2", NULL } },
		[QUANTITY_HOURS_VOLUME] = { { "h per cu-ft", NULL }, { "h per m3", NULL } },
		[QUANTITY_GOODS] = { { "each", NULL }, { "each", NULL } },
	};
	static const char *const large[][2][3] = { /* all others: the same */
		[QUANTITY_DENSITY] = { { "lb/cu yd", "lb/cu ft", NULL }, { "kg/m3", NULL } },
		[QUANTITY_VOLUME] = { { "cu yd", "cu ft", NULL }, { "m3", "L", NULL } },
	};
	static const char *const percents[] = { "%", NULL }, *const none[] = { NULL };
	enum value_kind kind = asked->rule->kind;

	if (is_length(asked))
		return lengths_of(asked);
	if (kind != VALUE_AMOUNT)
		return kind == VALUE_PERCENT ? percents : none;
	if (asked->span == SPAN_LONG && asked->rule->quantity < sizeof large / sizeof *large)
		return large[asked->rule->quantity][asked->units];
	return amounts[asked->rule->quantity][asked->units];
}

const char *strict_unit(const struct asked *asked)
{
	static const char *const names[][2] = { { "in", "inches" }, { "ft", "feet" },
		{ "mm", "millimetres" }, { "m", "metres" } };
	const char *unit = units_of(asked)[0];

	for (size_t i = 0; unit && i < sizeof names / sizeof *names; i++)
		if (strcmp(names[i][0], unit) == 0)
			return names[i][1];
	return unit;
}

/* ---- Numbers --------------------------------------------------------------------------------- */

static void number_put(struct text *out, const char *at, const struct typed_number *n)
{
	text_print(out, "%s%.*s", n->whole || n->is_doubtful ? "" : "0", (int)n->whole, at);
	if (n->is_doubtful)
		text_add_bytes(out, at + n->whole, n->length - n->whole);
	else if (n->after)
		text_print(out, ".%.*s", (int)n->after, at + n->whole + 1);
}

/* ---- Lengths --------------------------------------------------------------------------------- */

/* What a number is in that follows a unit and has none: 7 ft 6, 2 m 50, 2 m 500. */
static const char *unit_after(const char *unit, size_t digits_typed)
{
	if (strcmp(unit, "ft") == 0 || strcmp(unit, "'") == 0)
		return "in";
	if (strcmp(unit, "m") == 0 && digits_typed <= 3)
		return digits_typed == 3 ? "mm" : "cm";
	return strcmp(unit, "cm") == 0 ? "mm" : NULL;
}

/* A length, or one side of a size, while it is put. */
struct part {
	struct text *out;
	size_t start;      /* where it begins there */
	const char *unit;  /* the last; NULL: none so far */
	size_t open;       /* digits of the number that has no unit yet; 0: there is none */
};

static void blanks_cut(struct part *part)
{
	struct text *out = part->out;

	while (out->length > part->start && out->bytes[out->length - 1] == ' ')
		text_cut(out, out->length - 1);
}

static void blank_put(const struct part *part)
{
	const struct text *out = part->out;

	if (out->length > part->start && out->bytes[out->length - 1] != ' ')
		text_add(part->out, " ");
}

/* Each of these puts what it is for, if that comes next, and returns its bytes; else 0. */
static size_t number_take(struct part *part, const char *at)
{
	struct typed_number n = typed_number(at);
	size_t below = at[n.length] == '/' ? typed_digits(at + n.length + 1) : 0;

	if (!n.length)
		return 0;
	if (part->unit || part->open)
		blank_put(part);
	number_put(part->out, at, &n);
	part->open = n.whole ? n.whole : 1;
	if (!below)
		return n.length;
	text_add_bytes(part->out, at + n.length, 1 + below);
	return n.length + 1 + below;
}

static size_t unit_take(struct part *part, const char *at)
{
	bool is_sign = *at == '\'' || *at == '"';
	size_t length = is_sign ? 1 : typed_letters(at);
	const char *unit = is_sign ? *at == '"' ? "\"" : "'" : typed_unit(at, length);

	if (!unit || !part->open)
		return 0;
	blanks_cut(part);
	text_print(part->out, "%s%s", is_sign ? "" : " ", unit);
	part->unit = unit;
	part->open = 0;
	if (!is_sign && at[length] == '.' && !typed_digits(at + length + 1)) /* ft. */
		length++;
	return length;
}

static size_t other_take(struct part *part, const char *at)
{
	if (char_is_blank(*at)) {
		blank_put(part);
		return 1;
	}
	text_add_bytes(part->out, at, 1);
	part->open = 0;
	return 1;
}

/* Puts one length, with `bare` after a number alone; *is_bare is set where there is one. Returns
 * the unit of its last number, NULL: it has none. */
static const char *length_put(const char *at, const char *bare, bool *is_bare, struct text *out)
{
	struct part part = { .out = out, .start = out->length };
	const char *unit = NULL;

	while (*at) {
		size_t step = number_take(&part, at);

		step = step ? step : unit_take(&part, at);
		at += step ? step : other_take(&part, at);
	}
	blanks_cut(&part);
	if (part.open && part.unit)
		unit = unit_after(part.unit, part.open);
	else if (part.open)
		unit = bare;
	*is_bare |= part.open && !part.unit;
	if (unit)
		text_print(out, " %s", unit);
	return part.open ? unit : part.unit;
}

/* The sides of a size, or the one of a length. The last has a say in what bare ones are in. */
static bool lengths_put(const char *typed, const char *bare, bool is_size, struct text *out)
{
	const char *between = is_size ? "xX" : "";
	const char *last = typed;
	struct text part = TEXT_EMPTY, side = TEXT_EMPTY;
	bool is_bare = false, none = false;

	while (last[strcspn(last, between)])
		last += strcspn(last, between) + 1;
	if (last != typed) {
		const char *unit = length_put(last, NULL, &none, &side);

		bare = unit ? unit : bare;
	}
	for (const char *at = typed;; at++) {
		size_t length = strcspn(at, between);

		text_clear(&part);
		text_add_bytes(&part, at, length);
		length_put(part.bytes, bare, &is_bare, out);
		at += length;
		if (!*at)
			break;
		text_add(out, " x ");
	}
	text_fini(&part);
	text_fini(&side);
	return is_bare;
}

/* ---- Other values ---------------------------------------------------------------------------- */

static void numbers_put(const char *at, struct text *out)
{
	while (*at) {
		struct typed_number n = typed_number(at);

		if (n.length)
			number_put(out, at, &n);
		else
			text_add_bytes(out, at, 1);
		at += n.length ? n.length : 1;
	}
}

static bool amount_put(const char *typed, const char *unit, struct text *out)
{
	bool is_bare = typed_is_number(typed);

	numbers_put(typed, out);
	if (!is_bare || !unit)
		return false;
	while (char_is_blank(out->bytes[out->length - 1]))
		text_cut(out, out->length - 1);
	text_print(out, " %s", unit);
	return true;
}

/* A sign, then a length or a number with the word behind it. */
static bool cells_put(const char *typed, const char *unit, struct text *out)
{
	const char *at = typed + strspn(typed, " \t"), *after;

	if (*at == '-') {
		text_add(out, "-");
		at++;
	}
	at += strspn(at, " \t");
	after = at + typed_digits(at);
	if (strncasecmp(after + strspn(after, " \t"), "cell", 4) != 0)
		return lengths_put(at, unit, false, out);
	for (; *at; at++)
		text_print(out, "%c", tolower((unsigned char)*at));
	return false;
}

/* ---- All of it ------------------------------------------------------------------------------- */

/* Puts it with this unit; whether a number stood alone. */
static bool put(const struct asked *asked, const char *typed, const char *unit, struct text *out)
{
	enum value_kind kind = asked->rule->kind;

	if (asked->is_cells)
		return cells_put(typed, unit, out);
	if (is_length(asked))
		return lengths_put(typed, unit, kind != VALUE_LENGTH, out);
	if (kind == VALUE_TEXT || kind == VALUE_CHOICE || kind == VALUE_PLACE ||
	    kind == VALUE_SIDES)
		text_add(out, typed);
	else
		return amount_put(typed, unit, out);
	return false;
}

bool strict_put(const struct asked *asked, const char *typed, int which, struct text *out)
{
	const char *const *units = units_of(asked);
	bool is_bare;

	for (int i = 0; i < which; i++)
		if (!units[i] || !units[i + 1])
			return false;
	text_clear(out);
	is_bare = put(asked, typed, units[which], out);
	return which == 0 || is_bare;
}

/* The first word that stands where a unit of length should. */
static bool no_unit(const struct asked *asked, const char *typed, struct text *why)
{
	for (const char *at = typed; *at; at++) {
		size_t length = typed_letters(at);

		if (at > typed && length && !typed_unit(at, length) && strncasecmp(at, "x",
			length) != 0 && strncasecmp(at, "cells", length) != 0) {
			text_print(why, "%.*s is no unit of length; %sm, cm and mm are",
				(int)length, at, asked->units == UNITS_METRIC ? "" : "ft, in, ");
			return true;
		}
		at += length ? length - 1 : 0;
	}
	return false;
}

/* A bearing or a latitude with more than a number: "47 N". */
static bool no_degrees(const struct asked *asked, const char *typed, struct text *why)
{
	bool is_site = asked->rule == &attribute_row(HEAD_SITE)->rule;
	const char *at = typed + strspn(typed, " \t");

	if ((!is_site && asked->rule != &attribute_row(HEAD_NORTH)->rule) ||
	    typed_is_number(at + (*at == '-')))
		return false;
	text_add(why, is_site ? "degrees alone, south with a minus" :
		"degrees alone, clockwise from north");
	return true;
}

bool strict_doubt(const struct asked *asked, const char *typed, struct text *why)
{
	enum value_kind kind = asked->rule->kind;
	bool is_number = typed_digits(typed + strspn(typed, " \t-.,")) > 0;

	if (kind == VALUE_CHOICE || kind == VALUE_PLACE || kind == VALUE_SIDES ||
	    (kind == VALUE_TEXT && !asked->is_cells))
		return false;
	for (const char *at = typed; *at; at++) {
		struct typed_number n = typed_number(at);

		if (n.is_doubtful) {
			text_print(why, "%.*s can be read in two ways; leave the comma out, or "
				"make it a point", (int)n.length, at);
			return true;
		}
		at += n.length ? n.length - 1 : 0;
	}
	return is_number && ((is_length(asked) && no_unit(asked, typed, why)) ||
		no_degrees(asked, typed, why));
}
