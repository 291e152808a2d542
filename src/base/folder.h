/* What is done to the names in folders. */
#ifndef BASE_FOLDER_H
#define BASE_FOLDER_H

#include <stdbool.h>

/* Makes the folders that path lies in, where they are not there, for their owner alone. errno says
 * what failed. */
bool folder_make(const char *path);
/* Whether path's folder is there; else errno says why not. */
bool folder_is_there(const char *path);
/* Has the names in path's folder on the disk. */
void folder_sync(const char *path);
/* Renames, but over no other file: errno is EEXIST where one has the name. */
bool folder_rename_new(const char *from, const char *to);

#endif
