#include "screen/acts.h"
#include "base/memory.h"
#include "screen/entry_sheet.h"
#include "screen/plot_sheet.h"

/* The plot itself, what is allowed for, the legend's entries, one more, one less. */
enum { SHEET_PLOT, SHEET_ALLOW, SHEET_LEGEND, SHEETS_AROUND = SHEET_LEGEND + 2 };

static void entries_list(const struct editor *editor, struct arena *arena,
	struct question *question, const char **answers, const char **notes)
{
	const struct details *details = &editor->plot.details;

	for (size_t i = 0; i < details->legend_count; i++) {
		const struct entry *entry = &details->legend[i];

		if (entry->letter == editor->hand)
			question->first = question->count;
		answers[question->count] = arena_print(arena, "%c %s", entry->letter, entry->name);
		notes[question->count++] = class_word(entry->class);
	}
}

static int sheet_ask(struct editor *editor)
{
	struct arena arena = ARENA_EMPTY;
	size_t most = editor->plot.details.legend_count + SHEETS_AROUND;
	const char **answers = arena_new(&arena, most, sizeof *answers);
	const char **notes = arena_new(&arena, most, sizeof *notes);
	struct question question = { .text = "Which sheet?", .answers = answers, .notes = notes,
		.count = SHEET_LEGEND };
	int answer;

	answers[SHEET_PLOT] = "The plot itself";
	answers[SHEET_ALLOW] = "What is allowed for";
	notes[SHEET_PLOT] = notes[SHEET_ALLOW] = "";
	entries_list(editor, &arena, &question, answers, notes);
	answers[question.count] = "Add an entry";
	notes[question.count++] = "legend";
	answers[question.count] = "Remove an entry";
	notes[question.count] = "legend";
	question.count += editor->plot.details.legend_count > 0;
	answer = editor->asker->choose(editor->asker, &question);
	arena_clear(&arena);
	return answer;
}

static bool sheet_fill(struct editor *editor, int sheet)
{
	int entries = (int)editor->plot.details.legend_count;

	if (sheet == SHEET_PLOT)
		return plot_sheet_fill(editor);
	if (sheet == SHEET_ALLOW)
		return allow_sheet_fill(editor);
	if (sheet < SHEET_LEGEND + entries)
		return entry_sheet_change(editor,
			editor->plot.details.legend[sheet - SHEET_LEGEND].letter);
	if (sheet == SHEET_LEGEND + entries)
		return entry_sheet_add(editor);
	return entry_sheet_remove(editor);
}

void act_sheets(struct editor *editor, int key)
{
	int sheet = sheet_ask(editor);

	(void)key;
	if (sheet == ANSWER_NONE || !sheet_fill(editor, sheet))
		return;
	if (!editor_stroke(editor))
		editor_say(editor, "Nothing was changed.");
	else if (!editor->message.length)
		editor_say(editor, "Set; Backspace takes it back.");
}
