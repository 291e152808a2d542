#include "plot/history/step.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

/* Appends what differs in row y, and its letters. */
static void row_compare(struct step *step, size_t *capacity, struct text *letters,
	const struct plot *before, const struct plot *after, int y)
{
	int columns = before->ground.columns;
	const char *was = ground_at(&before->ground, 0, y), *is = ground_at(&after->ground, 0, y);

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
		text_add_bytes(letters, was + start, (size_t)(x - start));
		text_add_bytes(letters, is + start, (size_t)(x - start));
	}
}

static void letters_find(struct step *step, const struct plot *before, const struct plot *after)
{
	struct text letters = TEXT_EMPTY;
	size_t capacity = 0, length;

	for (int y = 0; y < before->ground.rows; y++)
		row_compare(step, &capacity, &letters, before, after, y);
	if (step->changed_count == 0)
		return;
	length = letters.length;
	step->changed = memory_resize(step->changed, step->changed_count, sizeof *step->changed);
	step->letters = memory_resize(text_take(&letters), length, 1);
}

struct step *step_between(const struct plot *before, const struct plot *after)
{
	size_t taken = memory_taken();
	struct step *step = memory_new(1, sizeof *step);
	const struct plot *const sides[STEP_SIDES] = { before, after };
	bool is_resized = before->ground.columns != after->ground.columns ||
		before->ground.rows != after->ground.rows;
	bool is_detailed = !details_equal(&before->details, &after->details);

	if (!is_resized)
		letters_find(step, before, after);
	if (!is_resized && !is_detailed && step->changed_count == 0) {
		step_free(step);
		return NULL;
	}
	if (is_resized)
		step->grounds = memory_new(STEP_SIDES, sizeof *step->grounds);
	if (is_detailed)
		step->details = memory_new(STEP_SIDES, sizeof *step->details);
	for (int side = 0; side < STEP_SIDES; side++) {
		if (is_resized)
			step->grounds[side] = ground_copy(&sides[side]->ground);
		if (is_detailed)
			step->details[side] = details_copy(&sides[side]->details);
	}
	step->bytes = memory_taken() - taken;
	return step;
}

bool step_is_none(const struct plot *before, const struct plot *after)
{
	struct step *step = step_between(before, after);

	if (step)
		step_free(step);
	return !step;
}

void step_free(struct step *step)
{
	for (int side = 0; side < STEP_SIDES; side++) {
		if (step->details)
			details_fini(&step->details[side]);
		if (step->grounds)
			ground_fini(&step->grounds[side]);
	}
	free(step->details);
	free(step->grounds);
	free(step->changed);
	free(step->letters);
	free(step->name);
	free(step);
}

static void letters_put(const struct step *step, struct ground *ground, int side)
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
	if (step->grounds) {
		ground_fini(&plot->ground);
		plot->ground = ground_copy(&step->grounds[side]);
	}
	letters_put(step, &plot->ground, side);
	if (step->details) {
		details_fini(&plot->details);
		plot->details = details_copy(&step->details[side]);
	}
}

struct place step_place(const struct step *step)
{
	if (step->changed_count)
		return (struct place){ step->changed[0].x, step->changed[0].y };
	return (struct place){ -1, -1 };
}
