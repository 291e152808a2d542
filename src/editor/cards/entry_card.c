#include "editor/cards/entry_card.h"
#include "base/memory.h"
#include "base/show.h"
#include "plot/edit/legend.h"
#include "editor/cards/named_card.h"

#include <stdlib.h>

struct entering {
	struct named_card named; /* first */
	enum plot_class class;
	char letter; /* the entry's so far; NUL: it is a new one */
};

static void take(struct named_card *named, char letter, char *name, const struct block *block)
{
	const struct entering *entering = (struct entering *)named;
	struct editor *editor = named->editor;
	struct plot *plot = editor_edit(editor);
	struct entry *entry;

	if (!entering->letter) {
		entry = details_add_entry(&plot->details, entering->class, letter, NULL);
	} else {
		if (letter != entering->letter)
			legend_reletter(plot, entering->letter, letter);
		entry = &plot->details.legend[legend_index(&plot->details, letter)];
	}
	free(entry->name);
	entry->name = name;
	block_fini(&entry->block);
	entry->block = *block;
	if (!entering->letter || editor->hand == entering->letter)
		editor_take_in_hand(editor, letter);
}

bool entry_card_change(struct editor *editor, char letter)
{
	const struct entry *entry = plot_entry(editor->plot, letter);
	struct entering entering = { .class = entry->class, .letter = letter, .named = {
		.editor = editor, .kind = class_block(entry->class), .name = entry->name,
		.title = arena_print(&editor->words, "The %s %c", class_word(entry->class), letter),
		.block = &entry->block, .letter = letter, .letter_so_far = letter,
		.letter_class = entry->class, .letter_of = class_word(entry->class),
		.take = take } };

	return named_card_ask(&entering.named);
}

bool entry_card_add(struct editor *editor)
{
	enum { ENTRY_CLASSES = CLASS_FIXTURE + 1 };
	static const char *const answers[] = { [CLASS_BED] = "A bed", [CLASS_PATH] = "A path",
		[CLASS_LAWN] = "A lawn", [CLASS_FIXTURE] = "A fixture" };
	static const char *const notes[] = { [CLASS_BED] = "planted; raised or level",
		[CLASS_PATH] = "crushed stone", [CLASS_LAWN] = "turf or seed",
		[CLASS_FIXTURE] = "stands on the ground" };
	static const char *const titles[] = { [CLASS_BED] = "A new bed",
		[CLASS_PATH] = "A new path", [CLASS_LAWN] = "A new lawn",
		[CLASS_FIXTURE] = "A new fixture" };
	const struct question question = { .text = "Add what to the legend?", .answers = answers,
		.notes = notes, .count = ENTRY_CLASSES };
	struct entering entering = { .named = { .editor = editor, .take = take } };
	struct report report;
	int answer = editor->asker->choose(editor->asker, &question);

	if (answer == ANSWER_NONE)
		return false;
	entering.class = (enum plot_class)answer;
	entering.named.title = titles[answer];
	entering.named.kind = class_block(entering.class);
	entering.named.letter_class = entering.class;
	entering.named.letter_of = class_word(entering.class);
	entering.named.letter = legend_free_letter(&editor->plot->details, entering.class);
	if (!entering.named.letter) {
		editor_say(editor, "All %s letters are taken; remove an entry first.",
			entering.class == CLASS_FIXTURE ? "capital" : "small");
		return false;
	}
	if (!named_card_ask(&entering.named))
		return false;
	report = editor_report(editor, &editor->words);
	editor_say(editor, "In the legend and in hand: %s.", plain_letter(&report, editor->hand));
	return true;
}

/* Asks for one of the legend's letters; where there is a `but`, for another one or for open
 * ground. NUL: the question was left. */
static char letter_ask(struct editor *editor, const char *words, char but)
{
	const struct details *details = &editor->plot->details;
	struct arena arena = ARENA_EMPTY;
	size_t most = details->legend_count + 1;
	const char **answers = arena_new(&arena, most, sizeof *answers);
	const char **notes = arena_new(&arena, most, sizeof *notes);
	char *letters = arena_new(&arena, most, 1);
	struct question question = { .text = words, .answers = answers, .notes = notes };
	int answer;
	char letter;

	if (but) {
		letters[question.count] = OPEN_GROUND;
		answers[question.count] = ". open ground";
		notes[question.count++] = "";
	}
	for (size_t i = 0; i < details->legend_count; i++) {
		const struct entry *entry = &details->legend[i];

		if (entry->letter == but)
			continue;
		if (!but && entry->letter == editor->hand)
			question.first = question.count;
		letters[question.count] = entry->letter;
		answers[question.count] = arena_print(&arena, "%c %s", entry->letter, entry->name);
		notes[question.count++] = class_word(entry->class);
	}
	answer = editor->asker->choose(editor->asker, &question);
	letter = answer == ANSWER_NONE ? '\0' : letters[answer];
	arena_clear(&arena);
	return letter;
}

bool entry_card_remove(struct editor *editor)
{
	char removed = letter_ask(editor, "Remove which entry?", '\0'), to = OPEN_GROUND;
	struct report report = editor_report(editor, &editor->words);
	int64_t cells;

	if (!removed)
		return false;
	cells = legend_cells(editor->plot, removed);
	if (cells)
		to = letter_ask(editor, say(&report, "%s goes. What shall its %s %s be?",
			plain_letter(&report, removed), plain_count(&report, cells),
			cells == 1 ? "cell" : "cells"), removed);
	if (!to)
		return false;
	legend_remove(editor_edit(editor), removed, to);
	if (editor->hand == removed)
		editor_take_in_hand(editor, to);
	return true;
}
