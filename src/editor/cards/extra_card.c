#include "editor/cards/extra_card.h"
#include "base/memory.h"
#include "editor/cards/card_ask.h"

#include <stdlib.h>
#include <string.h>

enum { NAME, AMOUNT, FIELDS };
enum { NEW_EXTRA = -1 };

/* The card's owner. */
struct entering {
	struct editor *editor;
	int which; /* NEW_EXTRA: one that is not there yet */
};

static void extra_set(struct extra *extra, char *name, struct amount amount)
{
	free(extra->name);
	*extra = (struct extra){ name, amount };
}

static bool accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	bool is_new = entering->which == NEW_EXTRA;
	struct details *details;
	struct value amount;
	char *name;

	if (!card_name_read(card, NAME, is_new ? NULL :
		entering->editor->plot->details.extras[entering->which].name, &name, fault))
		return false;
	if (!card_read(card, AMOUNT, &amount, fault)) {
		free(name);
		return false;
	}
	details = &editor_edit(entering->editor)->details;
	if (is_new)
		details_add_extra(details, name, amount.as.amount);
	else
		extra_set(&details->extras[entering->which], name, amount.as.amount);
	return true;
}

/* extra: as it is so far; NULL: a new one. */
static bool extra_ask(struct editor *editor, int which, const struct extra *extra)
{
	struct entering entering = { editor, which };
	struct text amount = TEXT_EMPTY;
	bool is_filled;

	if (extra)
		amount_write(&amount, &extra->amount);
	const struct field_spec fields[FIELDS] = {
		[NAME] = card_name("What is to be bought, in words for the shop.",
			extra ? extra->name : NULL),
		[AMOUNT] = { .label = "How much",
			.meaning = "How much of it, and in what unit: 24 each.",
			.rule = &extra_rule, .required = true,
			.typed = amount.bytes },
	};

	is_filled = card_ask(editor, &(struct card_spec){
		.title = extra ? "Extra goods" : "More extra goods",
		.done = extra ? "set all this" : "add them", .fields = fields, .count = FIELDS,
		.accept = accept, .owner = &entering });
	text_fini(&amount);
	return is_filled;
}

bool extra_card_change(struct editor *editor, int which)
{
	return extra_ask(editor, which, &editor->plot->details.extras[which]);
}

bool extra_card_add(struct editor *editor)
{
	return extra_ask(editor, NEW_EXTRA, NULL);
}

/* Which, with its amount beside it. */
static int which_ask(struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	struct arena arena = ARENA_EMPTY;
	const char **answers = arena_new(&arena, details->extra_count, sizeof *answers);
	const char **notes = arena_new(&arena, details->extra_count, sizeof *notes);
	struct question question = { .text = "Remove which extra goods?", .answers = answers,
		.notes = notes, .count = (int)details->extra_count };
	int answer;

	for (size_t i = 0; i < details->extra_count; i++) {
		struct text amount = TEXT_EMPTY;

		amount_write(&amount, &details->extras[i].amount);
		answers[i] = details->extras[i].name;
		notes[i] = text_keep(&amount, &arena);
	}
	answer = editor->asker->choose(editor->asker, &question);
	arena_clear(&arena);
	return answer;
}

bool extra_card_remove(struct editor *editor)
{
	int which = which_ask(editor);
	struct details *details;

	if (which == ANSWER_NONE)
		return false;
	details = &editor_edit(editor)->details;
	free(details->extras[which].name);
	details->extra_count--;
	memmove(&details->extras[which], &details->extras[which + 1],
		(details->extra_count - (size_t)which) * sizeof *details->extras);
	return true;
}
