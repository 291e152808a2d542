#include "plot/history/step.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

/* ---- Finding --------------------------------------------------------------------------------- */

/* Appends the letters in which row y differs. */
static void row_compare(struct step *step, size_t *capacity, const struct ground *before,
	const struct ground *after, int y)
{
	int columns = before->columns;
	const char *was = ground_at(before, 0, y), *is = ground_at(after, 0, y);

	if (memcmp(was, is, (size_t)columns) == 0)
		return;
	for (int x = 0; x < columns; x++) {
		int start = x;

		while (x < columns && was[x] != is[x])
			x++;
		if (x == start)
			continue;
		step->changed = memory_grow(step->changed, step->changed_count, capacity,
			sizeof *step->changed);
		step->changed[step->changed_count++] = (struct changed){ start, y, x - start };
	}
}

static size_t letters_length(const struct step *step)
{
	size_t length = 0;

	for (size_t i = 0; i < step->changed_count; i++)
		length += (size_t)step->changed[i].length;
	return length;
}

static void letters_keep(struct step *step, const struct ground *before, const struct ground *after)
{
	char *at = step->letters = memory_new(letters_length(step), STEP_SIDES);

	for (size_t i = 0; i < step->changed_count; i++) {
		const struct changed *changed = &step->changed[i];
		size_t length = (size_t)changed->length;

		memcpy(at, ground_at(before, changed->x, changed->y), length);
		memcpy(at + length, ground_at(after, changed->x, changed->y), length);
		at += STEP_SIDES * length;
	}
}

static void spans_find(struct step *step, const struct ground *before, const struct ground *after)
{
	size_t capacity = 0;

	for (int y = 0; y < before->rows; y++)
		row_compare(step, &capacity, before, after, y);
	if (step->changed_count == 0)
		return;
	step->changed = memory_resize(step->changed, step->changed_count, sizeof *step->changed);
	letters_keep(step, before, after);
}

static struct ground *ground_kept(const struct ground *ground)
{
	struct ground *kept = memory_new(1, sizeof *kept);

	*kept = ground_copy(ground);
	return kept;
}

static struct details *details_kept(const struct details *details)
{
	struct details *kept = memory_new(1, sizeof *kept);

	*kept = details_copy(details);
	return kept;
}

/* ---- Measuring ------------------------------------------------------------------------------- */

/* What a block of memory takes on the usual heap: 8 bytes more, in whole sixteens, 32 at least. */
static size_t heap_bytes(size_t size)
{
	size_t whole = (size + 8 + 15) / 16 * 16;

	return size == 0 ? 0 : whole < 32 ? 32 : whole;
}

static size_t text_bytes(const char *text)
{
	return heap_bytes(strlen(text) + 1);
}

/* What a block of the plot takes beside itself. */
static size_t block_bytes(const struct block *block)
{
	size_t bytes = heap_bytes(block->notes.capacity * sizeof *block->notes.texts) +
		(block->values ? heap_bytes(block_attributes(block->kind) * sizeof *block->values) :
		0);

	for (size_t i = 0; i < block->notes.count; i++)
		bytes += text_bytes(block->notes.texts[i]);
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		bytes += heap_bytes(value_bytes(attribute_row(a)->rule.kind,
			block_value(block, a)));
	return bytes;
}

static size_t fence_bytes(const struct fence *fence)
{
	size_t bytes = text_bytes(fence->name) + block_bytes(&fence->block) +
		heap_bytes(fence->run_capacity * sizeof *fence->runs) +
		heap_bytes(fence->gates.capacity * sizeof *fence->gates.items);

	for (size_t i = 0; i < fence->run_count; i++)
		bytes += heap_bytes(fence_run_room(fence->runs[i].count) * sizeof(struct place));
	return bytes;
}

static size_t details_bytes(const struct details *details)
{
	size_t bytes = heap_bytes(sizeof *details) + block_bytes(&details->head) +
		block_bytes(&details->allow) +
		heap_bytes(details->legend_capacity * sizeof *details->legend) +
		heap_bytes(details->fence_capacity * sizeof *details->fences);

	for (size_t i = 0; i < details->legend_count; i++)
		bytes += text_bytes(details->legend[i].name) +
			block_bytes(&details->legend[i].block);
	for (size_t i = 0; i < details->fence_count; i++)
		bytes += fence_bytes(&details->fences[i]);
	return bytes;
}

static size_t ground_bytes(const struct ground *ground)
{
	return heap_bytes(sizeof *ground) + heap_bytes(ground_count(ground));
}

static size_t step_bytes(const struct step *step)
{
	size_t bytes = heap_bytes(sizeof *step) +
		heap_bytes(step->changed_count * sizeof *step->changed) +
		heap_bytes(STEP_SIDES * letters_length(step));

	for (int side = 0; side < STEP_SIDES; side++) {
		bytes += step->details[side] ? details_bytes(step->details[side]) : 0;
		bytes += step->grounds[side] ? ground_bytes(step->grounds[side]) : 0;
	}
	return bytes;
}

/* ---- Steps ----------------------------------------------------------------------------------- */

struct step *step_between(const struct plot *before, const struct plot *after)
{
	struct step *step = memory_new(1, sizeof *step);
	const struct plot *const sides[STEP_SIDES] = { before, after };
	bool is_resized = before->ground.columns != after->ground.columns ||
		before->ground.rows != after->ground.rows;
	bool is_detailed = !details_equal(&before->details, &after->details);

	if (!is_resized)
		spans_find(step, &before->ground, &after->ground);
	if (!is_resized && !is_detailed && step->changed_count == 0) {
		step_free(step);
		return NULL;
	}
	for (int side = 0; side < STEP_SIDES; side++) {
		if (is_resized)
			step->grounds[side] = ground_kept(&sides[side]->ground);
		if (is_detailed)
			step->details[side] = details_kept(&sides[side]->details);
	}
	step->bytes = step_bytes(step);
	return step;
}

void step_free(struct step *step)
{
	for (int side = 0; side < STEP_SIDES; side++) {
		if (step->details[side])
			details_fini(step->details[side]);
		if (step->grounds[side])
			ground_fini(step->grounds[side]);
		free(step->details[side]);
		free(step->grounds[side]);
	}
	free(step->changed);
	free(step->letters);
	free(step);
}

static void spans_put(const struct step *step, struct ground *ground, int side)
{
	const char *at = step->letters;

	for (size_t i = 0; i < step->changed_count; i++) {
		const struct changed *changed = &step->changed[i];
		size_t length = (size_t)changed->length;

		memcpy(ground_at(ground, changed->x, changed->y), at + (size_t)side * length,
			length);
		at += STEP_SIDES * length;
	}
}

void step_put(const struct step *step, struct plot *plot, int side)
{
	if (step->grounds[side]) {
		ground_fini(&plot->ground);
		plot->ground = ground_copy(step->grounds[side]);
	}
	spans_put(step, &plot->ground, side);
	if (step->details[side]) {
		details_fini(&plot->details);
		plot->details = details_copy(step->details[side]);
	}
}

struct place step_place(const struct step *step)
{
	if (step->changed_count)
		return (struct place){ step->changed[0].x, step->changed[0].y };
	return (struct place){ -1, -1 };
}
