#include "editor/cards/plot_card.h"
#include "editor/cards/cell_change.h"
#include "editor/cards/card_ask.h"

#include <string.h>

_Static_assert(HEAD_TITLE == 0, "the card's fields are numbered like the head's attributes");

/* The one value whose range depends on the rest of the plot. */
static bool head_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct editor *editor = card->owner;
	const struct ground *ground = &editor->plot->ground;
	int across = 2 * ground->columns - 1, down = 2 * ground->rows - 1;

	if (field != HEAD_AXIS || (value->as.place.x >= 1 && value->as.place.x <= across &&
		value->as.place.y >= 1 && value->as.place.y <= down))
		return true;
	return fault_set(fault, field, "%s: found %d,%d, expected 1,1 to %d,%d",
		card->fields[field].label, value->as.place.x, value->as.place.y, across, down);
}

/* With other units the cell is shown in them, if that makes a good value. */
static void head_changed(struct card *card, int field)
{
	const struct field *units = &card->fields[HEAD_UNITS];
	struct fault fault = { 0 };
	struct value cell;
	bool is_metric = strcmp(units->typed, units->rule->words[UNITS_METRIC]) == 0;

	if (field != HEAD_UNITS)
		return;
	card->units = is_metric ? UNITS_METRIC : UNITS_IMPERIAL;
	if (card_read(card, HEAD_CELL, &cell, &fault))
		card_type_value(card, HEAD_CELL, &cell);
	fault_fini(&fault);
}

/* How many values with another default in other units the block leaves unset. */
static int count_open(const struct block *block)
{
	int count = 0;

	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		count += attribute_is_rounder(a) && !block_value(block, a)->set;
	return count;
}

static void say_defaults(struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	int count = count_open(&details->allow);

	for (size_t i = 0; i < details->legend_count; i++)
		count += count_open(&details->legend[i].block);
	for (size_t i = 0; i < details->fence_count; i++)
		count += count_open(&details->fences[i].block);
	editor_say(editor, "Now %s: %d values that are not set have the defaults of %s plots.",
		attribute_row(HEAD_UNITS)->rule.words[plot_units(editor->plot)], count,
		attribute_row(HEAD_UNITS)->rule.words[plot_units(editor->plot)]);
}

static bool head_accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	struct block head = block_copy(&editor->plot->details.head);
	const struct block_part whole = block_whole(BLOCK_HEAD);
	enum units units = plot_units(editor->plot);
	struct block *held, before;

	if (!block_fields_read(card, 0, &head, &whole, fault) ||
		!cell_change(editor, &head, fault)) {
		block_fini(&head);
		return false;
	}
	held = &editor_edit(editor)->details.head;
	before = *held;
	*held = head;
	block_fini(&before);
	editor->said_outside = false;
	if (plot_units(editor->plot) != units)
		say_defaults(editor);
	return true;
}

static const struct block_part prices_part = { .first = HEAD_PRICES, .last = HEAD_PRICES };

static bool prices_accept(struct card *card, struct fault *fault)
{
	return block_fields_read(card, 0, &editor_edit(card->owner)->details.head, &prices_part,
		fault);
}

bool prices_card_fill(struct editor *editor)
{
	return card_ask(editor, &(struct card_spec){ .title = "Set the price book",
		.done = "set it", .block = &editor->plot->details.head, .part = prices_part,
		.accept = prices_accept, .owner = editor });
}

bool plot_card_fill(struct editor *editor)
{
	return card_ask(editor, &(struct card_spec){ .title = HEAD_CARD_TITLE,
		.done = "set all this", .block = &editor->plot->details.head,
		.part = block_whole(BLOCK_HEAD), .accept = head_accept, .check = head_check,
		.changed = head_changed, .owner = editor });
}
