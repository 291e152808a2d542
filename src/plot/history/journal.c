#include "plot/history/journal.h"
#include "base/clock.h"
#include "base/fd_sink.h"
#include "base/folder.h"
#include "base/memory.h"
#include "base/temporary.h"
#include "plot/history/change.h"

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

/* ---- The disk -------------------------------------------------------------------------------- */

void journal_flush(struct journal *journal)
{
	if (!journal->is_unsynced)
		return;
	/* There is nothing more to be done where it fails: a power cut may cost the strokes. */
	(void)fdatasync(journal->fd);
	if (journal->is_new)
		folder_sync(journal->path);
	journal->is_unsynced = journal->is_new = false;
}

/* Has the disk begin with what was written, and waits for none of it. */
static void writing_begin(struct journal *journal)
{
	if (!journal->is_unsynced)
		journal->due_ms = clock_ms() + JOURNAL_SYNC_MS;
	/* Where it fails there is more to wait for when it is due. */
	(void)sync_file_range(journal->fd, 0, 0, SYNC_FILE_RANGE_WRITE);
	journal->is_unsynced = true;
}

int journal_sync(struct journal *journal)
{
	int64_t wait = journal->due_ms - clock_ms();

	if (!journal->is_unsynced)
		return -1;
	if (wait > 0)
		return (int)wait;
	journal_flush(journal);
	return -1;
}

/* ---- The end --------------------------------------------------------------------------------- */

/* Somebody may have removed the file, or put another in its place. */
static bool is_there(const struct journal *journal)
{
	return journal->path && file_is_at(journal->fd, journal->path);
}

void journal_close(struct journal *journal)
{
	journal_flush(journal);
	if (journal->fd >= 0)
		close(journal->fd);
	free(journal->path);
	*journal = JOURNAL_NONE;
}

void journal_drop(struct journal *journal)
{
	if (is_there(journal))
		unlink(journal->path);
	journal->is_unsynced = false;
	journal_close(journal);
}

bool journal_is_left(const char *path, long process)
{
	int fd = open(path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
	bool is_free = fd >= 0 && flock(fd, LOCK_EX | LOCK_NB) == 0;
	bool is_held = fd >= 0 && !is_free && errno == EWOULDBLOCK;

	if (fd >= 0)
		close(fd);
	return is_free || (!is_held && (process == 0 || process_is_gone(process)));
}

/* ---- Beginning ------------------------------------------------------------------------------- */

/* What replaces another must be on the disk before; errno says what failed. */
static int file_new(const struct journal_place *place, const struct text *text, bool is_over)
{
	struct temporary new;

	if (!temporary_begin(&new, place->path))
		return -1;
	/* Where files cannot be locked, the process in their name has to do. */
	(void)flock(new.fd, LOCK_EX | LOCK_NB);
	if (!fd_put(new.fd, text->bytes, text->length) || (is_over && fdatasync(new.fd) < 0)) {
		temporary_drop(&new);
		return -1;
	}
	return temporary_place(&new, place->path, is_over) ? new.fd : -1;
}

bool journal_begin(struct journal *journal, const struct journal_place *place,
	const struct text *text, uint64_t sum)
{
	bool is_own = journal->path && strcmp(journal->path, place->path) == 0;
	bool is_over = place->is_over || is_own;
	int fd = file_new(place, text, is_over);

	if (fd < 0)
		return false;
	journal->is_unsynced = false; /* what takes its place is there */
	if (is_own)
		journal_close(journal);
	else
		journal_drop(journal);
	*journal = (struct journal){ .path = memory_string(place->path), .fd = fd, .sum = sum,
		.start = text->length, .is_new = true };
	writing_begin(journal);
	return true;
}

/* ---- Growing --------------------------------------------------------------------------------- */

bool journal_is_full(const struct journal *journal)
{
	size_t most = journal->start > JOURNAL_STEPS_LEAST ? journal->start : JOURNAL_STEPS_LEAST;

	return journal->steps > most;
}

/* What was written in part is taken off again. */
static bool record_put(struct journal *journal, const struct text *record)
{
	off_t end = (off_t)(journal->start + journal->steps);
	ssize_t put = pwrite(journal->fd, record->bytes, record->length, end);
	bool is_cut;

	if (put == (ssize_t)record->length)
		return true;
	is_cut = ftruncate(journal->fd, end) == 0;
	(void)is_cut; /* else it is taken for a step that was cut off */
	return false;
}

bool journal_add(struct journal *journal, struct last_step last, const struct plot *plot)
{
	struct text words = TEXT_EMPTY, step = TEXT_EMPTY;
	uint64_t sum;

	journal->is_stopped |= !is_there(journal);
	if (journal->is_stopped)
		return false;
	change_write(last.step, plot, &words);
	sum = journal_text_step(&step, journal->sum, &words);
	journal->is_stopped = !record_put(journal, &step);
	journal->sum = sum;
	journal->steps += step.length;
	writing_begin(journal);
	text_fini(&step);
	text_fini(&words);
	return !journal->is_stopped;
}
