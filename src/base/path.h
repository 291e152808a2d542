/* Names of files. What is returned is new memory. */
#ifndef BASE_PATH_H
#define BASE_PATH_H

#include <stddef.h>

/* Length of the directory in path, with its slash; 0 where there is none. */
size_t path_folder(const char *path);
/* That directory, to be opened: "." where there is none. */
char *path_parent(const char *path);
/* Length of path without the ending, such as ".plot"; all of it where it has another. */
size_t path_stem(const char *path, const char *ending);
/* Where path leads by way of symbolic links, though the last one may not exist yet. NULL with errno
 * where the links lead in a circle. */
char *path_followed(const char *path);

/* path's directory, a prefix, its last part and a suffix: for files beside it. Symbolic links are
 * followed first, so that all names of a plot share these files. */
char *path_beside(const char *path, const char *prefix, const char *suffix);
/* The name of a file that belongs to path but cannot be beside it: a hash of its real path and a
 * suffix, in the folder "parterre" of the user's state, $XDG_STATE_HOME or ~/.local/state, which
 * may not be there yet. NULL where the user has no such place. */
char *path_in_state(const char *path, const char *suffix);
/* A name as people type it: "~" alone or before a slash is the user's home, where it is known. */
char *path_typed(const char *name);
/* The path of a file that is named, as people type it, as seen from path's directory. Symbolic
 * links are followed first; a name that begins with a slash is taken as it is. Never "-". */
char *path_in_folder(const char *path, const char *name);

#endif
