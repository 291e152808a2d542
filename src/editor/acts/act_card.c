#include "base/memory.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/allow_card.h"
#include "editor/cards/around.h"
#include "editor/cards/entry_card.h"
#include "editor/cards/extra_card.h"
#include "editor/cards/fence_card.h"
#include "editor/cards/plant_card.h"
#include "editor/cards/plot_card.h"
#include "editor/cards/rates_card.h"

/* What an answer means; which: of several entries, fences, things around, plants, extra goods or
 * cards of allowances. */
struct row {
	enum { ROW_PLOT, ROW_ALLOW, ROW_RATES, ROW_ENTRY, ROW_PLANT, ROW_FENCE, ROW_AROUND,
		ROW_EXTRA, ROW_ADD_ENTRY, ROW_REMOVE_ENTRY, ROW_ADD_PLANT, ROW_REMOVE_PLANT,
		ROW_ADD_FENCE, ROW_REMOVE_FENCE, ROW_ADD_EXTRA, ROW_REMOVE_EXTRA } kind;
	int which;
};

/* Rows beside those of entries, plants, fences, things around and extra goods. */
enum { ROWS_BESIDE = 1 + ALLOW_CARDS + 1 + 8, ANY_CARD = -1 };

struct list {
	struct arena arena;
	struct question question;
	const char **answers, **notes, **also;
	struct row *rows;
};

static void list_add(struct list *list, struct row row, const char *answer, const char *note)
{
	int at = list->question.count++;

	list->rows[at] = row;
	list->answers[at] = answer;
	list->notes[at] = note;
	list->also[at] = "";
}

/* The card that was added last is found by its fields too: by labels, keywords, words that they
 * take, and more. card: the one of several that the block has; ANY_CARD: it has one. */
static void also_add(struct list *list, enum block_kind block, int card, const char *more)
{
	struct text words = TEXT_EMPTY;

	text_add(&words, more);
	for (enum attribute a = block_first(block); a <= block_last(block); a++) {
		const struct attribute_row *row = attribute_row(a);

		if (card != ANY_CARD && (int)row->card != card)
			continue;
		text_print(&words, " %s %s", row->label, row->keyword);
		for (int i = 0; row->rule.words && row->rule.words[i]; i++)
			text_print(&words, " %s", row->rule.words[i]);
	}
	list->also[list->question.count - 1] = text_keep(&words, &list->arena);
}

static void around_add(struct list *list, const struct editor *editor)
{
	struct report report = editor_report(editor, &list->arena);

	for (int i = 0; i < around_count(editor->plot); i++) {
		struct around around = around_get(editor->plot, i);

		list_add(list, (struct row){ ROW_AROUND, i }, around_name(&report, around),
			around_word(around));
	}
}

static void plants_add_rows(struct list *list, const struct editor *editor)
{
	const struct plants *plants = &editor->plot->details.plants;

	for (size_t i = 0; i < plants->count; i++) {
		if (plants->items[i].letter == editor->hand)
			list->question.first = list->question.count;
		list_add(list, (struct row){ ROW_PLANT, (int)i },
			arena_print(&list->arena, "%c %s", plants->items[i].letter,
			plants->items[i].name), block_keyword(BLOCK_PLANT));
		also_add(list, BLOCK_PLANT, ANY_CARD, "plants planting month");
	}
}

static void list_fill(struct list *list, const struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	const char *legend = "legend", *fence = block_keyword(BLOCK_FENCE);
	const char *extra = "extra", *plant = block_keyword(BLOCK_PLANT);

	list_add(list, (struct row){ ROW_PLOT, 0 }, HEAD_CARD_TITLE, "");
	also_add(list, BLOCK_HEAD, ANY_CARD, "compass north sun");
	for (int i = 0; i < ALLOW_CARDS; i++) {
		list_add(list, (struct row){ ROW_ALLOW, i }, allow_card_titles[i], "");
		also_add(list, BLOCK_ALLOW, i, i == CARD_WATER ? "month drip irrigation" : "");
	}
	list_add(list, (struct row){ ROW_RATES, 0 }, "Hours that work takes", "");
	also_add(list, BLOCK_RATES, ANY_CARD, "");
	for (size_t i = 0; i < details->legend_count; i++) {
		const struct entry *entry = &details->legend[i];

		if (entry->letter == editor->hand)
			list->question.first = list->question.count;
		list_add(list, (struct row){ ROW_ENTRY, (int)i },
			arena_print(&list->arena, "%c %s", entry->letter, entry->name),
			class_word(entry->class));
		also_add(list, entry->block.kind, ANY_CARD,
			entry->class == CLASS_BED ? "watering irrigation" : "");
	}
	plants_add_rows(list, editor);
	for (size_t i = 0; i < details->fence_count; i++) {
		list_add(list, (struct row){ ROW_FENCE, (int)i }, details->fences[i].name, fence);
		also_add(list, BLOCK_FENCE, ANY_CARD, "");
	}
	around_add(list, editor);
	for (size_t i = 0; i < details->extra_count; i++)
		list_add(list, (struct row){ ROW_EXTRA, (int)i }, details->extras[i].name, extra);
	list_add(list, (struct row){ ROW_ADD_ENTRY, 0 }, "Add an entry", legend);
	if (details->legend_count)
		list_add(list, (struct row){ ROW_REMOVE_ENTRY, 0 }, "Remove an entry", legend);
	list_add(list, (struct row){ ROW_ADD_PLANT, 0 }, "Add a plant", plant);
	also_add(list, BLOCK_PLANT, ANY_CARD, "plants planting month");
	if (details->plants.count)
		list_add(list, (struct row){ ROW_REMOVE_PLANT, 0 }, "Remove a plant", plant);
	list_add(list, (struct row){ ROW_ADD_FENCE, 0 }, "Add a fence", fence);
	if (details->fence_count)
		list_add(list, (struct row){ ROW_REMOVE_FENCE, 0 }, "Remove a fence", fence);
	list_add(list, (struct row){ ROW_ADD_EXTRA, 0 }, "Add extra goods", extra);
	if (details->extra_count)
		list_add(list, (struct row){ ROW_REMOVE_EXTRA, 0 }, "Remove extra goods", extra);
}

/* The answer is named with the step that may come of it. False where the question was left. */
static bool row_ask(struct editor *editor, struct row *row)
{
	struct list list = { .arena = ARENA_EMPTY, .question.text = "Which card?" };
	const struct details *details = &editor->plot->details;
	size_t most = details->legend_count + details->plants.count + details->fence_count +
		details->extra_count +
		(size_t)around_count(editor->plot) + ROWS_BESIDE;
	int answer;

	list.question.answers = list.answers = arena_new(&list.arena, most, sizeof *list.answers);
	list.question.notes = list.notes = arena_new(&list.arena, most, sizeof *list.notes);
	list.question.also = list.also = arena_new(&list.arena, most, sizeof *list.also);
	list.rows = arena_new(&list.arena, most, sizeof *list.rows);
	list_fill(&list, editor);
	answer = editor->asker->choose(editor->asker, &list.question);
	if (answer != ANSWER_NONE) {
		*row = list.rows[answer];
		text_print(&editor->doing, " (%s)", list.answers[answer]);
	}
	arena_clear(&list.arena);
	return answer != ANSWER_NONE;
}

static bool row_fill(struct editor *editor, struct row row)
{
	switch (row.kind) {
	case ROW_PLOT:
		return plot_card_fill(editor);
	case ROW_ALLOW:
		return allow_card_fill(editor, row.which);
	case ROW_RATES:
		return rates_card_fill(editor);
	case ROW_EXTRA:
		return extra_card_change(editor, row.which);
	case ROW_ENTRY:
		return entry_card_change(editor, editor->plot->details.legend[row.which].letter);
	case ROW_PLANT:
		return plant_card_change(editor, row.which);
	case ROW_ADD_PLANT:
		return plant_card_add(editor);
	case ROW_REMOVE_PLANT:
		return plant_card_remove(editor);
	case ROW_FENCE:
		return fence_card_change(editor, row.which);
	case ROW_AROUND:
		return around_change(editor, around_get(editor->plot, row.which));
	case ROW_ADD_ENTRY:
		return entry_card_add(editor);
	case ROW_REMOVE_ENTRY:
		return entry_card_remove(editor);
	case ROW_ADD_FENCE:
		return fence_card_add(editor);
	case ROW_REMOVE_FENCE:
		return fence_card_remove(editor);
	case ROW_ADD_EXTRA:
		return extra_card_add(editor);
	case ROW_REMOVE_EXTRA:
		return extra_card_remove(editor);
	}
	return false;
}

void act_card_end(struct editor *editor)
{
	if (!editor_stroke(editor))
		editor_say(editor, "Nothing was changed.");
	else if (!editor->message.length)
		editor_say(editor, "Set; %s takes it back.", acts_key(ACT_TAKE_BACK));
}

static void act_cards(struct editor *editor)
{
	struct row row;

	if (row_ask(editor, &row) && row_fill(editor, row))
		act_card_end(editor);
}

static const struct act acts[] = {
	{ .id = ACT_CARDS, .keys = { { '#', '#' }, { PRESS_F4, PRESS_F4 } },
		.key_name = "# F4", .key_said = "#", .name = "Cards",
		.wish = "change the legend; title, units",
		.words = "settings name rename note new add remove block courses height wall "
			"gravel soil mulch bed path lawn metric imperial feet north sun "
			"price colour color plants planting month watering drip latitude compass "
			"bearing",
		.writes = true, .run = act_cards },
};
const struct act_group acts_of_cards = ACT_GROUP("Plot", acts);
