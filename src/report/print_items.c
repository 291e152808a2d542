#include "report/print.h"
#include "report/words.h"
#include "report/words_costs.h"

/* How it is bought, where that is known, and what the spare is. */
static void note_cell(struct table *table, const struct sheet *sheet, const struct item *item)
{
	struct text *cell = table_cell(table);
	bool has_packs = item->pack && !pack_is_single(item->pack);

	if (has_packs)
		word_packs(cell, item, sheet->units);
	if (has_packs && item->note)
		text_add(cell, "; ");
	if (item->note)
		text_add(cell, item->note);
}

static void item_row(struct table *table, const struct sheet *sheet, const struct item *item)
{
	struct text *label = table_cell(table);

	text_add(label, item->label);
	if (!size_is_none(&item->block)) {
		text_add(label, " ");
		word_size(label, sheet, &item->block);
	}
	word_amount(table_cell(table), sheet, item, item->laid);
	if (item->spare > 0)
		word_amount(table_cell(table), sheet, item, item->spare);
	else
		table_words(table, "-");
	word_amount(table_cell(table), sheet, item, item->order);
	note_cell(table, sheet, item);
}

void print_items(const struct sheet *sheet)
{
	static const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Laid", COLUMN_RIGHT }, { "Spare", COLUMN_RIGHT },
		{ "Order", COLUMN_RIGHT }, { "Note", COLUMN_WRAPS },
	};
	const struct takeoff *takeoff = sheet->takeoff;
	struct table table = table_start(columns, 5, 0);

	page_heading(sheet->out, takeoff->complete ? "To buy and to haul" :
		"To buy and to haul (INCOMPLETE)");
	for (int i = 0; i < takeoff->item_count; i++)
		item_row(&table, sheet, &takeoff->items[i]);
	table_print(&table, sheet->out);
	if (takeoff->item_count == 0)
		text_add(sheet->out, takeoff->complete ?
			"Nothing: there is nothing to build, to fill or to lay.\n" :
			"Nothing that could be counted: see the beds that are not laid out.\n");
	page_note(sheet->out, "Counted here: all that is dug, laid, filled and fenced. Not counted: the "
		"fixtures themselves, plants, tools and hire.");
}
