#include "report/text/print.h"

#include <string.h>

/* Bulk is bought in parts of what the price is for: that is said with it. */
static const char *price_words(const struct report *report, const struct pack *pack)
{
	const char *price = plain_money(report, pack->price);

	return pack->kind == PACK_BULK ? say(report, "%s for %s", price, pack->words) : price;
}

static void print_goods(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Packs", COLUMN_WRAPS }, { "From", COLUMN_WRAPS },
		{ "Price", COLUMN_RIGHT }, { "Cost", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct hand_table table = hand_table(columns, 5, 0);

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (item->pack)
			TABLE_ROW(&table, item_sized_label(report, item), item_packs(report, item),
				supplier_words(takeoff->book, item->pack->supplier),
				price_words(report, item->pack), plain_money(report, item->cost));
	}
	hand_table_print(&table, report->out);
}

static void print_unpriced(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		if (!item->pack && item->order > 0)
			text_print(&words, "%s%s", words.length ? "; " : "",
				item_sized_label(report, item));
	}
	if (takeoff->costs.unpriced > 0)
		print_note(report, "No price in the book, and not in any sum here: %s.",
			words.bytes);
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

	TABLE_ROW(table, word_heading(&section_words[shipment->section]),
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
	struct day_cost days[SECTIONS + 1];
	struct text total = TEXT_EMPTY;

	text_print(&total, "%s, %s", costs->unpriced ? "Total of what has a price" : "Total",
		costs->currency);
	memcpy(days, costs->days, sizeof costs->days);
	days[SECTIONS] = (struct day_cost){ .name = total.bytes,
		.sum = { costs->goods, costs->delivery, costs->total }, .is_any = true };
	print_blank(report);
	print_rows(report, &day_cost_table, days, SECTIONS + 1, 0, NULL);
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
	print_blank(report);
	print_goods(report);
	print_unpriced(report);
	print_shipments(report);
	print_sums(report);
}
