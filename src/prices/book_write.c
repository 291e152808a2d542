#include "prices/book_write.h"
#include "prices/book_layout.h"

#include <stdlib.h>
#include <string.h>

/* ---- Values ---------------------------------------------------------------------------------- */

/* A price and a count of pieces are numbers; what is none is left to the reader to refuse. */
static cJSON *value_of(enum quote_key key, const char *words)
{
	size_t whole = strspn(words, "0123456789"), end = whole;

	if (words[whole] == '.')
		end += 1 + strspn(words + whole + 1, "0123456789");
	if ((key == QUOTE_PRICE || key == QUOTE_SIZE) && whole > 0 && !words[end])
		return cJSON_CreateNumber(strtod(words, NULL));
	return cJSON_CreateString(words);
}

/* In the place of the key, else behind all others; "" takes it out. */
static void key_set(cJSON *object, enum quote_key key, const char *words)
{
	const char *name = quote_word(key);

	if (!*words)
		cJSON_DeleteItemFromObjectCaseSensitive(object, name);
	else if (cJSON_GetObjectItemCaseSensitive(object, name))
		cJSON_ReplaceItemInObjectCaseSensitive(object, name, value_of(key, words));
	else
		cJSON_AddItemToObject(object, name, value_of(key, words));
}

static cJSON *list_of(cJSON *object, const char *name)
{
	cJSON *list = cJSON_GetObjectItemCaseSensitive(object, name);

	return list ? list : cJSON_AddArrayToObject(object, name);
}

/* ---- Goods ----------------------------------------------------------------------------------- */

static void add_length(cJSON *row, const char *name, nm length, enum units units)
{
	struct text words = TEXT_EMPTY;

	length_write(&words, length, units);
	if (length > 0)
		cJSON_AddStringToObject(row, name, words.bytes);
	text_fini(&words);
}

static void add_block(cJSON *row, const struct size *block, enum units units)
{
	const struct value size = { .set = true, .as.size = *block };
	struct text words = TEXT_EMPTY;

	if (size_is_none(block))
		return;
	value_write(&words, &attribute_row(BED_BLOCK)->rule, &size, units);
	cJSON_AddStringToObject(row, "block", words.bytes);
	text_fini(&words);
}

/* Says whose row it is, and nothing more yet. */
static cJSON *row_add(cJSON *tree, const struct wanted_goods *goods, enum units units)
{
	cJSON *row = cJSON_CreateObject();
	struct text id = TEXT_EMPTY;

	good_add_id(&id, goods->good, goods->name);
	cJSON_AddStringToObject(row, "item", id.bytes);
	if (good_row(goods->good)->varies == VARIES_BY_TITLE)
		cJSON_AddStringToObject(row, "name", goods->name);
	add_block(row, &goods->block, units);
	add_length(row, "length", goods->length, units);
	add_length(row, "height", goods->height, units);
	add_length(row, "post", goods->across, units);
	cJSON_AddItemToArray(list_of(tree, "goods"), row);
	text_fini(&id);
	return row;
}

static void row_put(cJSON *row, int at, const struct quote *quote)
{
	cJSON *packs, *pack;

	key_set(row, QUOTE_SPEC, quote->words[QUOTE_SPEC]);
	packs = list_of(row, "packs");
	pack = cJSON_GetArrayItem(packs, at);
	if (!pack) {
		pack = cJSON_CreateObject();
		cJSON_AddItemToArray(packs, pack);
	}
	for (int key = 0; key <= QUOTE_SUPPLIER; key++)
		key_set(pack, (enum quote_key)key, quote->words[key]);
}

/* ---- Books ----------------------------------------------------------------------------------- */

/* Only what can be read again is handed out. */
static bool hand_out(struct text *out, const cJSON *tree, enum units units,
	struct book_fault *fault)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	bool is_read;

	book_lay_out(&text, tree);
	is_read = book_read_in(text.bytes, text.length, units, &book, fault);
	if (is_read) {
		text_add_bytes(out, text.bytes, text.length);
		book_fini(&book);
	}
	text_fini(&text);
	return is_read;
}

bool book_make(struct text *out, const char *currency, const struct new_goods *list, int count,
	enum units units, struct book_fault *fault)
{
	cJSON *tree;
	bool is_made;

	json_start();
	tree = cJSON_CreateObject();
	cJSON_AddStringToObject(tree, "format", "parterre-prices");
	cJSON_AddNumberToObject(tree, "version", BOOK_VERSION);
	cJSON_AddStringToObject(tree, "note", "To be filled in: each pack needs a price, the book "
		"its currency.");
	cJSON_AddStringToObject(tree, "currency", currency);
	list_of(tree, "goods");
	for (int i = 0; i < count; i++)
		row_put(row_add(tree, &list[i].goods, units), 0, &list[i].quote);
	is_made = hand_out(out, tree, units, fault);
	cJSON_Delete(tree);
	return is_made;
}

bool book_put(struct text *out, const struct text *bytes, const struct quote_place *place,
	const struct quote *quote, enum units units, struct book_fault *fault)
{
	cJSON *tree, *row;
	bool is_put;

	*fault = (struct book_fault){ .path = "" };
	tree = book_json_parse(bytes->bytes, bytes->length, &fault->diag);
	if (!tree)
		return false;
	row = place->row == ROW_NEW ? row_add(tree, &place->goods, units) :
		cJSON_GetArrayItem(list_of(tree, "goods"), place->row);
	key_set(tree, QUOTE_CURRENCY, quote->words[QUOTE_CURRENCY]);
	row_put(row, place->pack, quote);
	is_put = hand_out(out, tree, units, fault);
	cJSON_Delete(tree);
	return is_put;
}
