#include "support/scratch.h"

#include <check.h>
#include <errno.h>
#include <ftw.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

char *scratch_new(void)
{
	const char *within = getenv("SCRATCH_FOLDER");
	char folder[4096];

	if (!within)
		mkdir(BUILD_FOLDER "/scratch", 0777);
	snprintf(folder, sizeof folder, "%s/XXXXXX", within ? within : BUILD_FOLDER "/scratch");
	ck_assert_msg(mkdtemp(folder), "no folder %s: %s", folder, strerror(errno));
	return realpath(folder, NULL);
}

static int entry_remove(const char *path, const struct stat *what, int kind, struct FTW *where)
{
	(void)what, (void)kind, (void)where;
	return remove(path);
}

void scratch_remove(char *folder)
{
	if (folder)
		nftw(folder, entry_remove, 8, FTW_DEPTH | FTW_PHYS);
	free(folder);
}
