#include "plot/value.h"
#include "base/memory.h"

#include <string.h>

enum { SHARE_MOST = 1000 * 1000 };

/* What is read, and where it goes. */
struct reading {
	struct scan *s;
	const struct value_rule *rule;
	enum units units;
	struct value *out;
	struct diag *d;
};

/* "98 ft 5 in": whole 64ths of an inch. */
static void feet_write(struct text *words, nm length)
{
	nm feet = length / NM_PER_FOOT, inches = length % NM_PER_FOOT;

	if (feet > 0)
		text_print(words, "%lld ft%s", (long long)feet, inches ? " " : "");
	if (inches > 0)
		length_write_inches(words, inches);
}

/* A bound in the plot's own units: an odd length by the next whole one within, in inches, or in
 * 64ths of less than an inch. */
static void bound_write(const struct reading *r, struct text *words, int64_t bound, bool is_least)
{
	const struct value value = { .set = true, .as.number = bound };
	nm step = bound < NM_PER_INCH ? NM_PER_64TH : NM_PER_INCH;

	if (r->rule->kind != VALUE_LENGTH || r->units == UNITS_METRIC || bound % NM_PER_64TH == 0)
		value_write(words, r->rule, &value, r->units);
	else
		feet_write(words, (bound / step + is_least) * step);
}

static bool out_of_range(const struct reading *r, size_t start)
{
	const struct value_rule *rule = r->rule;
	struct text words = TEXT_EMPTY;

	if (rule->kind == VALUE_AMOUNT) {
		amount_write_range(&words, rule->quantity, r->units, rule->least, rule->most);
	} else {
		bound_write(r, &words, rule->least, true);
		text_add(&words, " to ");
		bound_write(r, &words, rule->most, false);
	}
	scan_fail(r->s, start, r->d, "%s", words.bytes);
	text_fini(&words);
	return false;
}

static bool text_value(const struct reading *r)
{
	char *text;

	if (!scan_quoted(r->s, (size_t)r->rule->least, (size_t)r->rule->most, &text, r->d))
		return false;
	r->out->as.text = text;
	return true;
}

static bool length_value(const struct reading *r)
{
	return length_scan(r->s, r->units, &r->out->as.length, r->d);
}

/* A number that a blank, a comma or the end follows: 12, 1.5. */
static bool plain_number(struct scan *s, int places, bool is_signed, int64_t *units)
{
	bool minus;

	scan_blanks(s);
	minus = is_signed && scan_peek(s) == '-';
	s->at += minus;
	if (!scan_decimal(s, places, units))
		return false;
	if (minus)
		*units = -*units;
	return s->at == s->length || char_is_blank(scan_peek(s)) || scan_peek(s) == ',';
}

static bool number_value(const struct reading *r)
{
	bool is_count = r->rule->kind == VALUE_COUNT;
	size_t start = r->s->at;

	return plain_number(r->s, is_count ? 0 : DECIMAL_PLACES, r->rule->is_signed,
		&r->out->as.number) || scan_fail(r->s, start, r->d, is_count ?
		"a whole number" : "a number with at most 6 decimal places");
}

static bool percent_value(const struct reading *r)
{
	size_t start = r->s->at;

	scan_blanks(r->s);
	return (scan_decimal(r->s, DECIMAL_PLACES, &r->out->as.number) && scan_take(r->s, '%')) ||
		scan_fail(r->s, start, r->d, "a percentage such as 5 %%");
}

static bool choice_value(const struct reading *r)
{
	const char *const *words = r->rule->words;
	struct text listed = TEXT_EMPTY;
	size_t start = r->s->at, length;
	const char *word = scan_word(r->s, &length);

	for (int i = 0; words[i]; i++) {
		if (scan_word_is(word, length, words[i])) {
			r->out->as.number = i;
			return true;
		}
	}
	for (int i = 0; words[i]; i++)
		text_add_listed(&listed, words[i], !words[i + 1]);
	scan_fail(r->s, start, r->d, "%s", listed.bytes);
	text_fini(&listed);
	return false;
}

static bool size_value(const struct reading *r)
{
	const struct value_rule one = { .kind = VALUE_LENGTH, .least = r->rule->least,
		.most = r->rule->most };
	struct value sides[3];
	size_t starts[3];

	for (int i = 0; i < 3; i++) {
		if (i && !scan_take(r->s, 'x'))
			return scan_fail(r->s, r->s->at, r->d,
				"x, as in %s (along, across, up)", r->units == UNITS_METRIC ?
				"400 mm x 200 mm x 150 mm" : "16 in x 8 in x 6 in");
		scan_blanks(r->s);
		starts[i] = r->s->at;
		if (!value_scan(r->s, &one, r->units, &sides[i], r->d))
			return false;
	}
	if (sides[1].as.length > sides[0].as.length)
		return scan_fail(r->s, starts[1], r->d,
			"a depth across the wall of at most the length along it");
	r->out->as.size = (struct size){ sides[0].as.length, sides[1].as.length,
		sides[2].as.length };
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

static bool cap_value(const struct reading *r)
{
	r->out->as.size = (struct size){ 0, 0, 0 };
	return take_none(r->s) || size_value(r);
}

static bool amount_value(const struct reading *r)
{
	return amount_scan(r->s, r->rule->quantity, r->units, &r->out->as.amount, r->d);
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

static bool mix_value(const struct reading *r)
{
	struct mix mix = { .count = 0 }, *kept;

	do {
		if (mix.count == MIX_PARTS_MOST)
			return scan_fail(r->s, r->s->at, r->d, "at most %d parts", MIX_PARTS_MOST);
		if (!mix_part_scan(r->s, &mix, r->d))
			return false;
	} while (scan_take(r->s, ','));
	kept = memory_new(1, sizeof *kept);
	*kept = mix;
	r->out->as.mix = kept;
	return true;
}

static bool place_value(const struct reading *r)
{
	struct scan *s = r->s;
	size_t start = s->at;
	int64_t x, y;

	scan_blanks(s);
	if (!scan_decimal(s, 0, &x) || x > INT32_MAX || scan_peek(s) != ',')
		return scan_fail(s, start, r->d, "a place X,Y");
	s->at++;
	if (char_is_blank(scan_peek(s)) || !plain_number(s, 0, false, &y) ||
		y > INT32_MAX)
		return scan_fail(s, start, r->d, "a place X,Y");
	r->out->as.place = (struct place){ (int)x, (int)y };
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

static bool sides_value(const struct reading *r)
{
	r->out->as.number = 0;
	if (take_none(r->s))
		return true;
	do {
		size_t start = r->s->at, length;
		const char *word = scan_word(r->s, &length);
		int64_t side = side_of(word, length);

		if (side == 0 || (r->out->as.number & side))
			return scan_fail(r->s, start, r->d,
				"none, or sides of the plan, each once: left, top, right, bottom");
		r->out->as.number |= side;
	} while (scan_take(r->s, ','));
	return true;
}

bool value_scan(struct scan *s, const struct value_rule *rule, enum units units, struct value *out,
	struct diag *d)
{
	static const struct {
		bool (*read)(const struct reading *r);
		bool has_range; /* of all that it reads */
	} kinds[] = {
		[VALUE_TEXT] = { text_value, false }, [VALUE_LENGTH] = { length_value, true },
		[VALUE_COUNT] = { number_value, true }, [VALUE_DECIMAL] = { number_value, true },
		[VALUE_PERCENT] = { percent_value, true }, [VALUE_CHOICE] = { choice_value, false },
		[VALUE_SIZE] = { size_value, false }, [VALUE_CAP] = { cap_value, false },
		[VALUE_AMOUNT] = { amount_value, true }, [VALUE_MIX] = { mix_value, false },
		[VALUE_PLACE] = { place_value, false }, [VALUE_SIDES] = { sides_value, false },
	};
	struct value value = { .set = true };
	const struct reading r = { s, rule, units, &value, d };
	size_t start = s->at;
	int64_t number;

	if (!kinds[rule->kind].read(&r))
		return false;
	number = rule->kind == VALUE_LENGTH ? value.as.length :
		rule->kind == VALUE_AMOUNT ? value.as.amount.millionths : value.as.number;
	if (kinds[rule->kind].has_range && (number < rule->least || number > rule->most))
		return out_of_range(&r, start);
	*out = value;
	return true;
}
