#include "editor/sheets/allow_sheet.h"
#include "editor/sheets/sheet_ask.h"

/* The sheet's owner. */
struct allowing {
	struct editor *editor;
	int sheet;
};

/* The attributes of a sheet follow each other. */
struct block_part allow_sheet_part(int sheet)
{
	struct block_part part = { .first = block_first(BLOCK_ALLOW), .has_notes = sheet == 0 };

	while ((int)attribute_row(part.first)->sheet != sheet)
		part.first++;
	part.last = part.first;
	while (part.last < block_last(BLOCK_ALLOW) &&
		(int)attribute_row(part.last + 1)->sheet == sheet)
		part.last++;
	return part;
}

static bool accept(struct sheet *sheet, struct fault *fault)
{
	const struct allowing *allowing = sheet->owner;
	const struct block_part part = allow_sheet_part(allowing->sheet);

	return block_fields_read(sheet, 0, &editor_edit(allowing->editor)->details.allow, &part,
		fault);
}

bool allow_sheet_fill(struct editor *editor, int which)
{
	struct allowing allowing = { editor, which };
	struct block_part part = allow_sheet_part(which);

	part.held = editor->has_book ? &editor->book.allow : NULL;
	return sheet_ask(editor, &(struct sheet_spec){ .title = allow_sheet_titles[which],
		.done = "set all this", .block = &editor->plot->details.allow, .part = part,
		.accept = accept, .owner = &allowing });
}
