#include "editor/saved.h"
#include "prices/prices.h"
#include "takeoff/sun/plant_sun.h"

#include <stdlib.h>
#include <string.h>

/* The one that the plot names, as the editor has it: else a price that somebody has changed since
 * would seem to be a change of the plot. */
static const struct book *book_of(struct saved_plot *saved, const struct editor *editor,
	struct text *note)
{
	const struct value *named = block_value(&saved->plot.details.head, HEAD_PRICES);
	struct text message = TEXT_EMPTY;
	char *path;

	if (!named->set)
		return NULL;
	if (editor->book_name && strcmp(editor->book_name, named->as.text) == 0)
		return editor->has_book ? &editor->book : NULL;
	path = prices_path(&saved->plot, editor->store.path);
	saved->has_book = prices_read(path, &saved->book, &message);
	if (!saved->has_book)
		text_add_sentence(note, "The plot as saved has no prices: %s.", message.bytes);
	text_fini(&message);
	free(path);
	return saved->has_book ? &saved->book : NULL;
}

static bool count(struct saved_plot *saved, const struct editor *editor, struct text *note)
{
	const struct book *book = book_of(saved, editor, note);

	if (store_is_changed(&editor->store))
		text_add_sentence(note, "Compared with the file as it is now: somebody else has "
			"changed it since it was read here.");
	saved->compared = (struct compared){ &saved->plot, &saved->takeoff, editor->name };
	saved->saved.counted = &saved->compared;
	return takeoff_with_sun(&saved->takeoff, &saved->arena, &saved->plot, book);
}

bool saved_read(struct saved_plot *out, const struct editor *editor)
{
	struct text message = TEXT_EMPTY, note = TEXT_EMPTY;
	bool is_there = file_stamp(editor->store.path).exists, is_done = true;

	*out = (struct saved_plot){ .arena = ARENA_EMPTY };
	plot_init(&out->plot);
	if (!is_there)
		text_add_sentence(&note, editor->store.stamp.exists ?
			"Somebody else has taken the file away: there is nothing to compare with." :
			"It is not saved yet: there is nothing to compare with.");
	else if (!store_read(editor->store.path, &out->plot, &message))
		text_add_sentence(&note, "The file cannot be read: %s.", message.bytes);
	else if (step_is_none(&out->plot, editor->plot))
		text_add_sentence(&note, "Nothing has changed since it was saved.");
	else
		is_done = count(out, editor, &note);
	if (note.length)
		out->saved.note = text_keep(&note, &out->arena);
	text_fini(&note);
	text_fini(&message);
	return is_done;
}

void saved_fini(struct saved_plot *saved)
{
	arena_clear(&saved->arena);
	if (saved->has_book)
		book_fini(&saved->book);
	plot_fini(&saved->plot);
}
