#include "editor/acts/shared.h"
#include "report/words/snag_words.h"

/* A plot of more cells is not counted while somebody waits for an answer. */
enum { COUNTED_MOST = 20000 };

static bool is_of_walls(const struct snag *snag)
{
	return snag->code <= SNAG_CAP_BOND;
}

static int64_t walls_snags(const struct snag_list *snags)
{
	int64_t count = 0;

	for (size_t i = 0; i < snags->count; i++)
		count += is_of_walls(&snags->list[i]);
	return count;
}

/* The first snag of walls at a cell where there was none of its code before; else the first. */
static const struct snag *first_new(const struct snag_list *before, const struct snag_list *after)
{
	const struct snag *first = NULL;

	for (size_t i = 0; i < after->count; i++) {
		const struct snag *snag = &after->list[i];
		size_t at = 0;

		if (!is_of_walls(snag))
			continue;
		first = first ? first : snag;
		while ((at = snag_at(before, snag->cell, at)) < before->count &&
			before->list[at].code != snag->code)
			at++;
		if (at == before->count)
			return snag;
	}
	return first;
}

/* "24 snags more of walls: ..."; "" where there are none, or they are not counted. */
static const char *snags_between(struct editor *editor, const struct plot *after)
{
	const struct book *book = editor->has_book ? &editor->book : NULL;
	const struct snag_list *was = &editor->takeoff.snags;
	struct arena arena = ARENA_EMPTY;
	struct takeoff is;
	const char *words = "";

	if (ground_count(&after->ground) > COUNTED_MOST)
		return words;
	if (editor_refresh(editor) && takeoff_compute(&is, &arena, after, book)) {
		const struct report report = { .words = &editor->words, .plot = after,
			.takeoff = &is, .units = plot_units(after) };
		int64_t more = walls_snags(&is.snags) - walls_snags(was);

		if (more > 0)
			words = say(&report, "%s %s more of walls. %s", plain_count(&report, more),
				more == 1 ? "snag" : "snags",
				snag_sentence(&report, first_new(was, &is.snags)));
	}
	arena_clear(&arena);
	return words;
}

static const char *more_snags(struct editor *editor, const struct trial *trial)
{
	struct plot copy = { details_copy(&editor->plot->details),
		ground_copy(&editor->plot->ground) };
	const char *words;

	trial->lay(&copy, trial);
	words = snags_between(editor, &copy);
	plot_fini(&copy);
	return words;
}

static bool may_lay(struct editor *editor, const struct trial *trial)
{
	static const char *const answers[] = { "Lay it so", "Leave the ground as it is" };
	struct question question = { .answers = answers, .count = 2 };
	const char *snags = trial->is_round ? more_snags(editor, trial) : "";

	if (!*trial->words && !*snags)
		return true;
	question.text = arena_print(&editor->words, "%s%s%s", trial->words,
		*trial->words && *snags ? " " : "", snags);
	return editor->asker->choose(editor->asker, &question) == 0;
}

bool act_try(struct editor *editor, const struct trial *trial)
{
	if (!may_lay(editor, trial)) {
		editor_say(editor, "The ground is left as it is.");
		return false;
	}
	act_lay_end(editor, trial->lay(editor_edit(editor), trial), ACT_IS_THERE);
	return true;
}
