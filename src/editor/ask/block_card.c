#include "editor/ask/block_card.h"
#include "base/memory.h"
#include "plot/plot.h"

#include <stdlib.h>

static const struct value_rule note_rule = { .kind = VALUE_TEXT, .least = 1, .most = NOTE_MOST };

struct block_part block_whole(enum block_kind kind)
{
	return (struct block_part){ block_first(kind), block_last(kind), true, NULL };
}

struct block_part block_notes_alone(void)
{
	return (struct block_part){ .first = HEAD_TITLE + 1, .last = HEAD_TITLE,
		.has_notes = true };
}

static int attributes(const struct block_part *part)
{
	return (int)part->last - (int)part->first + 1;
}

static int notes_shown(const struct block *block)
{
	return block->notes.count < CARD_NOTES_MOST ? (int)block->notes.count : CARD_NOTES_MOST;
}

int block_fields(const struct block *block, const struct block_part *part)
{
	return attributes(part) + (part->has_notes ? notes_shown(block) + 1 : 0);
}

/* NULL: nothing can be said. */
static char *unset_words(enum attribute a, const struct block *held, enum units units)
{
	const struct value *value = held ? block_value(held, a) : attribute_preset(a, units);
	const char *brief = attribute_brief(a, units);
	struct text words = TEXT_EMPTY;

	if (!value->set && brief)
		return memory_string(brief);
	if (!value->set)
		value = attribute_preset(a, units);
	if (!value->set)
		return NULL;
	card_value_words(&words, &attribute_row(a)->rule, value, units);
	return text_take(&words);
}

/* What is two metres and more by default is not typed in inches or millimetres, nor what comes by
 * the cubic yard or metre in smaller units. */
static enum span span_of(enum attribute a, enum units units)
{
	const struct value *preset = attribute_preset(a, units);
	enum value_kind kind = attribute_row(a)->rule.kind;
	bool is_long = false;

	if (preset->set && kind == VALUE_LENGTH)
		is_long = preset->as.length >= 2 * NM_PER_M;
	if (preset->set && kind == VALUE_AMOUNT)
		is_long = preset->as.amount.unit == AMOUNT_LB_CU_YD ||
			preset->as.amount.unit == AMOUNT_CU_YD ||
			preset->as.amount.unit == AMOUNT_M3;
	return is_long ? SPAN_LONG : SPAN_SMALL;
}

static struct value note_value(const struct block *block, int note)
{
	if ((size_t)note >= block->notes.count)
		return (struct value){ .set = false };
	return (struct value){ .set = true, .as.text = block->notes.texts[note] };
}

static void notes_set(struct card *card, int first, const struct block *block)
{
	int shown = notes_shown(block);

	card->has_end = true;
	for (int i = 0; i <= shown; i++) {
		struct value note = note_value(block, i);

		card->fields[first + i].label = i < shown ? "Note" : "New note, type it";
		card->fields[first + i].meaning = i < shown ?
			"A note, as it stands in the takeoff; an emptied one goes." :
			"Words of your own for the takeoff: type them here, or leave it empty.";
		card->fields[first + i].rule = &note_rule;
		if (i < shown)
			card_type_value(card, first + i, &note);
	}
}

void block_fields_unset(struct card *card, int first, const struct block_part *part)
{
	for (int i = 0; i < attributes(part); i++) {
		struct field *field = &card->fields[first + i];

		free(field->unset);
		field->unset = unset_words(part->first + (enum attribute)i, part->held,
			card->units);
	}
}

void block_fields_set(struct card *card, int first, const struct block *block,
	const struct block_part *part)
{
	int count = attributes(part);

	for (int i = 0; i < count; i++) {
		enum attribute a = part->first + (enum attribute)i;
		const struct attribute_row *row = attribute_row(a);
		struct field *field = &card->fields[first + i];

		field->label = row->label;
		field->meaning = row->meaning;
		field->rule = &row->rule;
		field->span = span_of(a, card->units);
		field->required = row->required;
		card_type_value(card, first + i, block_value(block, a));
	}
	block_fields_unset(card, first, part);
	if (part->has_notes)
		notes_set(card, first + count, block);
}

static bool attributes_read(const struct card *card, int first, struct block *block,
	const struct block_part *part, struct fault *fault)
{
	for (int i = 0; i < attributes(part); i++) {
		enum attribute a = part->first + (enum attribute)i;
		struct value value;

		if (card_says(card, first + i, block_value(block, a)))
			continue;
		if (!card_read(card, first + i, &value, fault))
			return false;
		block_set(block, a, value);
	}
	return true;
}

/* Adds what a note's field says now; nothing where it was emptied. */
static bool note_read(const struct card *card, int field, const struct value *was,
	struct block *out, struct fault *fault)
{
	struct value note;

	if (was->set && card_says(card, field, was)) {
		notes_add(&out->notes, memory_string(was->as.text));
		return true;
	}
	if (!card_read(card, field, &note, fault))
		return false;
	if (note.set)
		notes_add(&out->notes, memory_string(note.as.text));
	value_fini(VALUE_TEXT, &note);
	return true;
}

/* Gives the block its notes as the fields say them now. */
static bool notes_read(const struct card *card, int first, struct block *block,
	struct fault *fault)
{
	struct block noted = { .kind = block->kind };
	struct notes before = block->notes;
	int shown = notes_shown(block);
	bool is_good = true;

	for (int i = 0; is_good && i < shown; i++) {
		struct value was = note_value(block, i);

		is_good = note_read(card, first + i, &was, &noted, fault);
	}
	for (size_t i = (size_t)shown; i < before.count; i++)
		notes_add(&noted.notes, memory_string(before.texts[i]));
	is_good = is_good && note_read(card, first + shown, &(struct value){ .set = false },
		&noted, fault);
	block->notes = noted.notes;
	noted.notes = before;
	block_fini(&noted);
	return is_good;
}

bool block_fields_read(const struct card *card, int first, struct block *block,
	const struct block_part *part, struct fault *fault)
{
	struct block filled = block_copy(block);
	bool is_good = attributes_read(card, first, &filled, part, fault) &&
		(!part->has_notes || notes_read(card, first + attributes(part), &filled, fault));

	if (is_good) {
		struct block old = *block;

		*block = filled;
		filled = old;
	}
	block_fini(&filled);
	return is_good;
}
