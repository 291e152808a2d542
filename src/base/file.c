#include "base/file.h"
#include "base/memory.h"

#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { LINKS_MOST = 40 };

static bool fail(struct file_error *error, const char *act, const char *path, const char *why)
{
	snprintf(error->sentence, sizeof error->sentence, "cannot %s %.*s: %s", act,
		path[0] ? 150 : 2, path[0] ? path : "\"\"", why);
	return false;
}

static bool fail_errno(struct file_error *error, const char *act, const char *path)
{
	return fail(error, act, path, strerror(errno));
}

static const char *kind_word(mode_t mode)
{
	if (S_ISDIR(mode))
		return "it is a directory";
	return "it is not a regular file";
}

/* Reads to the end of fd or to just over `most` bytes. */
static bool read_all(int fd, size_t most, struct text *out)
{
	char buffer[65536];
	size_t start = out->length;

	for (;;) {
		ssize_t got = read(fd, buffer, sizeof buffer);

		if (got < 0 && errno == EINTR)
			continue;
		if (got < 0)
			return false;
		if (got == 0)
			return true;
		text_add_bytes(out, buffer, (size_t)got);
		if (out->length - start > most) {
			errno = EFBIG;
			return false;
		}
	}
}

bool file_read(const char *path, size_t most, struct text *out, struct file_error *error)
{
	bool is_input = strcmp(path, "-") == 0, done;
	struct stat status;
	int fd, cause;

	if (is_input) {
		fd = STDIN_FILENO;
	} else {
		fd = open(path, O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);
		if (fd < 0)
			return fail_errno(error, "open", path);
		if (fstat(fd, &status) == 0 && !S_ISREG(status.st_mode)) {
			close(fd);
			return fail(error, "read", path, kind_word(status.st_mode));
		}
	}
	text_clear(out);
	done = read_all(fd, most, out);
	cause = errno;
	if (!is_input)
		close(fd);
	errno = cause;
	return done || fail_errno(error, "read", path);
}

static bool write_all(int fd, const char *bytes, size_t length)
{
	while (length) {
		ssize_t put = write(fd, bytes, length);

		if (put < 0 && errno == EINTR)
			continue;
		if (put < 0)
			return false;
		bytes += put;
		length -= (size_t)put;
	}
	return true;
}

/* Where path leads by way of symbolic links, though the last one may not exist yet. New memory, or
 * NULL with errno for a loop or a broken directory. */
static char *links_followed(const char *path)
{
	char target[PATH_MAX];
	char *name = memory_string(path);

	for (int i = 0; i < LINKS_MOST; i++) {
		ssize_t length = readlink(name, target, sizeof target - 1);
		char *slash = strrchr(name, '/');
		struct text next = TEXT_EMPTY;

		if (length < 0)
			return name;
		target[length] = '\0';
		if (target[0] != '/' && slash)
			text_add_bytes(&next, name, (size_t)(slash - name) + 1);
		text_add(&next, target);
		free(name);
		name = next.bytes;
	}
	free(name);
	errno = ELOOP;
	return NULL;
}

char *file_beside(const char *path, const char *prefix, const char *suffix)
{
	char *followed = links_followed(path);
	const char *real = followed ? followed : path;
	const char *slash = strrchr(real, '/');
	size_t folder = slash ? (size_t)(slash - real) + 1 : 0;
	struct text name = TEXT_EMPTY;

	text_add_bytes(&name, real, folder);
	text_print(&name, "%s%s%s", prefix, real + folder, suffix);
	free(followed);
	return name.bytes;
}

/* Keeps the mode and, where that is allowed, the owner of the file that is replaced. */
static bool mode_copy(int fd, const struct stat *old)
{
	mode_t mode = old->st_mode & 07777;

	if (fchown(fd, old->st_uid, old->st_gid) < 0)
		mode &= 0707; /* the group is not the old one: give it nothing */
	return fchmod(fd, mode) == 0;
}

static void directory_sync(const char *path)
{
	char *folder = file_beside(path, "", "");
	char *slash = strrchr(folder, '/');
	int fd;

	if (slash)
		slash[1] = '\0';
	fd = open(slash ? folder : ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
	if (fd >= 0) {
		/* Some file systems cannot sync a directory: the file itself is safe by now. */
		(void)fsync(fd);
		close(fd);
	}
	free(folder);
}

static mode_t mode_new(void)
{
	mode_t mask = umask(0);

	umask(mask);
	return 0666 & ~mask;
}

/* Writes the new file beside `path` and renames it over it; errno tells what failed. */
static bool replace(const char *path, const struct stat *old, const char *bytes, size_t length)
{
	char *temporary = file_beside(path, ".", ".XXXXXX");
	int fd = mkostemp(temporary, O_CLOEXEC), cause;
	bool done;

	if (fd < 0) {
		free(temporary);
		return false;
	}
	done = (old ? mode_copy(fd, old) : fchmod(fd, mode_new()) == 0) &&
		write_all(fd, bytes, length) && fsync(fd) == 0;
	cause = errno;
	if (close(fd) < 0 && done) {
		done = false;
		cause = errno;
	}
	if (done && rename(temporary, path) < 0) {
		done = false;
		cause = errno;
	}
	if (!done)
		unlink(temporary);
	free(temporary);
	errno = cause;
	if (done)
		directory_sync(path);
	return done;
}

static bool rewrite(const char *path, const char *bytes, size_t length)
{
	int fd = open(path, O_WRONLY | O_CLOEXEC | O_NOFOLLOW), cause;
	bool done;

	if (fd < 0)
		return false;
	done = write_all(fd, bytes, length) && ftruncate(fd, (off_t)length) == 0 && fsync(fd) == 0;
	cause = errno;
	if (close(fd) < 0 && done) {
		done = false;
		cause = errno;
	}
	errno = cause;
	return done;
}

static bool write_over(const char *path, const char *bytes, size_t length,
	struct file_error *error)
{
	struct stat old;
	bool exists = lstat(path, &old) == 0;

	if (!exists && errno != ENOENT)
		return fail_errno(error, "write", path);
	if (exists && !S_ISREG(old.st_mode))
		return fail(error, "write", path, kind_word(old.st_mode));
	if (exists && access(path, W_OK) < 0)
		return fail_errno(error, "write", path);
	if (exists && old.st_nlink > 1)
		return rewrite(path, bytes, length) ||
			fail_errno(error, "finish rewriting", path);
	if (replace(path, exists ? &old : NULL, bytes, length))
		return true;
	if (exists && (errno == EACCES || errno == EPERM || errno == EROFS))
		return rewrite(path, bytes, length) ||
			fail_errno(error, "finish rewriting", path);
	return fail_errno(error, "write", path);
}

bool file_write(const char *path, const char *bytes, size_t length, struct file_error *error)
{
	char *real = links_followed(path);
	bool done;

	if (!real)
		return fail_errno(error, "write", path);
	done = write_over(real, bytes, length, error);
	free(real);
	return done;
}

struct file_stamp file_stamp(const char *path)
{
	struct stat status;

	if (stat(path, &status) < 0)
		return (struct file_stamp){ .exists = false };
	return (struct file_stamp){ true, S_ISREG(status.st_mode), status.st_dev, status.st_ino, status.st_size,
		status.st_mtim };
}

bool file_stamp_equal(const struct file_stamp *a, const struct file_stamp *b)
{
	if (!a->exists || !b->exists)
		return a->exists == b->exists;
	return a->device == b->device && a->inode == b->inode && a->size == b->size &&
		a->changed.tv_sec == b->changed.tv_sec &&
		a->changed.tv_nsec == b->changed.tv_nsec;
}

bool file_is_same(const char *a, const char *b)
{
	struct file_stamp one = file_stamp(a), other = file_stamp(b);

	return one.exists && other.exists && one.device == other.device &&
		one.inode == other.inode;
}
