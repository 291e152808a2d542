#include "report/new_book.h"
#include "prices/book_write.h"
#include "prices/prices.h"

/* Which bag of concrete it is its weight tells. */
struct quote new_quote(struct arena *arena, const struct item *item, enum units units)
{
	struct pack pack = *item->purchase->list[0].pack;

	if (item->good == GOOD_SPOIL)
		pack.step = 0;
	if (item->good == GOOD_FENCE_CONCRETE)
		pack.weight = item->unit_weight;
	return quote_of_pack(arena, &pack, units);
}

/* Posts of two fences may be one to a book, which tells lengths apart to a millimetre. */
static bool is_listed(const struct goods *list, int count, const struct wanted_goods *wanted)
{
	return book_goods(&(struct book){ .goods = list, .goods_count = count }, wanted) != NULL;
}

bool new_book(struct text *out, const struct takeoff *takeoff, const char *currency,
	struct text *message)
{
	const struct item_list *items = &takeoff->items;
	enum units units = plot_units(&takeoff->plot);
	struct arena arena = ARENA_EMPTY;
	struct new_goods *list = arena_new(&arena, items->count, sizeof *list);
	struct goods *listed = arena_new(&arena, items->count, sizeof *listed);
	struct book_fault fault;
	int count = 0;
	bool is_made;

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];
		struct wanted_goods wanted = item_wanted(item);

		if (!item->purchase || !item->purchase->count || is_listed(listed, count, &wanted))
			continue;
		listed[count] = (struct goods){ .good = wanted.good, .name = wanted.name,
			.block = wanted.block, .length = wanted.length, .height = wanted.height,
			.across = wanted.across };
		list[count++] = (struct new_goods){ wanted, new_quote(&arena, item, units) };
	}
	is_made = book_make(out, currency ? currency : BOOK_NO_CURRENCY, list, count, units,
		&fault);
	if (!is_made)
		prices_fault(message, "a price book for all that is bought", &fault);
	arena_clear(&arena);
	return is_made;
}
