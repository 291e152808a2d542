#include "base/folder.h"
#include "base/memory.h"
#include "base/path.h"
#include "base/spell.h"
#include "base/utf8.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/card_ask.h"
#include "plot/history/rescue.h"
#include "prices/prices.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

enum { NAMES_TRIED = 100 };

/* The owner of the card. */
struct writing {
	struct editor *editor;
	bool is_copy; /* the session stays with the file it has */
};

/* ---- The price book -------------------------------------------------------------------------- */

static bool fits_head(const char *name)
{
	size_t length = strlen(name), step;

	for (size_t at = 0; at < length; at += step)
		if (!utf8_fits_text(name, length, at, &step))
			return false;
	return utf8_count(name, length) <= (size_t)attribute_row(HEAD_PRICES)->rule.most;
}

/* The book's full name, where the plot's name for it would not lead to it from the new file; NULL:
 * it would, or there is no book, or the full name is none that a plot can hold. */
static char *book_left(const struct editor *editor, const char *path)
{
	char *here = prices_path(editor->plot, editor->store.path), *full = NULL;
	char *there = prices_path(editor->plot, path);

	if (here && !file_is_same(here, there))
		full = realpath(here, NULL);
	if (full && !fits_head(full)) {
		free(full);
		full = NULL;
	}
	free(here);
	free(there);
	return full;
}

static const char *book_name(const struct editor *editor)
{
	return block_value(&editor->plot->details.head, HEAD_PRICES)->as.text;
}

/* False where the question was left; *is_full: the plot is to have the book's full name. */
static bool book_ask(struct editor *editor, const char *full, bool *is_full)
{
	static const char *const answers[] = { "Write its place in full", "Keep its name" };
	const struct question question = { .answers = answers, .count = 2,
		.text = arena_print(&editor->words, "The price book %s is not beside the new file; "
			"it is %s.", book_name(editor), full) };
	int answer = editor->asker->choose(editor->asker, &question);

	*is_full = answer == 0;
	return answer != ANSWER_NONE;
}

static void book_set(struct details *details, const char *full)
{
	block_set(&details->head, HEAD_PRICES,
		(struct value){ .set = true, .as.text = memory_string(full) });
}

/* ---- Writing --------------------------------------------------------------------------------- */

static bool may_replace(struct editor *editor, const char *path)
{
	struct text sentence = TEXT_EMPTY;
	bool may;

	if (!file_stamp(path).exists)
		return true;
	spell(&sentence, path);
	text_add(&sentence, " is there already.");
	may = act_may_write_over(editor, sentence.bytes);
	text_fini(&sentence);
	return may;
}

/* The plot as it is to be in the new file. */
static bool plot_write(struct editor *editor, struct store *next, const char *full,
	struct fault *fault)
{
	struct plot plot = { details_copy(&editor->plot->details), editor->plot->ground };
	struct file_error error;
	bool done;

	if (full)
		book_set(&plot.details, full);
	done = store_save(next, &plot, &error);
	details_fini(&plot.details);
	return done || fault_set(fault, 0, "%s.", error.sentence);
}

/* Where work is that was rescued for the new file before. */
static void say_kept(struct text *said, const char *kept)
{
	if (kept)
		text_print(said, " Work rescued for that file before is kept in %s.", kept);
}

static void say_written(struct editor *editor, const char *how, const char *path, const char *kept)
{
	editor_say(editor, "%s %s.", how, path);
	say_kept(&editor->message, kept);
}

/* Writes to the file of `next`. Unless a copy is wanted the editor goes on with that, and `next`
 * has the file it had. */
static bool write_to(const struct writing *writing, struct store *next, const char *full,
	struct fault *fault)
{
	struct editor *editor = writing->editor;
	char *kept;

	/* Else the writing would take it away. */
	rescue_set_all_aside(next, &kept);
	if (!plot_write(editor, next, full, fault)) {
		say_kept(&fault->words, kept);
		free(kept);
		return false;
	}
	say_written(editor, writing->is_copy ? "A copy is in" : "Saved in", next->path, kept);
	free(kept);
	if (writing->is_copy)
		return true;
	act_add_lacks(next, &editor->message);
	if (full) {
		book_set(&editor_edit(editor)->details, full);
		editor_stroke(editor);
	}
	editor_move(editor, next);
	return true;
}

/* Asks what is to be asked before; false where nothing is written. */
static bool write_asked(const struct writing *writing, struct store *next, struct fault *fault)
{
	struct editor *editor = writing->editor;
	char *full = book_left(editor, next->path);
	bool is_full = false, done = false;

	if (next->access == STORE_LOOKS)
		fault_set(fault, 0, "That plot is being drawn by %s.",
			act_another_session(editor, next->lock.holder));
	else if (!may_replace(editor, next->path) || (full && !book_ask(editor, full, &is_full)))
		fault_set(fault, 0, "Nothing is written.");
	else
		done = write_to(writing, next, is_full ? full : NULL, fault);
	free(full);
	return done;
}

static bool save_own(struct writing *writing, struct fault *fault)
{
	struct editor *editor = writing->editor;

	if (writing->is_copy)
		return fault_set(fault, 0, "That is the plot itself: a copy needs another name.");
	if (editor->is_looking)
		return fault_set(fault, 0, "That is the plot that may only be looked at here: "
			"another name is needed.");
	return act_save_plot(editor) || fault_set(fault, 0, "%s", editor->message.bytes);
}

static bool has_folder(const struct store *next, struct fault *fault)
{
	struct file_error error;

	if (folder_is_there(next->path))
		return true;
	file_fail(&error, "write", next->path, strerror(errno));
	return fault_set(fault, 0, "%s.", error.sentence);
}

static bool path_accept(struct card *card, struct fault *fault)
{
	struct writing *writing = card->owner;
	struct store next;
	char *path;
	bool done;

	if (!card_file_read(card, 0, &path, fault))
		return false;
	if (store_is_of(&writing->editor->store, path)) {
		done = save_own(writing, fault);
	} else {
		store_open(&next, path);
		done = has_folder(&next, fault) && write_asked(writing, &next, fault);
		store_close(&next);
	}
	free(path);
	return done;
}

/* A name beside the plot's that is free, such as court-2.plot. */
static const char *free_name(struct editor *editor)
{
	const char *path = editor->store.path, *name = path;

	for (int i = 2; i < NAMES_TRIED; i++) {
		name = arena_print(&editor->words, "%.*s-%d.plot", (int)path_stem(path, ".plot"),
			path, i);
		if (!file_stamp(name).exists)
			break;
	}
	return name;
}

static void ask(struct writing *writing, const char *title, const char *done)
{
	const struct field_spec file = card_file(free_name(writing->editor));

	card_ask(writing->editor, &(struct card_spec){ .title = title, .done = done,
		.fields = &file, .count = 1, .accept = path_accept, .owner = writing });
}

static void act_save_as(struct editor *editor)
{
	ask(&(struct writing){ editor, false }, "Save as another file, and go on there", "save it");
}

static void act_copy(struct editor *editor)
{
	ask(&(struct writing){ editor, true }, "Write a copy to another file", "write it");
}

static const struct act acts[] = {
	{ .id = ACT_SAVE_AS, .key_name = ">", .name = "Save as another file",
		.wish = "go on in another file",
		.words = "rename name", .run = act_save_as },
	{ .id = ACT_COPY, .key_name = ">", .name = "Write a copy",
		.wish = "write a copy of the plot",
		.words = "backup duplicate", .run = act_copy },
};
const struct act_group acts_of_save_as = ACT_GROUP("File", acts);
