#include "plot/block.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

void notes_fini(struct notes *notes)
{
	for (size_t i = 0; i < notes->count; i++)
		free(notes->texts[i]);
	free(notes->texts);
	*notes = NOTES_EMPTY;
}

void notes_add(struct notes *notes, char *text)
{
	notes->texts = memory_grow(notes->texts, notes->count, &notes->capacity,
		sizeof *notes->texts);
	notes->texts[notes->count++] = text;
}

struct notes notes_copy(const struct notes *notes)
{
	struct notes copy = NOTES_EMPTY;

	for (size_t i = 0; i < notes->count; i++)
		notes_add(&copy, memory_string(notes->texts[i]));
	return copy;
}

bool notes_equal(const struct notes *a, const struct notes *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = strcmp(a->texts[i], b->texts[i]) == 0;
	return is_equal;
}

void block_fini(struct block *block)
{
	enum attribute first = block_first(block->kind);

	for (enum attribute a = first; block->values && a <= block_last(block->kind); a++)
		value_fini(attribute_row(a)->rule.kind, &block->values[a - first]);
	free(block->values);
	notes_fini(&block->notes);
	*block = (struct block){ .kind = block->kind };
}

struct block block_copy(const struct block *block)
{
	struct block copy = { .kind = block->kind, .notes = notes_copy(&block->notes) };
	enum attribute first = block_first(block->kind);

	if (block->values)
		copy.values = memory_new(block_attributes(block->kind), sizeof *copy.values);
	for (enum attribute a = first; block->values && a <= block_last(block->kind); a++)
		copy.values[a - first] = value_copy(attribute_row(a)->rule.kind,
			&block->values[a - first]);
	return copy;
}

bool block_equal(const struct block *a, const struct block *b)
{
	enum attribute first = block_first(a->kind);

	if (a->kind != b->kind || !notes_equal(&a->notes, &b->notes))
		return false;
	for (enum attribute at = first; (a->values || b->values) && at <= block_last(a->kind); at++)
		if (!value_equal(attribute_row(at)->rule.kind, block_value(a, at),
			block_value(b, at)))
			return false;
	return true;
}

bool block_is_empty(const struct block *block)
{
	for (size_t i = 0; block->values && i < block_attributes(block->kind); i++)
		if (block->values[i].set)
			return false;
	return block->notes.count == 0;
}

const struct value *block_value(const struct block *block, enum attribute a)
{
	static const struct value unset = { .set = false };

	assert(attribute_block(a) == block->kind);
	return block->values ? &block->values[a - block_first(block->kind)] : &unset;
}

void block_set(struct block *block, enum attribute a, struct value value)
{
	struct value *held;

	assert(attribute_block(a) == block->kind);
	if (!block->values)
		block->values = memory_new(block_attributes(block->kind), sizeof *block->values);
	held = &block->values[a - block_first(block->kind)];
	value_fini(attribute_row(a)->rule.kind, held);
	*held = value;
}

const struct value *block_effective(const struct block *block, enum attribute a)
{
	const struct value *value = block_value(block, a);

	return value->set ? value : &attribute_row(a)->preset;
}

nm block_length(const struct block *block, enum attribute a)
{
	const struct value *value = block_effective(block, a);

	assert(attribute_row(a)->rule.kind == VALUE_LENGTH && value->set);
	return value->as.length;
}

int64_t block_number(const struct block *block, enum attribute a)
{
	const struct value *value = block_effective(block, a);

	assert(value->set);
	return value->as.number;
}

double block_amount(const struct block *block, enum attribute a)
{
	return amount_si(&block_effective(block, a)->as.amount);
}

double block_share(const struct block *block, enum attribute a)
{
	return (double)block_number(block, a) / (double)MILLION / 100;
}
