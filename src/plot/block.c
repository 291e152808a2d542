#include "plot/block.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

void block_fini(struct block *block)
{
	enum attribute first = block_first(block->kind);

	for (enum attribute a = first; block->values && a <= block_last(block->kind); a++)
		value_fini(attribute_row(a)->rule.kind, &block->values[a - first]);
	free(block->values);
	for (size_t i = 0; i < block->notes.count; i++)
		free(block->notes.texts[i]);
	free(block->notes.texts);
	*block = (struct block){ .kind = block->kind };
}

struct block block_copy(const struct block *block)
{
	struct block copy = { .kind = block->kind };
	enum attribute first = block_first(block->kind);

	if (block->values)
		copy.values = memory_new(block_attributes(block->kind), sizeof *copy.values);
	for (enum attribute a = first; block->values && a <= block_last(block->kind); a++)
		copy.values[a - first] = value_copy(attribute_row(a)->rule.kind,
			&block->values[a - first]);
	for (size_t i = 0; i < block->notes.count; i++)
		block_add_note(&copy, memory_string(block->notes.texts[i]));
	return copy;
}

bool block_equal(const struct block *a, const struct block *b)
{
	enum attribute first = block_first(a->kind);

	if (a->kind != b->kind || a->notes.count != b->notes.count)
		return false;
	for (size_t i = 0; i < a->notes.count; i++)
		if (strcmp(a->notes.texts[i], b->notes.texts[i]) != 0)
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

void block_add_note(struct block *block, char *text)
{
	struct notes *notes = &block->notes;

	notes->texts = memory_grow(notes->texts, notes->count, &notes->capacity,
		sizeof *notes->texts);
	notes->texts[notes->count++] = text;
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
