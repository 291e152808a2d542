#include "report/text/print.h"
#include "report/words/work_words.h"

/* How it is bought, if known, and its note. */
static const char *note_cell(const struct report *report, const struct item *item)
{
	const char *note = item_note(report, item);
	const char *packs = item->pack && !pack_is_single(item->pack) ? item_packs(report, item) :
		"";

	return say(report, "%s%s%s", packs, *packs && note ? "; " : "", note ? note : "");
}

void print_items(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Laid", COLUMN_RIGHT }, { "Spare", COLUMN_RIGHT },
		{ "Order", COLUMN_RIGHT }, { "Note", COLUMN_WRAPS },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct hand_table table = hand_table(columns, 5, 0);

	print_heading(report, "To buy and to haul", takeoff->complete);
	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];

		TABLE_ROW(&table, item_sized_label(report, item),
			item_amount(report, item, item->laid),
			item->spare > 0 ? item_amount(report, item, item->spare) : "-",
			item_amount(report, item, item->order), note_cell(report, item));
	}
	hand_table_print(&table, report->out);
	if (takeoff->items.count == 0)
		sink_add(report->out, takeoff->complete ?
			"Nothing: there is nothing to build, to fill or to lay.\n" :
			"Nothing that could be counted: see the beds that are not laid out.\n");
	print_note(report, "Counted here: all that is dug, laid, filled and fenced. Not counted, "
		"unless the plot lists it as extra: %s.", uncounted_words(report));
}
