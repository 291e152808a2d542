#include "report/csv/csv.h"
#include "base/number.h"
#include "report/csv/csv_record.h"
#include "report/words/figures.h"
#include "report/words/item_words.h"

enum { NUMBER_PLACES = 6, MONEY_PLACES = 2 };

enum column {
	SECTION, ID, ITEM, SIZE, LAID, SPARE, REUSED, ORDER, UNIT, PACKS, PACK, SUPPLIER, PRICE,
	COST, CURRENCY, WEIGHT, WEIGHT_UNIT, SPEC, NOTE
};
enum { COLUMNS = NOTE + 1 };

/* report_is_table knows a table by the first of them. */
static const char *const names[COLUMNS] = {
	[SECTION] = "section", [ID] = "id", [ITEM] = "item", [SIZE] = "size", [LAID] = "laid",
	[SPARE] = "spare", [REUSED] = "reused", [ORDER] = "order", [UNIT] = "unit",
	[PACKS] = "packs", [PACK] = "pack", [SUPPLIER] = "supplier", [PRICE] = "price",
	[COST] = "cost", [CURRENCY] = "currency", [WEIGHT] = "weight",
	[WEIGHT_UNIT] = "weight unit", [SPEC] = "spec", [NOTE] = "note",
};

/* A row being made; what is NULL is empty. */
struct row {
	const char *fields[COLUMNS];
};

static void print_row(const struct report *report, const struct row *row)
{
	csv_record(report->out, row->fields, COLUMNS);
	arena_clear(report->words);
}

static const char *number(const struct report *report, double value)
{
	struct text text = TEXT_EMPTY;

	text_add_number(&text, value, NUMBER_PLACES);
	return say_text(report, &text);
}

static void put_money(struct row *row, const struct report *report, enum column column,
	money amount)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, amount, MONEY_PLACES);
	row->fields[column] = say_text(report, &text);
	row->fields[CURRENCY] = report->takeoff->book->currency;
}

/* ---- Items ----------------------------------------------------------------------------------- */

static struct row row_of(const struct report *report, const struct item *item)
{
	return (struct row){ .fields = {
		[SECTION] = word_heading(&section_words[item->section]),
		[ID] = item_id(report, item),
		[ITEM] = item_label(report, item),
		[SIZE] = untied(report, item_size(report, item)),
		[SPEC] = item_spec(report, item),
		[NOTE] = item_note(report, item),
	} };
}

static void put_quantities(struct row *row, const struct report *report, const struct item *item)
{
	const struct show_unit *unit = item_shown_unit(report, item);

	row->fields[LAID] = number(report, show_number(unit, item->laid));
	row->fields[SPARE] = number(report, show_number(unit, item->spare));
	row->fields[REUSED] = number(report, show_number(unit, item->reused));
	row->fields[ORDER] = number(report, show_number(unit, item->order));
	row->fields[UNIT] = unit->word;
}

/* In the unit of all that is weighed. */
static void put_weight(struct row *row, const struct report *report, double weight)
{
	const struct show_unit *unit =
		show_weight_unit(report->takeoff->costs.weight, report->units);

	row->fields[WEIGHT] = number(report, show_number(unit, weight));
	row->fields[WEIGHT_UNIT] = unit->word;
}

/* Without a book nobody knows who has it. */
static void put_bought(struct row *row, const struct report *report, const struct bought *bought)
{
	const struct book *book = report->takeoff->book;
	const struct pack *pack = bought->pack;

	row->fields[PACKS] = number(report, bought->packs);
	row->fields[PACK] = pack_words(report, pack);
	row->fields[SUPPLIER] = book ? supplier_words(book, pack->supplier) : NULL;
	if (pack->price != NO_PRICE) {
		put_money(row, report, PRICE, pack->price);
		put_money(row, report, COST, bought->cost);
	}
	if (bought->weight > 0)
		put_weight(row, report, bought->weight);
}

static void print_item(const struct report *report, const struct item *item)
{
	const struct purchase *purchase = item->purchase;
	int packs = purchase ? purchase->count : 0;

	for (int i = 0; i < most(packs, 1); i++) {
		struct row row = row_of(report, item);

		if (i == 0)
			put_quantities(&row, report, item);
		if (i < packs)
			put_bought(&row, report, &purchase->list[i]);
		else if (item_purchase(&report->takeoff->items, item))
			row.fields[PACK] = untied(report, item_order(report, item));
		print_row(report, &row);
	}
}

/* ---- What is no item ------------------------------------------------------------------------- */

static void print_delivery(const struct report *report, const struct shipment *shipment)
{
	struct row row = { .fields = {
		[SECTION] = word_heading(&section_words[shipment->section]),
		[ITEM] = "Delivery",
		[PACKS] = number(report, (double)shipment->drops),
		[PACK] = "drop",
		[SUPPLIER] = shipment->name,
		[NOTE] = word_heading(&day_words[shipment->day]),
	} };

	put_money(&row, report, PRICE,
		report->takeoff->book->suppliers[shipment->supplier].delivery);
	put_money(&row, report, COST, shipment->cost);
	print_row(report, &row);
}

static void print_incomplete(const struct report *report)
{
	print_row(report, &(struct row){ .fields = {
		[ITEM] = "INCOMPLETE",
		[NOTE] = "Not all beds could be laid out: see the snags of the takeoff.",
	} });
}

void report_csv(struct sink *out, const struct plot *plot, const struct takeoff *takeoff)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = { .out = out, .words = &words, .plot = plot,
		.takeoff = takeoff, .units = plot_units(plot) };

	csv_record(out, names, COLUMNS);
	if (!takeoff->complete)
		print_incomplete(&report);
	for (size_t i = 0; i < takeoff->items.count; i++)
		print_item(&report, &takeoff->items.list[i]);
	for (int i = 0; i < takeoff->costs.shipment_count; i++)
		if (takeoff->costs.shipments[i].supplier != NO_SUPPLIER)
			print_delivery(&report, &takeoff->costs.shipments[i]);
}
