#include "prices/book_json.h"
#include "base/memory.h"
#include "base/utf8.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { LEVELS_MOST = 8, MONEY_MOST = 1000000, COUNT_MOST = 1000000, WORD_SHOWN = 40 };

/* ---- From text to tree ----------------------------------------------------------------------- */

static bool is_blank(char c)
{
	return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

static bool text_fail(const char *bytes, size_t length, size_t at, struct diag *d,
	const char *expected)
{
	int line = 1;
	size_t start = 0, end = at;

	for (size_t i = 0; i < at; i++) {
		if (bytes[i] == '\n') {
			line++;
			start = i + 1;
		}
	}
	while (end < length && end - at < WORD_SHOWN && !is_blank(bytes[end]))
		end++;
	return diag_set(d, line, (int)(at - start) + 1, bytes + at, end - at, "%s", expected);
}

/* Refuses what cJSON would accept or cut short. */
static bool is_sound(const char *bytes, size_t length, struct diag *d)
{
	bool in_text = false;
	int levels = 0;
	size_t step;

	for (size_t i = 0; i < length; i += step) {
		uint32_t code;

		step = utf8_decode(bytes + i, length - i, &code);
		if (step == 0 || code == 0)
			return text_fail(bytes, length, i, d, "text in UTF-8");
		if (in_text && code == '\\') {
			if (length - i >= 6 && memcmp(bytes + i, "\\u0000", 6) == 0)
				return text_fail(bytes, length, i, d,
					"a character that can be shown");
			step += i + 1 < length && (bytes[i + 1] == '"' || bytes[i + 1] == '\\');
		} else if (code == '"') {
			in_text = !in_text;
		} else if (!in_text && (code == '{' || code == '[') && ++levels > LEVELS_MOST) {
			return text_fail(bytes, length, i, d, "at most 8 levels");
		} else if (!in_text && (code == '}' || code == ']')) {
			levels--;
		}
	}
	return true;
}

/* Where the parser stopped; where a key is missing, that is one byte past what is there
 * instead. */
static size_t fault_place(const char *bytes, size_t at)
{
	size_t before = at ? at - 1 : 0;

	if (at == 0 || is_blank(bytes[at - 1]) || strchr("[{\"", bytes[at - 1]))
		return at;
	while (before > 0 && is_blank(bytes[before - 1]))
		before--;
	return before > 0 && strchr("{,", bytes[before - 1]) ? at - 1 : at;
}

static void *json_memory(size_t bytes)
{
	return memory_new(bytes, 1);
}

void json_start(void)
{
	cJSON_InitHooks(&(cJSON_Hooks){ .malloc_fn = json_memory });
}

cJSON *book_json_parse(const char *bytes, size_t length, struct diag *d)
{
	struct text text = TEXT_EMPTY;
	const char *end = NULL;
	cJSON *tree = NULL;

	if (is_sound(bytes, length, d)) {
		json_start();
		text_add_bytes(&text, bytes, length);
		text_add_bytes(&text, "", 1);
		tree = cJSON_ParseWithLengthOpts(text.bytes, text.length, &end, true);
		if (!tree) {
			size_t at = fault_place(text.bytes, end ? (size_t)(end - text.bytes) : 0);

			text_fail(bytes, length, at < length ? at : length, d,
				"a price book in JSON");
		}
	}
	text_fini(&text);
	return tree;
}

/* ---- What is found wrong --------------------------------------------------------------------- */

/* As short as it can be said: 4.205, not 4.2050000000000001. */
static void number_words(struct text *out, double number)
{
	size_t start = out->length;

	text_print(out, "%.15g", number);
	if (strtod(out->bytes + start, NULL) != number) {
		text_cut(out, start);
		text_print(out, "%.17g", number);
	}
}

static void value_words(struct text *out, const cJSON *value)
{
	if (!value)
		return;
	if (cJSON_IsString(value))
		text_add_quoted(out, value->valuestring);
	else if (cJSON_IsNumber(value))
		number_words(out, value->valuedouble);
	else
		text_add(out, cJSON_IsObject(value) ? "an object" : cJSON_IsArray(value) ?
			"a list" :
			cJSON_IsBool(value) ? cJSON_IsTrue(value) ? "true" : "false" : "null");
}

__attribute__((format(printf, 3, 0)))
static bool fail_list(struct reading *r, const char *found, const char *expected, va_list list)
{
	char sentence[256];

	snprintf(r->fault->path, sizeof r->fault->path, "%s", r->path.bytes);
	vsnprintf(sentence, sizeof sentence, expected, list);
	return diag_set_words(&r->fault->diag, 0, 0, found, "%s", sentence);
}

bool reading_fail_word(struct reading *r, const char *found, const char *expected, ...)
{
	va_list list;

	va_start(list, expected);
	fail_list(r, found, expected, list);
	va_end(list);
	return false;
}

bool reading_fail(struct reading *r, const cJSON *value, const char *expected, ...)
{
	struct text words = TEXT_EMPTY;
	va_list list;

	value_words(&words, value);
	va_start(list, expected);
	fail_list(r, words.bytes, expected, list);
	va_end(list);
	text_fini(&words);
	return false;
}

size_t reading_down(struct reading *r, const char *key)
{
	size_t length = r->path.length;

	text_print(&r->path, "%s%s", length ? "." : "", key);
	return length;
}

void reading_up(struct reading *r, size_t length)
{
	text_cut(&r->path, length);
}

/* ---- Objects and lists ----------------------------------------------------------------------- */

static const struct json_key *key_find(const struct json_key *keys, size_t count, const char *name)
{
	for (size_t i = 0; i < count; i++)
		if (strcmp(keys[i].name, name) == 0)
			return &keys[i];
	return NULL;
}

static bool fail_unknown(struct reading *r, const char *name, const struct json_key *keys,
	size_t count)
{
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < count; i++)
		text_add_listed(&words, keys[i].name, i + 1 == count);
	reading_fail_word(r, name, "%s", words.bytes);
	text_fini(&words);
	return false;
}

/* Objects are short: each key is compared with those before it. */
static bool keys_are_sound(struct reading *r, const cJSON *object, const struct json_key *keys,
	size_t count)
{
	const cJSON *child, *other;

	cJSON_ArrayForEach(child, object) {
		if (!key_find(keys, count, child->string))
			return fail_unknown(r, child->string, keys, count);
		for (other = object->child; other != child; other = other->next) {
			if (strcmp(other->string, child->string) == 0) {
				reading_down(r, child->string);
				return reading_fail_word(r, "it twice", "each key once");
			}
		}
	}
	return true;
}

bool reading_object(struct reading *r, const cJSON *value, const struct json_key *keys,
	size_t count, void *into)
{
	if (!cJSON_IsObject(value))
		return reading_fail(r, value, "an object, { ... }");
	if (!keys_are_sound(r, value, keys, count))
		return false;
	for (size_t i = 0; i < count; i++) {
		const cJSON *child = cJSON_GetObjectItemCaseSensitive(value, keys[i].name);
		size_t up = reading_down(r, keys[i].name);

		if (!child && keys[i].wanted)
			return reading_fail(r, NULL, "%s", keys[i].wanted);
		if (child && !keys[i].read(r, child, (char *)into + keys[i].at))
			return false;
		reading_up(r, up);
	}
	return true;
}

bool reading_list(struct reading *r, const cJSON *value, int most, size_t size,
	bool (*read)(struct reading *r, const cJSON *value, void *into), void **rows, int *count)
{
	const cJSON *child;
	size_t up = r->path.length;
	int length = cJSON_GetArraySize(value);

	if (!cJSON_IsArray(value) || length > most)
		return reading_fail(r, value, "a list, [ ... ], of at most %d", most);
	*rows = arena_new(&r->book->arena, (size_t)length, size);
	*count = 0;
	cJSON_ArrayForEach(child, value) {
		text_print(&r->path, "[%d]", *count);
		if (!read(r, child, (char *)*rows + (size_t)*count * size))
			return false;
		(*count)++;
		reading_up(r, up);
	}
	return true;
}

/* ---- Values ---------------------------------------------------------------------------------- */

bool reading_text(struct reading *r, const cJSON *value, int most, const char **text)
{
	const char *bytes = cJSON_IsString(value) ? value->valuestring : "";
	size_t length = strlen(bytes), step;
	bool is_shown = length > 0;

	for (size_t i = 0; is_shown && i < length; i += step)
		is_shown = utf8_fits_text(bytes, length, i, &step);
	if (!is_shown || utf8_count(bytes, length) > (size_t)most)
		return reading_fail(r, value, "text of 1 to %d characters that can be shown", most);
	*text = arena_print(&r->book->arena, "%s", bytes);
	return true;
}

bool read_name(struct reading *r, const cJSON *value, void *into)
{
	return reading_text(r, value, NAME_MOST, into);
}

bool book_money(double price, money *amount)
{
	/* Hundredths have no exact double: 1e-6 is far less than one. */
	if (!isfinite(price) || price < 0 || price > MONEY_MOST ||
	    fabs(price * 100 - round(price * 100)) > 1e-6)
		return false;
	*amount = (money)llround(price * 100);
	return true;
}

bool read_money(struct reading *r, const cJSON *value, void *into)
{
	return book_money(cJSON_IsNumber(value) ? value->valuedouble : -1, into) ||
		reading_fail(r, value, "a number from 0 to %d with at most 2 decimal places",
			MONEY_MOST);
}

bool reading_count(struct reading *r, const cJSON *value, int *count)
{
	double number = cJSON_IsNumber(value) ? value->valuedouble : -1;

	if (!isfinite(number) || number < 1 || number > COUNT_MOST || number != floor(number))
		return reading_fail(r, value, "a whole number from 1 to %d", COUNT_MOST);
	*count = (int)number;
	return true;
}

bool reading_value(struct reading *r, const cJSON *value, const struct value_rule *rule,
	struct value *out)
{
	const char *bytes = cJSON_IsString(value) ? value->valuestring : "";
	struct scan s = scan_start(bytes, strlen(bytes), 0);
	struct diag d;

	if (!value_scan(&s, rule, r->units, out, &d))
		return reading_fail(r, value, "%s", d.expected);
	if (scan_is_done(&s))
		return true;
	value_fini(rule->kind, out);
	return reading_fail(r, value, "nothing behind the value");
}

bool reading_amount(struct reading *r, const cJSON *value, enum quantity quantity, double *si)
{
	const struct value_rule rule = { .kind = VALUE_AMOUNT, .least = MILLION / 1000,
		.most = 100000 * MILLION, .quantity = quantity };
	struct value read;

	if (!reading_value(r, value, &rule, &read))
		return false;
	*si = amount_si(&read.as.amount);
	return true;
}

bool read_weight(struct reading *r, const cJSON *value, void *into)
{
	return reading_amount(r, value, QUANTITY_WEIGHT, into);
}

bool read_volume(struct reading *r, const cJSON *value, void *into)
{
	return reading_amount(r, value, QUANTITY_VOLUME, into);
}
