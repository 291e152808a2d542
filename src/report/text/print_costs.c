#include "report/text/print.h"
#include "report/words/words.h"
#include "report/words/words_costs.h"
#include "takeoff/costs/quote.h"
#include "base/show.h"

/* A load that one person should not lift alone: common practice, no published source. */
static const double LIFT_MOST = 50 * 0.45359237;

static void money_cell(struct table *table, money amount)
{
	word_money(table_cell(table), amount);
}

/* Bulk is bought in parts of what the price is for. */
static void price_cell(struct table *table, const struct pack *pack)
{
	struct text *cell = table_cell(table);

	word_money(cell, pack->price);
	if (pack->kind == PACK_BULK)
		text_print(cell, " for %s", pack->words);
}

static void label_cell(struct table *table, const struct report *report, const struct item *item)
{
	struct text *label = table_cell(table);

	text_add(label, item->label);
	if (!size_is_none(&item->block)) {
		text_add(label, " ");
		word_size(label, report, &item->block);
	}
}

static void print_goods(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Packs", COLUMN_WRAPS }, { "From", COLUMN_WRAPS },
		{ "Price", COLUMN_RIGHT }, { "Cost", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 5, 0);

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];

		if (!item->pack)
			continue;
		label_cell(&table, report, item);
		word_packs(table_cell(&table), item, report->units);
		table_words(&table, supplier_words(takeoff->book, item->pack->supplier));
		price_cell(&table, item->pack);
		money_cell(&table, item->cost);
	}
	table_print(&table, report->out);
}

static void print_unpriced(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;
	int left = takeoff->costs.unpriced;

	if (left == 0)
		return;
	text_add(&words, "No price in the book, and not in any sum here: ");
	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];

		if (item->pack || item->order <= 0)
			continue;
		text_add(&words, item->label);
		if (!size_is_none(&item->block)) {
			text_add(&words, " ");
			word_size(&words, report, &item->block);
		}
		text_add(&words, --left == 0 ? "." : "; ");
	}
	page_note(report->out, words.bytes);
	text_fini(&words);
}

static void shipment_row(struct table *table, const struct report *report,
	const struct shipment *shipment)
{
	struct text *drops, *weight;

	table_words(table, day_words(shipment->day));
	table_words(table, supplier_words(report->takeoff->book, shipment->supplier));
	drops = table_cell(table);
	if (shipment->supplier == NO_SUPPLIER)
		word_count(drops, shipment->drops, "trip", "trips");
	else
		word_count(drops, shipment->drops, "drop", "drops");
	weight = table_cell(table);
	if (shipment->weight > 0)
		show_weight(weight, shipment->weight, report->units);
	else
		text_add(weight, "?");
	if (shipment->weight > 0 && !shipment->is_weighed)
		text_add(weight, " + ?");
	if (shipment->supplier == NO_SUPPLIER)
		table_words(table, "-");
	else
		money_cell(table, shipment->cost);
}

/* What the numbers of loads rest on. */
static void print_loads(const struct report *report, bool is_weighed, bool is_collected)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	if (!is_weighed)
		text_add(&words, "?: a weight is not known, so loads may be more. ");
	text_add(&words, "Days in the order of the work: soil comes when walls have cured. ");
	if (is_collected) {
		text_print(&words, "Trips of %s, payload ", takeoff->book->vehicle.name ?
			takeoff->book->vehicle.name : "a pickup");
		show_weight(&words, load_of(takeoff, NO_SUPPLIER).carries, report->units);
		text_add(&words, ": never load a vehicle over its own.");
	}
	page_note(report->out, words.bytes);
	text_fini(&words);
}

static void print_shipments(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Day", COLUMN_WRAPS }, { "From", COLUMN_WRAPS }, { "Loads", COLUMN_RIGHT },
		{ "Weight", COLUMN_RIGHT }, { "Delivery", COLUMN_RIGHT },
	};
	const struct costs *costs = &report->takeoff->costs;
	struct table table = table_start(columns, 5, 0);
	bool is_weighed = true, is_collected = false;

	for (int i = 0; i < costs->shipment_count; i++) {
		const struct shipment *shipment = &costs->shipments[i];

		shipment_row(&table, report, shipment);
		is_weighed = is_weighed && shipment->is_weighed;
		is_collected = is_collected || shipment->supplier == NO_SUPPLIER;
	}
	if (costs->shipment_count == 0)
		return;
	text_add(report->out, "\n");
	table_print(&table, report->out);
	print_loads(report, is_weighed, is_collected);
}

static void sum_row(struct table *table, const char *what, struct cost_sum sum)
{
	if (sum.goods == 0 && sum.delivery == 0)
		return;
	table_words(table, what);
	money_cell(table, sum.goods);
	money_cell(table, sum.delivery);
	money_cell(table, sum.goods + sum.delivery);
}

static void print_days(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "By day", COLUMN_WRAPS }, { "Goods", COLUMN_RIGHT }, { "Delivery", COLUMN_RIGHT },
		{ "In all", COLUMN_RIGHT },
	};
	const struct costs *costs = &report->takeoff->costs;
	struct table table = table_start(columns, 4, 0);
	struct text total = TEXT_EMPTY;

	for (int day = 0; day < DAYS; day++)
		sum_row(&table, day_words(day), costs_of_day(report->takeoff, day));
	text_print(&total, "%s, %s", costs->unpriced ? "Total of what has a price" : "Total",
		report->takeoff->book->currency);
	table_words(&table, total.bytes);
	money_cell(&table, costs->goods);
	money_cell(&table, costs->delivery);
	money_cell(&table, costs->total);
	text_add(report->out, "\n");
	table_print(&table, report->out);
	text_fini(&total);
}

static void print_suppliers(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "By supplier", COLUMN_WRAPS }, { "Goods", COLUMN_RIGHT },
		{ "Delivery", COLUMN_RIGHT }, { "In all", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 4, 0);

	for (int i = 0; i < takeoff->book->supplier_count; i++)
		sum_row(&table, supplier_words(takeoff->book, i), costs_of_supplier(takeoff, i));
	sum_row(&table, "Collected", costs_of_supplier(takeoff, NO_SUPPLIER));
	if (takeoff->costs.total > 0)
		text_add(report->out, "\n");
	table_print(&table, report->out);
}

/* Bulk is shovelled and a pallet stays on its truck's fork. */
static double lifted(const struct pack *pack, const struct item *item)
{
	if (pack->kind == PACK_BULK || pack->kind == PACK_PALLET || item->packs <= 0)
		return 0;
	return item->weight / item->packs;
}

static void print_lifting(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		double weight = item->pack ? lifted(item->pack, item) : 0;

		if (weight <= LIFT_MOST)
			continue;
		text_print(&words, "%s%s, ", words.length ? "; " : "Two people or a trolley: ",
			item->label);
		show_weight(&words, weight, report->units);
	}
	if (words.length) {
		text_add(&words, ".");
		page_note(report->out, words.bytes);
	}
	text_fini(&words);
}

static void print_lead(const struct report *report)
{
	const struct book *book = report->takeoff->book;
	struct text words = TEXT_EMPTY;

	text_print(&words, "In %s, as in the price book; tax is neither added nor taken off.",
		book->currency);
	page_paragraph(report->out, 0, 0, words.bytes);
	text_fini(&words);
	if (!book->note[0])
		return;
	text_print(&words, "Note in the book: %s", book->note);
	page_paragraph(report->out, 0, 2, words.bytes);
	text_fini(&words);
}

void print_costs(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (!takeoff->book)
		return;
	page_heading(report->out, takeoff->complete ? "Costs" : "Costs (INCOMPLETE)");
	print_lead(report);
	text_add(report->out, "\n");
	print_goods(report);
	print_unpriced(report);
	print_shipments(report);
	print_days(report);
	print_suppliers(report);
	print_lifting(report);
}
