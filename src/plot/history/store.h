/* One plot's files: the plot itself, the lock beside it that keeps a second session from
 * writing, and the rescue file beside it that holds unsaved work when a session ends badly.
 *
 * The lock is held on a file of its own, since each save replaces the plot's inode; the system
 * lets go of it when the process ends, however it ends. Names beside "court.plot":
 * ".court.plot.lock" and ".court.plot.rescue". */
#ifndef PLOT_HISTORY_STORE_H
#define PLOT_HISTORY_STORE_H

#include "base/file.h"
#include "plot/format/format.h"

enum store_access {
	STORE_WRITES,      /* ours to write */
	STORE_LOOKS,       /* another session has it: the process `holder` */
	/* no lock could be had here (read-only directory, no locks): may be written */
	STORE_UNGUARDED
};

struct store {
	char *path;
	enum store_access access;
	int lock;                /* descriptor, -1: none */
	long holder;             /* process that has the lock, 0 if unknown */
	struct file_stamp stamp; /* of the plot when it was last read or written */
};

/* Reads and parses the file ("-": standard input) into an empty plot. On failure message holds
 * one line: "path:line:column: found ..., expected ...", or what the system said; the plot stays
 * empty. */
bool store_read(const char *path, struct plot *plot, struct text *message);

/* Takes the lock if it is free. Cannot fail. The file need not exist. */
void store_open(struct store *store, const char *path);
/* Lets go of the lock and removes its file; the rescue file stays. */
void store_close(struct store *store);

/* True where path leads to the store's own plot, which need not exist. */
bool store_is_of(const struct store *store, const char *path);

/* Reads the plot and remembers its stamp. */
bool store_load(struct store *store, struct plot *plot, struct text *message);
/* True where the file is no longer as it was last read or written here. */
bool store_is_changed(const struct store *store);
/* Writes the plot as file_write does and removes the rescue file. Refused while the plot is another
 * session's. */
bool store_save(struct store *store, const struct plot *plot, struct file_error *error);

/* Writes the rescue file, with the plot's mode, for its owner alone before there is a plot: what is
 * private stays so. Nothing where the plot is another session's. */
bool store_rescue(const struct store *store, const struct plot *plot, struct file_error *error);
/* Reads the rescue file into an empty plot; false where there is none that can be read, or it is
 * another session's. *when is when it was written. */
bool store_rescued(const struct store *store, struct plot *plot, struct timespec *when);
/* Removes the rescue file, if there is one and it is not another session's. */
void store_rescue_drop(const struct store *store);
/* Renames the rescue file to "NAME.rescued" beside the plot, "NAME.rescued-2" and so on where
 * that is taken: it is kept but no longer offered. *kept is the new name, for the caller to
 * free; NULL, false where there is none to keep. */
bool store_rescue_keep(const struct store *store, char **kept);

#endif
