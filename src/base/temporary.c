#include "base/temporary.h"
#include "base/folder.h"
#include "base/path.h"
#include "base/text.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

static const char prefix[] = ".parterre-";

enum { OWNER_ALONE = 0600, NUMBERS = 1000, OLD_S = 24 * 60 * 60 };

/* The one that is being written, for a signal: its handler has no other way to it. */
static char *volatile unfinished;

bool process_is_gone(long process)
{
	return kill((pid_t)process, 0) < 0 && errno == ESRCH;
}

/* As short as the path's own name may be long. */
static char *name_of(const char *path, int number)
{
	struct text name = TEXT_EMPTY;

	text_add_bytes(&name, path, path_folder(path));
	text_print(&name, "%s%ld-%d", prefix, (long)getpid(), number);
	return text_take(&name);
}

static void forget(struct temporary *t)
{
	unfinished = NULL;
	free(t->name);
	t->name = NULL;
}

bool temporary_begin(struct temporary *t, const char *path)
{
	t->fd = -1;
	for (int number = 1; number <= NUMBERS; number++) {
		t->name = name_of(path, number);
		/* Before it is there: if it has a name already, another process like this one has
		 * left it. */
		unfinished = t->name;
		t->fd = open(t->name, O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC,
			OWNER_ALONE);
		if (t->fd >= 0)
			return true;
		forget(t);
		if (errno != EEXIST)
			break;
	}
	return false;
}

bool temporary_place(struct temporary *t, const char *path, bool is_over)
{
	if (is_over ? rename(t->name, path) == 0 : folder_rename_new(t->name, path)) {
		forget(t);
		return true;
	}
	temporary_drop(t);
	return false;
}

void temporary_drop(struct temporary *t)
{
	int cause = errno;

	unlink(t->name);
	forget(t);
	if (t->fd >= 0)
		close(t->fd);
	t->fd = -1;
	errno = cause;
}

void temporary_abandon(void)
{
	if (unfinished)
		unlink(unfinished);
}

/* It dies of the signal: the handler is reset. */
static void abandon(int signal)
{
	temporary_abandon();
	raise(signal);
}

void temporary_guard(void)
{
	static const int endings[] = { SIGHUP, SIGINT, SIGQUIT, SIGTERM, SIGPIPE, SIGALRM, SIGXCPU,
		SIGUSR1, SIGUSR2 };

	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++) {
		struct sigaction act = { .sa_handler = abandon, .sa_flags = (int)SA_RESETHAND };
		struct sigaction was;

		if (sigaction(endings[i], NULL, &was) == 0 && was.sa_handler == SIG_DFL)
			sigaction(endings[i], &act, NULL);
	}
}

/* The process in a name; 0: none is there. */
static long process_of(const char *name)
{
	char *end;
	long process = strtol(name + strlen(prefix), &end, 10);

	return *end == '-' && process > 0 ? process : 0;
}

/* Ours, and no longer written: its process is gone, or nobody writes that long. */
static bool is_left(int folder, const char *name)
{
	struct stat status;
	long process;

	if (strncmp(name, prefix, strlen(prefix)) != 0 ||
	    fstatat(folder, name, &status, AT_SYMLINK_NOFOLLOW) < 0 ||
	    !S_ISREG(status.st_mode) || status.st_uid != geteuid())
		return false;
	process = process_of(name);
	return (process && process_is_gone(process)) || status.st_mtim.tv_sec < time(NULL) - OLD_S;
}

void temporary_sweep(const char *path)
{
	char *folder = path_parent(path);
	DIR *list = opendir(folder);
	const struct dirent *entry;

	free(folder);
	while (list && (entry = readdir(list)))
		if (is_left(dirfd(list), entry->d_name))
			unlinkat(dirfd(list), entry->d_name, 0);
	if (list)
		closedir(list);
}
