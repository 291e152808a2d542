#include "editor/acts/opening.h"
#include "editor/acts/acts.h"
#include "base/memory.h"
#include "editor/acts/rescued.h"
#include "editor/acts/shared.h"
#include "editor/cards/begin.h"

bool opening_read(struct editor *editor, struct text *message)
{
	bool exists = !file_is_missing(editor->store.path);
	struct plot plot;

	if (!exists && editor->store.access == STORE_LOOKS) {
		text_print(message, "another session is creating %s", editor->store.path);
		return false;
	}
	plot_init(&plot);
	editor->has_begun = exists && store_load(&editor->store, &plot, message);
	if (exists && !editor->has_begun) {
		if (!rescued_is_there(editor))
			return false;
		editor->spoilt = memory_string(message->bytes);
	}
	if (!editor->has_begun)
		begin_preview(&plot);
	editor_take(editor, &plot, true);
	return true;
}

void act_add_lacks(const struct store *store, struct text *said)
{
	if (store->access == STORE_UNGUARDED)
		text_add_sentence(said,
			"No lock can be had here: see that nobody else draws this plot.");
	if (!store_has_place(store))
		text_add_sentence(said, "No rescue can be kept here: save often.");
}

/* Says what may go wrong, and what was said before, in front of the rest. */
static void say_all(struct editor *editor, const struct text *said)
{
	struct text all = TEXT_EMPTY;

	text_add(&all, editor->message.bytes);
	if (said->length)
		text_add_sentence(&all, "%s", said->bytes);
	if (!editor->is_looking)
		act_add_lacks(&editor->store, &all);
	editor_say(editor, "%s", all.bytes);
	text_fini(&all);
}

void opening_ask(struct editor *editor)
{
	struct text said = TEXT_EMPTY;

	if (!editor->is_looking)
		rescued_ask(editor, &said);
	if (!editor->has_begun && !editor->is_over) {
		editor->is_over = editor->spoilt || editor->is_looking || !begin_ask(editor);
		if (!editor->is_over)
			text_add_sentence(&said, "A new plot. b takes the raised bed in hand, %s "
				"lays it.", acts_key(ACT_LAY));
	}
	say_all(editor, &said);
	text_fini(&said);
}
