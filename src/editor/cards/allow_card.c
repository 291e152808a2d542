#include "editor/cards/allow_card.h"
#include "editor/cards/card_ask.h"

/* The card's owner. */
struct allowing {
	struct editor *editor;
	int card;
};

/* The attributes of a card follow each other. */
struct block_part allow_card_part(int card)
{
	struct block_part part = { .first = block_first(BLOCK_ALLOW), .has_notes = card == 0 };

	while ((int)attribute_row(part.first)->card != card)
		part.first++;
	part.last = part.first;
	while (part.last < block_last(BLOCK_ALLOW) &&
		(int)attribute_row(part.last + 1)->card == card)
		part.last++;
	return part;
}

static bool accept(struct card *card, struct fault *fault)
{
	const struct allowing *allowing = card->owner;
	const struct block_part part = allow_card_part(allowing->card);

	return block_fields_read(card, 0, &editor_edit(allowing->editor)->details.allow, &part,
		fault);
}

bool allow_card_fill(struct editor *editor, int which)
{
	struct allowing allowing = { editor, which };
	struct block_part part = allow_card_part(which);

	part.held = editor->has_book ? &editor->book.allow : NULL;
	return card_ask(editor, &(struct card_spec){ .title = allow_card_titles[which],
		.done = "set all this", .block = &editor->plot->details.allow, .part = part,
		.accept = accept, .owner = &allowing });
}
