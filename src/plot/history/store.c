#include "plot/history/store.h"
#include "base/memory.h"
#include "base/path.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

enum { RESCUED_MOST = 100 };

bool store_read(const char *path, struct plot *plot, struct text *message)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct diag d;
	bool done = false;

	if (!file_read(path, FORMAT_BYTES_MOST, &bytes, &error)) {
		text_add(message, error.sentence);
	} else if (format_read(bytes.bytes, bytes.length, plot, &d)) {
		done = true;
	} else if (d.line) {
		text_print(message, "%s:%d:%d: found %s, expected %s", path, d.line, d.column,
			d.found, d.expected);
	} else {
		text_print(message, "%s: found %s, expected %s", path, d.found, d.expected);
	}
	text_fini(&bytes);
	return done;
}

static char *lock_name(const struct store *store)
{
	return path_beside(store->path, ".", ".lock");
}

static char *rescue_name(const struct store *store)
{
	return path_beside(store->path, ".", ".rescue");
}

static long lock_holder(int fd)
{
	char digits[32] = "";
	ssize_t length = pread(fd, digits, sizeof digits - 1, 0);

	return length > 0 ? strtol(digits, NULL, 10) : 0;
}

static void lock_sign(int fd)
{
	char digits[32];
	int length = snprintf(digits, sizeof digits, "%ld\n", (long)getpid());

	/* Only a courtesy to the next session: the lock holds without it. */
	if (ftruncate(fd, 0) < 0 || pwrite(fd, digits, (size_t)length, 0) < 0)
		return;
}

/* True where the open file is still the one that has the name. */
static bool is_named(int fd, const char *name)
{
	struct stat open_one, named;

	return fstat(fd, &open_one) == 0 && stat(name, &named) == 0 &&
		open_one.st_dev == named.st_dev && open_one.st_ino == named.st_ino;
}

/* Another user's lock file can only be looked at, which is enough to lock it. */
static int lock_file(const char *name)
{
	int flags = O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK;
	int fd = open(name, flags | O_RDWR | O_CREAT, 0644);

	return fd < 0 && errno == EACCES ? open(name, flags | O_RDONLY) : fd;
}

static enum store_access lock_take(struct store *store, const char *name)
{
	int fd;

	while ((fd = lock_file(name)) >= 0) {
		bool is_ours = flock(fd, LOCK_EX | LOCK_NB) == 0;
		bool is_held = !is_ours && errno == EWOULDBLOCK;
		bool is_current = is_named(fd, name);

		if (is_ours && is_current) {
			lock_sign(fd);
			store->lock = fd;
			return STORE_WRITES;
		}
		if (is_held && is_current)
			store->holder = lock_holder(fd);
		close(fd);
		if (is_current || (!is_ours && !is_held))
			return is_held ? STORE_LOOKS : STORE_UNGUARDED;
		/* Its holder has just removed it: try again. */
	}
	return STORE_UNGUARDED;
}

void store_open(struct store *store, const char *path)
{
	char *name;

	*store = (struct store){ .path = memory_string(path), .lock = -1,
		.stamp = file_stamp(path) };
	name = lock_name(store);
	store->access = lock_take(store, name);
	free(name);
}

void store_close(struct store *store)
{
	if (store->lock >= 0) {
		char *name = lock_name(store);

		if (is_named(store->lock, name))
			unlink(name); /* while it is locked, so it is nobody else's */
		close(store->lock);
		free(name);
	}
	free(store->path);
	*store = (struct store){ .lock = -1 };
}

bool store_is_of(const struct store *store, const char *path)
{
	char *lock = path_beside(path, ".", ".lock");
	bool is_so = file_is_same(path, store->path) ||
		(store->lock >= 0 && is_named(store->lock, lock));

	free(lock);
	return is_so;
}

bool store_load(struct store *store, struct plot *plot, struct text *message)
{
	store->stamp = file_stamp(store->path);
	return store_read(store->path, plot, message);
}

bool store_is_changed(const struct store *store)
{
	struct file_stamp now = file_stamp(store->path);

	return !file_stamp_equal(&now, &store->stamp);
}

bool store_save(struct store *store, const struct plot *plot, struct file_error *error)
{
	struct text bytes = TEXT_EMPTY;
	bool done;

	if (store->access == STORE_LOOKS) {
		snprintf(error->sentence, sizeof error->sentence,
			"cannot write the plot: another session (process %ld) has it",
			store->holder);
		return false;
	}
	format_write(plot, &bytes);
	done = file_write(store->path, bytes.bytes, bytes.length, error);
	text_fini(&bytes);
	if (done) {
		store->stamp = file_stamp(store->path);
		store_rescue_drop(store);
	}
	return done;
}

bool store_rescue(const struct store *store, const struct plot *plot, struct file_error *error)
{
	struct text bytes = TEXT_EMPTY;
	char *name;
	bool done;

	if (store->access == STORE_LOOKS)
		return true;
	name = rescue_name(store);
	format_write(plot, &bytes);
	done = file_write_like(name, store->path, &bytes, error);
	text_fini(&bytes);
	free(name);
	return done;
}

bool store_rescued(const struct store *store, struct plot *plot, struct timespec *when)
{
	char *name = rescue_name(store);
	struct text message = TEXT_EMPTY;
	struct file_stamp stamp = file_stamp(name);
	bool done = store->access != STORE_LOOKS && stamp.exists &&
		store_read(name, plot, &message);

	*when = stamp.changed;
	text_fini(&message);
	free(name);
	return done;
}

void store_rescue_drop(const struct store *store)
{
	char *name = rescue_name(store);

	if (store->access != STORE_LOOKS)
		unlink(name);
	free(name);
}

/* Renames over no other file; by a second link where the file system knows no such renaming. */
static bool rename_to_new(const char *from, const char *to)
{
	if (renameat2(AT_FDCWD, from, AT_FDCWD, to, RENAME_NOREPLACE) == 0)
		return true;
	return (errno == EINVAL || errno == ENOSYS) && link(from, to) == 0 && unlink(from) == 0;
}

bool store_rescue_keep(const struct store *store, char **kept)
{
	char *name = rescue_name(store);
	bool is_taken = store->access != STORE_LOOKS;

	*kept = NULL;
	for (int i = 1; is_taken && i <= RESCUED_MOST; i++) {
		char suffix[32] = ".rescued";

		if (i > 1)
			snprintf(suffix, sizeof suffix, ".rescued-%d", i);
		*kept = path_beside(store->path, "", suffix);
		if (rename_to_new(name, *kept))
			break;
		is_taken = errno == EEXIST;
		free(*kept);
		*kept = NULL;
	}
	free(name);
	return *kept != NULL;
}
