/* What a journal holds: a plot that a session started from and, step by step, what became of it.
 * Whatever was written whole can be read again, wherever the writing was cut off:
 *
 *	parterre-journal 1
 *	stamp 1764370000 123456789 1234 0123456789abcdef
 *	plot 1230 0123456789abcdef
 *	... the plot's 1230 bytes ...
 *	step 14 0123456789abcdef
 *	cells 3 4 bbb
 *
 * The stamp is of the plot's file as it was read or saved last: its time in seconds and
 * nanoseconds, its length and hash, or "none". The checksum of plot and steps is hash_bytes of all
 * the file up to there, without the checksums: it finds changed, lost, moved and strange bytes. */
#ifndef PLOT_HISTORY_JOURNAL_TEXT_H
#define PLOT_HISTORY_JOURNAL_TEXT_H

#include "plot/plot.h"

#include <time.h>

/* By what a plot's file is known again: also after it was copied with its time, or got a second
 * name. */
struct plot_stamp {
	bool exists;
	struct timespec written;
	size_t length;
	uint64_t hash; /* of its bytes */
};
bool plot_stamp_equal(const struct plot_stamp *a, const struct plot_stamp *b);

/* Appends the beginning of a journal. What is returned goes on with each step. */
uint64_t journal_text_begin(struct text *out, const struct plot_stamp *stamp,
	const struct plot *plot);
/* Appends a step: words of change.h. */
uint64_t journal_text_step(struct text *out, uint64_t before, const struct text *words);

enum journal_state {
	JOURNAL_WHOLE,    /* to its last step, or that was cut off */
	JOURNAL_DAMAGED,  /* steps come after one that cannot be read */
	JOURNAL_UNREADABLE
};
/* Reads a journal into an empty plot, which gets the state of the last step that can be read with
 * all before it; it stays empty where JOURNAL_UNREADABLE. Unless JOURNAL_WHOLE *why says what is
 * wrong: "it is empty". */
enum journal_state journal_text_read(const struct text *text, struct plot *plot,
	struct plot_stamp *stamp, const char **why);

#endif
