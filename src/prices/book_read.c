#include "prices/book_goods.h"

#include <stddef.h>
#include <stdlib.h>
#include <string.h>

enum { SUPPLIERS_MOST = 100, GOODS_MOST = 500 };

/* ---- Suppliers and the vehicle --------------------------------------------------------------- */

static bool supplier_read(struct reading *r, const cJSON *value, void *into)
{
	static const struct json_key keys[] = {
		{ "name", "the supplier's name", read_name, offsetof(struct supplier, name) },
		{ "delivery", "what a delivery costs, such as 65.00", read_money,
			offsetof(struct supplier, delivery) },
		{ "carries", NULL, read_weight, offsetof(struct supplier, carries) },
		{ "holds", NULL, read_volume, offsetof(struct supplier, holds) },
	};

	return reading_object(r, value, KEYS(keys), into);
}

static bool suppliers_read(struct reading *r, const cJSON *value, void *into)
{
	struct book *book = into;
	size_t up = r->path.length;
	void *rows;

	if (!reading_list(r, value, SUPPLIERS_MOST, sizeof *book->suppliers, supplier_read, &rows,
		&book->supplier_count))
		return false;
	book->suppliers = rows;
	for (int i = 0; i < book->supplier_count; i++) {
		int first = book_supplier(book, book->suppliers[i].name);

		text_print(&r->path, "[%d].name", i);
		if (first != i)
			return reading_fail_word(r, book->suppliers[i].name,
				"another name: suppliers[%d] has it", first);
		reading_up(r, up);
	}
	return true;
}

static bool vehicle_read(struct reading *r, const cJSON *value, void *into)
{
	static const struct json_key keys[] = {
		{ "name", "what it is called", read_name, offsetof(struct vehicle, name) },
		{ "carries", "the weight it may carry, such as 1500 lb", read_weight,
			offsetof(struct vehicle, carries) },
		{ "holds", NULL, read_volume, offsetof(struct vehicle, holds) },
	};

	return reading_object(r, value, KEYS(keys), into);
}

/* ---- The whole ------------------------------------------------------------------------------- */

static bool book_format(struct reading *r, const cJSON *value, void *into)
{
	(void)into;
	return (cJSON_IsString(value) && strcmp(value->valuestring, "parterre-prices") == 0) ||
		reading_fail(r, value, "\"parterre-prices\"");
}

static bool book_version(struct reading *r, const cJSON *value, void *into)
{
	(void)into;
	return (cJSON_IsNumber(value) && value->valuedouble == BOOK_VERSION) ||
		reading_fail(r, value, "%d, the version that can be read here", BOOK_VERSION);
}

static bool book_note(struct reading *r, const cJSON *value, void *into)
{
	return reading_text(r, value, NOTE_MOST, &((struct book *)into)->note);
}

static bool book_currency(struct reading *r, const cJSON *value, void *into)
{
	return reading_text(r, value, CURRENCY_MOST, &((struct book *)into)->currency);
}

/* A value of one of the book's blocks, by its keyword. */
static bool block_value_read(struct reading *r, const cJSON *value, struct block *block)
{
	size_t up = r->path.length;
	struct value read;
	enum attribute a;

	if (!attribute_find(block->kind, value->string, strlen(value->string), &a))
		return reading_fail_word(r, value->string, block->kind == BLOCK_RATES ?
			"a kind of work that a plot has rates for" :
			"a keyword of a plot's allow block");
	reading_down(r, value->string);
	if (block_value(block, a)->set)
		return reading_fail_word(r, "it twice", "each keyword once");
	if (!reading_value(r, value, &attribute_row(a)->rule, &read))
		return false;
	block_set(block, a, read);
	reading_up(r, up);
	return true;
}

static bool book_block(struct reading *r, const cJSON *value, void *into)
{
	const cJSON *child;

	if (!cJSON_IsObject(value))
		return reading_fail(r, value, "an object, { ... }");
	cJSON_ArrayForEach(child, value)
		if (!block_value_read(r, child, into))
			return false;
	return true;
}

static bool all_goods_read(struct reading *r, const cJSON *value, void *into)
{
	struct book *book = into;
	struct text id = TEXT_EMPTY;
	size_t up = r->path.length;
	void *rows;

	if (!reading_list(r, value, GOODS_MOST, sizeof *book->goods, goods_read, &rows,
		&book->goods_count))
		return false;
	book->goods = rows;
	for (int i = 0; i < book->goods_count; i++) {
		const struct goods *goods = &book->goods[i];
		const struct goods *first = book_goods(book, &(struct wanted_goods){ goods->good,
			goods->name, goods->block, goods->length, goods->height, goods->across });

		text_print(&r->path, "[%d]", i);
		if (first != goods) {
			good_add_id(&id, goods->good, goods->name);
			reading_fail_word(r, id.bytes, "another item: goods[%d] has it",
				(int)(first - book->goods));
			text_fini(&id);
			return false;
		}
		reading_up(r, up);
	}
	return true;
}

static bool tree_read(struct reading *r, const cJSON *tree)
{
	static const struct json_key keys[] = {
		{ "format", "\"parterre-prices\"", book_format, 0 },
		{ "version", "1", book_version, 0 },
		{ "note", NULL, book_note, 0 },
		{ "currency", "the currency, such as \"USD\"", book_currency, 0 },
		{ "allow", NULL, book_block, offsetof(struct book, allow) },
		{ "rates", NULL, book_block, offsetof(struct book, rates) },
		{ "suppliers", NULL, suppliers_read, 0 },
		{ "goods", NULL, all_goods_read, 0 },
		{ "vehicle", NULL, vehicle_read, offsetof(struct book, vehicle) },
	};
	const cJSON *version = cJSON_GetObjectItemCaseSensitive(tree, "version");

	/* A later version may have keys unknown here: the version is reported, not the keys. */
	if (cJSON_IsNumber(version) && version->valuedouble != BOOK_VERSION) {
		reading_down(r, "version");
		return book_version(r, version, NULL);
	}
	return reading_object(r, tree, KEYS(keys), r->book);
}

bool book_read(const char *bytes, size_t length, struct book *book, struct book_fault *fault)
{
	return book_read_in(bytes, length, UNITS_IMPERIAL, book, fault);
}

bool book_read_in(const char *bytes, size_t length, enum units units, struct book *book,
	struct book_fault *fault)
{
	struct reading reading = { .book = book, .path = TEXT_EMPTY, .units = units,
		.fault = fault };
	cJSON *tree;
	bool is_read;

	*book = (struct book){ .allow = { .kind = BLOCK_ALLOW }, .rates = { .kind = BLOCK_RATES },
		.note = "", .currency = "", .arena = ARENA_EMPTY };
	*fault = (struct book_fault){ .path = "" };
	if (length > BOOK_BYTES_MOST)
		return diag_set_words(&fault->diag, 0, 0, "more", "at most 1 MiB");
	tree = book_json_parse(bytes, length, &fault->diag);
	if (!tree)
		return false;
	is_read = tree_read(&reading, tree);
	cJSON_Delete(tree);
	text_fini(&reading.path);
	if (!is_read)
		book_fini(book);
	return is_read;
}

void book_fini(struct book *book)
{
	block_fini(&book->allow);
	block_fini(&book->rates);
	arena_clear(&book->arena);
	*book = (struct book){ .allow = { .kind = BLOCK_ALLOW }, .rates = { .kind = BLOCK_RATES } };
}

/* Whether a measure of the book's, 0 for any, is the one that is wanted; *given counts those that
 * are. */
static bool measure_fits(nm has, nm wanted, int *given)
{
	if (has == 0)
		return true;
	(*given)++;
	return wanted > 0 && llabs(has - wanted) <= NM_PER_MM;
}

static bool goods_fit(const struct goods *goods, const struct wanted_goods *wanted, int *given)
{
	*given = 0;
	return goods->good == wanted->good && strcmp(goods->name, wanted->name) == 0 &&
		size_equal(&goods->block, &wanted->block) &&
		measure_fits(goods->length, wanted->length, given) &&
		measure_fits(goods->height, wanted->height, given) &&
		measure_fits(goods->across, wanted->across, given);
}

const struct goods *book_goods(const struct book *book, const struct wanted_goods *wanted)
{
	const struct goods *best = NULL;
	int most = -1, given;

	for (int i = 0; i < book->goods_count; i++) {
		if (!goods_fit(&book->goods[i], wanted, &given) || given <= most)
			continue;
		best = &book->goods[i];
		most = given;
	}
	return best;
}

int book_supplier(const struct book *book, const char *name)
{
	for (int i = 0; i < book->supplier_count; i++)
		if (strcmp(book->suppliers[i].name, name) == 0)
			return i;
	return NO_SUPPLIER;
}
