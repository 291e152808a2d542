/* Any bytes are either refused with a place and a reason, or read into a sound price book. */

#include "support/fuzz.h"

#include "prices/book.h"

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

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct book book;
	struct book_fault fault;

	if (book_read((const char *)bytes, size, &book, &fault))
		check_book(&book);
	else
		assert(fault.diag.expected[0] && fault.diag.found[0] &&
			(fault.diag.line == 0) == (fault.diag.column == 0) && !book.arena.newest);
	book_fini(&book);
	return 0;
}
