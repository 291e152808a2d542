#include "support/folder.h"

#include "base/file.h"
#include "support/scratch.h"

#include <check.h>
#include <dirent.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

enum { NAMES = 17, NAME_ROOM = 4200, FILE_MOST = 1 << 26, NOBODY = 65534 };

static char *folder, *stood_in;

void folder_start(void)
{
	folder = scratch_new();
}

void folder_end(void)
{
	scratch_remove(folder);
	folder = NULL;
}

const char *in(const char *name)
{
	static char paths[NAMES][NAME_ROOM];
	static int next;
	char *path = paths[next = (next + 1) % NAMES];

	snprintf(path, NAME_ROOM, "%s%s%s", stood_in ? "" : folder, *name && !stood_in ? "/" : "",
		stood_in && !*name ? "." : name);
	return path;
}

void make(const char *name, const char *text)
{
	FILE *file = fopen(in(name), "w");

	ck_assert_ptr_nonnull(file);
	fputs(text, file);
	ck_assert_int_eq(fclose(file), 0);
}

bool is_there(const char *name)
{
	struct stat status;

	return lstat(in(name), &status) == 0;
}

int folder_count(void)
{
	DIR *list = opendir(in(""));
	int count = -2; /* itself and the one above */

	while (readdir(list))
		count++;
	closedir(list);
	return count;
}

mode_t mode_of(const char *name)
{
	struct stat status;

	ck_assert_msg(lstat(in(name), &status) == 0, "%s is not there", name);
	return status.st_mode & 07777;
}

struct text bytes_of(const char *name)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	ck_assert_msg(file_read(in(name), FILE_MOST, &bytes, &error), "%s", error.sentence);
	return bytes;
}

pid_t session_start(void (*act)(void))
{
	int ends[2];
	char done;
	pid_t child;

	ck_assert_int_eq(pipe(ends), 0);
	child = fork();
	if (child == 0) {
		act();
		if (write(ends[1], "!", 1) == 1)
			for (;;)
				pause();
		_exit(1);
	}
	close(ends[1]);
	ck_assert_int_eq(read(ends[0], &done, 1), 1);
	close(ends[0]);
	return child;
}

void session_kill(pid_t session)
{
	kill(session, SIGKILL);
	ck_assert_int_eq(waitpid(session, NULL, 0), session);
}

void plain_user(void)
{
	ck_assert_int_eq(chmod(folder, 0700), 0);
	if (getuid() == 0)
		ck_assert_int_eq(chown(folder, NOBODY, NOBODY), 0);
	stood_in = realpath(".", NULL);
	ck_assert_int_eq(chdir(folder), 0);
	if (getuid() == 0) {
		ck_assert_int_eq(setegid(NOBODY), 0);
		ck_assert_int_eq(seteuid(NOBODY), 0);
	}
}

void usual_user(void)
{
	if (getuid() == 0) {
		ck_assert_int_eq(seteuid(0), 0);
		ck_assert_int_eq(setegid(0), 0);
	}
	ck_assert_int_eq(chdir(stood_in), 0);
	free(stood_in);
	stood_in = NULL;
}
