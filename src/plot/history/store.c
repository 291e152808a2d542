#include "plot/history/store.h"
#include "base/folder.h"
#include "base/hash.h"
#include "base/memory.h"
#include "base/path.h"
#include "base/temporary.h"
#include "plot/history/change.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* ---- Opening --------------------------------------------------------------------------------- */

static char *lock_name(const struct store *store)
{
	return path_beside(store->path, ".", ".lock");
}

/* Whether a file could be made, or replaced, at the path. */
static bool is_usable(const char *path)
{
	char *folder = path_parent(path);
	struct stat status;
	bool is_free = lstat(path, &status) == 0 ? S_ISREG(status.st_mode) : errno == ENOENT;

	is_free = is_free && faccessat(AT_FDCWD, folder, W_OK | X_OK, AT_EACCESS) == 0;
	free(folder);
	return is_free;
}

/* That a place can be used is found without leaving anything there but a folder. */
static void places_find(struct store *store)
{
	char suffix[48] = ".journal", **beside = &store->places[0], **state = &store->places[1];

	if (store->access == STORE_UNGUARDED)
		snprintf(suffix, sizeof suffix, ".journal.%ld", (long)getpid());
	*beside = path_beside(store->path, ".", suffix);
	*state = path_in_state(store->path, suffix);
	if (is_usable(*beside))
		return;
	free(*beside);
	*beside = NULL;
	if (*state && folder_make(*state) && is_usable(*state))
		return;
	free(*state);
	*state = NULL;
}

static void sweep(const struct store *store)
{
	char *beside = path_beside(store->path, "", ""), *state = path_in_state(store->path, "");

	temporary_sweep(beside);
	if (state)
		temporary_sweep(state);
	free(beside);
	free(state);
}

void store_open(struct store *store, const char *path)
{
	char *name;

	/* "-" alone would be standard input, the terminal, where the file is read again. */
	path = strcmp(path, "-") == 0 ? "./-" : path;
	*store = (struct store){ .path = memory_string(path), .journal = JOURNAL_NONE,
		.stamp = file_stamp(path) };
	name = lock_name(store);
	store->access = lock_take(&store->lock, name);
	free(name);
	if (store->access == STORE_LOOKS)
		return;
	sweep(store);
	places_find(store);
}

void store_close(struct store *store)
{
	char *name = lock_name(store);

	journal_close(&store->journal);
	lock_release(&store->lock, name);
	free(name);
	for (int i = 0; i < STORE_PLACES; i++)
		free(store->places[i]);
	free(store->taken);
	free(store->path);
	*store = (struct store){ .lock = { .fd = -1 }, .journal = JOURNAL_NONE };
}

bool store_is_held(struct store *store)
{
	char *name = lock_name(store);
	bool is_held = lock_is_held(name, &store->lock.holder);

	free(name);
	return is_held;
}

/* ---- The plot -------------------------------------------------------------------------------- */

static bool read_plot(const char *path, struct plot *plot, uint64_t *hash, struct text *message)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct diag d;
	bool done = false;

	if (!file_read(path, FORMAT_BYTES_MOST, &bytes, &error)) {
		text_add(message, error.sentence);
	} else if (format_read(bytes.bytes, bytes.length, plot, &d)) {
		done = true;
	} else {
		text_print(message, "%s:%d:%d: found %s, expected %s", path, d.line, d.column,
			d.found, d.expected);
	}
	*hash = hash_bytes(HASH_EMPTY, bytes.bytes, bytes.length);
	text_fini(&bytes);
	return done;
}

bool store_read(const char *path, struct plot *plot, struct text *message)
{
	uint64_t hash;

	return read_plot(path, plot, &hash, message);
}

bool store_is_of(const struct store *store, const char *path)
{
	char *lock = path_beside(path, ".", ".lock");
	bool is_so = file_is_same(path, store->path) || lock_is_ours(&store->lock, lock);

	free(lock);
	return is_so;
}

bool store_load(struct store *store, struct plot *plot, struct text *message)
{
	store->stamp = file_stamp(store->path);
	return read_plot(store->path, plot, &store->hash, message);
}

static bool holds(const char *path, uint64_t hash)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	bool is_same = file_read(path, FORMAT_BYTES_MOST, &bytes, &error) &&
		hash_bytes(HASH_EMPTY, bytes.bytes, bytes.length) == hash;

	text_fini(&bytes);
	return is_same;
}

/* A second name, or a copy with the same bytes, changes the stamp and is no change. */
bool store_is_changed(const struct store *store)
{
	struct file_stamp now = file_stamp(store->path);

	if (file_stamp_equal(&now, &store->stamp))
		return false;
	return !now.exists || !store->stamp.exists || now.size != store->stamp.size ||
		!holds(store->path, store->hash);
}

bool store_save(struct store *store, const struct plot *plot, struct file_error *error)
{
	struct text bytes = TEXT_EMPTY;
	bool done;

	if (store->access == STORE_LOOKS) {
		snprintf(error->sentence, sizeof error->sentence,
			"cannot write the plot: another session (process %ld) has it",
			store->lock.holder);
		return false;
	}
	format_write(plot, &bytes);
	done = file_write(store->path, bytes.bytes, bytes.length, error);
	if (done) {
		store->stamp = file_stamp(store->path);
		store->hash = hash_bytes(HASH_EMPTY, bytes.bytes, bytes.length);
		store_forget(store);
	}
	text_fini(&bytes);
	return done;
}

/* ---- The journal ----------------------------------------------------------------------------- */

bool store_has_place(const struct store *store)
{
	return store->places[0] || store->places[1];
}

struct plot_stamp store_stamp(const struct store *store)
{
	return (struct plot_stamp){ .exists = store->stamp.exists,
		.written = store->stamp.written, .length = (size_t)store->stamp.size,
		.hash = store->hash };
}

/* The work that was taken up is in the journal now. */
static void taken_drop(struct store *store)
{
	if (store->taken && strcmp(store->taken, store->journal.path) != 0) {
		journal_flush(&store->journal);
		unlink(store->taken);
	}
	free(store->taken);
	store->taken = NULL;
}

/* At the first place that takes it; error has why the last did not. */
static bool begin(struct store *store, const struct text *text, uint64_t sum,
	struct file_error *error)
{
	file_fail(error, "keep unsaved work of", store->path, "there is no place for it");
	for (int i = 0; i < STORE_PLACES; i++) {
		const char *path = store->places[i];
		const struct journal_place place = { path,
			path && store->taken && strcmp(path, store->taken) == 0 };

		if (!path)
			continue;
		if ((i == 0 || folder_make(path)) &&
		    journal_begin(&store->journal, &place, text, sum)) {
			taken_drop(store);
			return true;
		}
		file_fail(error, "write", path, strerror(errno));
	}
	return false;
}

/* Begins with a plot, and with the words of the step from it, if there is one. */
static bool begin_with(struct store *store, const struct plot *plot, const struct text *words,
	struct file_error *error)
{
	const struct plot_stamp stamp = store_stamp(store);
	struct text text = TEXT_EMPTY;
	uint64_t sum = journal_text_begin(&text, &stamp, plot);
	bool done;

	if (words)
		sum = journal_text_step(&text, sum, words);
	done = begin(store, &text, sum, error);
	text_fini(&text);
	return done;
}

/* The first step begins a journal with the plot that it changed. */
static bool begin_at_step(struct store *store, struct last_step last, const struct plot *plot,
	struct file_error *error)
{
	struct plot before = { details_copy(&plot->details), ground_copy(&plot->ground) };
	struct text words = TEXT_EMPTY;
	bool done;

	step_put(last.step, &before, last.side == STEP_AFTER ? STEP_BEFORE : STEP_AFTER);
	change_write(last.step, plot, &words);
	done = begin_with(store, &before, &words, error);
	text_fini(&words);
	plot_fini(&before);
	return done;
}

bool store_note(struct store *store, struct last_step last, const struct plot *plot,
	struct file_error *error)
{
	struct journal *journal = &store->journal;

	if (store->access == STORE_LOOKS)
		return true;
	if (!journal->path)
		return begin_at_step(store, last, plot, error);
	if (!journal_is_full(journal) && journal_add(journal, last, plot))
		return true;
	/* Where it cannot be begun anew, it grows on. */
	return begin_with(store, plot, NULL, error) || journal_add(journal, last, plot);
}

bool store_hold(struct store *store, const struct plot *plot, struct file_error *error)
{
	if (store->access == STORE_LOOKS)
		return true;
	if (!begin_with(store, plot, NULL, error))
		return false;
	journal_flush(&store->journal);
	return true;
}

int store_sync(struct store *store)
{
	return journal_sync(&store->journal);
}

void store_forget(struct store *store)
{
	journal_drop(&store->journal);
	if (store->taken)
		unlink(store->taken);
	free(store->taken);
	store->taken = NULL;
}
