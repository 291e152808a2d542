/* Undo and redo: steps in a row, found by comparing the plot with what it was. An act changes
 * the plot freely; history_record then finds and keeps what changed. */
#ifndef PLOT_HISTORY_HISTORY_H
#define PLOT_HISTORY_HISTORY_H

#include "plot/history/step.h"

enum { HISTORY_BYTES_MOST = 64 * 1024 * 1024 };

struct history; /* owns copies only; the plot stays the caller's */

/* Starts at the plot as it is. */
struct history *history_new(const struct plot *plot);
void history_free(struct history *history);

/* Compares the plot with its state at the last call, and keeps the difference as one step, with a
 * copy of the name of what was done; steps that were taken back are dropped. False, no step, where
 * nothing changed. The oldest steps are dropped when all together exceed HISTORY_BYTES_MOST. */
bool history_record(struct history *history, const struct plot *plot, const char *name);
/* One step back or on; false where there is none, the plot as it was. *at is the first cell the
 * step changed, or -1,-1 where it changed only the details or the ground's size. The plot must
 * be as it was at the last record, undo or redo; pointers into it do not hold afterwards. */
bool history_undo(struct history *history, struct plot *plot, struct place *at);
bool history_redo(struct history *history, struct plot *plot, struct place *at);

/* The step last recorded, taken back or put back, and the side of it that the plot is at now; it
 * holds until the next. */
struct last_step {
	const struct step *step;
	int side;
};
struct last_step history_last(const struct history *history);

size_t history_undo_count(const struct history *history);
size_t history_redo_count(const struct history *history);

#endif
