#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

#include <limits.h>

/* Letters to choose from: all of the legend and open ground. */
struct letters {
	char list[UCHAR_MAX + 1];
	int count;
};

static void letter_add(struct letters *letters, char letter)
{
	letters->list[letters->count++] = letter;
}

/* Those that lie in the marked piece, in the legend's order. */
static struct letters letters_marked(const struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	const struct ground *shape = &editor->shape;
	bool is_there[UCHAR_MAX + 1] = { false };
	struct letters letters = { .count = 0 };

	for (int y = 0; y < shape->rows; y++)
		for (int x = 0; x < shape->columns; x++)
			if (ground_cell(shape, x, y) != PATCH_NOTHING)
				is_there[(unsigned char)ground_cell(&editor->plot->ground,
					editor->marked.left + x, editor->marked.top + y)] = true;
	for (size_t i = 0; i < details->legend_count; i++)
		if (is_there[(unsigned char)details->legend[i].letter])
			letter_add(&letters, details->legend[i].letter);
	if (is_there[OPEN_GROUND])
		letter_add(&letters, OPEN_GROUND);
	return letters;
}

static struct letters letters_but(const struct editor *editor, char but)
{
	const struct details *details = &editor->plot->details;
	struct letters letters = { .count = 0 };

	for (size_t i = 0; i < details->legend_count; i++)
		if (details->legend[i].letter != but)
			letter_add(&letters, details->legend[i].letter);
	if (but != OPEN_GROUND)
		letter_add(&letters, OPEN_GROUND);
	return letters;
}

/* The letter picked; NUL where the question was left. One alone is not asked for. What is in hand
 * is offered first. */
static char letter_ask(struct editor *editor, const char *text, const struct letters *letters)
{
	const char *answers[UCHAR_MAX + 1];
	struct question question = { .text = text, .answers = answers, .count = letters->count };
	struct report report = editor_report(editor, &editor->words);
	int answer;

	if (letters->count == 1)
		return letters->list[0];
	for (int i = 0; i < letters->count; i++) {
		answers[i] = plain_letter(&report, letters->list[i]);
		if (letters->list[i] == editor->hand)
			question.first = i;
	}
	answer = editor->asker->choose(editor->asker, &question);
	return answer == ANSWER_NONE ? '\0' : letters->list[answer];
}

/* What is carried changes too, so that a stamp is like what is marked. */
static void reletter(struct editor *editor, char letter, char to)
{
	struct ground *carried = &editor->carried.ground;
	struct report report = editor_report(editor, &editor->words);
	struct laid laid = patch_reletter(editor_edit(editor), &editor->shape, editor->marked.left,
		editor->marked.top, letter, to);

	for (size_t i = 0; i < ground_count(carried); i++)
		if (carried->cells[i] == letter)
			carried->cells[i] = to;
	editor_say(editor, "%s for %s: %s %s.", plain_letter(&report, to),
		plain_letter(&report, letter), plain_count(&report, laid.changed),
		laid.changed == 1 ? "cell" : "cells");
	act_lay_end(editor, laid, ACT_IS_THERE);
}

static void act_reletter(struct editor *editor)
{
	struct letters letters;
	char letter, to;

	if (!act_has_mark(editor))
		return;
	letters = letters_marked(editor);
	letter = letter_ask(editor, "Which letter shall be another in what is marked?", &letters);
	if (!letter)
		return;
	letters = letters_but(editor, letter);
	to = letter_ask(editor, "What shall it be?", &letters);
	if (to)
		reletter(editor, letter, to);
}

static const struct act acts[] = {
	{ .id = ACT_RELETTER, .key_name = "Enter", .name = "Swap a letter",
		.wish = "lay one kind for another",
		.words = "letter replace change exchange", .writes = true,
		.run = act_reletter },
};
const struct act_group acts_of_letters = ACT_GROUP("Marked piece", acts);
