#include "editor/acts/rescued.h"
#include "editor/acts/differences.h"
#include "plot/history/rescue.h"

#include <ctype.h>
#include <stdlib.h>
#include <time.h>

/* ---- The question ---------------------------------------------------------------------------- */

enum { TAKE_UP, DRAW_ON, LOOK, LEAVE, ANSWERS };

static const char *const answer_words[ANSWERS] = { [TAKE_UP] = "Take up the rescued work",
	[DRAW_ON] = "Set it aside and draw on from the plot", [LOOK] = "Look at the saved plot",
	[LEAVE] = "Leave both as they are" };

static bool is_later(const struct timespec *a, const struct timespec *b)
{
	return a->tv_sec > b->tv_sec || (a->tv_sec == b->tv_sec && a->tv_nsec > b->tv_nsec);
}

/* Two times that are to be compared are said to the second. */
static const char *time_said(struct editor *editor, const struct timespec *when, bool is_exact)
{
	char day[64];
	struct tm local;
	size_t length;

	if (!localtime_r(&when->tv_sec, &local))
		return "an unknown time"; /* a file may claim any year */
	length = strftime(day, sizeof day, "%d %b %Y, %H:%M", &local);
	if (is_exact)
		strftime(day + length, sizeof day - length, ":%S", &local);
	return arena_print(&editor->words, "%s", day);
}

/* What there is to choose from, the later of plot and rescued work first. */
static int answers_find(const struct editor *editor, const struct rescue *rescue, int *answers)
{
	bool is_plot_first = editor->has_begun && !rescue->is_newer &&
		!is_later(&rescue->written, &editor->store.stamp.written);

	answers[0] = is_plot_first ? DRAW_ON : TAKE_UP;
	if (editor->spoilt) {
		answers[1] = LEAVE;
		return 2;
	}
	answers[1] = is_plot_first ? TAKE_UP : DRAW_ON;
	answers[2] = LOOK;
	return editor->has_begun ? 3 : 2;
}

static void add_differences(struct text *said, const struct plot *plot, const struct plot *rescued)
{
	struct text words = TEXT_EMPTY;

	differences_add(plot, rescued, &words);
	if (words.length)
		text_add_sentence(said, "%c%s.", toupper((unsigned char)words.bytes[0]),
			words.bytes + 1);
	text_fini(&words);
}

static const char *question_text(struct editor *editor, const struct rescue *rescue)
{
	bool is_alone = editor->spoilt || rescue->is_newer || !editor->has_begun;
	const char *when = time_said(editor, &rescue->written, !is_alone);
	struct text text = TEXT_EMPTY;

	if (editor->spoilt)
		text_add_sentence(&text, "The plot cannot be read: %s.\nIts work of %s was "
			"rescued.", editor->spoilt, when);
	else if (is_alone)
		text_add_sentence(&text, "A session ended before this plot was saved. Its work of "
			"%s was rescued.", when);
	else
		text_add_sentence(&text, "This plot was written on %s, and work of %s was rescued.",
			time_said(editor, &editor->store.stamp.written, true), when);
	if (editor->has_begun)
		add_differences(&text, editor->plot, &rescue->plot);
	if (rescue->state == JOURNAL_DAMAGED)
		text_add_sentence(&text, "Part of that work cannot be read.");
	return text_keep(&text, &editor->words);
}

static int offer(struct editor *editor, const struct rescue *rescue)
{
	int answers[ANSWERS], answer;
	const char *said[ANSWERS];
	struct question question = { .text = question_text(editor, rescue), .answers = said };

	question.count = answers_find(editor, rescue, answers);
	for (int i = 0; i < question.count; i++)
		said[i] = answer_words[answers[i]];
	answer = editor->asker->choose(editor->asker, &question);
	return answer == ANSWER_NONE ? LEAVE : answers[answer];
}

/* ---- What becomes of it ---------------------------------------------------------------------- */

static void take_up(struct editor *editor, struct rescue *rescue, struct text *said)
{
	char *kept;

	rescue_take(&editor->store, rescue, &kept);
	editor_take(editor, &rescue->plot, false);
	editor->has_begun = true;
	free(editor->spoilt);
	editor->spoilt = NULL;
	text_add_sentence(said, "The rescued work is taken up; it is not saved yet.");
	if (rescue->state == JOURNAL_DAMAGED)
		text_add_sentence(said, "The file that cannot be read whole is kept in %s.",
			kept ? kept : rescue->path);
	free(kept);
}

static void set_aside(struct editor *editor, const struct rescue *rescue, struct text *said)
{
	char *kept;

	if (rescue_set_aside(&editor->store, rescue, &kept)) {
		text_add_sentence(said, "The rescued work is kept in %s.", kept);
	} else {
		editor->is_looking = true;
		text_add_sentence(said, "The rescued work could not be set aside: looking only.");
	}
	free(kept);
}

static void unreadable_aside(const struct editor *editor, const struct rescue *rescue,
	struct text *said)
{
	char *kept;

	rescue_set_aside(&editor->store, rescue, &kept);
	text_add_sentence(said, "A rescue file cannot be read: %s. It is %s %s.", rescue->why.bytes,
		kept ? "kept in" : "left in", kept ? kept : rescue->path);
	free(kept);
}

static bool holds_the_plot(const struct editor *editor, const struct rescue *rescue)
{
	return editor->has_begun && step_is_none(editor->plot, &rescue->plot);
}

/* Unanswered, nothing may touch the rescued work: the session ends. True where the next may be
 * asked about. */
static bool ask_about(struct editor *editor, struct rescue *rescue, struct text *said)
{
	switch (offer(editor, rescue)) {
	case TAKE_UP:
		take_up(editor, rescue, said);
		return false;
	case DRAW_ON:
		set_aside(editor, rescue, said);
		return !editor->is_looking;
	case LOOK:
		editor->is_looking = true;
		text_add_sentence(said, "The plot as it was saved, to look at.");
		return false;
	default:
		editor->is_over = true;
		return false;
	}
}

/* True where the next may be asked about. */
static bool see_to(struct editor *editor, struct rescue *rescue, struct text *said)
{
	bool is_new = rescue->state != JOURNAL_UNREADABLE && !holds_the_plot(editor, rescue);

	if (is_new)
		return ask_about(editor, rescue, said);
	if (rescue->state == JOURNAL_WHOLE)
		rescue_drop(rescue);
	else
		unreadable_aside(editor, rescue, said);
	return true;
}

void rescued_ask(struct editor *editor, struct text *said)
{
	struct rescue_list list;
	bool goes_on = true;

	rescue_find(&editor->store, &list);
	for (size_t i = 0; goes_on && i < list.count; i++) {
		struct rescue rescue;

		rescue_read(&editor->store, list.paths[i], &rescue);
		goes_on = see_to(editor, &rescue, said);
		rescue_fini(&rescue);
	}
	rescue_list_fini(&list);
}

bool rescued_is_there(const struct editor *editor)
{
	struct rescue_list list;
	bool is_there = false;

	rescue_find(&editor->store, &list);
	for (size_t i = 0; !is_there && i < list.count; i++) {
		struct rescue rescue;

		rescue_read(&editor->store, list.paths[i], &rescue);
		is_there = rescue.state != JOURNAL_UNREADABLE;
		rescue_fini(&rescue);
	}
	rescue_list_fini(&list);
	return is_there;
}
