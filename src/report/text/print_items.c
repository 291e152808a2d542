#include "report/text/print.h"
#include "report/words/words.h"
#include "report/words/words_costs.h"

/* How it is bought, where that is known, and what the spare is. */
static void note_cell(struct table *table, const struct report *report, const struct item *item)
{
	struct text *cell = table_cell(table);
	bool has_packs = item->pack && !pack_is_single(item->pack);

	if (has_packs)
		word_packs(cell, item, report->units);
	if (has_packs && item->note)
		text_add(cell, "; ");
	if (item->note)
		text_add(cell, item->note);
}

static void item_row(struct table *table, const struct report *report, const struct item *item)
{
	struct text *label = table_cell(table);

	text_add(label, item->label);
	if (!size_is_none(&item->block)) {
		text_add(label, " ");
		word_size(label, report, &item->block);
	}
	word_amount(table_cell(table), report, item, item->laid);
	if (item->spare > 0)
		word_amount(table_cell(table), report, item, item->spare);
	else
		table_words(table, "-");
	word_amount(table_cell(table), report, item, item->order);
	note_cell(table, report, item);
}

void print_items(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Laid", COLUMN_RIGHT }, { "Spare", COLUMN_RIGHT },
		{ "Order", COLUMN_RIGHT }, { "Note", COLUMN_WRAPS },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 5, 0);

	page_heading(report->out, takeoff->complete ? "To buy and to haul" :
		"To buy and to haul (INCOMPLETE)");
	for (int i = 0; i < takeoff->item_count; i++)
		item_row(&table, report, &takeoff->items[i]);
	table_print(&table, report->out);
	if (takeoff->item_count == 0)
		text_add(report->out, takeoff->complete ?
			"Nothing: there is nothing to build, to fill or to lay.\n" :
			"Nothing that could be counted: see the beds that are not laid out.\n");
	page_note(report->out, "Counted here: all that is dug, laid, filled and fenced. Not counted: the "
		"fixtures themselves, plants, tools and hire.");
}
