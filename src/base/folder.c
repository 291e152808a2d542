#include "base/folder.h"
#include "base/memory.h"
#include "base/path.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { OWNER_ALONE = 0700 };

bool folder_make(const char *path)
{
	char *folder = memory_string(path);
	bool done = true;

	for (char *slash = strchr(folder + 1, '/'); slash && done; slash = strchr(slash + 1, '/')) {
		*slash = '\0';
		/* EROFS may be said of a folder that is there. */
		done = mkdir(folder, OWNER_ALONE) == 0 || errno == EEXIST || errno == EROFS;
		*slash = '/';
	}
	free(folder);
	return done;
}

bool folder_is_there(const char *path)
{
	char *folder = path_parent(path);
	bool is_there = access(folder, X_OK) == 0;
	int cause = errno;

	free(folder);
	errno = cause;
	return is_there;
}

void folder_sync(const char *path)
{
	char *folder = path_parent(path);
	int fd = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

	if (fd >= 0) {
		/* Some file systems cannot sync a folder: the file itself is safe by now. */
		(void)fsync(fd);
		close(fd);
	}
	free(folder);
}

/* By a second link where the file system knows no renaming that leaves others alone. */
bool folder_rename_new(const char *from, const char *to)
{
	if (renameat2(AT_FDCWD, from, AT_FDCWD, to, RENAME_NOREPLACE) == 0)
		return true;
	return (errno == EINVAL || errno == ENOSYS) && link(from, to) == 0 && unlink(from) == 0;
}
