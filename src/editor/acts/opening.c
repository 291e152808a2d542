#include "editor/acts/opening.h"
#include "editor/acts/acts.h"
#include "editor/sheets/begin.h"

#include <stdlib.h>
#include <time.h>

bool opening_read(struct editor *editor, struct text *message)
{
	bool exists = editor->store.stamp.exists;
	struct plot plot;

	if (!exists && editor->store.access == STORE_LOOKS) {
		text_print(message, "another session is creating %s", editor->store.path);
		return false;
	}
	plot_init(&plot);
	if (exists && !store_load(&editor->store, &plot, message))
		return false;
	if (!exists)
		begin_preview(&plot);
	editor_take(editor, &plot, true);
	editor->has_begun = exists;
	return true;
}

enum { TAKE_UP, SET_ASIDE, LOOK };

static int rescue_ask(struct editor *editor, const struct timespec *when)
{
	static const char *const answers[] = { "Take up the rescued work", "Set it aside",
		"Look at the saved plot" };
	struct question question = { .answers = answers, .count = editor->has_begun ? 3 : 2 };
	char day[64];
	struct tm local;

	localtime_r(&when->tv_sec, &local);
	strftime(day, sizeof day, "%d %b %Y, %H:%M", &local);
	question.text = arena_print(&editor->words, "A session ended before this plot was saved. "
		"Its work of %s was rescued.", day);
	return editor->asker->choose(editor->asker, &question);
}

static void set_aside(struct editor *editor)
{
	char *kept;

	if (!store_rescue_keep(&editor->store, &kept)) {
		editor->is_looking = true;
		editor_say(editor, "The rescued work could not be set aside: looking only.");
		return;
	}
	editor_say(editor, "The rescued work is kept in %s.", kept);
	free(kept);
}

/* Unanswered, nothing may touch the rescued work: the session ends. */
static void rescue_offer(struct editor *editor, struct plot *rescued, const struct timespec *when)
{
	switch (rescue_ask(editor, when)) {
	case TAKE_UP:
		editor_take(editor, rescued, false);
		editor->has_begun = true;
		editor_say(editor, "The rescued work is taken up; it is not saved yet.");
		break;
	case SET_ASIDE:
		set_aside(editor);
		break;
	case LOOK:
		editor->is_looking = true;
		editor_say(editor, "The plot as it was saved, to look at.");
		break;
	default:
		editor->is_over = true;
		break;
	}
}

void opening_ask(struct editor *editor)
{
	struct timespec when;
	struct plot rescued;

	plot_init(&rescued);
	if (!editor->is_looking && store_rescued(&editor->store, &rescued, &when))
		rescue_offer(editor, &rescued, &when);
	plot_fini(&rescued);
	if (editor->store.access == STORE_UNGUARDED && editor->message.length == 0)
		editor_say(editor,
			"No lock can be had here: see that nobody else draws this plot.");
	if (editor->is_over || editor->has_begun)
		return;
	if (editor->is_looking || !begin_ask(editor))
		editor->is_over = true;
	else
		editor_say(editor, "A new plot. b takes the raised bed in hand, %s lays it.",
			acts_key(ACT_LAY));
}
