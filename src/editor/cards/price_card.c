#include "editor/cards/price_card.h"
#include "base/memory.h"
#include "editor/cards/card_ask.h"
#include "prices/book_write.h"
#include "prices/prices.h"
#include "report/new_book.h"
#include "report/words/item_words.h"

#include <stdlib.h>
#include <string.h>

/* The card's owner. */
struct pricing_card {
	struct editor *editor;
	struct arena arena;
	const struct item *item;
	struct wanted_goods goods; /* whose row it is, or is to be */
	int pack;
	char *path;
	struct quote began; /* what the book said when the card was opened */
	bool is_written;
};

/* ---- Fields ---------------------------------------------------------------------------------- */

static const struct value_rule price_rule = { .kind = VALUE_DECIMAL, .most = 1000000 * MILLION };
static const struct value_rule kind_rule = { .kind = VALUE_CHOICE, .words = pack_kind_words };
static const struct value_rule text_rule = { .kind = VALUE_TEXT, .least = 1, .most = SPEC_MOST };
static const struct value_rule weight_rule = { .kind = VALUE_AMOUNT, .least = MILLION / 1000,
	.most = 100000 * MILLION, .quantity = QUANTITY_WEIGHT };

/* In the order of the card. */
static const struct {
	enum quote_key key;
	struct field_spec spec;
} fields[QUOTE_KEYS] = {
	{ QUOTE_PRICE, { .label = "Price", .rule = &price_rule, .unset = "none",
		.meaning = "What one pack costs; of bulk, what it holds." } },
	{ QUOTE_PACK, { .label = "Sold in", .rule = &kind_rule, .required = true,
		.meaning = "Bulk is measured out, all else comes in whole packs." } },
	{ QUOTE_SIZE, { .label = "Holds", .rule = &text_rule, .required = true,
		.meaning = "How much the price buys: a measure, or so many pieces." } },
	{ QUOTE_STEP, { .label = "Step", .rule = &text_rule, .unset = "as is usual",
		.meaning = "Of bulk alone: it is sold in so much at a time." } },
	{ QUOTE_WEIGHT, { .label = "Weight", .rule = &weight_rule, .unset = "of what it holds",
		.meaning = "Of one pack." } },
	{ QUOTE_SUPPLIER, { .label = "Supplier", .rule = &text_rule, .unset = "collected" } },
	{ QUOTE_SPEC, { .label = "Spec", .rule = &text_rule, .unset = "nothing",
		.meaning = "What to ask for besides: grade, colour, treatment." } },
	{ QUOTE_CURRENCY, { .label = "Currency", .rule = &text_rule, .required = true,
		.meaning = "Of all prices in the book, such as USD." } },
};

static int field_of(enum quote_key key)
{
	int at = 0;

	while (fields[at].key != key)
		at++;
	return at;
}

/* Who delivers is one that the book lists. */
static const char *suppliers_meaning(struct arena *arena, const struct book *book)
{
	struct text words = TEXT_EMPTY;

	text_add(&words, book->supplier_count ? "" : "none");
	for (int i = 0; i < book->supplier_count; i++)
		text_add_listed(&words, book->suppliers[i].name, i + 1 == book->supplier_count);
	return arena_print(arena, "Who delivers it, of the book's: %s.",
		text_keep(&words, arena));
}

/* A number alone is in what the item is counted in. */
static const struct value_rule *measure_rule(const struct item *item)
{
	static const struct value_rule rules[] = { [UNIT_EACH] = { .kind = VALUE_COUNT },
		[UNIT_M] = { .kind = VALUE_LENGTH },
		[UNIT_M2] = { .kind = VALUE_AMOUNT, .quantity = QUANTITY_AREA },
		[UNIT_M3] = { .kind = VALUE_AMOUNT, .quantity = QUANTITY_VOLUME },
		[UNIT_KG] = { .kind = VALUE_AMOUNT, .quantity = QUANTITY_WEIGHT } };

	return &rules[item_unit(item)];
}

/* A measure as the book has it, whatever somebody typed. */
static const char *measure_words(const struct pricing_card *of, const char *typed, bool is_bulk)
{
	const struct asked asked = { measure_rule(of->item), plot_units(of->editor->plot),
		is_bulk ? SPAN_LONG : SPAN_SMALL, false };
	struct text words = TEXT_EMPTY;

	strict_put(&asked, typed, 0, &words);
	return text_keep(&words, &of->editor->words);
}

/* "4.20", as the book spells it. */
static void price_words(struct text *out, int64_t millionths)
{
	const int64_t hundredth = MILLION / 100;

	if (millionths % hundredth)
		text_add_decimal(out, millionths, DECIMAL_PLACES);
	else
		text_print(out, "%lld.%02d", (long long)(millionths / MILLION),
			(int)(millionths % MILLION / hundredth));
}

static bool word_read(const struct card *card, int field, struct arena *arena, const char **word,
	struct fault *fault)
{
	const struct value_rule *rule = card->fields[field].rule;
	struct text words = TEXT_EMPTY;
	struct value value;

	if (!card_read(card, field, &value, fault))
		return false;
	if (value.set && rule == &price_rule)
		price_words(&words, value.as.number);
	else
		card_value_words(&words, rule, &value, card->units);
	value_fini(rule->kind, &value);
	*word = text_keep(&words, arena);
	return true;
}

/* Its words are in the arena of the editor. */
static bool quote_read(const struct card *card, struct quote *quote, struct fault *fault)
{
	const struct pricing_card *of = card->owner;
	bool is_bulk;

	for (int i = 0; i < QUOTE_KEYS; i++)
		if (!word_read(card, i, &of->editor->words, &quote->words[fields[i].key], fault))
			return false;
	is_bulk = strcmp(quote->words[QUOTE_PACK], pack_word(PACK_BULK)) == 0;
	quote->words[QUOTE_SIZE] = measure_words(of, quote->words[QUOTE_SIZE], is_bulk);
	quote->words[QUOTE_STEP] = measure_words(of, quote->words[QUOTE_STEP], is_bulk);
	return true;
}

/* ---- The book's file ------------------------------------------------------------------------- */

static bool refuse(const struct card *card, const struct book_fault *wrong, const char *path,
	struct fault *fault)
{
	int key = quote_key_of(wrong);
	int field = key == QUOTE_NONE ? 0 : field_of((enum quote_key)key);
	struct text words = TEXT_EMPTY;

	if (key != QUOTE_NONE)
		return fault_set(fault, field, "%s: found %s, expected %s",
			card->fields[field].label, wrong->diag.found, wrong->diag.expected);
	prices_fault(&words, path, wrong);
	fault_set(fault, field, "%s", words.bytes);
	text_fini(&words);
	return false;
}

/* The book as it is now, and where in it the pack is. False, *why saying it, where it cannot be
 * read. */
static bool book_find(const struct pricing_card *of, struct text *bytes, struct quote_place *place,
	struct text *why)
{
	struct file_error error;
	struct book_fault wrong;
	const struct goods *goods;
	struct book book;

	if (!file_read(of->path, BOOK_BYTES_MOST, bytes, &error)) {
		text_print(why, "%s.", error.sentence);
		return false;
	}
	if (!book_read_in(bytes->bytes, bytes->length, plot_units(of->editor->plot), &book,
		&wrong)) {
		prices_fault(why, of->path, &wrong);
		return false;
	}
	goods = book_goods(&book, &of->goods);
	*place = (struct quote_place){ goods ? (int)(goods - book.goods) : ROW_NEW, of->pack,
		of->goods };
	book_fini(&book);
	return true;
}

/* Nobody else has changed what the card is about. */
static bool is_as_begun(const struct pricing_card *of, const struct text *bytes,
	const struct quote_place *place)
{
	struct quote now = quote_of_book(&of->editor->words, bytes, place->row, place->pack);

	return quote_equal(&now, &of->began);
}

static bool book_write(const struct card *card, const struct quote *quote, struct fault *fault)
{
	struct pricing_card *of = card->owner;
	struct text bytes = TEXT_EMPTY, out = TEXT_EMPTY, why = TEXT_EMPTY;
	struct quote_place place;
	struct book_fault wrong;
	struct file_error error;

	if (!book_find(of, &bytes, &place, &why))
		fault_set(fault, 0, "Nothing written: %s", why.bytes);
	else if (!is_as_begun(of, &bytes, &place))
		fault_set(fault, 0, "Nothing written: somebody else has changed this in the book. "
			"Leave the card to see it.");
	else if (!book_put(&out, &bytes, &place, quote, plot_units(of->editor->plot), &wrong))
		refuse(card, &wrong, of->path, fault);
	else if (!file_write(of->path, out.bytes, out.length, &error))
		fault_set(fault, 0, "Nothing written: %s.", error.sentence);
	else
		of->is_written = true;
	text_fini(&why);
	text_fini(&out);
	text_fini(&bytes);
	return of->is_written;
}

/* ---- The card -------------------------------------------------------------------------------- */

static bool accept(struct card *card, struct fault *fault)
{
	const struct pricing_card *of = card->owner;
	struct quote quote;

	return quote_read(card, &quote, fault) && (quote_equal(&quote, &of->began) ||
		book_write(card, &quote, fault));
}

/* Where the book has no pack of the item what it is sold in at a counter is offered. */
static struct quote quote_offered(struct pricing_card *of)
{
	struct quote quote = of->began, usual;

	if (of->pack > 0 || quote.words[QUOTE_PACK][0])
		return quote;
	usual = new_quote(&of->arena, of->item, plot_units(of->editor->plot));
	for (int key = 0; key <= QUOTE_SUPPLIER; key++)
		quote.words[key] = usual.words[key];
	return quote;
}

/* A row for all lengths or heights is for more than the item. */
static const char *title_of(struct pricing_card *of)
{
	const struct report report = editor_report(of->editor, &of->arena);
	const struct item *item = of->item;
	const struct wanted_goods own = item_wanted(item);
	bool is_wider = of->goods.length != own.length || of->goods.height != own.height ||
		of->goods.across != own.across;

	return arena_print(&of->arena, "Price of %s%s", is_wider ? item_label(&report, item) :
		untied(&report, item_sized_label(&report, item)), is_wider ? ", any size" : "");
}

static void ask(struct pricing_card *of)
{
	const struct quote offered = quote_offered(of);
	struct field_spec specs[QUOTE_KEYS];

	for (int i = 0; i < QUOTE_KEYS; i++) {
		specs[i] = fields[i].spec;
		specs[i].typed = offered.words[fields[i].key];
		if (fields[i].key == QUOTE_SUPPLIER)
			specs[i].meaning = suppliers_meaning(&of->arena, &of->editor->book);
	}
	card_ask(of->editor, &(struct card_spec){ .title = title_of(of),
		.done = "write it into the book", .fields = specs, .count = QUOTE_KEYS,
		.accept = accept, .owner = of });
}

bool price_card_fill(struct editor *editor, const struct item *item, int pack)
{
	const struct goods *goods = item->purchase->goods;
	struct pricing_card of = { .editor = editor, .arena = ARENA_EMPTY, .item = item,
		.goods = item_wanted(item), .pack = pack,
		.path = prices_path(editor->plot, editor->store.path) };
	struct text bytes = TEXT_EMPTY, why = TEXT_EMPTY;
	struct quote_place place;

	if (goods)
		of.goods = (struct wanted_goods){ goods->good, goods->name, goods->block,
			goods->length, goods->height, goods->across };
	if (book_find(&of, &bytes, &place, &why)) {
		of.began = quote_of_book(&of.arena, &bytes, place.row, place.pack);
		ask(&of);
	} else {
		editor_say(editor, "No prices: %s", why.bytes);
	}
	text_fini(&why);
	text_fini(&bytes);
	free(of.path);
	arena_clear(&of.arena);
	return of.is_written;
}
