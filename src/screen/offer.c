#include "screen/offer.h"

#include <string.h>

static const char numeric[] = "0123456789./ \t";

/* Adds one length of a size, or a whole value, with the unit behind it if it has none. */
static void part_add(struct text *out, const char *part, size_t length, const char *unit)
{
	bool has_number = false, is_bare = true;

	while (length && (part[length - 1] == ' ' || part[length - 1] == '\t'))
		length--;
	for (size_t i = 0; i < length; i++) {
		has_number |= part[i] >= '0' && part[i] <= '9';
		is_bare &= strchr(numeric, part[i]) != NULL;
	}
	text_add_bytes(out, part, length);
	if (has_number && is_bare)
		text_print(out, " %s", unit);
}

static void units_add(struct text *out, const char *typed, const char *unit)
{
	const char *part = typed + strspn(typed, " \t");

	for (;;) {
		size_t length = strcspn(part, "x");

		part_add(out, part, length, unit);
		if (!part[length])
			break;
		text_add(out, " x ");
		part += length + 1;
		part += strspn(part, " \t");
	}
}

static bool is_good(const struct value_rule *rule, enum units units, const struct text *words)
{
	struct scan s = scan_start(words->bytes, words->length, 1);
	struct value value;
	struct diag d;
	bool is_read = value_scan(&s, rule, units, &value, &d);

	if (is_read)
		value_fini(rule->kind, &value);
	return is_read && scan_is_done(&s);
}

static const char *const *units_of(enum value_kind kind, enum units units)
{
	static const char *const lengths[][3] = { [UNITS_IMPERIAL] = { "in", "ft", NULL },
		[UNITS_METRIC] = { "mm", "m", NULL } };
	static const char *const densities[][2] = { [UNITS_IMPERIAL] = { "lb/cu ft", NULL },
		[UNITS_METRIC] = { "kg/m3", NULL } };
	static const char *const percents[] = { "%", NULL }, *const none[] = { NULL };

	if (kind == VALUE_LENGTH || kind == VALUE_SIZE || kind == VALUE_CAP)
		return lengths[units];
	if (kind == VALUE_DENSITY)
		return densities[units];
	return kind == VALUE_PERCENT ? percents : none;
}

bool offer_units(const struct value_rule *rule, enum units units, const char *typed,
	struct text *out)
{
	bool is_found = false;

	for (const char *const *unit = units_of(rule->kind, units); *unit && !is_found; unit++) {
		struct text words = TEXT_EMPTY;

		units_add(&words, typed, *unit);
		is_found = strcmp(words.bytes, typed) != 0 && is_good(rule, units, &words);
		if (is_found)
			text_add(out, words.bytes);
		text_fini(&words);
	}
	return is_found;
}
