#include "editor/sheets/plot_sheet.h"
#include "editor/ask/block_sheet.h"
#include "editor/sheets/cell_change.h"

#include <string.h>

_Static_assert(HEAD_TITLE == 0, "the sheet's fields are numbered like the head's attributes");

/* The one value whose range hangs on the rest of the plot. */
static bool head_check(const struct sheet *sheet, int field, const struct value *value,
	struct fault *fault)
{
	const struct editor *editor = sheet->owner;
	const struct ground *ground = &editor->plot.ground;
	int across = 2 * ground->columns - 1, down = 2 * ground->rows - 1;

	if (field != HEAD_AXIS || (value->as.place.x >= 1 && value->as.place.x <= across &&
		value->as.place.y >= 1 && value->as.place.y <= down))
		return true;
	return fault_set(fault, field, "%s: found %d,%d, expected 1,1 to %d,%d",
		sheet->fields[field].label, value->as.place.x, value->as.place.y, across, down);
}

/* With other units the cell is shown in them, if it is a good one as it stands. */
static void head_changed(struct sheet *sheet, int field)
{
	const struct field *units = &sheet->fields[HEAD_UNITS];
	struct fault fault = { 0 };
	struct value cell;
	bool is_metric = strcmp(units->typed, units->rule->words[UNITS_METRIC]) == 0;

	if (field != HEAD_UNITS)
		return;
	sheet->units = is_metric ? UNITS_METRIC : UNITS_IMPERIAL;
	if (sheet_read(sheet, HEAD_CELL, &cell, &fault))
		sheet_type_value(sheet, HEAD_CELL, &cell);
	fault_fini(&fault);
}

static bool head_accept(struct sheet *sheet, struct fault *fault)
{
	struct editor *editor = sheet->owner;
	struct block *held = &editor->plot.details.head;
	struct block head = block_copy(held);
	const struct block_part whole = block_whole(BLOCK_HEAD);
	struct block before;

	if (!block_fields_read(sheet, 0, &head, &whole, fault) ||
		!cell_change(editor, &head, fault)) {
		block_fini(&head);
		return false;
	}
	before = *held;
	*held = head;
	block_fini(&before);
	editor->told_outside = false;
	return true;
}

bool plot_sheet_fill(struct editor *editor)
{
	struct block *head = &editor->plot.details.head;
	const struct block_part whole = block_whole(BLOCK_HEAD);
	struct sheet sheet;
	bool is_filled;

	sheet_init(&sheet, block_fields(head, &whole));
	sheet.title = "The plot itself";
	sheet.done = "set all this";
	sheet.units = plot_units(&editor->plot);
	sheet.accept = head_accept;
	sheet.check = head_check;
	sheet.changed = head_changed;
	sheet.owner = editor;
	block_fields_set(&sheet, 0, head, &whole);
	is_filled = editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
	return is_filled;
}
