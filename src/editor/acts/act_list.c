#include "editor/acts/act_groups.h"

#include <stdlib.h>
#include <string.h>

enum { LISTED = (int)ACTS - (int)ACT_FIRST };

static int compare_names(const void *a, const void *b)
{
	const enum act_id *one = a, *other = b;

	return strcmp(acts_get(*one)->name, acts_get(*other)->name);
}

/* In the order of the help. */
static void ids_fill(enum act_id ids[LISTED])
{
	for (enum act_id id = ACT_FIRST; id < ACTS; id++)
		ids[id - ACT_FIRST] = id;
}

/* Does what was picked; an act that depends on which of its keys is pressed is only explained. */
static void picked(struct editor *editor, const struct act *act)
{
	if (act->run_by_key)
		editor_say(editor, "%s: %s.", act->key_name, act->wish);
	else
		acts_do(editor, act->id);
}

static void ask(struct editor *editor, const char *text, const enum act_id ids[LISTED],
	bool by_wish)
{
	const char *answers[LISTED], *keys[LISTED], *also[LISTED];
	struct question question = { .text = text, .answers = answers, .notes = keys, .also = also,
		.count = LISTED };
	int answer;

	for (int i = 0; i < LISTED; i++) {
		const struct act *act = acts_get(ids[i]);

		answers[i] = by_wish ? act->wish : act->name;
		also[i] = by_wish ? act->name : act->wish;
		keys[i] = act->key_name;
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer != ANSWER_NONE)
		picked(editor, acts_get(ids[answer]));
}

static void act_all(struct editor *editor)
{
	enum act_id ids[LISTED];

	ids_fill(ids);
	qsort(ids, LISTED, sizeof *ids, compare_names);
	ask(editor, "All that can be done. Enter does it.", ids, false);
}

static void act_help(struct editor *editor)
{
	enum act_id ids[LISTED];

	ids_fill(ids);
	ask(editor, "Letters are ground: press one to take it in hand. Signs are acts. "
		"I want to ...", ids, true);
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
