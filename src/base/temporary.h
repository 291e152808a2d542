/* Files on the way to their place: written as ".parterre-PID-N" in the folder of the file that they
 * are to be, then renamed. A process writes one at a time. */
#ifndef BASE_TEMPORARY_H
#define BASE_TEMPORARY_H

#include <stdbool.h>

struct temporary {
	char *name;
	int fd;
};

/* Begins one that is to be `path`: a new file, for its owner alone. errno says what failed. */
bool temporary_begin(struct temporary *t, const char *path);
/* Gives it its name, whoever had that, or only where nobody has. True: it is there, and open still;
 * else it is gone, and errno says why. */
bool temporary_place(struct temporary *t, const char *path, bool is_over);
/* Gives it up. errno stays. */
void temporary_drop(struct temporary *t);

/* Removes the one that is being written, if there is one: the process ends here. May be called from
 * a handler of signals. */
void temporary_abandon(void);

/* From now on signals that end the process remove what is being written first; those that are
 * ignored stay so. */
void temporary_guard(void);
/* Removes what processes that were killed have left in the folder of `path`. */
void temporary_sweep(const char *path);

/* No process has this number any longer. */
bool process_is_gone(long process);

#endif
