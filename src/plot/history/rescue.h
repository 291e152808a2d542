/* What sessions that were cut off have left of their unsaved work: journals, beside the plot or
 * among the user's state, and whole plots: copies of a save that was not finished, and files that
 * earlier versions left, ".court.plot.rescue". */
#ifndef PLOT_HISTORY_RESCUE_H
#define PLOT_HISTORY_RESCUE_H

#include "plot/history/store.h"

struct rescue_list {
	char **paths; /* those that no session has, in the order they are to be offered */
	size_t count, capacity;
};
/* None where the plot is another session's. */
void rescue_find(const struct store *store, struct rescue_list *list);
void rescue_list_fini(struct rescue_list *list);

struct rescue {
	const char *path;
	enum journal_state state;
	struct text why;         /* what is wrong unless it is JOURNAL_WHOLE */
	struct plot plot;        /* empty where it is JOURNAL_UNREADABLE */
	struct timespec written; /* last */
	bool is_newer;           /* the plot's file is as the work started from it */
};
void rescue_read(const struct store *store, const char *path, struct rescue *rescue);
void rescue_fini(struct rescue *rescue);

/* Takes the file for this session's own, which goes on with its work: store_hold follows. One that
 * can be read in part is set aside instead; *kept as below, or NULL. */
void rescue_take(struct store *store, const struct rescue *rescue, char **kept);
/* Keeps the work as a plot "NAME.rescued" beside the plot, "NAME.rescued-2" and so on where that is
 * taken, else among the user's state, and removes its file; one that cannot be read, or only in
 * part, gets such a name as it is. *kept is the new name, for the caller to free; NULL, false where
 * it has to stay where it is. */
bool rescue_set_aside(const struct store *store, const struct rescue *rescue, char **kept);
/* Sets all files aside that are there: a plot is to be written that has nothing to do with them.
 * *kept is the new name of the last, as above. */
void rescue_set_all_aside(const struct store *store, char **kept);
/* Removes the file: there is nothing in it. */
void rescue_drop(const struct rescue *rescue);

#endif
