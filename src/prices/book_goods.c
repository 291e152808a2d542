#include "prices/book_goods.h"

#include <stddef.h>
#include <string.h>

enum { PACKS_MOST = 20 };

static const struct value_rule lengths = { .kind = VALUE_LENGTH, .least = NM_PER_MM,
	.most = LENGTH_MOST };

static const char *const pack_words[] = { [PACK_BULK] = "bulk", [PACK_BAG] = "bag",
	[PACK_PALLET] = "pallet", [PACK_ROLL] = "roll", [PACK_PIECE] = "piece" };
enum { PACK_KINDS = sizeof pack_words / sizeof *pack_words };

const char *pack_word(enum pack_kind kind)
{
	return pack_words[kind];
}

static bool pack_kind(struct reading *r, const cJSON *value, void *into)
{
	for (int i = 0; cJSON_IsString(value) && i < PACK_KINDS; i++) {
		if (strcmp(value->valuestring, pack_words[i]) == 0) {
			((struct pack *)into)->kind = (enum pack_kind)i;
			return true;
		}
	}
	return reading_fail(r, value, "\"bulk\", \"bag\", \"pallet\", \"roll\" or \"piece\"");
}

/* With single blanks, and none at either end. */
static const char *plain_words(struct reading *r, const char *words)
{
	char *plain = arena_print(&r->book->arena, "%s", words), *end = plain;

	for (const char *c = words + strspn(words, " \t"); *c; c++) {
		bool is_blank = *c == ' ' || *c == '\t';

		if (is_blank && (c[1] == ' ' || c[1] == '\t' || c[1] == '\0'))
			continue;
		*end++ = is_blank ? ' ' : *c;
	}
	*end = '\0';
	return plain;
}

static bool is_by_weight(const cJSON *value)
{
	const char *words = cJSON_IsString(value) ? value->valuestring : "";
	struct scan s = scan_start(words, strlen(words), 0);
	struct amount amount;
	struct diag d;

	return amount_scan(&s, QUANTITY_WEIGHT, UNITS_IMPERIAL, &amount, &d);
}

static bool length_read(struct reading *r, const cJSON *value, double *metres)
{
	struct value read;

	if (!reading_value(r, value, &lengths, &read))
		return false;
	*metres = (double)read.as.length / (double)NM_PER_M;
	return true;
}

/* A size in the item's unit; what is counted by volume may be sold by weight. */
static bool size_read(struct reading *r, const cJSON *value, enum item_unit *unit, double *size)
{
	int count;

	*unit = r->good->unit;
	switch (*unit) {
	case UNIT_EACH:
		if (!reading_count(r, value, &count))
			return false;
		*size = count;
		return true;
	case UNIT_M:
		return length_read(r, value, size);
	case UNIT_M2:
		return reading_amount(r, value, QUANTITY_AREA, size);
	case UNIT_M3:
		if (r->good->density == NO_DENSITY || !is_by_weight(value))
			return reading_amount(r, value, QUANTITY_VOLUME, size);
		*unit = UNIT_KG;
		break;
	case UNIT_KG:
		break;
	}
	return reading_amount(r, value, QUANTITY_WEIGHT, size);
}

static bool pack_size(struct reading *r, const cJSON *value, void *into)
{
	struct pack *pack = into;

	if (!size_read(r, value, &pack->unit, &pack->size))
		return false;
	if (pack->kind == PACK_BULK && pack->unit != UNIT_M3 && pack->unit != UNIT_KG)
		return reading_fail(r, value, "another pack: only volumes and weights are sold in "
			"bulk");
	if (pack->unit == UNIT_EACH)
		pack->words = arena_print(&r->book->arena, "%d", (int)pack->size);
	else
		pack->words = plain_words(r, value->valuestring);
	return true;
}

static bool pack_step(struct reading *r, const cJSON *value, void *into)
{
	struct pack *pack = into;
	enum item_unit unit;

	if (pack->kind != PACK_BULK)
		return reading_fail(r, value, "no step: only bulk is sold in steps");
	if (!size_read(r, value, &unit, &pack->step))
		return false;
	if (unit != pack->unit || pack->step > pack->size)
		return reading_fail(r, value, "a step of at most the size, %s, in units of that "
			"kind",
			pack->words);
	return true;
}

static bool pack_supplier(struct reading *r, const cJSON *value, void *into)
{
	int supplier = cJSON_IsString(value) ? book_supplier(r->book, value->valuestring) :
		NO_SUPPLIER;

	((struct pack *)into)->supplier = supplier;
	return supplier != NO_SUPPLIER ||
		reading_fail(r, value, "the name of one of the suppliers listed");
}

static bool pack_read(struct reading *r, const cJSON *value, void *into)
{
	static const struct json_key keys[] = {
		{ "pack", "\"bulk\", \"bag\", \"pallet\", \"roll\" or \"piece\"", pack_kind, 0 },
		{ "size", "how much a pack holds, such as \"2 cu ft\" or 90", pack_size, 0 },
		{ "price", "the price of a pack, such as 4.85", read_money,
			offsetof(struct pack, price) },
		{ "step", NULL, pack_step, 0 },
		{ "weight", NULL, read_weight, offsetof(struct pack, weight) },
		{ "supplier", NULL, pack_supplier, 0 },
	};

	((struct pack *)into)->supplier = NO_SUPPLIER;
	return reading_object(r, value, KEYS(keys), into);
}

static bool goods_item(struct reading *r, const cJSON *value, void *into)
{
	struct goods *goods = into;
	struct text words = TEXT_EMPTY;
	const char *name;

	if (cJSON_IsString(value) && good_find(value->valuestring, &goods->good, &name)) {
		goods->name = arena_print(&r->book->arena, "%s", name);
		r->good = good_row(goods->good);
		return true;
	}
	good_list(&words);
	reading_fail(r, value, "an item of the takeoff: %s", words.bytes);
	text_fini(&words);
	return false;
}

static bool goods_block(struct reading *r, const cJSON *value, void *into)
{
	struct value size;

	if (r->good->varies != VARIES_BY_BLOCK)
		return reading_fail(r, value, "no block: this item has none");
	if (!reading_value(r, value, &attribute_row(BED_BLOCK)->rule, &size))
		return false;
	((struct goods *)into)->block = size.as.size;
	return true;
}

static bool goods_length(struct reading *r, const cJSON *value, void *into)
{
	struct value length;

	if (r->good->varies != VARIES_BY_LENGTH)
		return reading_fail(r, value, "no length: this item is sold in one");
	if (!reading_value(r, value, &lengths, &length))
		return false;
	((struct goods *)into)->length = length.as.length;
	return true;
}

static bool goods_packs(struct reading *r, const cJSON *value, void *into)
{
	struct goods *goods = into;
	void *rows;

	if (!reading_list(r, value, PACKS_MOST, sizeof *goods->packs, pack_read, &rows,
		&goods->pack_count))
		return false;
	goods->packs = rows;
	return goods->pack_count > 0 || reading_fail(r, value, "at least one pack");
}

bool goods_read(struct reading *r, const cJSON *value, void *into)
{
	static const struct json_key keys[] = {
		{ "item", "the id of an item, such as \"mulch\"", goods_item, 0 },
		{ "block", NULL, goods_block, 0 },
		{ "length", NULL, goods_length, 0 },
		{ "packs", "a list of packs", goods_packs, 0 },
	};
	struct goods *goods = into;

	if (!reading_object(r, value, KEYS(keys), goods))
		return false;
	if (r->good->varies != VARIES_BY_BLOCK || !size_is_none(&goods->block))
		return true;
	reading_down(r, "block");
	return reading_fail(r, NULL, "the block's size, such as \"16 in x 8 in x 6 in\"");
}
