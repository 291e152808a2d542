#include "editor/acts/act_groups.h"

#include <stdlib.h>
#include <string.h>

enum { LISTED = (int)ACTS - (int)ACT_FIRST };

static int compare_names(const void *a, const void *b)
{
	const enum act_id *one = a, *other = b;

	return strcmp(acts_get(*one)->name, acts_get(*other)->name);
}

static void act_list(struct editor *editor, int id)
{
	const bool by_wish = id == ACT_HELP;
	enum act_id ids[LISTED];
	const char *answers[LISTED], *keys[LISTED], *also[LISTED];
	struct question question = { .text = by_wish ?
		"Letters are ground: press one to take it in hand. Signs are acts. I want to ..." :
		"All that can be done. Enter does it.",
		.answers = answers, .notes = keys, .also = also, .count = LISTED };
	const struct act *act;
	int answer;

	for (int i = 0; i < LISTED; i++)
		ids[i] = ACT_FIRST + (enum act_id)i; /* the order of the help */
	if (!by_wish)
		qsort(ids, LISTED, sizeof *ids, compare_names);
	for (int i = 0; i < LISTED; i++) {
		act = acts_get(ids[i]);
		answers[i] = by_wish ? act->wish : act->name;
		also[i] = by_wish ? act->name : act->wish;
		keys[i] = act->key_name;
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return;
	act = acts_get(ids[answer]);
	if (act->run_by_key) /* which of its keys is not known: it is only explained */
		editor_say(editor, "%s: %s.", act->key_name, act->wish);
	else
		acts_do(editor, act->id);
}

static void act_pause(struct editor *editor)
{
	editor->asker->pause(editor->asker);
}

static void act_repaint(struct editor *editor)
{
	editor->asker->repaint(editor->asker);
}

static const struct act acts[] = {
	{ .id = ACT_PAUSE, .keys = ONE_KEY(PRESS_PAUSE), .key_name = "Ctrl-Z", .name = "Pause",
		.wish = "go to the shell; fg comes back", .run = act_pause },
	{ .id = ACT_REPAINT, .keys = ONE_KEY(PRESS_REPAINT), .key_name = "Ctrl-L",
		.name = "Draw afresh", .wish = "clean up a garbled screen", .run = act_repaint },
	{ .id = ACT_ALL, .keys = ONE_KEY('!'), .key_name = "!", .name = "All acts",
		.wish = "see all acts by name",
		.hints = { [STATE_REST] = "acts", [STATE_TRAIL] = "acts", [STATE_PEGGED] = "acts",
			[STATE_MARKED] = "acts" },
		.rank = 1, .run_with = act_list, .with = ACT_ALL },
	{ .id = ACT_HELP, .keys = ONE_KEY('?'), .key_name = "?", .name = "Help",
		.wish = "see this list",
		.hints = { [STATE_REST] = "help", [STATE_TRAIL] = "help", [STATE_PEGGED] = "help" },
		.rank = 1, .run_with = act_list, .with = ACT_HELP },
};
const struct act_group acts_of_list = ACT_GROUP(acts);
