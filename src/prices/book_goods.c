#include "prices/book_goods.h"

#include <stddef.h>
#include <string.h>

enum { PACKS_MOST = 20 };

static const struct value_rule lengths = { .kind = VALUE_LENGTH, .least = NM_PER_MM,
	.most = LENGTH_MOST };

const char *const pack_kind_words[PACK_KINDS + 1] = { [PACK_BULK] = "bulk", [PACK_BAG] = "bag",
	[PACK_BOX] = "box", [PACK_BUNDLE] = "bundle", [PACK_PALLET] = "pallet",
	[PACK_ROLL] = "roll", [PACK_PIECE] = "piece" };
#define PACK_WORDS "\"bulk\", \"bag\", \"box\", \"bundle\", \"pallet\", \"roll\" or \"piece\""

const char *pack_word(enum pack_kind kind)
{
	return pack_kind_words[kind];
}

static bool pack_kind(struct reading *r, const cJSON *value, void *into)
{
	for (int i = 0; cJSON_IsString(value) && i < PACK_KINDS; i++) {
		if (strcmp(value->valuestring, pack_kind_words[i]) == 0) {
			((struct pack *)into)->kind = (enum pack_kind)i;
			return true;
		}
	}
	return reading_fail(r, value, PACK_WORDS);
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

static bool is_amount(const cJSON *value, enum quantity quantity)
{
	const char *words = cJSON_IsString(value) ? value->valuestring : "";
	struct scan s = scan_start(words, strlen(words), 0);
	struct amount amount;
	struct diag d;

	return amount_scan(&s, quantity, UNITS_IMPERIAL, &amount, &d);
}

/* What the size of a pack is in: what the goods are counted in, but what is counted by volume may
 * be sold by weight; of goods of the plot's own whatever the size is in. */
static enum item_unit unit_of(const struct good_row *good, const cJSON *value)
{
	bool is_own = good->varies == VARIES_BY_TITLE;

	if (is_own ? !cJSON_IsString(value) : good->density == NO_DENSITY)
		return good->unit;
	if (is_amount(value, QUANTITY_WEIGHT))
		return UNIT_KG;
	if (!is_own)
		return good->unit;
	if (is_amount(value, QUANTITY_AREA))
		return UNIT_M2;
	return is_amount(value, QUANTITY_VOLUME) ? UNIT_M3 : UNIT_M;
}

static bool length_read(struct reading *r, const cJSON *value, double *metres)
{
	struct value read;

	if (!reading_value(r, value, &lengths, &read))
		return false;
	*metres = (double)read.as.length / (double)NM_PER_M;
	return true;
}

static bool size_read(struct reading *r, const cJSON *value, enum item_unit *unit, double *size)
{
	int count;

	*unit = unit_of(r->good, value);
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
		return reading_amount(r, value, QUANTITY_VOLUME, size);
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
	if (pack->kind == PACK_BULK && pack->unit == UNIT_EACH)
		return reading_fail(r, value, "another pack: what is counted is not sold in bulk");
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
		{ "pack", PACK_WORDS, pack_kind, 0 },
		{ "size", "how much a pack holds, such as \"2 cu ft\" or 90", pack_size, 0 },
		{ "price", NULL, read_money, offsetof(struct pack, price) },
		{ "step", NULL, pack_step, 0 },
		{ "weight", NULL, read_weight, offsetof(struct pack, weight) },
		{ "supplier", NULL, pack_supplier, 0 },
	};

	((struct pack *)into)->supplier = NO_SUPPLIER;
	((struct pack *)into)->price = NO_PRICE;
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

static bool goods_name(struct reading *r, const cJSON *value, void *into)
{
	if (r->good->varies != VARIES_BY_TITLE)
		return reading_fail(r, value, "no name: this item has its own");
	return read_name(r, value, &((struct goods *)into)->name);
}

/* A measure that only goods have which differ by this or by that. */
static bool measure_read(struct reading *r, const cJSON *value, enum good_varies this,
	enum good_varies that, const char *refusal, nm *into)
{
	struct value length;

	if (r->good->varies != this && r->good->varies != that)
		return reading_fail(r, value, "%s", refusal);
	if (!reading_value(r, value, &lengths, &length))
		return false;
	*into = length.as.length;
	return true;
}

static bool goods_length(struct reading *r, const cJSON *value, void *into)
{
	return measure_read(r, value, VARIES_BY_POST, VARIES_BY_PANEL,
		"no length: this item is sold in one", &((struct goods *)into)->length);
}

static bool goods_height(struct reading *r, const cJSON *value, void *into)
{
	return measure_read(r, value, VARIES_BY_PANEL, VARIES_BY_PANEL,
		"no height: only panels and gates have one", &((struct goods *)into)->height);
}

static bool goods_post(struct reading *r, const cJSON *value, void *into)
{
	return measure_read(r, value, VARIES_BY_POST, VARIES_BY_POST,
		"no post: only posts have a thickness", &((struct goods *)into)->across);
}

static bool goods_spec(struct reading *r, const cJSON *value, void *into)
{
	return reading_text(r, value, SPEC_MOST, &((struct goods *)into)->spec);
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

/* What the item needs besides the keys that all have. */
static bool goods_are_whole(struct reading *r, const struct goods *goods)
{
	enum good_varies varies = r->good->varies;

	if (varies == VARIES_BY_BLOCK && size_is_none(&goods->block)) {
		reading_down(r, "block");
		return reading_fail(r, NULL, "the block's size, such as \"16 in x 8 in x 6 in\"");
	}
	if (varies == VARIES_BY_TITLE && !goods->name[0]) {
		reading_down(r, "name");
		return reading_fail(r, NULL, "the name that the plot gives it");
	}
	if (goods->pack_count > 0 || goods->spec[0])
		return true;
	reading_down(r, "packs");
	return reading_fail(r, NULL, "a list of packs, or a spec");
}

bool goods_read(struct reading *r, const cJSON *value, void *into)
{
	static const struct json_key keys[] = {
		{ "item", "the id of an item, such as \"mulch\"", goods_item, 0 },
		{ "name", NULL, goods_name, 0 },
		{ "block", NULL, goods_block, 0 },
		{ "length", NULL, goods_length, 0 },
		{ "height", NULL, goods_height, 0 },
		{ "post", NULL, goods_post, 0 },
		{ "spec", NULL, goods_spec, 0 },
		{ "packs", NULL, goods_packs, 0 },
	};
	struct goods *goods = into;

	goods->spec = "";
	return reading_object(r, value, KEYS(keys), goods) && goods_are_whole(r, goods);
}
