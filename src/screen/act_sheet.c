#include "screen/acts.h"
#include "base/memory.h"
#include "screen/block_sheet.h"

/* The plot itself, what is allowed for, then the legend. */
enum { SHEET_PLOT, SHEET_ALLOW, SHEET_LEGEND };

static struct block *block_at(struct editor *editor, int sheet)
{
	struct details *details = &editor->plot.details;

	if (sheet == SHEET_PLOT)
		return &details->head;
	if (sheet == SHEET_ALLOW)
		return &details->allow;
	return &details->legend[sheet - SHEET_LEGEND].block;
}

static const char *title_of(struct arena *arena, const struct editor *editor, int sheet)
{
	const struct entry *entry;

	if (sheet == SHEET_PLOT)
		return "The plot itself";
	if (sheet == SHEET_ALLOW)
		return "What is allowed for";
	entry = &editor->plot.details.legend[sheet - SHEET_LEGEND];
	return arena_print(arena, "%c %s", entry->letter, entry->name);
}

static const char *kind_of(const struct editor *editor, int sheet)
{
	if (sheet < SHEET_LEGEND)
		return "";
	return class_word(editor->plot.details.legend[sheet - SHEET_LEGEND].class);
}

static int sheet_ask(struct editor *editor, struct arena *arena)
{
	int count = SHEET_LEGEND + (int)editor->plot.details.legend_count;
	const char **titles = arena_new(arena, (size_t)count, sizeof *titles);
	const char **kinds = arena_new(arena, (size_t)count, sizeof *kinds);
	struct question question = { .text = "Which sheet?", .answers = titles, .notes = kinds,
		.count = count };

	for (int i = 0; i < count; i++) {
		titles[i] = title_of(arena, editor, i);
		kinds[i] = kind_of(editor, i);
		if (i >= SHEET_LEGEND &&
			editor->plot.details.legend[i - SHEET_LEGEND].letter == editor->hand)
			question.first = i;
	}
	return editor->asker->choose(editor->asker, &question);
}

void act_sheets(struct editor *editor, int key)
{
	struct arena arena = ARENA_EMPTY;
	int sheet = sheet_ask(editor, &arena);

	(void)key;
	if (sheet != ANSWER_NONE && block_sheet_fill(editor, block_at(editor, sheet),
			title_of(&arena, editor, sheet)) && editor_stroke(editor))
		editor_say(editor, "Set; Backspace takes it back.");
	arena_clear(&arena);
}
