#include "editor/acts/acts.h"

#include <stdlib.h>
#include <string.h>

/* A row of the list. */
struct listed {
	const struct act *act;
};

static int compare_names(const void *a, const void *b)
{
	const struct listed *one = a, *other = b;

	return strcmp(one->act->name, other->act->name);
}

/* All rows with a name, as they stand. */
static int acts_named(struct listed acts[ACTS_MOST])
{
	int all, count = 0;
	const struct act *table = acts_all(&all);

	for (int i = 0; i < all; i++)
		if (table[i].name)
			acts[count++].act = &table[i];
	return count;
}

/* Does what was picked; what takes one of several keys is only explained. */
static void picked(struct editor *editor, const struct act *act)
{
	if (act->key == act->until)
		acts_press(editor, act->key);
	else
		editor_say(editor, "%s: %s.", act->key_name, act->wish);
}

static void ask(struct editor *editor, const char *text, const struct listed *acts, int count,
	bool by_wish)
{
	const char *answers[ACTS_MOST], *keys[ACTS_MOST], *also[ACTS_MOST];
	struct question question = { .text = text, .answers = answers, .notes = keys, .also = also,
		.count = count };
	int answer;

	for (int i = 0; i < count; i++) {
		answers[i] = by_wish ? acts[i].act->wish : acts[i].act->name;
		also[i] = by_wish ? acts[i].act->name : acts[i].act->wish;
		keys[i] = acts[i].act->key_name;
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer != ANSWER_NONE)
		picked(editor, acts[answer].act);
}

void act_all(struct editor *editor, int key)
{
	struct listed acts[ACTS_MOST];
	int count = acts_named(acts);

	(void)key;
	qsort(acts, (size_t)count, sizeof *acts, compare_names);
	ask(editor, "All that can be done. Enter does it.", acts, count, false);
}

void act_help(struct editor *editor, int key)
{
	struct listed acts[ACTS_MOST];
	int count = acts_named(acts);

	(void)key;
	ask(editor, "Letters are ground: press one to take it in hand. Signs are acts. I want to ...",
		acts, count, true);
}

void act_pause(struct editor *editor, int key)
{
	(void)key;
	editor->asker->pause(editor->asker);
}

void act_repaint(struct editor *editor, int key)
{
	(void)key;
	editor->asker->repaint(editor->asker);
}
