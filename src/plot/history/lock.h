/* The lock that keeps a second session from writing a plot. It is held on a file of its own, since
 * each save replaces the plot's inode; the system lets go of it when the process ends, however it
 * ends. */
#ifndef PLOT_HISTORY_LOCK_H
#define PLOT_HISTORY_LOCK_H

#include <stdbool.h>

enum store_access {
	STORE_WRITES,      /* ours to write */
	STORE_LOOKS,       /* another session has it */
	/* no lock could be had here (read-only directory, no locks): may be written */
	STORE_UNGUARDED
};

struct lock {
	int fd;      /* -1: not ours */
	long holder; /* the process that has it, another than this; 0 if unknown */
};

/* Takes the lock on the file of that name if it is free. */
enum store_access lock_take(struct lock *lock, const char *name);
/* Lets go of it and removes its file. */
void lock_release(struct lock *lock, const char *name);
/* True where the lock that is held is the one on the file of that name. */
bool lock_is_ours(const struct lock *lock, const char *name);
/* Whether another session holds it now; *holder as above. */
bool lock_is_held(const char *name, long *holder);

#endif
