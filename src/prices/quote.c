#include "prices/quote.h"
#include "base/measure.h"
#include "prices/book_layout.h"

#include <math.h>
#include <string.h>

static const char *const words[QUOTE_KEYS] = { [QUOTE_PACK] = "pack", [QUOTE_SIZE] = "size",
	[QUOTE_PRICE] = "price", [QUOTE_STEP] = "step", [QUOTE_WEIGHT] = "weight",
	[QUOTE_SUPPLIER] = "supplier", [QUOTE_SPEC] = "spec",
	[QUOTE_CURRENCY] = "currency" };

static const struct quote nothing = { { "", "", "", "", "", "", "", "" } };

const char *quote_word(enum quote_key key)
{
	return words[key];
}

int quote_key_of(const struct book_fault *fault)
{
	const char *dot = strrchr(fault->path, '.');

	for (int key = 0; key < QUOTE_KEYS; key++)
		if (strcmp(dot ? dot + 1 : fault->path, words[key]) == 0)
			return key;
	return QUOTE_NONE;
}

bool quote_equal(const struct quote *a, const struct quote *b)
{
	for (int key = 0; key < QUOTE_KEYS; key++)
		if (strcmp(a->words[key], b->words[key]) != 0)
			return false;
	return true;
}

/* ---- Of a pack ------------------------------------------------------------------------------- */

/* The unit that a book has of such a measure; *one is how much one of them is. */
static const char *unit_word(enum item_unit unit, double size, enum units units, double *one)
{
	static const double yard = 27 * M3_PER_CUBIC_FOOT;
	bool is_metric = units == UNITS_METRIC;

	*one = 1;
	switch (unit) {
	case UNIT_M2:
		*one = is_metric ? 1 : area_of(NM_PER_FOOT, NM_PER_FOOT);
		return is_metric ? "m2" : "sq ft";
	case UNIT_M3:
		if (is_metric ? size >= 1 : size >= yard)
			*one = is_metric ? 1 : yard;
		else
			*one = is_metric ? 0.001 : M3_PER_CUBIC_FOOT;
		return is_metric ? *one < 1 ? "L" : "m3" : *one < yard ? "cu ft" : "cu yd";
	case UNIT_KG:
		*one = is_metric ? 1 : KG_PER_POUND;
		return is_metric ? "kg" : "lb";
	case UNIT_M:
	case UNIT_EACH:
		break;
	}
	return "";
}

/* A double's own error is no millionth more. */
static const char *measure_words(struct arena *arena, enum item_unit unit, double size,
	enum units units)
{
	struct text out = TEXT_EMPTY;
	double one;
	const char *word = unit_word(unit, size, units, &one);

	if (size <= 0)
		return "";
	if (unit == UNIT_M)
		length_write(&out, llround(size * (double)NM_PER_M), units);
	else
		text_add_decimal(&out, (int64_t)ceil(size / one * (double)MILLION - 0.001), 6);
	if (*word)
		text_print(&out, " %s", word);
	return text_keep(&out, arena);
}

struct quote quote_of_pack(struct arena *arena, const struct pack *pack, enum units units)
{
	struct quote quote = nothing;

	quote.words[QUOTE_PACK] = pack_word(pack->kind);
	quote.words[QUOTE_SIZE] = measure_words(arena, pack->unit, pack->size, units);
	quote.words[QUOTE_STEP] = measure_words(arena, pack->unit, pack->step, units);
	quote.words[QUOTE_WEIGHT] = measure_words(arena, UNIT_KG, pack->weight, units);
	return quote;
}

/* ---- Of a book ------------------------------------------------------------------------------- */

static const char *value_words(struct arena *arena, const cJSON *object, const char *key)
{
	const cJSON *value = cJSON_GetObjectItemCaseSensitive(object, key);
	struct text out = TEXT_EMPTY;

	if (!value)
		return "";
	if (cJSON_IsString(value))
		text_add(&out, value->valuestring);
	else
		book_add_value(&out, value);
	return text_keep(&out, arena);
}

struct quote quote_of_book(struct arena *arena, const struct text *bytes, int row, int pack)
{
	struct quote quote = nothing;
	struct diag d;
	cJSON *tree = book_json_parse(bytes->bytes, bytes->length, &d);
	const cJSON *goods = cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(tree, "goods"),
		row);
	const cJSON *of = cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(goods, "packs"),
		pack);

	for (int key = 0; key < QUOTE_KEYS; key++)
		quote.words[key] = value_words(arena, key == QUOTE_CURRENCY ? tree :
			key == QUOTE_SPEC ? goods : of, words[key]);
	cJSON_Delete(tree);
	return quote;
}
