#include "editor/acts/groups.h"

#include <stdlib.h>
#include <string.h>

enum { LISTED = (int)ACTS - (int)ACT_FIRST };

static int compare_names(const void *a, const void *b)
{
	const struct act *const *one = a, *const *other = b;

	return strcmp((*one)->name, (*other)->name);
}

/* In the order of the help. */
static void acts_list(const struct act *acts[LISTED])
{
	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		acts[id - ACT_FIRST] = acts_get(id);
}

/* Does what was picked; an act that depends on which of its keys is pressed is only explained. */
static void picked(struct editor *editor, const struct act *act)
{
	if (act->run_by_key)
		editor_say(editor, "%s: %s.", act->key_name, act->wish);
	else
		acts_do(editor, act->id);
}

static void ask(struct editor *editor, const char *text, const struct act *const acts[LISTED],
	bool by_wish)
{
	const char *answers[LISTED], *keys[LISTED], *also[LISTED];
	struct question question = { .text = text, .answers = answers, .notes = keys, .also = also,
		.count = LISTED };
	int answer;

	for (int i = 0; i < LISTED; i++) {
		answers[i] = by_wish ? acts[i]->wish : acts[i]->name;
		also[i] = by_wish ? acts[i]->name : acts[i]->wish;
		keys[i] = acts[i]->key_name;
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer != ANSWER_NONE)
		picked(editor, acts[answer]);
}

static void act_all(struct editor *editor)
{
	const struct act *acts[LISTED];

	acts_list(acts);
	qsort(acts, LISTED, sizeof *acts, compare_names);
	ask(editor, "All that can be done. Enter does it.", acts, false);
}

static void act_help(struct editor *editor)
{
	const struct act *acts[LISTED];

	acts_list(acts);
	ask(editor, "Letters are ground: press one to take it in hand. Signs are acts. "
		"I want to ...", acts, true);
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
		.rank = 1, .run = act_all },
	{ .id = ACT_HELP, .keys = ONE_KEY('?'), .key_name = "?", .name = "Help",
		.wish = "see this list",
		.hints = { [STATE_REST] = "help", [STATE_TRAIL] = "help", [STATE_PEGGED] = "help" },
		.rank = 1, .run = act_help },
};
const struct act_group acts_of_list = ACT_GROUP(acts);
