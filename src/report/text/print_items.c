#include "report/text/print.h"
#include "report/words/work_words.h"
#include "takeoff/common/bags.h"

#include <math.h>
#include <string.h>

/* What to ask for besides, and its note. */
static const char *note_cell(const struct report *report, const struct item *item)
{
	const char *note = item_note(report, item), *spec = item_spec(report, item);

	if (note && strcmp(note, item_order(report, item)) == 0)
		note = NULL;
	return say(report, "%s%s%s", spec, *spec && note ? "; " : "", note ? note : "");
}

static const char *weight_cell(const struct report *report, const struct item *item)
{
	if (!item->purchase)
		return "-";
	return item->weight > 0 ? word_weight(report, item->weight) : "?";
}

static void print_table(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Laid", COLUMN_RIGHT }, { "Spare", COLUMN_RIGHT },
		{ "Order", COLUMN_WRAPS }, { "Weight", COLUMN_RIGHT }, { "Note", COLUMN_WRAPS },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct hand_table table = hand_table(columns, 6, 0);

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		TABLE_ROW(&table, item_sized_label(report, item),
			item_amount(report, item, item->laid),
			item->spare > 0 ? item_amount(report, item, item->spare) : "-",
			item_order(report, item), weight_cell(report, item),
			note_cell(report, item));
	}
	hand_table_print(&table, report->out);
}

/* ---- What is to be carried ------------------------------------------------------------------- */

static const char *day_weight(const struct report *report, double weight, bool is_weighed)
{
	return weight <= 0 ? "?" : say(report, "%s%s", plain_weight(report, weight),
		is_weighed ? "" : " + ?");
}

/* By a price book the costs say who brings what. */
static void print_loads(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Day", COLUMN_LEFT }, { "Weight", COLUMN_RIGHT },
		{ "Pickup loads", COLUMN_RIGHT }, { "or truck loads", COLUMN_RIGHT },
	};
	const struct costs *costs = &report->takeoff->costs;
	struct hand_table table = hand_table(columns, 4, 0);

	for (int i = 0; i < costs->day_count; i++) {
		const struct day_cost *day = &costs->days[i];

		if (day->trucks > 0)
			TABLE_ROW(&table, day->name,
				day_weight(report, day->weight, day->is_weighed),
				plain_count(report, day->pickups),
				plain_count(report, day->trucks));
	}
	print_blank(report);
	hand_table_print(&table, report->out);
}

static void print_weight(const struct report *report)
{
	const struct costs *costs = &report->takeoff->costs;

	if (costs->weight > 0)
		print_note(report, "In all %s%s. Loose goods are weighed as they are bought, by "
			"the densities allowed for: wet they weigh more.",
			plain_weight(report, costs->weight), costs->is_weighed ? "" :
			", and what has a ? here: its weight is not known");
}

static bool is_in_book(const struct book *book, const struct item *item)
{
	const struct wanted_goods wanted = item_wanted(item);
	const struct goods *goods = book ? book_goods(book, &wanted) : NULL;

	return goods && goods->pack_count > 0;
}

/* Lighter bags for who works alone. A book that has bags says itself which can be had. */
static void print_lighter_bags(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct concrete_bag *bag = bag_for_one(report->units);

	if (block_number(takeoff->allow, ALLOW_CREW) > 1)
		return;
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		double concrete = item->order * amount_si(&item->note.amount);

		if (item->note.kind != NOTE_CONCRETE || !item_is_heavy(report, item) ||
			is_in_book(takeoff->book, item))
			continue;
		print_note(report, "Who works alone takes lighter bags of concrete: %s of %s.",
			plain_count(report, (int64_t)whole(concrete / bag->yield)), bag->words);
	}
}

void print_items(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	print_heading(report, "To buy and to haul", takeoff->complete);
	print_table(report);
	if (takeoff->items.count == 0)
		sink_add(report->out, takeoff->complete ?
			"Nothing: there is nothing to build, to fill or to lay.\n" :
			"Nothing that could be counted: see the beds that are not laid out.\n");
	else if (!takeoff->book)
		print_loads(report);
	print_weight(report);
	print_lighter_bags(report);
	print_note(report, "Counted here: all that is dug, laid, filled and fenced. Not counted, "
		"unless the plot lists it as extra: %s.", uncounted_words(report));
}
