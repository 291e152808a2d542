#include "editor/sheets/cell_change.h"
#include "base/show.h"
#include "plot/edit/legend.h"
#include "plot/edit/rescale.h"

#include <string.h>

enum { KEEP_CELLS, KEEP_MEASURE, ANSWERS, AREAS_SAID_MOST = 4 };

static void size_add(struct text *out, const struct ground *ground, nm cell, enum units units)
{
	show_length(out, ground->columns * cell, units);
	text_add(out, " x ");
	show_length(out, ground->rows * cell, units);
}

/* ---- The question --------------------------------------------------------------------------- */

static void measure_note(struct text *out, const struct rescale *rescale, const struct plot *plot)
{
	text_print(out, "%d x %d cells", rescale->across.new_count, rescale->down.new_count);
	if (!rescale_fits(rescale))
		text_add(out, ": too many");
	else if (rescale_rounded(rescale, &plot->ground) || !rescale_keeps_fences(rescale, plot))
		text_add(out, ", rounded");
}

static int ask(struct editor *editor, const struct plot *plot, const struct rescale *rescale)
{
	static const char *const answers[ANSWERS] = { "Its cells", "Its measure" };
	const char *notes[ANSWERS];
	struct question question = { .answers = answers, .notes = notes, .count = ANSWERS };
	struct text words = TEXT_EMPTY, cells = TEXT_EMPTY, measure = TEXT_EMPTY;
	enum units units = plot_units(plot);
	int answer;

	text_add(&words, "Cells of ");
	length_write(&words, rescale->across.new_cell, units);
	text_add(&words, " instead of ");
	length_write(&words, rescale->across.old_cell, units);
	text_add(&words, ". What does the ground keep?");
	size_add(&cells, &plot->ground, rescale->across.new_cell, units);
	measure_note(&measure, rescale, plot);
	question.text = words.bytes;
	notes[KEEP_CELLS] = cells.bytes;
	notes[KEEP_MEASURE] = measure.bytes;
	answer = editor->asker->choose(editor->asker, &question);
	text_fini(&words);
	text_fini(&cells);
	text_fini(&measure);
	return answer;
}

/* ---- What came of it ------------------------------------------------------------------------ */

static void area_add(struct text *out, const struct plot *plot, char letter)
{
	show_area(out, survey_area(legend_cells(plot, letter), plot_cell(plot)), plot_units(plot));
}

/* "b 29.9 sq ft, was 30.0 sq ft" of the letters whose area is another; no more than a few. */
static void areas_add(struct text *out, const struct plot *now, const struct plot *before)
{
	int others = 0;

	for (size_t i = 0; i < now->details.legend_count; i++) {
		char letter = now->details.legend[i].letter;
		struct text to = TEXT_EMPTY, from = TEXT_EMPTY;
		bool is_other;

		area_add(&to, now, letter);
		area_add(&from, before, letter);
		is_other = strcmp(to.bytes, from.bytes) != 0;
		others += is_other;
		if (is_other && others <= AREAS_SAID_MOST)
			text_print(out, " %c %s, was %s.", letter, to.bytes, from.bytes);
		text_fini(&to);
		text_fini(&from);
	}
	if (others > AREAS_SAID_MOST)
		text_print(out, " %d other areas changed.", others - AREAS_SAID_MOST);
}

/* What the new cells could not keep as it was. */
struct rounding {
	int64_t cells;
	bool has_fences;     /* have moved */
	int64_t gates_gone;
};

static int64_t gates_of(const struct details *details)
{
	int64_t gates = 0;

	for (size_t i = 0; i < details->fence_count; i++)
		gates += (int64_t)details->fences[i].gates.count;
	return gates;
}

static void fences_add(struct text *out, const struct rounding *rounding)
{
	if (rounding->has_fences)
		text_add(out, " Fences go along the nearest lines of the new cells.");
	if (rounding->gates_gone)
		text_print(out, " %lld %s too narrow for them and went.",
			(long long)rounding->gates_gone,
			rounding->gates_gone == 1 ? "gate was" : "gates were");
}

static void say_measure(struct editor *editor, const struct plot *now, const struct plot *before,
	const struct rounding *rounding)
{
	struct text words = TEXT_EMPTY, size = TEXT_EMPTY, was = TEXT_EMPTY;

	size_add(&size, &now->ground, plot_cell(now), plot_units(now));
	size_add(&was, &before->ground, plot_cell(before), plot_units(now));
	text_print(&words, "%d x %d cells", now->ground.columns, now->ground.rows);
	if (rounding->cells)
		text_print(&words, "; %lld of them straddled two kinds of ground or the edge and "
			"took the ground under their middle.", (long long)rounding->cells);
	else
		text_add(&words, strcmp(size.bytes, was.bytes) == 0 && !rounding->has_fences ?
			", all as it was." : ".");
	if (strcmp(size.bytes, was.bytes) != 0)
		text_print(&words, " The plan is %s, was %s.", size.bytes, was.bytes);
	areas_add(&words, now, before);
	fences_add(&words, rounding);
	editor_say(editor, "%s", words.bytes);
	text_fini(&words);
	text_fini(&size);
	text_fini(&was);
}

static bool too_many(const struct rescale *rescale, struct fault *fault)
{
	return fault_set(fault, HEAD_CELL, "%s: the ground would have %d x %d cells, expected at "
		"most %d x %d; keep its cells, or choose larger ones",
		attribute_row(HEAD_CELL)->label,
		rescale->across.new_count, rescale->down.new_count, SIDE_MOST, SIDE_MOST);
}

/* `next` is the editor's plot with its new head, but with the old cell. */
static void measure_keep(struct editor *editor, struct plot *next, const struct rescale *rescale)
{
	struct plot *plot = editor_edit(editor);
	struct plot before = *next;
	struct rounding rounding = { rescale_rounded(rescale, &next->ground),
		!rescale_keeps_fences(rescale, next), gates_of(&next->details) };

	before.details.head = block_copy(&next->details.head);
	before.ground = ground_copy(&next->ground);
	rescale_plot(next, rescale); /* its fences are the plot's own */
	rounding.gates_gone -= gates_of(&next->details);
	plot->ground = next->ground;
	editor->cursor = rescale_cell(rescale, editor->cursor);
	editor->is_pegged = editor->is_trailing = false;
	editor_drop_mark(editor);
	say_measure(editor, next, &before, &rounding);
	block_fini(&before.details.head);
	ground_fini(&before.ground);
}

bool cell_change(struct editor *editor, struct block *head, struct fault *fault)
{
	struct plot next = *editor->plot; /* shares all but its head */
	nm from = plot_cell(editor->plot), to = block_length(head, HEAD_CELL);
	struct rescale rescale;
	int answer;

	if (to == from)
		return true;
	block_set(head, HEAD_CELL, (struct value){ .set = true, .as.length = from });
	next.details.head = *head;
	rescale = rescale_of(&next, to);
	answer = ask(editor, &next, &rescale);
	if (answer == KEEP_MEASURE && !rescale_fits(&rescale))
		return too_many(&rescale, fault);
	if (answer == KEEP_MEASURE) {
		measure_keep(editor, &next, &rescale);
		*head = next.details.head;
	}
	block_set(head, HEAD_CELL, (struct value){ .set = true, .as.length = to });
	return answer != ANSWER_NONE;
}
