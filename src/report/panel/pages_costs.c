#include "report/panel/pages.h"
#include "report/words/words_costs.h"

static void sum(struct page_maker *maker, const char *label, money amount)
{
	struct text value = TEXT_EMPTY;

	word_money(&value, amount);
	pages_figure(maker, label, &value);
}

static void day(struct page_maker *maker, int at)
{
	const struct takeoff *takeoff = maker->takeoff;
	struct cost_sum all = costs_of_day(takeoff, at);

	if (all.goods == 0 && all.delivery == 0)
		return;
	pages_heading(maker, "%s", day_words(at));
	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		struct text packs = TEXT_EMPTY;

		if ((int)item->section != day_section(at) || !item->pack)
			continue;
		sum(maker, item->label, item->cost);
		word_packs(&packs, item, maker->units);
		pages_note(maker, "%s, %s", packs.bytes,
			supplier_words(takeoff->book, item->pack->supplier));
		text_fini(&packs);
	}
	if (all.delivery > 0)
		sum(maker, "Delivery", all.delivery);
}

static void unpriced(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;

	if (takeoff->costs.unpriced == 0)
		return;
	pages_heading(maker, "Without a price");
	for (int i = 0; i < takeoff->item_count; i++)
		if (!takeoff->items[i].pack && takeoff->items[i].order > 0)
			pages_item(maker, &takeoff->items[i]);
}

void pages_costs(struct page_maker *maker)
{
	const struct costs *costs = &maker->takeoff->costs;

	if (!maker->takeoff->book) {
		pages_note(maker, "No price book: name one in the plot's own sheet, #.");
		return;
	}
	pages_heading(maker, "In %s", maker->takeoff->book->currency);
	sum(maker, "Goods", costs->goods);
	sum(maker, "Delivery", costs->delivery);
	sum(maker, costs->unpriced ? "Total of the priced" : "Total", costs->total);
	if (costs->unpriced)
		pages_count(maker, "Items without a price", costs->unpriced);
	for (int at = 0; at < DAYS; at++)
		day(maker, at);
	unpriced(maker);
}
