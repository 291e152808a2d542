#include "plot/history/history.h"
#include "base/memory.h"

#include <stdlib.h>

/* Steps in a row: those that can be taken back, up to `done`, and then those taken back. */
struct history {
	struct plot seen; /* the plot at the last record, undo or redo */
	struct step *oldest, *done, *newest; /* done is NULL where all were taken back */
	size_t undo_count, redo_count, bytes;
	struct last_step last;
};

struct history *history_new(const struct plot *plot)
{
	struct history *history = memory_new(1, sizeof *history);

	history->seen.details = details_copy(&plot->details);
	history->seen.ground = ground_copy(&plot->ground);
	return history;
}

/* Takes a step out of the row. */
static void step_drop(struct history *history, struct step *step)
{
	if (step->older)
		step->older->newer = step->newer;
	else
		history->oldest = step->newer;
	if (step->newer)
		step->newer->older = step->older;
	else
		history->newest = step->older;
	history->bytes -= step->bytes;
	step_free(step);
}

void history_free(struct history *history)
{
	if (!history)
		return;
	while (history->oldest)
		step_drop(history, history->oldest);
	plot_fini(&history->seen);
	free(history);
}

static void redo_drop(struct history *history)
{
	while (history->newest != history->done)
		step_drop(history, history->newest);
	history->redo_count = 0;
}

/* Drops the oldest steps while there is too much; the newest always stays. */
static void oldest_drop(struct history *history)
{
	while (history->bytes > HISTORY_BYTES_MOST && history->oldest != history->newest) {
		step_drop(history, history->oldest);
		history->undo_count--;
	}
}

static void step_append(struct history *history, struct step *step)
{
	step->older = history->newest;
	if (step->older)
		step->older->newer = step;
	else
		history->oldest = step;
	history->newest = history->done = step;
	history->undo_count++;
	history->bytes += step->bytes;
}

static void step_name(struct step *step, const char *name)
{
	size_t taken = memory_taken();

	step->name = memory_string(name);
	step->bytes += memory_taken() - taken;
}

bool history_record(struct history *history, const struct plot *plot, const char *name)
{
	struct step *step = step_between(&history->seen, plot);

	if (!step)
		return false;
	step_name(step, name);
	step_put(step, &history->seen, STEP_AFTER);
	redo_drop(history);
	step_append(history, step);
	oldest_drop(history);
	history->last = (struct last_step){ step, STEP_AFTER };
	return true;
}

/* Puts a step into the plot and into what was seen of it. */
static void history_put(struct history *history, struct plot *plot, const struct step *step,
	int side)
{
	step_put(step, &history->seen, side);
	step_put(step, plot, side);
	history->last = (struct last_step){ step, side };
}

bool history_undo(struct history *history, struct plot *plot, struct place *at)
{
	struct step *step = history->done;

	if (!step)
		return false;
	history_put(history, plot, step, STEP_BEFORE);
	*at = step_place(step);
	history->done = step->older;
	history->undo_count--;
	history->redo_count++;
	return true;
}

bool history_redo(struct history *history, struct plot *plot, struct place *at)
{
	struct step *step = history->done ? history->done->newer : history->oldest;

	if (!step)
		return false;
	history_put(history, plot, step, STEP_AFTER);
	*at = step_place(step);
	history->done = step;
	history->undo_count++;
	history->redo_count--;
	return true;
}

struct last_step history_last(const struct history *history)
{
	return history->last;
}

size_t history_undo_count(const struct history *history)
{
	return history->undo_count;
}

size_t history_redo_count(const struct history *history)
{
	return history->redo_count;
}
