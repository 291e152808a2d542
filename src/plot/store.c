#include "plot/store.h"
#include "base/memory.h"

#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

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
		text_print(message, "%s:%d:%d: found %s, expected %s", path, d.line, d.column, d.found,
			d.expected);
	} else {
		text_print(message, "%s: found %s, expected %s", path, d.found, d.expected);
	}
	text_fini(&bytes);
	return done;
}

static char *lock_name(const struct store *store)
{
	return file_beside(store->path, ".", ".lock");
}

static char *rescue_name(const struct store *store)
{
	return file_beside(store->path, ".", ".rescue");
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

static enum store_access lock_take(struct store *store, const char *name)
{
	for (;;) {
		int fd = open(name, O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);

		if (fd < 0)
			return STORE_UNGUARDED;
		if (flock(fd, LOCK_EX | LOCK_NB) == 0 && is_named(fd, name)) {
			lock_sign(fd);
			store->lock = fd;
			return STORE_WRITES;
		}
		if (is_named(fd, name)) {
			store->holder = lock_holder(fd);
			close(fd);
			return STORE_LOOKS;
		}
		close(fd); /* its holder just removed it: try again */
	}
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

		unlink(name); /* while the lock is held, so nobody else's goes */
		close(store->lock);
		free(name);
	}
	free(store->path);
	*store = (struct store){ .lock = -1 };
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

static bool plot_write(const char *path, const struct plot *plot, struct file_error *error)
{
	struct text bytes = TEXT_EMPTY;
	bool done;

	format_write(plot, &bytes);
	done = file_write(path, bytes.bytes, bytes.length, error);
	text_fini(&bytes);
	return done;
}

bool store_save(struct store *store, const struct plot *plot, struct file_error *error)
{
	if (!plot_write(store->path, plot, error))
		return false;
	store->stamp = file_stamp(store->path);
	store_rescue_drop(store);
	return true;
}

bool store_rescue(const struct store *store, const struct plot *plot, struct file_error *error)
{
	char *name;
	bool done;

	if (store->access == STORE_LOOKS)
		return true;
	name = rescue_name(store);
	done = plot_write(name, plot, error);
	free(name);
	return done;
}

bool store_rescued(const struct store *store, struct plot *plot, struct timespec *when)
{
	char *name = rescue_name(store);
	struct text message = TEXT_EMPTY;
	struct file_stamp stamp = file_stamp(name);
	bool done = stamp.exists && store_read(name, plot, &message);

	*when = stamp.changed;
	text_fini(&message);
	free(name);
	return done;
}

void store_rescue_drop(const struct store *store)
{
	char *name = rescue_name(store);

	unlink(name);
	free(name);
}

bool store_rescue_keep(const struct store *store, char **kept)
{
	char *name = rescue_name(store);
	bool done = false;

	for (int i = 0; i < 100 && !done; i++) {
		char suffix[32];

		snprintf(suffix, sizeof suffix, i ? ".rescued-%d" : ".rescued", i);
		*kept = file_beside(store->path, "", suffix);
		done = link(name, *kept) == 0 && unlink(name) == 0;
		if (!done)
			free(*kept);
	}
	if (!done)
		*kept = NULL;
	free(name);
	return done;
}
