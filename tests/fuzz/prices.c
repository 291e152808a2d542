/* Any bytes are either refused with a place and a reason, or read into a sound price book, which a
 * pack that is put back as it was leaves the same. */

#include "support/fuzz.h"

#include "prices/book_write.h"

#include <assert.h>
#include <math.h>
#include <string.h>

static void check_pack(const struct book *book, const struct pack *pack)
{
	assert(isfinite(pack->size) && pack->size > 0);
	assert(isfinite(pack->step) && pack->step >= 0 && pack->step <= pack->size);
	assert(pack->step <= 0 || pack->kind == PACK_BULK);
	assert(pack->price >= NO_PRICE && pack->price <= 100000000);
	assert(isfinite(pack->weight) && pack->weight >= 0);
	assert(pack->supplier >= NO_SUPPLIER && pack->supplier < book->supplier_count);
	assert(strlen(pack->words) > 0 && strlen(pack->words) < BOOK_BYTES_MOST);
}

static void check_good(const struct goods *goods)
{
	struct text id = TEXT_EMPTY;
	enum good good;
	const char *name;

	good_add_id(&id, goods->good, goods->name);
	assert(good_find(id.bytes, &good, &name) && good == goods->good);
	assert(good_row(good)->varies == VARIES_BY_TITLE ? goods->name[0] :
		strcmp(name, goods->name) == 0);
	assert((good_row(good)->varies == VARIES_BY_BLOCK) == !size_is_none(&goods->block));
	text_fini(&id);
}

static void check_book(const struct book *book)
{
	assert(strlen(book->currency) > 0);
	for (int i = 0; i < book->supplier_count; i++) {
		assert(book_supplier(book, book->suppliers[i].name) == i);
		assert(book->suppliers[i].delivery >= 0);
		assert(book->suppliers[i].carries >= 0 && book->suppliers[i].holds >= 0);
	}
	for (int i = 0; i < book->goods_count; i++) {
		const struct goods *goods = &book->goods[i];
		const struct wanted_goods wanted = { goods->good, goods->name, goods->block,
			goods->length, goods->height, goods->across };

		check_good(goods);
		assert(book_goods(book, &wanted) == goods);
		assert(goods->pack_count > 0 || goods->spec[0]);
		for (int j = 0; j < goods->pack_count; j++)
			check_pack(book, &goods->packs[j]);
	}
	assert(!book->vehicle.name || book->vehicle.carries > 0);
}

/* ---- What is put back ------------------------------------------------------------------------ */

static bool is_number(double a, double b)
{
	return !(a < b) && !(a > b);
}

static void check_same_pack(const struct pack *a, const struct pack *b)
{
	assert(a->kind == b->kind && a->unit == b->unit && a->price == b->price);
	assert(is_number(a->size, b->size) && is_number(a->step, b->step) &&
		is_number(a->weight, b->weight) && a->supplier == b->supplier);
	assert(strcmp(a->words, b->words) == 0);
}

static void check_same_goods(const struct goods *a, const struct goods *b)
{
	assert(a->good == b->good && strcmp(a->name, b->name) == 0 &&
		size_equal(&a->block, &b->block) && a->length == b->length &&
		a->height == b->height && a->across == b->across);
	assert(strcmp(a->spec, b->spec) == 0 && a->pack_count == b->pack_count);
	for (int i = 0; i < a->pack_count; i++)
		check_same_pack(&a->packs[i], &b->packs[i]);
}

static void check_same(const struct book *a, const struct book *b)
{
	assert(block_equal(&a->allow, &b->allow) && block_equal(&a->rates, &b->rates));
	assert(strcmp(a->note, b->note) == 0 && strcmp(a->currency, b->currency) == 0);
	assert(a->supplier_count == b->supplier_count && a->goods_count == b->goods_count);
	for (int i = 0; i < a->supplier_count; i++)
		assert(strcmp(a->suppliers[i].name, b->suppliers[i].name) == 0 &&
			a->suppliers[i].delivery == b->suppliers[i].delivery);
	for (int i = 0; i < a->goods_count; i++)
		check_same_goods(&a->goods[i], &b->goods[i]);
	assert(is_number(a->vehicle.carries, b->vehicle.carries) &&
		is_number(a->vehicle.holds, b->vehicle.holds));
}

static void check_put_back(const struct book *book, const struct text *bytes, int row, int pack)
{
	struct arena arena = ARENA_EMPTY;
	struct quote quote = quote_of_book(&arena, bytes, row, pack);
	struct text out = TEXT_EMPTY;
	struct book_fault fault;
	struct book again;
	bool is_put = book_put(&out, bytes, &(struct quote_place){ .row = row, .pack = pack },
		&quote, UNITS_IMPERIAL, &fault);
	bool is_read = is_put && book_read(out.bytes, out.length, &again, &fault);

	assert(is_read);
	if (is_read) {
		check_same(book, &again);
		book_fini(&again);
	}
	text_fini(&out);
	arena_clear(&arena);
}

/* The first and the last pack of the first goods and of the last. */
static void check_put(const struct book *book, const uint8_t *bytes, size_t size)
{
	struct text text = TEXT_EMPTY;
	int rows = book->goods_count, step = rows > 1 ? rows - 1 : 1;

	text_add_bytes(&text, (const char *)bytes, size);
	for (int row = 0; row < rows; row += step) {
		int packs = book->goods[row].pack_count;

		if (packs > 0)
			check_put_back(book, &text, row, 0);
		if (packs > 1)
			check_put_back(book, &text, row, packs - 1);
	}
	text_fini(&text);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct book book;
	struct book_fault fault;

	if (book_read((const char *)bytes, size, &book, &fault)) {
		check_book(&book);
		check_put(&book, bytes, size);
	} else {
		assert(fault.diag.expected[0] && fault.diag.found[0] &&
			(fault.diag.line == 0) == (fault.diag.column == 0) && !book.arena.newest);
	}
	book_fini(&book);
	return 0;
}
