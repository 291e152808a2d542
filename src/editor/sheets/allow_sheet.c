#include "editor/sheets/allow_sheet.h"
#include "editor/sheets/sheet_ask.h"

static const struct {
	const char *title;
	struct block_part part;
} sheets[ALLOW_SHEETS] = {
	{ "Allowed for: walls and soil", { ALLOW_KERF, ALLOW_CARTRIDGE, true } },
	{ "Allowed for: ground and digging", { ALLOW_TOPSOIL, ALLOW_SWELL_SAND, false } },
	{ "Allowed for: stone and lawn", { ALLOW_COMPACTION_FINES, ALLOW_SEED, false } },
	{ "Allowed for: weights and hauling", { ALLOW_DENSITY_STONE, ALLOW_TRUCK_STEP, false } },
	{ "Allowed for: fabric and edging", { ALLOW_FABRIC_WIDTH, ALLOW_EDGING_SPIKE, false } },
	{ "Allowed for: fence posts", { ALLOW_CONCRETE_BAG, ALLOW_POST_STOCK, false } },
};

/* The sheet's owner. */
struct allowing {
	struct editor *editor;
	int sheet;
};

const char *allow_sheet_title(int sheet)
{
	return sheets[sheet].title;
}

struct block_part allow_sheet_part(int sheet)
{
	return sheets[sheet].part;
}

static bool accept(struct sheet *sheet, struct fault *fault)
{
	const struct allowing *allowing = sheet->owner;

	return block_fields_read(sheet, 0, &editor_edit(allowing->editor)->details.allow,
		&sheets[allowing->sheet].part, fault);
}

bool allow_sheet_fill(struct editor *editor, int which)
{
	struct allowing allowing = { editor, which };

	return sheet_ask(editor, &(struct sheet_spec){ .title = sheets[which].title,
		.done = "set all this", .block = &editor->plot->details.allow,
		.part = sheets[which].part, .accept = accept, .owner = &allowing });
}
