/* The plot as its file has it now, read and counted to be compared with the plot being drawn. */
#ifndef EDITOR_SAVED_H
#define EDITOR_SAVED_H

#include "editor/editor.h"
#include "report/compare/comparison.h"

struct saved_plot {
	struct plot plot;
	struct book book; /* where it names another than the plot being drawn */
	bool has_book;
	struct arena arena;
	struct takeoff takeoff; /* points into the editor's price book too, where both name that */
	struct compared compared;
	struct saved saved; /* of all these */
};

/* Reads the editor's file, and counts it where it is another plot than the editor's. False where it
 * was stopped (base/stop.h). To be freed with saved_fini in any case; good until the editor's plot
 * or price book changes. */
bool saved_read(struct saved_plot *out, const struct editor *editor);
void saved_fini(struct saved_plot *saved);

#endif
