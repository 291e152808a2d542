#include "report/text/print.h"
#include "takeoff/common/bags.h"

#include <math.h>
#include <string.h>

#define BOX "[\t]" /* to tick */

/* One list: what is ordered of whom, day by day; by a book with prices. */
struct shopping {
	const struct report *report;
	struct hand_table table;
};

/* ---- Rows ------------------------------------------------------------------------------------ */

/* Whatever is the same thing is bought at once: "Topsoil; Lawn topsoil". Each name once. */
static void add_others(struct text *words, const struct report *report, const struct item *item)
{
	const struct item_list *items = &report->takeoff->items;
	const char *last = item_sized_label(report, item);
	int own = (int)(item - items->list);

	for (int i = own + 1; i < (int)items->count; i++) {
		const struct item *other = &items->list[i];
		const char *label = item_sized_label(report, other);

		if (other->with != own || !item_purchase(items, other) ||
			strcmp(label, last) == 0)
			continue;
		text_print(words, "; %s", label);
		last = label;
	}
}

static const char *what_words(const struct report *report, const struct item *item)
{
	const char *measure = item_fit(report, item), *spec = item_spec(report, item);
	struct text words = TEXT_EMPTY;

	text_add(&words, item_sized_label(report, item));
	add_others(&words, report, item);
	if (*measure)
		text_print(&words, ", %s", measure);
	if (*spec)
		text_print(&words, ": %s", spec);
	return say_text(report, &words);
}

/* Bulk is bought in parts of what the price is for: that is said with it, and where the plot tells
 * the price. */
static const char *price_words(const struct report *report, const struct purchase *purchase,
	const struct pack *pack)
{
	const char *price = pack->price == NO_PRICE ? "-" : plain_money(report, pack->price);

	if (purchase->is_own_price)
		return say(report, "%s *", price);
	return pack->kind == PACK_BULK && pack->price != NO_PRICE ?
		say(report, "%s for %s", price, pack->words) : price;
}

/* "23 bags of 0.75 cu ft", broken nowhere but before the size. */
static const char *order_words(const struct report *report, const struct bought *bought)
{
	bool is_count = bought->pack->kind == PACK_PIECE && strcmp(bought->pack->words, "1") == 0;
	const char *words = tied(report, bought_words(report, bought));
	char *of = strstr(words, "\tof\t");

	if (is_count)
		return plain_count(report, llround(bought->packs));
	return !of ? words : say(report, "%.*s\tof %s", (int)(of - words), words,
		of + strlen("\tof\t"));
}

static void add_row(struct shopping *list, const struct item *item, const struct bought *bought)
{
	const struct report *report = list->report;
	const char *order = order_words(report, bought), *what = what_words(report, item);
	const char *weight = bought->weight > 0 ? word_weight(report, bought->weight) : "?";

	if (report->takeoff->book)
		TABLE_ROW(&list->table, BOX, order, what, weight,
			price_words(report, item->purchase, bought->pack),
			bought->pack->price == NO_PRICE ? "-" :
			plain_money(report, bought->cost));
	else
		TABLE_ROW(&list->table, BOX, order, what, weight);
}

/* ---- By supplier and day --------------------------------------------------------------------- */

static const char *weighed(const struct report *report, double weight, bool is_weighed)
{
	return weight <= 0 ? "" : say(report, ", %s%s", plain_weight(report, weight),
		is_weighed ? "" : " and ?");
}

/* "5 drops", "5+ drops". */
static const char *or_more(const struct report *report, int64_t loads, bool is_weighed,
	const char *one, const char *many)
{
	return is_weighed ? word_count(report, loads, one, many) :
		say(report, "%s+%c%s", plain_count(report, loads), PAGE_TIE, many);
}

/* "Posts and concrete, 1,450 lb and ?: 1+ pickup loads or 1+ truck loads". */
static const char *day_heading(const struct report *report, const struct day_cost *day)
{
	return say(report, "%s%s: %s or %s", day->name,
		weighed(report, day->weight, day->is_weighed),
		or_more(report, day->pickups, day->is_weighed, "pickup load", "pickup loads"),
		or_more(report, day->trucks, day->is_weighed, "truck load", "truck loads"));
}

/* "From Hill Stone, Stone and fabric, 4,000 lb: 2 drops, delivery 90.00". */
static const char *shipment_heading(const struct report *report, const struct shipment *shipment)
{
	const char *day = word_heading(&day_words[shipment->day]);
	const char *weight = weighed(report, shipment->weight, shipment->is_weighed);

	if (shipment->supplier == NO_SUPPLIER)
		return say(report, "Collected, %s%s: %s", day, weight, or_more(report,
			shipment->drops, shipment->is_weighed, "trip", "trips"));
	return say(report, "From %s, %s%s: %s, delivery %s", shipment->name, day, weight,
		or_more(report, shipment->drops, shipment->is_weighed, "drop", "drops"),
		plain_money(report, shipment->cost));
}

/* What comes on the day; by a book from that supplier alone. */
static void add_day(struct shopping *list, enum day day, int supplier, const char *heading)
{
	const struct takeoff *takeoff = list->report->takeoff;
	bool is_first = true;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		for (int j = 0; item->purchase && j < item->purchase->count; j++) {
			const struct bought *bought = &item->purchase->list[j];

			if (item->purchase->day != (int)day ||
				(takeoff->book && bought->pack->supplier != supplier))
				continue;
			if (is_first)
				hand_table_across(&list->table, heading);
			is_first = false;
			add_row(list, item, bought);
		}
	}
}

static void add_supplier(struct shopping *list, int supplier)
{
	const struct costs *costs = &list->report->takeoff->costs;

	for (int i = 0; i < costs->shipment_count; i++)
		if (costs->shipments[i].supplier == supplier)
			add_day(list, costs->shipments[i].day, supplier,
				shipment_heading(list->report, &costs->shipments[i]));
}

static void add_all(struct shopping *list)
{
	const struct takeoff *takeoff = list->report->takeoff;

	for (int i = 0; takeoff->book && i < takeoff->book->supplier_count; i++)
		add_supplier(list, i);
	if (takeoff->book)
		add_supplier(list, NO_SUPPLIER);
	for (int i = 0; !takeoff->book && i < takeoff->costs.day_count; i++)
		add_day(list, takeoff->costs.days[i].day, NO_SUPPLIER,
			day_heading(list->report, &takeoff->costs.days[i]));
}

static void print_list(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_LEFT }, { "Order", COLUMN_WRAPS }, { "Item", COLUMN_WRAPS },
		{ "Weight", COLUMN_RIGHT }, { "Price", COLUMN_RIGHT }, { "Cost", COLUMN_RIGHT },
	};
	bool has_book = report->takeoff->book != NULL;
	struct shopping list = { report, hand_table(columns, has_book ? 6 : 4, 0) };

	add_all(&list);
	hand_table_print(&list.table, report->out);
}

/* ---- Sums and notes -------------------------------------------------------------------------- */

/* By day and by supplier. */
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

static bool has_own_price(const struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++)
		if (items->list[i].purchase && items->list[i].purchase->is_own_price)
			return true;
	return false;
}

/* What the price book says and lacks. */
static void add_book_notes(struct text *words, const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	text_print(words, " In %s, as in the price book.", takeoff->book->currency);
	if (takeoff->book->note[0])
		text_print(words, " Note in the book: %s", takeoff->book->note);
	if (has_own_price(&takeoff->items))
		text_add(words, " * : price of one by the plot, which goes before the book.");
	if (takeoff->costs.unpriced > 0)
		text_add(words, " - : no price in the book, and in no sum.");
	if (!takeoff->costs.cheapest)
		text_add(words, " There are too many ways to buy all this for each to be looked "
			"at: a cheaper one may be there.");
}

/* Lighter bags for who works alone. A book that has bags says itself which can be had. */
static void add_lighter_bags(struct text *words, const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct concrete_bag *bag = bag_for_one(report->units);

	if (block_number(takeoff->allow, ALLOW_CREW) > 1)
		return;
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		double concrete = item->order * amount_si(&item->note.amount);

		if (item->note.kind == NOTE_CONCRETE && item_is_heavy(report, item) &&
			!item_is_in_book(report, item))
			text_print(words, " Who works alone takes lighter bags of concrete: %s of "
				"%s.", plain_count(report,
				(int64_t)whole(concrete / bag->yield)), bag->words);
	}
}

/* ---- Room for it ----------------------------------------------------------------------------- */

/* "56 sq ft", "5.3 m2": up to the next whole one, or tenth. */
static const char *ground_words(const struct report *report, double area)
{
	bool is_metric = report->units == UNITS_METRIC;
	double foot = metres(NM_PER_FOOT);

	return tied(report, say(report, "%s %s", is_metric ?
		plain_decimal(report, ceil(area * 10 - 1e-6) / 10, 1) :
		plain_count(report, (int64_t)whole(area / (foot * foot))),
		is_metric ? "m2" : "sq ft"));
}

static const char *heap_words(const struct report *report, const struct heap *heap)
{
	const char *what = heap->item == NO_ITEM ?
		word_count(report, heap->pallets, "pallet", "pallets") :
		item_label(report, &report->takeoff->items.list[heap->item]);

	return say(report, "%s %s", what, ground_words(report, heap->area));
}

/* "Stone and fabric: Base stone 56 sq ft, Stone with fines 30 sq ft; Block and adhesive: 2 pallets
 * 32 sq ft" */
static void print_heaps(const struct report *report)
{
	const struct heaps *heaps = &report->takeoff->heaps;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < heaps->count; i++) {
		const struct heap *heap = &heaps->list[i];
		bool is_same = i > 0 && heap->day == heaps->list[i - 1].day;

		text_print(&words, "%s", i == 0 ? "" : is_same ? ", " : "; ");
		if (!is_same)
			text_print(&words, "%s: ", word_heading(&day_words[heap->day]));
		text_add(&words, heap_words(report, heap));
	}
	if (words.length) {
		print_lines(report, 0, 0, "Ground at the drop for each day's goods: %s.",
			words.bytes);
		print_explained(report, "Loose goods lie on heaps of 35 degrees, %s high at the "
			"most, blocks and bags on pallets of 1\tt: common practice, no published "
			"source. Gaps between them come on top.",
			report->units == UNITS_METRIC ? "1.5\tm" : "5\tft");
	}
	text_fini(&words);
}

static bool has_block(const struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++)
		if (!size_is_none(&items->list[i].block))
			return true;
	return false;
}

static void print_notes(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	text_add(&words, "Orders include what breaks, settles or is trimmed away; loose goods are "
		"weighed dry.");
	if (has_block(&takeoff->items))
		text_add(&words, " Blocks: long x deep x high.");
	if (!takeoff->costs.is_weighed)
		text_add(&words, " ?: weight not known, so there may be more loads (+).");
	if (!takeoff->book && !report->is_whole)
		text_print(&words, " A pickup carries %s, a truck %s or %s; each loose good rides "
			"by itself in a truck.", allowed_words(report, ALLOW_PICKUP_WEIGHT),
			allowed_words(report, ALLOW_TRUCK_VOLUME),
			allowed_words(report, ALLOW_TRUCK_WEIGHT));
	add_lighter_bags(&words, report);
	if (takeoff->book)
		add_book_notes(&words, report);
	print_lines(report, 0, 0, "%s", words.bytes);
	text_fini(&words);
}

void print_shopping(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (takeoff->items.count == 0) {
		sink_add(report->out, takeoff->complete ?
			"Nothing: there is nothing to build, to fill or to lay.\n" :
			"Nothing that could be counted: see the beds that are not laid out.\n");
		return;
	}
	print_list(report);
	if (takeoff->book)
		print_sums(report);
	print_notes(report);
	print_heaps(report);
}
