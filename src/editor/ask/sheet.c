#include "editor/ask/sheet.h"
#include "base/memory.h"
#include "editor/ask/offer.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

void sheet_init(struct sheet *sheet, int count)
{
	*sheet = (struct sheet){ .fields = memory_new((size_t)count, sizeof *sheet->fields),
		.count = count };
	for (int i = 0; i < count; i++)
		sheet->fields[i].typed = memory_string("");
}

void sheet_fini(struct sheet *sheet)
{
	for (int i = 0; i < sheet->count; i++) {
		free(sheet->fields[i].typed);
		free(sheet->fields[i].unset);
	}
	free(sheet->fields);
	*sheet = (struct sheet){ .fields = NULL };
}

void sheet_type(struct sheet *sheet, int field, const char *typed)
{
	char *copy = memory_string(typed);

	free(sheet->fields[field].typed);
	sheet->fields[field].typed = copy;
}

/* An unset value has no words. */
static struct text value_words(const struct sheet *sheet, int field, const struct value *value)
{
	const struct value_rule *rule = sheet->fields[field].rule;
	struct text words = TEXT_EMPTY;

	text_add(&words, value->set && rule->kind == VALUE_TEXT ? value->as.text : "");
	if (value->set && rule->kind != VALUE_TEXT)
		value_write(&words, rule, value, sheet->units);
	return words;
}

void sheet_type_value(struct sheet *sheet, int field, const struct value *value)
{
	struct text words = value_words(sheet, field, value);

	sheet_type(sheet, field, words.bytes);
	text_fini(&words);
}

bool sheet_says(const struct sheet *sheet, int field, const struct value *value)
{
	struct text words = value_words(sheet, field, value);
	bool says = strcmp(words.bytes, sheet->fields[field].typed) == 0;

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
	*fault = (struct fault){ field, words, TEXT_EMPTY };
	return false;
}

void fault_clear(struct fault *fault)
{
	text_clear(&fault->words);
	text_clear(&fault->offer);
}

void fault_fini(struct fault *fault)
{
	text_fini(&fault->words);
	text_fini(&fault->offer);
}

/* Reads the whole of some words; a text gets the quotes that the format wants around it. */
static bool words_read(const struct sheet *sheet, const struct value_rule *rule, const char *typed,
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
	done = value_scan(&s, rule, sheet->units, &read, d);
	if (done && !scan_is_done(&s)) {
		value_fini(rule->kind, &read);
		done = scan_fail(&s, s.at, d, "nothing more");
	}
	if (done)
		*value = read;
	text_fini(&words);
	return done;
}

/* Offers a bare number back with a unit; where none would do, the fault is that of its first
 * one. */
static bool refuse(const struct sheet *sheet, int at, struct diag *d, struct fault *fault)
{
	const struct field *field = &sheet->fields[at];
	const struct asked asked = { field->rule, sheet->units, field->is_far };
	struct text offer = TEXT_EMPTY;
	bool is_offered = offer_units(&asked, field->typed, &offer);
	struct value none;

	if (!is_offered && offer.length)
		words_read(sheet, field->rule, offer.bytes, &none, d); /* cannot succeed:
			it would have been offered */
	fault_set(fault, at, "%s: found %s, expected %s", field->label, d->found, d->expected);
	if (is_offered) {
		fault_set(fault, at, "%s: %s has no unit. %s? Enter takes it.", field->label,
			field->typed, offer.bytes);
		text_add(&fault->offer, offer.bytes);
	}
	text_fini(&offer);
	return false;
}

bool sheet_read(const struct sheet *sheet, int at, struct value *value, struct fault *fault)
{
	const struct field *field = &sheet->fields[at];
	struct diag d;

	*value = (struct value){ .set = false };
	if (!field->typed[strspn(field->typed, " \t")]) /* nothing but blanks */
		return !field->required || fault_set(fault, at, "%s: needed here", field->label);
	if (!words_read(sheet, field->rule, field->typed, value, &d))
		return refuse(sheet, at, &d, fault);
	if (!sheet->check || sheet->check(sheet, at, value, fault))
		return true;
	value_fini(field->rule->kind, value);
	return false;
}
