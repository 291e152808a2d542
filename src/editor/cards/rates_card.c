#include "editor/cards/rates_card.h"
#include "editor/cards/card_ask.h"

static struct block_part rates_part(const struct editor *editor)
{
	struct block_part part = block_whole(BLOCK_RATES);

	part.has_notes = false;
	part.held = editor->has_book ? &editor->book.rates : NULL;
	return part;
}

static bool accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	const struct block_part part = rates_part(editor);

	return block_fields_read(card, 0, &editor_edit(editor)->details.rates, &part, fault);
}

bool rates_card_fill(struct editor *editor)
{
	return card_ask(editor, &(struct card_spec){ .title = "Hours that work takes",
		.done = "set all this", .block = &editor->plot->details.rates,
		.part = rates_part(editor), .accept = accept, .owner = editor });
}
