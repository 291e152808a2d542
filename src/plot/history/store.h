/* One plot's files: the plot itself, the lock beside it that keeps a second session from writing,
 * and the journal beside it that holds unsaved work from stroke to stroke.
 *
 * Names beside "court.plot": ".court.plot.lock" and ".court.plot.journal"; without a lock the
 * journal's name ends in the process, ".court.plot.journal.1234". Where no such file can be beside
 * the plot, the journal is among the user's state (path_in_state). */
#ifndef PLOT_HISTORY_STORE_H
#define PLOT_HISTORY_STORE_H

#include "base/file.h"
#include "plot/format/format.h"
#include "plot/history/journal.h"
#include "plot/history/lock.h"

enum { STORE_PLACES = 2 };

struct store {
	char *path;
	enum store_access access;
	struct lock lock;
	struct file_stamp stamp; /* of the plot when it was last read or written */
	uint64_t hash;           /* of its bytes then */
	char *places[STORE_PLACES]; /* for the journal, tried in this order; NULL: none */
	struct journal journal;
	char *taken;             /* another file, whose work this session goes on with; NULL */
};

/* Reads and parses the file ("-": standard input) into an empty plot. On failure message holds
 * one line: "path:line:column: found ..., expected ...", or what the system said; the plot stays
 * empty. */
bool store_read(const char *path, struct plot *plot, struct text *message);

/* Takes the lock if it is free, and removes what killed processes left half written. Cannot fail.
 * The file need not exist; "-" is a file of that name. */
void store_open(struct store *store, const char *path);
/* Lets go of the lock and removes its file; the journal stays. */
void store_close(struct store *store);

/* True where path leads to the store's own plot, which need not exist. */
bool store_is_of(const struct store *store, const char *path);

/* Reads the plot and remembers its stamp. */
bool store_load(struct store *store, struct plot *plot, struct text *message);
/* True where the file no longer holds what was last read or written here. */
bool store_is_changed(const struct store *store);
/* What a journal begun now says the plot's file was. */
struct plot_stamp store_stamp(const struct store *store);
/* Whether the session that has the plot is still there; its process in store->lock.holder. */
bool store_is_held(struct store *store);
/* Writes the plot as file_write does, then forgets what was written down of it (store_forget).
 * Refused while the plot is another session's. */
bool store_save(struct store *store, const struct plot *plot, struct file_error *error);
/* Whether there was a place for a journal when the plot was opened. */
bool store_has_place(const struct store *store);
/* Writes down the last step, which has made the plot what it is. False, error saying why, where
 * that cannot be: what was written down then stays as it was. */
bool store_note(struct store *store, struct last_step last, const struct plot *plot,
	struct file_error *error);
/* Begins the journal with the plot as it is, on the disk. False as with store_note. */
bool store_hold(struct store *store, const struct plot *plot, struct file_error *error);
/* journal_sync. */
int store_sync(struct store *store);
/* Removes what the session wrote down, and the file whose work it took up. */
void store_forget(struct store *store);

#endif
