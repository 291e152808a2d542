#include "plot/history/lock.h"
#include "base/file.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/file.h>
#include <unistd.h>

/* Some file systems give a file another number at each look: its name is then never ours. */
enum { TRIES_MOST = 1000 };

static long holder_of(int fd)
{
	char digits[32] = "";
	ssize_t length = pread(fd, digits, sizeof digits - 1, 0);

	return length > 0 ? strtol(digits, NULL, 10) : 0;
}

static void sign(int fd)
{
	char digits[32];
	int length = snprintf(digits, sizeof digits, "%ld\n", (long)getpid());

	/* Only a courtesy to the next session: the lock holds without it. */
	if (ftruncate(fd, 0) < 0 || pwrite(fd, digits, (size_t)length, 0) < 0)
		return;
}

/* Another user's lock file can only be looked at, which is enough to lock it. */
static int file_open(const char *name)
{
	int flags = O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK;
	int fd = open(name, flags | O_RDWR | O_CREAT, 0644);

	return fd < 0 && errno == EACCES ? open(name, flags | O_RDONLY) : fd;
}

enum store_access lock_take(struct lock *lock, const char *name)
{
	int fd;

	*lock = (struct lock){ .fd = -1 };
	for (int tries = 0; tries < TRIES_MOST && (fd = file_open(name)) >= 0; tries++) {
		bool is_ours = flock(fd, LOCK_EX | LOCK_NB) == 0;
		bool is_held = !is_ours && errno == EWOULDBLOCK;
		bool is_current = file_is_at(fd, name);

		if (is_ours && is_current) {
			sign(fd);
			lock->fd = fd;
			return STORE_WRITES;
		}
		if (is_held && is_current)
			lock->holder = holder_of(fd);
		close(fd);
		if (is_current || (!is_ours && !is_held))
			return is_held ? STORE_LOOKS : STORE_UNGUARDED;
		/* Its holder has just removed it: try again. */
	}
	return STORE_UNGUARDED;
}

bool lock_is_ours(const struct lock *lock, const char *name)
{
	return lock->fd >= 0 && file_is_at(lock->fd, name);
}

void lock_release(struct lock *lock, const char *name)
{
	if (lock->fd < 0)
		return;
	if (lock_is_ours(lock, name))
		unlink(name); /* while it is locked, so it is nobody else's */
	close(lock->fd);
	lock->fd = -1;
}

bool lock_is_held(const char *name, long *holder)
{
	int fd = open(name, O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
	bool is_held;

	if (fd < 0)
		return false;
	/* A shared lock is refused where somebody holds the other kind, and keeps others who look
	 * from nothing. */
	is_held = flock(fd, LOCK_SH | LOCK_NB) < 0 && errno == EWOULDBLOCK;
	*holder = is_held ? holder_of(fd) : 0;
	close(fd);
	return is_held;
}
