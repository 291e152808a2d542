#include "editor/ask/card.h"
#include "base/memory.h"
#include "base/utf8.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

void card_init(struct card *card, int count)
{
	*card = (struct card){ .fields = memory_new((size_t)count, sizeof *card->fields),
		.count = count };
	for (int i = 0; i < count; i++)
		card->fields[i].typed = memory_string("");
}

void card_fini(struct card *card)
{
	for (int i = 0; i < card->count; i++) {
		free(card->fields[i].typed);
		free(card->fields[i].unset);
	}
	free(card->fields);
	*card = (struct card){ .fields = NULL };
}

void card_type(struct card *card, int field, const char *typed)
{
	char *copy = memory_string(typed);

	free(card->fields[field].typed);
	card->fields[field].typed = copy;
}

/* Takes the unit off all sides but the last, where all have the same. */
static void size_shorten(struct text *words)
{
	const char *last = strrchr(words->bytes, ' ');
	size_t unit = last ? strlen(last) : 0;
	struct text shorter = TEXT_EMPTY;
	const char *at = words->bytes, *end;

	while (unit && (end = strstr(at, " x ")) && (size_t)(end - at) > unit &&
	       memcmp(end - unit, last, unit) == 0) {
		text_add_bytes(&shorter, at, (size_t)(end - at) - unit);
		text_add(&shorter, " x ");
		at = end + strlen(" x ");
	}
	text_add(&shorter, at);
	if (unit && !strstr(at, " x ")) {
		text_clear(words);
		text_add(words, shorter.bytes);
	}
	text_fini(&shorter);
}

void card_value_words(struct text *out, const struct value_rule *rule, const struct value *value,
	enum units units)
{
	if (!value->set)
		return;
	if (rule->kind == VALUE_TEXT)
		text_add(out, value->as.text);
	else
		value_write(out, rule, value, units);
	if (rule->kind == VALUE_SIZE || rule->kind == VALUE_CAP)
		size_shorten(out);
}

static struct text value_words(const struct card *card, int field, const struct value *value)
{
	struct text words = TEXT_EMPTY;

	card_value_words(&words, card->fields[field].rule, value, card->units);
	return words;
}

void card_type_value(struct card *card, int field, const struct value *value)
{
	struct text words = value_words(card, field, value);

	card_type(card, field, words.bytes);
	text_fini(&words);
}

bool card_says(const struct card *card, int field, const struct value *value)
{
	struct text words = value_words(card, field, value);
	bool says = strcmp(words.bytes, card->fields[field].typed) == 0;

	text_fini(&words);
	return says;
}

bool fault_set(struct fault *fault, int field, const char *format, ...)
{
	struct text words = TEXT_EMPTY; /* the arguments may be in the fault's own */
	va_list list;

	va_start(list, format);
	text_vprint(&words, format, list);
	va_end(list);
	fault_fini(fault);
	*fault = (struct fault){ field, words };
	return false;
}

void fault_clear(struct fault *fault)
{
	text_clear(&fault->words);
}

void fault_fini(struct fault *fault)
{
	text_fini(&fault->words);
}

/* Reads the whole of some words; a text gets the quotes that the format wants around it. */
static bool words_read(const struct card *card, const struct value_rule *rule, const char *typed,
	struct value *value, struct diag *d)
{
	struct text words = TEXT_EMPTY;
	struct value read;
	struct scan s;
	bool done;

	if (rule->kind == VALUE_TEXT)
		text_add_quoted(&words, typed);
	else
		text_add(&words, typed);
	s = scan_start(words.bytes, words.length, 1);
	done = value_scan(&s, rule, card->units, &read, d);
	if (done && !scan_is_done(&s)) {
		value_fini(rule->kind, &read);
		done = scan_fail(&s, s.at, d, "nothing more");
	}
	if (done)
		*value = read;
	text_fini(&words);
	return done;
}

static struct asked asked_of(const struct card *card, int at)
{
	const struct field *field = &card->fields[at];

	return (struct asked){ field->rule, card->units, field->span, field->is_cells };
}

const char *card_unit(const struct card *card, int at)
{
	const struct asked asked = asked_of(card, at);

	return strict_unit(&asked);
}

/* A text is refused for a character, or for its length. */
static bool refuse_text(const struct field *field, int at, struct fault *fault)
{
	const char *typed = field->typed;
	size_t length = strlen(typed), step;
	uint32_t code = 0;

	for (size_t i = 0; i < length; i += step)
		if (!utf8_fits_text(typed, length, i, &step)) {
			if (utf8_decode(typed + i, length - i, &code) == 0)
				code = (unsigned char)typed[i];
			return fault_set(fault, at, "%s: no plot can hold U+%04X: take it out",
				field->label, (unsigned)code);
		}
	return fault_set(fault, at, "%s: %lld character%s the most", field->label,
		(long long)field->rule->most, field->rule->most == 1 ? " is" : "s are");
}

/* words: what was typed, put strictly. */
static bool refuse(const struct card *card, int at, const char *words, const struct diag *d,
	struct fault *fault)
{
	const struct field *field = &card->fields[at];
	const struct asked asked = asked_of(card, at);
	struct text why = TEXT_EMPTY;

	if (field->rule->kind == VALUE_TEXT)
		return refuse_text(field, at, fault);
	if (strict_doubt(&asked, field->typed, &why))
		fault_set(fault, at, "%s: %s", field->label, why.bytes);
	else
		fault_set(fault, at, "%s: found %s, expected %s", field->label,
			field->rule->kind == VALUE_LENGTH ? words : d->found, d->expected);
	text_fini(&why);
	return false;
}

/* Reads the field as if these words were typed. */
static bool read_as(const struct card *card, int at, const char *words, struct value *value,
	struct fault *fault)
{
	const struct field *field = &card->fields[at];
	struct diag d;

	if (!words_read(card, field->rule, words, value, &d))
		return refuse(card, at, words, &d, fault);
	if (!card->check || card->check(card, at, value, fault))
		return true;
	value_fini(field->rule->kind, value);
	return false;
}

/* Tries the units that a number alone may be in; the fault is that of the first. */
static bool read_field(const struct card *card, int at, struct value *value, struct text *words,
	struct fault *fault)
{
	const struct field *field = &card->fields[at];
	const struct asked asked = asked_of(card, at);
	bool is_read = false;

	*value = (struct value){ .set = false };
	if (!field->typed[strspn(field->typed, " \t")]) /* nothing but blanks */
		return !field->required || fault_set(fault, at, "%s: needed here", field->label);
	for (int which = 0; !is_read && strict_put(&asked, field->typed, which, words); which++) {
		struct fault other = { .words = TEXT_EMPTY };

		is_read = read_as(card, at, words->bytes, value, which ? &other : fault);
		fault_fini(&other);
	}
	if (is_read)
		fault_clear(fault);
	return is_read;
}

bool card_read(const struct card *card, int at, struct value *value, struct fault *fault)
{
	struct text words = TEXT_EMPTY;
	bool is_read = read_field(card, at, value, &words, fault);

	text_fini(&words);
	return is_read;
}

/* Alike but for blanks. */
static bool is_alike(const char *a, const char *b)
{
	for (;; a++, b++) {
		a += strspn(a, " \t");
		b += strspn(b, " \t");
		if (*a != *b || !*a)
			return *a == *b;
	}
}

bool card_settle(struct card *card, int at, struct text *said, struct fault *fault)
{
	const struct field *field = &card->fields[at];
	struct text words = TEXT_EMPTY;
	struct value value;
	bool is_read = read_field(card, at, &value, &words, fault);

	text_clear(said);
	if (field->rule->kind == VALUE_SIZE || field->rule->kind == VALUE_CAP)
		size_shorten(&words);
	if (is_read && value.set && (field->rule->kind != VALUE_TEXT || field->is_cells)) {
		if (!is_alike(words.bytes, field->typed))
			text_print(said, "%s: %s is taken as %s.", field->label, field->typed,
				words.bytes);
		card_type(card, at, words.bytes);
	}
	value_fini(field->rule->kind, &value);
	text_fini(&words);
	return is_read;
}
