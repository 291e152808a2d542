#include "editor/acts/differences.h"
#include "plot/history/step.h"

#include <stdio.h>
#include <string.h>

static bool is_title_equal(const struct plot *a, const struct plot *b)
{
	return value_equal(attribute_row(HEAD_TITLE)->rule.kind,
		block_value(&a->details.head, HEAD_TITLE),
		block_value(&b->details.head, HEAD_TITLE));
}

static bool is_legend_equal(const struct details *a, const struct details *b)
{
	bool is_equal = a->legend_count == b->legend_count;

	for (size_t i = 0; is_equal && i < a->legend_count; i++)
		is_equal = a->legend[i].letter == b->legend[i].letter &&
			a->legend[i].class == b->legend[i].class &&
			strcmp(a->legend[i].name, b->legend[i].name) == 0 &&
			block_equal(&a->legend[i].block, &b->legend[i].block);
	return is_equal;
}

static bool is_fences_equal(const struct details *a, const struct details *b)
{
	bool is_equal = a->fence_count == b->fence_count;

	for (size_t i = 0; is_equal && i < a->fence_count; i++)
		is_equal = fence_equal(&a->fences[i], &b->fences[i]);
	return is_equal;
}

static bool is_rest_equal(const struct plot *a, const struct plot *b)
{
	struct block head = block_copy(&a->details.head), other = block_copy(&b->details.head);
	bool is_equal;

	block_set(&head, HEAD_TITLE, (struct value){ .set = false });
	block_set(&other, HEAD_TITLE, (struct value){ .set = false });
	is_equal = block_equal(&head, &other) &&
		block_equal(&a->details.allow, &b->details.allow) &&
		block_equal(&a->details.rates, &b->details.rates) &&
		extras_equal(&a->details, &b->details) &&
		names_equal(&a->details.names, &b->details.names) &&
		surroundings_equal(&a->details.around, &b->details.around) &&
		levels_equal(&a->details.levels, &b->details.levels) &&
		finish_equal(&a->details.finish, &b->details.finish);
	block_fini(&head);
	block_fini(&other);
	return is_equal;
}

static size_t cells_changed(const struct step *step)
{
	size_t cells = 0;

	for (size_t i = 0; i < step->changed_count; i++)
		cells += (size_t)step->changed[i].length;
	return cells;
}

void differences_add(const struct plot *a, const struct plot *b, struct text *out)
{
	struct step *step = step_between(a, b);
	size_t cells = step ? cells_changed(step) : 0;
	char cells_words[40];
	const struct {
		bool differs, is_plural;
		const char *words;
	} parts[] = {
		{ cells > 0, cells != 1, cells_words },
		{ step && step->grounds, false, "the size of the plan" },
		{ !is_title_equal(a, b), false, "the title" },
		{ !is_legend_equal(&a->details, &b->details), false, "the legend" },
		{ !is_fences_equal(&a->details, &b->details), true, "the fences" },
		{ !is_rest_equal(a, b), true, "other details" },
	};
	enum { PARTS = sizeof parts / sizeof *parts };
	int count = 0, met = 0;
	bool is_plural;

	snprintf(cells_words, sizeof cells_words, "%zu %s", cells, cells == 1 ? "cell" : "cells");
	for (int i = 0; i < PARTS; i++)
		count += parts[i].differs;
	is_plural = count > 1;
	for (int i = 0; i < PARTS; i++) {
		if (!parts[i].differs)
			continue;
		text_print(out, "%s%s", met == 0 ? "" : met == count - 1 ? " and " : ", ",
			parts[i].words);
		is_plural |= parts[i].is_plural;
		met++;
	}
	if (count)
		text_add(out, is_plural ? " differ" : " differs");
	if (step)
		step_free(step);
}
