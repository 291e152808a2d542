#include "plot/history.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

enum { HEAP_EXTRA = 16 };

/* Letters of one row that changed: `length` of them from x on. */
struct span {
	int x, y, length;
};

/* Both sides of a change of the ground's size, or NULLs. */
struct grounds {
	struct ground *before, *after;
};

struct step {
	struct span *spans;
	size_t span_count;
	char *letters; /* of all spans: before and after, span by span */
	struct details *before, *after; /* NULL where the details did not change */
	struct grounds grounds;
	size_t bytes;
};

struct history {
	struct plot seen; /* the plot at the last record, undo or redo */
	struct step *steps;
	size_t first, done, count, capacity; /* undo: first..done-1, redo: done..count-1 */
	size_t bytes;
};

static struct ground ground_copy(const struct ground *ground)
{
	struct ground copy;

	ground_init(&copy, ground->columns, ground->rows);
	memcpy(copy.cells, ground->cells, (size_t)ground->columns * (size_t)ground->rows);
	return copy;
}

static struct ground *ground_kept(const struct ground *ground)
{
	struct ground *kept = memory_new(1, sizeof *kept);

	*kept = ground_copy(ground);
	return kept;
}

static struct details *details_kept(const struct details *details)
{
	struct details *kept = memory_new(1, sizeof *kept);

	*kept = details_copy(details);
	return kept;
}

static void details_free(struct details *details)
{
	if (details)
		details_fini(details);
	free(details);
}

static void ground_free(struct ground *ground)
{
	if (ground)
		ground_fini(ground);
	free(ground);
}

static void step_fini(struct step *step)
{
	free(step->spans);
	free(step->letters);
	details_free(step->before);
	details_free(step->after);
	ground_free(step->grounds.before);
	ground_free(step->grounds.after);
}

struct history *history_new(const struct plot *plot)
{
	struct history *history = memory_new(1, sizeof *history);

	history->seen.details = details_copy(&plot->details);
	history->seen.ground = ground_copy(&plot->ground);
	return history;
}

void history_free(struct history *history)
{
	if (!history)
		return;
	for (size_t i = history->first; i < history->count; i++)
		step_fini(&history->steps[i]);
	free(history->steps);
	plot_fini(&history->seen);
	free(history);
}

/* Appends the spans in which two rows differ. */
static void row_compare(struct step *step, size_t *capacity, const char *was, const char *is,
	struct span row)
{
	int end = row.length;

	for (int x = 0; x < end; x++) {
		struct span span = { x, row.y, 0 };

		if (was[x] == is[x])
			continue;
		while (x < end && was[x] != is[x])
			x++;
		span.length = x - span.x;
		step->spans = memory_grow(step->spans, step->span_count, capacity,
			sizeof *step->spans);
		step->spans[step->span_count++] = span;
	}
}

static void spans_find(struct step *step, const struct ground *was, const struct ground *is)
{
	size_t capacity = 0, columns = (size_t)is->columns;

	for (int y = 0; y < is->rows; y++) {
		const char *old = was->cells + (size_t)y * columns;
		const char *new = is->cells + (size_t)y * columns;

		if (memcmp(old, new, columns) != 0)
			row_compare(step, &capacity, old, new, (struct span){ 0, y, is->columns });
	}
	if (step->span_count)
		step->spans = memory_resize(step->spans, step->span_count, sizeof *step->spans);
}

static size_t spans_length(const struct step *step)
{
	size_t length = 0;

	for (size_t i = 0; i < step->span_count; i++)
		length += (size_t)step->spans[i].length;
	return length;
}

static size_t span_offset(const struct ground *ground, const struct span *span)
{
	return (size_t)span->y * (size_t)ground->columns + (size_t)span->x;
}

/* Keeps the letters of all spans, before and after, and brings `seen` up to date. */
static void letters_keep(struct step *step, struct ground *seen, const struct ground *is)
{
	char *at = step->letters = memory_new(spans_length(step) * 2, 1);

	for (size_t i = 0; i < step->span_count; i++) {
		size_t offset = span_offset(is, &step->spans[i]);
		size_t length = (size_t)step->spans[i].length;

		memcpy(at, seen->cells + offset, length);
		memcpy(at + length, is->cells + offset, length);
		memcpy(seen->cells + offset, is->cells + offset, length);
		at += 2 * length;
	}
}

/* What a block of memory takes, its share of the heap's own included. */
static size_t heap_bytes(size_t size)
{
	return size ? size + HEAP_EXTRA : 0;
}

static size_t text_bytes(const char *text)
{
	return heap_bytes(strlen(text) + 1);
}

/* What a block of the plot takes beside itself. */
static size_t block_bytes(const struct block *block)
{
	size_t bytes = heap_bytes(block->notes.capacity * sizeof *block->notes.texts);

	for (size_t i = 0; i < block->notes.count; i++)
		bytes += text_bytes(block->notes.texts[i]);
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		bytes += heap_bytes(value_bytes(attribute_row(a)->rule.kind,
			block_value(block, a)));
	return bytes;
}

static size_t details_bytes(const struct details *details)
{
	size_t bytes = heap_bytes(sizeof *details) + block_bytes(&details->head) +
		block_bytes(&details->allow) +
		heap_bytes(details->legend_capacity * sizeof *details->legend);

	for (size_t i = 0; i < details->legend_count; i++)
		bytes += text_bytes(details->legend[i].name) +
			block_bytes(&details->legend[i].block);
	return bytes;
}

static size_t ground_bytes(const struct ground *ground)
{
	return heap_bytes(sizeof *ground) +
		heap_bytes((size_t)ground->columns * (size_t)ground->rows);
}

static void ground_compare(struct step *step, struct ground *seen, const struct ground *is)
{
	if (seen->columns == is->columns && seen->rows == is->rows) {
		spans_find(step, seen, is);
		if (step->span_count)
			letters_keep(step, seen, is);
		step->bytes += heap_bytes(step->span_count * sizeof *step->spans) +
			heap_bytes(2 * spans_length(step));
		return;
	}
	step->grounds = (struct grounds){ ground_kept(seen), ground_kept(is) };
	step->bytes += ground_bytes(seen) + ground_bytes(is);
	ground_fini(seen);
	*seen = ground_copy(is);
}

static void details_compare(struct step *step, struct details *seen, const struct details *is)
{
	if (details_equal(seen, is))
		return;
	step->before = details_kept(seen);
	step->after = details_kept(is);
	step->bytes += details_bytes(step->before) + details_bytes(step->after);
	details_fini(seen);
	*seen = details_copy(is);
}

static void redo_drop(struct history *history)
{
	while (history->count > history->done) {
		struct step *step = &history->steps[--history->count];

		history->bytes -= step->bytes;
		step_fini(step);
	}
}

/* Drops the oldest steps while there is too much; the newest always stays. */
static void oldest_drop(struct history *history)
{
	while (history->bytes > HISTORY_BYTES_MOST && history->first + 1 < history->count) {
		struct step *step = &history->steps[history->first++];

		history->bytes -= step->bytes;
		step_fini(step);
	}
	if (history->first > history->count / 2) {
		size_t left = history->count - history->first;

		memmove(history->steps, history->steps + history->first,
			left * sizeof *history->steps);
		history->done -= history->first;
		history->count = left;
		history->first = 0;
	}
}

bool history_record(struct history *history, const struct plot *plot)
{
	struct step step = { .bytes = 2 * sizeof step }; /* the list may be half empty */

	ground_compare(&step, &history->seen.ground, &plot->ground);
	details_compare(&step, &history->seen.details, &plot->details);
	if (!step.span_count && !step.before && !step.grounds.before) {
		step_fini(&step);
		return false;
	}
	redo_drop(history);
	history->steps = memory_grow(history->steps, history->count, &history->capacity,
		sizeof *history->steps);
	history->steps[history->count++] = step;
	history->done = history->count;
	history->bytes += step.bytes;
	oldest_drop(history);
	return true;
}

static void spans_put(const struct step *step, struct ground *ground, bool forward)
{
	const char *at = step->letters;

	for (size_t i = 0; i < step->span_count; i++) {
		size_t length = (size_t)step->spans[i].length;

		memcpy(ground->cells + span_offset(ground, &step->spans[i]),
			forward ? at + length : at, length);
		at += 2 * length;
	}
}

static void step_put(const struct step *step, struct plot *plot, bool forward)
{
	const struct ground *ground = forward ? step->grounds.after : step->grounds.before;
	const struct details *details = forward ? step->after : step->before;

	if (ground) {
		ground_fini(&plot->ground);
		plot->ground = ground_copy(ground);
	}
	spans_put(step, &plot->ground, forward);
	if (details) {
		details_fini(&plot->details);
		plot->details = details_copy(details);
	}
}

/* Puts a step into the plot and into what was seen of it. */
static void history_put(struct history *history, struct plot *plot, const struct step *step,
	bool forward)
{
	step_put(step, &history->seen, forward);
	step_put(step, plot, forward);
}

static struct place step_place(const struct step *step)
{
	if (step->span_count)
		return (struct place){ step->spans[0].x, step->spans[0].y };
	return (struct place){ -1, -1 };
}

bool history_undo(struct history *history, struct plot *plot, struct place *at)
{
	if (history->done == history->first)
		return false;
	history->done--;
	history_put(history, plot, &history->steps[history->done], false);
	*at = step_place(&history->steps[history->done]);
	return true;
}

bool history_redo(struct history *history, struct plot *plot, struct place *at)
{
	if (history->done == history->count)
		return false;
	history_put(history, plot, &history->steps[history->done], true);
	*at = step_place(&history->steps[history->done]);
	history->done++;
	return true;
}

size_t history_undo_count(const struct history *history)
{
	return history->done - history->first;
}

size_t history_redo_count(const struct history *history)
{
	return history->count - history->done;
}
