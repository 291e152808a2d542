#include "editor/cards/named_card.h"
#include "plot/edit/legend.h"

#include <stdlib.h>
#include <string.h>

enum { NAME, LETTER, FIELDS_MOST }; /* the block's follow the last of these that there is */

static const struct value_rule letter_rule = { .kind = VALUE_TEXT, .least = 1, .most = 1 };

/* Owned by the caller. */
static struct block block_so_far(const struct named_card *named)
{
	return named->block ? block_copy(named->block) : (struct block){ .kind = named->kind };
}

static int own_fields(const struct named_card *named)
{
	return named->letter ? FIELDS_MOST : LETTER;
}

static bool letter_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct named_card *named = card->owner;
	const struct details *details = &named->editor->plot->details;
	bool is_capital = named->letter_class == CLASS_FIXTURE;
	char letter = value->as.text[0];
	struct text left = TEXT_EMPTY;

	if (class_takes_letter(named->letter_class, letter) &&
		(letter == named->letter_so_far || legend_is_free(details, letter)))
		return true;
	for (int c = '!'; c <= '~'; c++)
		if (class_takes_letter(named->letter_class, (char)c) &&
		    legend_is_free(details, (char)c))
			text_print(&left, " %c", c);
	if (class_takes_letter(named->letter_class, letter))
		fault_set(fault, field, "Letter: %c is taken; free are%s", letter,
			left.length ? left.bytes : " none");
	else
		fault_set(fault, field, "Letter: found %s, expected a %s letter, as a %s has it; "
			"free are%s", value->as.text, is_capital ? "capital" : "small",
			named->letter_of, left.length ? left.bytes : " none");
	text_fini(&left);
	return false;
}

static int first_part(const struct card *card)
{
	const struct named_card *named = card->owner;

	return card->count - named->part_count;
}

static bool check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct named_card *named = card->owner;
	int part = field - first_part(card);

	if (part >= 0 && strcmp(value->as.text, named->parts[part].typed) != 0)
		return fault_set(fault, field, "%s: leave it as it is, or empty it to take it away",
			named->parts[part].label);
	return !named->letter || field != LETTER ||
		letter_check(card, field, value, fault);
}

static bool are_parts_good(const struct card *card, struct fault *fault)
{
	bool is_good = true;

	for (int field = first_part(card); field < card->count && is_good; field++) {
		struct value value;

		is_good = card_read(card, field, &value, fault);
		if (is_good)
			value_fini(VALUE_TEXT, &value);
	}
	return is_good;
}

static void remove_parts(const struct card *card)
{
	struct named_card *named = card->owner;

	for (int i = 0; i < named->part_count; i++)
		if (!*card->fields[first_part(card) + i].typed)
			named->remove(named, i);
}

static bool accept(struct card *card, struct fault *fault)
{
	struct named_card *named = card->owner;
	const struct block_part whole = block_whole(named->kind);
	struct block block = block_so_far(named);
	struct value letter = { .set = false };
	char *name = NULL;
	bool is_good = card_name_read(card, NAME, named->name, &name, fault) &&
		(!named->letter || card_read(card, LETTER, &letter, fault)) &&
		block_fields_read(card, own_fields(named), &block, &whole, fault) &&
		are_parts_good(card, fault);

	if (is_good) {
		named->take(named, letter.set ? letter.as.text[0] : '\0', name, &block);
		remove_parts(card);
	} else {
		free(name);
		block_fini(&block);
	}
	value_fini(VALUE_TEXT, &letter);
	return is_good;
}

bool named_card_ask(struct named_card *named)
{
	const char letter[] = { named->letter, '\0' };
	const struct field_spec fields[FIELDS_MOST] = {
		[NAME] = card_name(named->letter ?
			"What it is called: in the legend, on the panel and in the takeoff." :
			"What it is called on the panel and in the takeoff.", named->name),
		[LETTER] = { .label = "Letter",
			.meaning = "The letter that stands for it on the plan, and its key.",
			.rule = &letter_rule, .required = true,
			.typed = letter },
	};
	struct block block = block_so_far(named);
	bool is_filled = card_ask(named->editor, &(struct card_spec){ .title = named->title,
		.done = named->block ? "set all this" : "add it", .fields = fields,
		.count = own_fields(named), .block = &block, .part = block_whole(named->kind),
		.last = named->parts, .last_count = named->part_count,
		.accept = accept, .check = check, .owner = named });

	block_fini(&block);
	return is_filled;
}
