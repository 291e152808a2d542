#include "base/file.h"

#include <errno.h>
#include <sys/stat.h>

struct file_stamp file_stamp(const char *path)
{
	struct stat status;

	if (stat(path, &status) < 0)
		return (struct file_stamp){ .exists = false };
	return (struct file_stamp){ true, S_ISREG(status.st_mode), status.st_dev, status.st_ino,
		status.st_size, status.st_mtim, status.st_ctim };
}

bool file_is_missing(const char *path)
{
	struct stat status;

	return stat(path, &status) < 0 && errno == ENOENT;
}

static bool time_equal(const struct timespec *a, const struct timespec *b)
{
	return a->tv_sec == b->tv_sec && a->tv_nsec == b->tv_nsec;
}

bool file_stamp_equal(const struct file_stamp *a, const struct file_stamp *b)
{
	if (!a->exists || !b->exists)
		return a->exists == b->exists;
	return a->device == b->device && a->inode == b->inode && a->size == b->size &&
		time_equal(&a->written, &b->written) && time_equal(&a->changed, &b->changed);
}

bool file_is_at(int fd, const char *path)
{
	struct stat opened, named;

	return fstat(fd, &opened) == 0 && lstat(path, &named) == 0 &&
		opened.st_dev == named.st_dev && opened.st_ino == named.st_ino;
}

bool file_is_same(const char *a, const char *b)
{
	struct file_stamp one = file_stamp(a), other = file_stamp(b);

	return one.exists && other.exists && one.device == other.device &&
		one.inode == other.inode;
}
