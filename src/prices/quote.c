#include "prices/quote.h"
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

/* What a book spells a measure in, by units of the plot: imperial, metric. */
static const enum amount_unit areas[] = { AMOUNT_SQ_FT, AMOUNT_M2 };
static const enum amount_unit weights[] = { AMOUNT_LB, AMOUNT_KG };
static const enum amount_unit volumes[] = { AMOUNT_CU_YD, AMOUNT_M3 };
static const enum amount_unit small_volumes[] = { AMOUNT_CU_FT, AMOUNT_LITRE };

/* How much one of them is, in SI units. */
static double one_of(enum amount_unit unit)
{
	return amount_si(&(struct amount){ MILLION, unit });
}

/* A double's own error is no millionth more. */
static void amount_put(struct text *out, double size, enum amount_unit unit)
{
	double millionths = size / one_of(unit) * (double)MILLION;

	amount_write(out, &(struct amount){ (int64_t)ceil(millionths - 0.001), unit });
}

static const char *measure_words(struct arena *arena, enum item_unit unit, double size,
	enum units units)
{
	bool is_small = size < one_of(volumes[units]) * (1 - 1e-9);
	struct text out = TEXT_EMPTY;

	if (size <= 0)
		return "";
	switch (unit) {
	case UNIT_EACH:
		text_print(&out, "%d", (int)size);
		break;
	case UNIT_M:
		length_write(&out, llround(size * (double)NM_PER_M), units);
		break;
	case UNIT_M2:
		amount_put(&out, size, areas[units]);
		break;
	case UNIT_M3:
		amount_put(&out, size, is_small ? small_volumes[units] : volumes[units]);
		break;
	case UNIT_KG:
		amount_put(&out, size, weights[units]);
		break;
	}
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
