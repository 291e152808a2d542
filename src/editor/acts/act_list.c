#include "editor/acts/act_groups.h"
#include "editor/acts/advice.h"

enum { LISTED = (int)ACTS - (int)ACT_FIRST };

/* The same rows by name, or by what one wants. */
struct act_rows {
	const struct act *acts[LISTED];
	const char *answers[LISTED], *keys[LISTED], *also[LISTED], *headings[LISTED];
	int count;
};

/* "Mouse: on". */
static const char *name_of(struct editor *editor, const struct act *act)
{
	return !act->state ? act->name :
		arena_print(&editor->words, "%s: %s", act->name, act->state(editor));
}

static void row_add(struct act_rows *rows, const struct act_group *group, const struct act *act,
	bool by_wish, struct editor *editor)
{
	int at = rows->count++;

	rows->acts[at] = act;
	rows->answers[at] = by_wish ? act->wish : name_of(editor, act);
	rows->keys[at] = act->key_name;
	rows->also[at] = arena_print(&editor->words, "%s %s", by_wish ? act->name : act->wish,
		act->words ? act->words : "");
	rows->headings[at] = group->heading;
}

static void act_list(struct editor *editor, int id)
{
	const bool by_wish = id == ACT_HELP;
	struct act_rows rows = { .count = 0 };
	struct question question = { .text = by_wish ?
		"Letters are ground: press one to take it in hand. Signs do things. I want to ..." :
		"All that can be done. Enter does it.",
		.answers = rows.answers, .notes = rows.keys, .also = rows.also,
		.headings = rows.headings, .advice = advice_for, .count = LISTED };
	const struct act *act;
	int answer;

	for (int i = 0; i < ACT_GROUPS; i++)
		for (int j = 0; j < act_groups[i]->count; j++)
			row_add(&rows, act_groups[i], &act_groups[i]->acts[j], by_wish, editor);
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return;
	act = rows.acts[answer];
	if (act->run_by_key) /* which of its keys is not known: it is only explained */
		editor_say(editor, "%s: %s.", act->key_name, act->wish);
	else
		acts_do(editor, act->id);
}

static const struct act acts[] = {
	{ .id = ACT_ALL, .keys = ONE_KEY('!'), .key_name = "!", .name = "All acts",
		.wish = "see all acts by name", .words = "commands menu keys",
		.hints = { [STATE_REST] = "menu", [STATE_TRAIL] = "menu", [STATE_PEGGED] = "menu",
			[STATE_MARKED] = "menu" },
		.rank = 1, .run_with = act_list, .with = ACT_ALL },
	{ .id = ACT_HELP, .keys = { { '?', '?' }, { PRESS_F1, PRESS_F1 } },
		.key_name = "? F1", .key_said = "?", .name = "Help",
		.wish = "see this list", .words = "find search keys commands",
		.hints = { [STATE_REST] = "help", [STATE_TRAIL] = "help", [STATE_PEGGED] = "help" },
		.rank = 1, .run_with = act_list, .with = ACT_HELP },
};
const struct act_group acts_of_list = ACT_GROUP("Program", acts);
