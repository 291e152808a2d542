#include "editor/sheets/rates_sheet.h"
#include "editor/sheets/sheet_ask.h"

static struct block_part rates_part(const struct editor *editor)
{
	struct block_part part = block_whole(BLOCK_RATES);

	part.has_notes = false;
	part.held = editor->has_book ? &editor->book.rates : NULL;
	return part;
}

static bool accept(struct sheet *sheet, struct fault *fault)
{
	struct editor *editor = sheet->owner;
	const struct block_part part = rates_part(editor);

	return block_fields_read(sheet, 0, &editor_edit(editor)->details.rates, &part, fault);
}

bool rates_sheet_fill(struct editor *editor)
{
	return sheet_ask(editor, &(struct sheet_spec){ .title = "Hours that work takes",
		.done = "set all this", .block = &editor->plot->details.rates,
		.part = rates_part(editor), .accept = accept, .owner = editor });
}
