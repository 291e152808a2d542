#include "editor/acts/deliver.h"
#include "base/stop.h"
#include "editor/acts/shared.h"
#include "prices/prices.h"
#include "report/deliver.h"

#include <stdlib.h>

/* A paper being written to a file. */
struct delivering {
	struct task task; /* first */
	struct editor *editor;
	const char *path;
	const struct file_content *content;
	bool force;
	enum delivery delivery;
	struct file_error error;
};

/* Figures first, where they are not counted yet. */
static bool deliver(struct task *task)
{
	struct delivering *to = (struct delivering *)task;
	char *book = prices_path(to->editor->plot, to->editor->store.path);
	const struct delivery_from from = { to->editor->store.path, book, NULL };
	bool is_counted = editor_refresh(to->editor);

	if (is_counted)
		to->delivery = report_deliver(to->path, to->content, &from, to->force, &to->error);
	free(book);
	return is_counted && !stop_asked();
}

/* False where it was given up. */
static bool is_delivered(struct delivering *to, bool force)
{
	to->force = force;
	return to->editor->asker->await(to->editor->asker, &to->task);
}

bool act_deliver(struct editor *editor, const char *words, const char *path,
	const struct file_content *content, struct fault *fault)
{
	struct delivering to = { { words, deliver }, editor, path, content, .force = false };
	bool is_done = is_delivered(&to, false);

	if (is_done && to.delivery == DELIVERY_WOULD_REPLACE &&
	    act_may_write_over(editor, to.error.sentence))
		is_done = is_delivered(&to, true);
	if (!is_done)
		return fault_set(fault, 0, "Given up: nothing is written.");
	return to.delivery == DELIVERY_DONE || fault_set(fault, 0, "%s.", to.error.sentence);
}
