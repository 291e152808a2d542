#include "plot/value.h"
#include "base/memory.h"

#include <string.h>

enum { SHARE_MOST = 1000 * 1000 };

static bool out_of_range(const struct scan *s, size_t start, const struct value_rule *rule,
	enum units units, struct diag *d)
{
	struct value least = { .set = true, .as.number = rule->least };
	struct value most = { .set = true, .as.number = rule->most };
	struct text words = TEXT_EMPTY;

	if (rule->kind == VALUE_AMOUNT) {
		amount_write_range(&words, rule->quantity, rule->least, rule->most);
	} else {
		value_write(&words, rule, &least, units);
		text_add(&words, " to ");
		value_write(&words, rule, &most, units);
	}
	scan_fail(s, start, d, "%s", words.bytes);
	text_fini(&words);
	return false;
}

static bool in_range(const struct value_rule *rule, int64_t number)
{
	return number >= rule->least && number <= rule->most;
}

static bool length_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	size_t start = s->at;

	if (!length_scan(s, units, &out->as.length, d))
		return false;
	return in_range(rule, out->as.length) || out_of_range(s, start, rule, units, d);
}

/* A number that a blank, a comma or the end follows: 12, 1.5. */
static bool plain_number(struct scan *s, int places, bool is_signed, int64_t *units)
{
	bool minus;
	char next;

	scan_blanks(s);
	minus = is_signed && scan_peek(s) == '-';
	s->at += minus;
	if (!scan_decimal(s, places, units))
		return false;
	if (minus)
		*units = -*units;
	next = scan_peek(s);
	return next == '\0' || next == ' ' || next == '\t' || next == ',';
}

static bool number_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	bool is_count = rule->kind == VALUE_COUNT;
	size_t start = s->at;

	if (!plain_number(s, is_count ? 0 : DECIMAL_PLACES, rule->is_signed, &out->as.number))
		return scan_fail(s, start, d, is_count ? "a whole number" :
			"a number with at most 6 decimal places");
	return in_range(rule, out->as.number) || out_of_range(s, start, rule, units, d);
}

static bool percent_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	size_t start = s->at;

	scan_blanks(s);
	if (!scan_decimal(s, DECIMAL_PLACES, &out->as.number) || !scan_take(s, '%'))
		return scan_fail(s, start, d, "a percentage such as 5 %%");
	return in_range(rule, out->as.number) || out_of_range(s, start, rule, units, d);
}

static bool choice_value(struct scan *s, const struct value_rule *rule, struct value *out,
	struct diag *d)
{
	struct text words = TEXT_EMPTY;
	size_t start = s->at, length;
	const char *word = scan_word(s, &length);

	for (int i = 0; rule->words[i]; i++) {
		if (scan_word_is(word, length, rule->words[i])) {
			out->as.number = i;
			return true;
		}
	}
	for (int i = 0; rule->words[i]; i++)
		text_add_listed(&words, rule->words[i], !rule->words[i + 1]);
	scan_fail(s, start, d, "%s", words.bytes);
	text_fini(&words);
	return false;
}

static bool size_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	nm sides[3];
	size_t starts[3];

	for (int i = 0; i < 3; i++) {
		struct value side;
		const struct value_rule one = { .kind = VALUE_LENGTH, .least = rule->least,
			.most = rule->most };

		if (i && !scan_take(s, 'x'))
			return scan_fail(s, s->at, d,
				"x, as in 16 in x 8 in x 6 in (along, across, up)");
		scan_blanks(s);
		starts[i] = s->at;
		if (!length_value(s, &one, units, &side, d))
			return false;
		sides[i] = side.as.length;
	}
	if (sides[1] > sides[0])
		return scan_fail(s, starts[1], d,
			"a depth across the wall of at most the length along it");
	out->as.size = (struct size){ sides[0], sides[1], sides[2] };
	return true;
}

/* Takes the word that says so. */
static bool take_none(struct scan *s)
{
	struct scan ahead = *s;
	size_t length;
	const char *word = scan_word(&ahead, &length);

	if (!scan_word_is(word, length, "none"))
		return false;
	*s = ahead;
	return true;
}

static bool cap_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	out->as.size = (struct size){ 0, 0, 0 };
	return take_none(s) || size_value(s, rule, units, out, d);
}

static bool amount_value(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	size_t start = s->at;

	return amount_scan(s, rule->quantity, &out->as.amount, d) &&
		(in_range(rule, out->as.amount.millionths) ||
		out_of_range(s, start, rule, units, d));
}

/* Lower-case words joined by single hyphens. */
static bool is_part_name(const char *word, size_t length)
{
	if (length == 0 || length > MIX_NAME_MOST || word[0] == '-' || word[length - 1] == '-')
		return false;
	for (size_t i = 0; i < length; i++) {
		bool is_letter = word[i] >= 'a' && word[i] <= 'z';

		if (!is_letter && (word[i] != '-' || word[i - 1] == '-'))
			return false;
	}
	return true;
}

static bool mix_part_scan(struct scan *s, struct mix *mix, struct diag *d)
{
	struct mix_part *part = &mix->parts[mix->count];
	size_t start = s->at, length;
	const char *word = scan_word(s, &length);

	if (!is_part_name(word, length))
		return scan_fail(s, start, d, "a name of lower-case letters and hyphens, as in "
			"topsoil 5, compost 4, sharp-sand 1");
	memcpy(part->name, word, length);
	part->name[length] = '\0';
	for (int i = 0; i < mix->count; i++)
		if (strcmp(mix->parts[i].name, part->name) == 0)
			return scan_fail(s, start, d, "another name: each part once");
	start = s->at;
	if (!plain_number(s, SHARE_PLACES, false, &part->thousandths) || part->thousandths == 0 ||
		part->thousandths > SHARE_MOST)
		return scan_fail(s, start, d,
			"the part's share, over 0 up to 1000 with at most 3 decimal places");
	mix->count++;
	return true;
}

static bool mix_value(struct scan *s, struct value *out, struct diag *d)
{
	struct mix mix = { .count = 0 };
	struct mix *kept;

	do {
		if (mix.count == MIX_PARTS_MOST)
			return scan_fail(s, s->at, d, "at most %d parts", MIX_PARTS_MOST);
		if (!mix_part_scan(s, &mix, d))
			return false;
	} while (scan_take(s, ','));
	kept = memory_new(1, sizeof *kept);
	*kept = mix;
	out->as.mix = kept;
	return true;
}

static bool place_value(struct scan *s, struct value *out, struct diag *d)
{
	size_t start = s->at;
	int64_t x, y;

	scan_blanks(s);
	if (!scan_decimal(s, 0, &x) || x > INT32_MAX || scan_peek(s) != ',')
		return scan_fail(s, start, d, "a place X,Y");
	s->at++;
	if (scan_peek(s) == ' ' || scan_peek(s) == '\t' || !plain_number(s, 0, false, &y) ||
		y > INT32_MAX)
		return scan_fail(s, start, d, "a place X,Y");
	out->as.place = (struct place){ (int)x, (int)y };
	return true;
}

/* The bit of the side that the word names; 0 where it names none. */
static int64_t side_of(const char *word, size_t length)
{
	for (int i = 0; i < PLAN_SIDES; i++)
		if (scan_word_is(word, length, plan_side_words[i]))
			return INT64_C(1) << i;
	return 0;
}

static bool sides_value(struct scan *s, struct value *out, struct diag *d)
{
	out->as.number = 0;
	if (take_none(s))
		return true;
	do {
		size_t start = s->at, length;
		const char *word = scan_word(s, &length);
		int64_t side = side_of(word, length);

		if (side == 0 || (out->as.number & side))
			return scan_fail(s, start, d,
				"none, or sides of the plan, each once: left, top, right, bottom");
		out->as.number |= side;
	} while (scan_take(s, ','));
	return true;
}

static bool scan_kind(struct scan *s, const struct value_rule *rule, enum units units,
	struct value *out, struct diag *d)
{
	char *text;

	switch (rule->kind) {
	case VALUE_TEXT:
		if (!scan_quoted(s, (size_t)rule->least, (size_t)rule->most, &text, d))
			return false;
		out->as.text = text;
		return true;
	case VALUE_LENGTH:
		return length_value(s, rule, units, out, d);
	case VALUE_COUNT:
	case VALUE_DECIMAL:
		return number_value(s, rule, units, out, d);
	case VALUE_PERCENT:
		return percent_value(s, rule, units, out, d);
	case VALUE_CHOICE:
		return choice_value(s, rule, out, d);
	case VALUE_SIZE:
		return size_value(s, rule, units, out, d);
	case VALUE_CAP:
		return cap_value(s, rule, units, out, d);
	case VALUE_AMOUNT:
		return amount_value(s, rule, units, out, d);
	case VALUE_MIX:
		return mix_value(s, out, d);
	case VALUE_PLACE:
		return place_value(s, out, d);
	case VALUE_SIDES:
		return sides_value(s, out, d);
	}
	return false;
}

bool value_scan(struct scan *s, const struct value_rule *rule, enum units units, struct value *out,
	struct diag *d)
{
	struct value value = { .set = true };

	if (!scan_kind(s, rule, units, &value, d))
		return false;
	*out = value;
	return true;
}
