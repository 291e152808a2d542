/* Put before the C library of a program (LD_PRELOAD), it makes one call fail, or the program die at
 * one call. The environment says which:
 *
 *	FAULT_KIND    "memory": malloc, calloc, realloc; "file": calls on files under FAULT_FOLDER
 *	FAULT_AT      the how-manieth of these, from 1; 0: none
 *	FAULT_LASTS   "1": all that follow fail as well
 *	FAULT_ERROR   the number of the error it fails with; 0: the program is killed before it
 *	FAULT_COUNT   a file for the count of such calls when the program ends; may be unset
 *
 * A call that fails has not done anything, but for close, which has closed. */

#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <signal.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

static struct {
	bool is_read, is_memory, lasts;
	const char *folder;
	long at, count;
	int error;
} plan;

/* Reads the environment at the first call: it may come before any constructor. */
static void plan_read(void)
{
	const char *kind = getenv("FAULT_KIND"), *at = getenv("FAULT_AT");
	const char *lasts = getenv("FAULT_LASTS");
	const char *error = getenv("FAULT_ERROR");

	plan.is_read = true;
	plan.is_memory = kind && strcmp(kind, "memory") == 0;
	plan.folder = kind && strcmp(kind, "file") == 0 ? getenv("FAULT_FOLDER") : NULL;
	plan.lasts = lasts && strcmp(lasts, "1") == 0;
	plan.at = at ? strtol(at, NULL, 10) : 0;
	plan.error = error ? (int)strtol(error, NULL, 10) : 0;
}

__attribute__((destructor)) static void count_write(void)
{
	const char *path = getenv("FAULT_COUNT");
	char digits[32];
	int length = snprintf(digits, sizeof digits, "%ld\n", plan.count), fd;

	if (!path)
		return;
	fd = (int)syscall(SYS_openat, AT_FDCWD, path, O_WRONLY | O_CREAT | O_TRUNC, 0600);
	syscall(SYS_write, fd, digits, (size_t)length);
	syscall(SYS_close, fd);
}

/* Counts one more call; true, errno set, where it is to fail. */
static bool is_due(void)
{
	plan.count++;
	if (plan.at == 0 || plan.count < plan.at || (plan.count > plan.at && !plan.lasts))
		return false;
	if (plan.error == 0)
		kill(getpid(), SIGKILL);
	errno = plan.error;
	return true;
}

static bool is_due_memory(void)
{
	if (!plan.is_read)
		plan_read();
	return plan.is_memory && is_due();
}

static bool is_due_path(const char *path)
{
	if (!plan.is_read)
		plan_read();
	return plan.folder && path && strncmp(path, plan.folder, strlen(plan.folder)) == 0 &&
		is_due();
}

static bool is_due_file(int fd)
{
	char link[64], path[PATH_MAX];
	int before = errno;
	long length;

	snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
	length = syscall(SYS_readlinkat, AT_FDCWD, link, path, sizeof path - 1);
	errno = before;
	if (length < 0)
		return false;
	path[length] = '\0';
	return is_due_path(path);
}

/* ---- Memory ---------------------------------------------------------------------------------- */

extern void *__libc_malloc(size_t size);
extern void *__libc_calloc(size_t count, size_t size);
extern void *__libc_realloc(void *block, size_t size);

void *malloc(size_t size)
{
	return is_due_memory() ? NULL : __libc_malloc(size);
}

void *calloc(size_t count, size_t size)
{
	return is_due_memory() ? NULL : __libc_calloc(count, size);
}

void *realloc(void *block, size_t size)
{
	return is_due_memory() ? NULL : __libc_realloc(block, size);
}

/* ---- Files ----------------------------------------------------------------------------------- */

static void own_find(const char *name, void *own)
{
	void *found = dlsym(RTLD_NEXT, name);

	memcpy(own, &found, sizeof found);
}

/* Declares `own`, the C library's own function of the name. */
#define OWN(name)               \
	__typeof__(&name) own;  \
	own_find(#name, &own)

/* A function of the type and parameters given, which fails where `due` is true. */
#define FAIL(type, name, due, parameters, arguments)    \
	type name parameters                            \
	{                                               \
		OWN(name);                              \
		return due ? (type)-1 : own arguments;  \
	}

static mode_t mode_of(int flags, va_list list)
{
	return flags & (O_CREAT | O_TMPFILE) ? va_arg(list, mode_t) : 0;
}

int open(const char *path, int flags, ...)
{
	va_list list;
	mode_t mode;

	OWN(open);
	va_start(list, flags);
	mode = mode_of(flags, list);
	va_end(list);
	return is_due_path(path) ? -1 : own(path, flags, mode);
}

int openat(int folder, const char *path, int flags, ...)
{
	va_list list;
	mode_t mode;

	OWN(openat);
	va_start(list, flags);
	mode = mode_of(flags, list);
	va_end(list);
	return is_due_path(path) ? -1 : own(folder, path, flags, mode);
}

int close(int fd)
{
	bool is_due_now = is_due_file(fd);
	int error = errno, done;

	OWN(close);
	done = own(fd);
	errno = is_due_now ? error : errno;
	return is_due_now ? -1 : done;
}

FAIL(int, mkostemp, is_due_path(path), (char *path, int flags), (path, flags))
FAIL(ssize_t, read, is_due_file(fd), (int fd, void *bytes, size_t size), (fd, bytes, size))
FAIL(ssize_t, write, is_due_file(fd), (int fd, const void *bytes, size_t size), (fd, bytes, size))
FAIL(ssize_t, pread, is_due_file(fd), (int fd, void *bytes, size_t size, off_t at),
	(fd, bytes, size, at))
FAIL(ssize_t, pwrite, is_due_file(fd), (int fd, const void *bytes, size_t size, off_t at),
	(fd, bytes, size, at))
FAIL(int, fsync, is_due_file(fd), (int fd), (fd))
FAIL(int, fdatasync, is_due_file(fd), (int fd), (fd))
FAIL(int, ftruncate, is_due_file(fd), (int fd, off_t length), (fd, length))
FAIL(int, fchmod, is_due_file(fd), (int fd, mode_t mode), (fd, mode))
FAIL(int, fchown, is_due_file(fd), (int fd, uid_t user, gid_t group), (fd, user, group))
FAIL(int, flock, is_due_file(fd), (int fd, int how), (fd, how))
FAIL(int, fstat, is_due_file(fd), (int fd, struct stat *status), (fd, status))
FAIL(int, stat, is_due_path(path), (const char *path, struct stat *status), (path, status))
FAIL(int, lstat, is_due_path(path), (const char *path, struct stat *status), (path, status))
FAIL(int, access, is_due_path(path), (const char *path, int how), (path, how))
FAIL(int, unlink, is_due_path(path), (const char *path), (path))
FAIL(int, mkdir, is_due_path(path), (const char *path, mode_t mode), (path, mode))
FAIL(int, rename, is_due_path(from), (const char *from, const char *to), (from, to))
FAIL(int, renameat2, is_due_path(from),
	(int from_folder, const char *from, int to_folder, const char *to, unsigned int flags),
	(from_folder, from, to_folder, to, flags))
FAIL(int, link, is_due_path(from), (const char *from, const char *to), (from, to))
FAIL(int, linkat, is_due_path(to),
	(int from_folder, const char *from, int to_folder, const char *to, int flags),
	(from_folder, from, to_folder, to, flags))
