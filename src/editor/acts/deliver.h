/* Writing a paper of the takeoff to a file that was typed. */
#ifndef EDITOR_ACTS_DELIVER_H
#define EDITOR_ACTS_DELIVER_H

#include "base/file.h"
#include "editor/editor.h"

/* Counts, where the figures are not there yet, and writes the content by the one rule for that
 * (report/deliver.h), saying `words` where it takes long; asks before it writes over another file.
 * False where nothing is written: fault says why. */
bool act_deliver(struct editor *editor, const char *words, const char *path,
	const struct file_content *content, struct fault *fault);

#endif
