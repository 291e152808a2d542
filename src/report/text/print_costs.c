#include "report/text/print.h"

#include <string.h>

/* Bulk is bought in parts of what the price is for: that is said with it. */
static const char *price_words(const struct report *report, const struct pack *pack)
{
	const char *price = pack->price == NO_PRICE ? "-" : plain_money(report, pack->price);

	return pack->kind == PACK_BULK && pack->price != NO_PRICE ?
		say(report, "%s for %s", price, pack->words) : price;
}

static const char *label_with_spec(const struct report *report, const struct item *item)
{
	const char *fit = item_fit(report, item), *spec = item_spec(report, item);

	return say(report, "%s%s%s%s%s", item_sized_label(report, item), *fit ? ", " : "", fit,
		*spec ? ": " : "", spec);
}

static void goods_row(struct hand_table *table, const struct report *report,
	const struct item *item, const struct bought *bought)
{
	TABLE_ROW(table, day_words[item->purchase->day].heading, label_with_spec(report, item),
		bought_words(report, bought), price_words(report, bought->pack),
		bought->pack->price == NO_PRICE ? "-" : plain_money(report, bought->cost));
}

static void print_supplier(const struct report *report, int supplier)
{
	print_blank(report);
	print_lines(report, 0, 2, supplier == NO_SUPPLIER ? "Collected:" : "From %s:",
		supplier_words(report->takeoff->book, supplier));
}

/* What is ordered from one supplier, in the order in which it is brought. */
static void print_order(const struct report *report, int supplier)
{
	static const struct table_column columns[] = {
		{ "Day", COLUMN_WRAPS }, { "Item", COLUMN_WRAPS }, { "Packs", COLUMN_WRAPS },
		{ "Price", COLUMN_RIGHT }, { "Cost", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct hand_table table = hand_table(columns, 5, 2);
	bool is_first = true;

	for (int day = 0; day < DAYS; day++) {
		for (size_t i = 0; i < takeoff->items.count; i++) {
			const struct item *item = &takeoff->items.list[i];
			const struct purchase *purchase = item->purchase;

			for (int j = 0; purchase && purchase->day == day && j < purchase->count;
				j++) {
				if (purchase->list[j].pack->supplier != supplier)
					continue;
				if (is_first)
					print_supplier(report, supplier);
				is_first = false;
				goods_row(&table, report, item, &purchase->list[j]);
			}
		}
	}
	hand_table_print(&table, report->out);
}

static void print_orders(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	for (int i = 0; i < takeoff->book->supplier_count; i++)
		print_order(report, i);
	print_order(report, NO_SUPPLIER);
	if (!takeoff->costs.cheapest)
		print_note(report, "There are too many ways to buy all this for each to be "
			"looked at: a cheaper one may be there.");
}

static void print_unpriced(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const struct purchase *purchase = item_purchase(&takeoff->items, item);

		if (purchase && !purchase->is_priced)
			text_print(&words, "%s%s", words.length ? "; " : "",
				item_sized_label(report, item));
	}
	if (takeoff->costs.unpriced > 0)
		print_note(report,
			"No price in the book, and not in any sum here: %s.", words.bytes);
	text_fini(&words);
}

static const char *weight_words(const struct report *report, const struct shipment *shipment)
{
	return shipment->weight <= 0 ? "?" : say(report, "%s%s",
		plain_weight(report, shipment->weight), shipment->is_weighed ? "" : " + ?");
}

static void shipment_row(struct hand_table *table, const struct report *report,
	const struct shipment *shipment)
{
	bool is_collected = shipment->supplier == NO_SUPPLIER;

	TABLE_ROW(table, word_heading(&day_words[shipment->day]),
		supplier_words(report->takeoff->book, shipment->supplier),
		is_collected ? word_count(report, shipment->drops, "trip", "trips") :
		word_count(report, shipment->drops, "drop", "drops"),
		weight_words(report, shipment),
		is_collected ? "-" : plain_money(report, shipment->cost));
}

/* What the numbers of loads depend on. */
static void print_loads(const struct report *report, bool is_weighed, bool is_collected)
{
	const struct takeoff *takeoff = report->takeoff;
	const char *vehicle = takeoff->book->vehicle.name;
	const char *trips = !is_collected ? "" :
		say(report, "Trips of %s, payload %s: never load a vehicle over its own.",
			vehicle ? vehicle : "a pickup",
			plain_weight(report, takeoff->costs.vehicle_carries));

	print_note(report, "%sDays in the order of the work: soil comes when walls have cured. %s",
		is_weighed ? "" : "?: a weight is not known, so loads may be more. ", trips);
}

static void print_shipments(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Day", COLUMN_WRAPS }, { "From", COLUMN_WRAPS }, { "Loads", COLUMN_RIGHT },
		{ "Weight", COLUMN_RIGHT }, { "Delivery", COLUMN_RIGHT },
	};
	const struct costs *costs = &report->takeoff->costs;
	struct hand_table table = hand_table(columns, 5, 0);
	bool is_weighed = true, is_collected = false;

	if (costs->shipment_count == 0)
		return;
	for (int i = 0; i < costs->shipment_count; i++) {
		const struct shipment *shipment = &costs->shipments[i];

		shipment_row(&table, report, shipment);
		is_weighed = is_weighed && shipment->is_weighed;
		is_collected = is_collected || shipment->supplier == NO_SUPPLIER;
	}
	print_blank(report);
	hand_table_print(&table, report->out);
	print_loads(report, is_weighed, is_collected);
}

static void print_sums(const struct report *report)
{
	const struct costs *costs = &report->takeoff->costs;
	struct day_cost days[DAYS + 1];
	struct text total = TEXT_EMPTY;

	text_print(&total, "%s, %s", costs->unpriced ? "Total of what has a price" : "Total",
		costs->currency);
	memcpy(days, costs->days, sizeof costs->days);
	days[DAYS] = (struct day_cost){ .name = total.bytes,
		.sum = { costs->goods, costs->delivery, costs->total }, .is_any = true };
	print_blank(report);
	print_rows(report, &day_cost_table, days, DAYS + 1, 0, NULL);
	text_fini(&total);
	if (costs->total > 0)
		print_blank(report);
	print_rows(report, &supplier_cost_table, costs->suppliers, costs->supplier_count, 0, NULL);
}

void print_costs(const struct report *report)
{
	const struct book *book = report->takeoff->book;

	if (!book)
		return;
	print_heading(report, "Costs", report->takeoff->complete);
	print_lines(report, 0, 0, "In %s, as in the price book; tax is neither added nor taken "
		"off.",
		book->currency);
	if (book->note[0])
		print_lines(report, 0, 2, "Note in the book: %s", book->note);
	print_orders(report);
	print_unpriced(report);
	print_shipments(report);
	print_sums(report);
}
