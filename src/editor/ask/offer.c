#include "editor/ask/offer.h"

#include <string.h>

static const char numeric[] = "0123456789./ \t";

/* Adds one length of a size, or a whole value, with the unit after it if it has none. */
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

static bool is_good(const struct asked *asked, const struct text *words)
{
	struct scan s = scan_start(words->bytes, words->length, 1);
	struct value value;
	struct diag d;
	bool is_read = value_scan(&s, asked->rule, asked->units, &value, &d);

	if (is_read)
		value_fini(asked->rule->kind, &value);
	return is_read && scan_is_done(&s);
}

static const char *const *lengths_of(const struct asked *asked)
{
	static const char *const imperial[] = { "in", "ft", NULL };
	static const char *const metric[] = { "mm", "cm", "m", NULL };
	static const char *const far_imperial[] = { "ft", "in", NULL }, *const far_metric[] = { "m",
		"cm", "mm", NULL };

	if (asked->units == UNITS_METRIC)
		return asked->is_far ? far_metric : metric;
	return asked->is_far ? far_imperial : imperial;
}

static const char *const *units_of(const struct asked *asked)
{
	static const char *const amounts[][2][3] = {
		[QUANTITY_DENSITY] = { { "lb/cu ft", "lb/cu yd", NULL }, { "kg/m3", NULL } },
		[QUANTITY_VOLUME] = { { "cu ft", "cu yd", NULL }, { "L", "m3", NULL } },
		[QUANTITY_WEIGHT] = { { "lb", NULL }, { "kg", NULL } },
		[QUANTITY_RATE] = { { "lb/1000 sq ft", NULL }, { "g/m2", NULL } },
		[QUANTITY_AREA] = { { "sq ft", "sq yd", NULL }, { "m2", NULL } },
		[QUANTITY_HOURS_EACH] = { { "h per each", NULL }, { "h per each", NULL } },
		[QUANTITY_HOURS_LENGTH] = { { "h per ft", NULL }, { "h per m", NULL } },
		[QUANTITY_HOURS_AREA] = { { "h per sq-ft", NULL }, { "h per m2", NULL } },
		[QUANTITY_HOURS_VOLUME] = { { "h per cu-ft", NULL }, { "h per m3", NULL } },
		[QUANTITY_GOODS] = { { "each", NULL }, { "each", NULL } },
	};
	static const char *const percents[] = { "%", NULL }, *const none[] = { NULL };
	enum value_kind kind = asked->rule->kind;

	if (kind == VALUE_LENGTH || kind == VALUE_SIZE || kind == VALUE_CAP)
		return lengths_of(asked);
	if (kind == VALUE_AMOUNT)
		return amounts[asked->rule->quantity][asked->units];
	return kind == VALUE_PERCENT ? percents : none;
}

bool offer_units(const struct asked *asked, const char *typed, struct text *out)
{
	const char *const *units = units_of(asked);

	for (const char *const *unit = units; *unit; unit++) {
		text_clear(out);
		units_add(out, typed, *unit);
		if (strcmp(out->bytes, typed) != 0 && is_good(asked, out))
			return true;
	}
	text_clear(out);
	if (*units)
		units_add(out, typed, *units);
	if (strcmp(out->bytes, typed) == 0)
		text_clear(out);
	return false;
}
