/* The file in which a session's strokes are from the moment they are done: a journal_text.h that
 * grows step by step. It is for its owner alone, and locked as long as it is open. Where its steps
 * have become longer than both the plot at its beginning and JOURNAL_STEPS_LEAST it is begun anew:
 * written beside and put over the old one, so that one of them is always whole. */
#ifndef PLOT_HISTORY_JOURNAL_H
#define PLOT_HISTORY_JOURNAL_H

#include "base/file.h"
#include "plot/history/history.h"
#include "plot/history/journal_text.h"

enum { JOURNAL_STEPS_LEAST = 64 * 1024, JOURNAL_SYNC_MS = 1000 };

struct journal {
	char *path;      /* of the file that is there; NULL: none is */
	int fd;
	uint64_t sum;
	size_t start, steps; /* bytes of its beginning and of the steps so far */
	bool is_stopped; /* it lacks a step, so no more may follow */
	bool is_unsynced;
	bool is_new;     /* its name is not on the disk yet */
	int64_t due_ms; /* when it is to be on the disk, where it is not */
};
#define JOURNAL_NONE ((struct journal){ .fd = -1 })

/* Where to begin a journal. */
struct journal_place {
	const char *path;
	bool is_over; /* over what is there, whosever it is; else only over the journal's own */
};
/* Begins it anew with a text of journal_text_begin, and steps perhaps, that has the sum. A file it
 * had elsewhere is removed. On failure it is as it was, and errno says why. */
bool journal_begin(struct journal *journal, const struct journal_place *place,
	const struct text *text, uint64_t sum);

/* True where it is time to begin anew. */
bool journal_is_full(const struct journal *journal);
/* Writes down a step, in one piece. False where it cannot grow, from then on: what is there holds
 * the steps before. */
bool journal_add(struct journal *journal, struct last_step last, const struct plot *plot);
/* Waits until what was written is on the disk, where JOURNAL_SYNC_MS have passed since the first of
 * it: by then the disk has it, mostly. In how many ms it is to be asked again, -1: when something
 * was written. */
int journal_sync(struct journal *journal);
/* The same at once. */
void journal_flush(struct journal *journal);
/* Ends writing; the file stays, on the disk. */
void journal_close(struct journal *journal);
/* Ends it and removes the file. */
void journal_drop(struct journal *journal);

/* True where nobody has it open to write. Where its lock cannot say: unless the process in its name
 * lives, 0 being none. */
bool journal_is_left(const char *path, long process);

#endif
