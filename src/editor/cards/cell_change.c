#include "editor/cards/cell_change.h"
#include "plot/edit/legend.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/rescale.h"

#include <string.h>

enum { KEEP_MEASURE, KEEP_CELLS, ANSWERS, AREAS_SAID_MOST = 4 };

/* Words in the units of a plot that is not yet the editor's. */
static struct report report_of(struct editor *editor, const struct plot *plot)
{
	struct report report = editor_report(editor, &editor->words);

	report.units = plot_units(plot);
	return report;
}

static const char *size_words(const struct report *report, const struct ground *ground, nm cell)
{
	return say(report, "%s x %s", plain_length(report, ground->columns * cell),
		plain_length(report, ground->rows * cell));
}

static int ask(struct editor *editor, const struct plot *plot, const struct rescale *rescale)
{
	static const char *const answers[ANSWERS] = { "Its measure", "Its cells" };
	struct report report = report_of(editor, plot);
	const char *notes[ANSWERS] = {
		[KEEP_CELLS] = size_words(&report, &plot->ground, rescale->across.new_cell),
		[KEEP_MEASURE] = say(&report, "%d x %d cells%s", rescale->across.new_count,
			rescale->down.new_count, !rescale_fits(rescale) ? ": too many" :
			rescale_rounded(rescale, &plot->ground) ||
			!rescale_keeps_fences(rescale, plot) ||
			!rescale_keeps_around(rescale, plot) ||
			!rescale_keeps_plants(rescale, plot) ? ", rounded" : ""),
	};
	struct question question = { .answers = answers, .notes = notes, .count = ANSWERS,
		.first = rescale_fits(rescale) ? KEEP_MEASURE : KEEP_CELLS,
		.text = say(&report, "Cells of %s instead of %s. What does the ground keep?",
			exact_length(&report, rescale->across.new_cell),
			exact_length(&report, rescale->across.old_cell)) };

	return editor->asker->choose(editor->asker, &question);
}

static const char *area_words(const struct report *report, const struct plot *plot, char letter)
{
	return plain_area(report, survey_area(legend_cells(plot, letter), plot_cell(plot)));
}

/* "b 29.9 sq ft, was 30.0 sq ft" of the letters whose area has changed; no more than a few. */
static const char *areas_words(const struct report *report, const struct plot *now,
	const struct plot *before)
{
	struct text words = TEXT_EMPTY;
	int others = 0;

	for (size_t i = 0; i < now->details.legend_count; i++) {
		char letter = now->details.legend[i].letter;
		const char *to = area_words(report, now, letter);
		const char *from = area_words(report, before, letter);

		if (strcmp(to, from) != 0 && ++others <= AREAS_SAID_MOST)
			text_print(&words, " %c %s, was %s.", letter, to, from);
	}
	if (others > AREAS_SAID_MOST)
		text_print(&words, " %s changed.", untied(report, word_count(report,
			others - AREAS_SAID_MOST, "other area", "other areas")));
	return say_text(report, &words);
}

/* What the new cells could not keep as it was. */
struct rounding {
	int64_t cells;
	bool has_fences;     /* have moved */
	int64_t gates_gone;
	bool has_around;     /* services or what else is around has moved */
	bool has_plants;     /* have moved */
	int64_t plants_gone; /* that met another of their kind */
};

static int64_t gates_of(const struct details *details)
{
	int64_t gates = 0;

	for (size_t i = 0; i < details->fence_count; i++)
		gates += (int64_t)details->fences[i].gates.count;
	return gates;
}

static int64_t specimens_of(const struct details *details)
{
	int64_t specimens = 0;

	for (size_t i = 0; i < details->plants.count; i++)
		specimens += (int64_t)details->plants.items[i].specimen_count;
	return specimens;
}

static const char *plants_words(const struct report *report, const struct rounding *rounding)
{
	return say(report, "%s%s", !rounding->has_plants ? "" :
		" Plants go to the middle of the nearest new cells.", !rounding->plants_gone ? "" :
		say(report, " %lld %s of a kind that stands there already and went.",
			(long long)rounding->plants_gone,
			rounding->plants_gone == 1 ? "was" : "were"));
}

static const char *lines_words(const struct report *report, const struct rounding *rounding)
{
	return say(report, "%s%s%s", !rounding->has_fences ? "" :
		" Fences go along the nearest lines of the new cells.", !rounding->gates_gone ? "" :
		say(report, " %lld %s too narrow for them and went.",
			(long long)rounding->gates_gone,
			rounding->gates_gone == 1 ? "gate was" : "gates were"),
		!rounding->has_around ? "" :
		" What is around goes to the nearest points of the new cells.");
}

static void say_measure(struct editor *editor, const struct plot *now, const struct plot *before,
	const struct rounding *rounding)
{
	struct report report = report_of(editor, now);
	const char *size = size_words(&report, &now->ground, plot_cell(now));
	const char *was = size_words(&report, &before->ground, plot_cell(before));
	bool is_same = strcmp(size, was) == 0;

	editor_say(editor, "%d x %d cells%s%s%s%s%s", now->ground.columns, now->ground.rows,
		rounding->cells ? say(&report, "; %lld of them straddled two kinds of ground or "
			"the edge and took the ground under their middle.",
			(long long)rounding->cells) :
		is_same && !rounding->has_fences && !rounding->has_around &&
			!rounding->has_plants ?
			", all as it was." : ".",
		is_same ? "" : say(&report, " The plan is %s, was %s.", size, was),
		areas_words(&report, now, before), lines_words(&report, rounding),
		plants_words(&report, rounding));
}

/* `next` is the editor's plot with its new head, but with the old cell. */
static void measure_keep(struct editor *editor, struct plot *next, const struct rescale *rescale)
{
	struct plot *plot = editor_edit(editor);
	struct plot before = *next;
	struct block head = plot->details.head;
	struct rounding rounding = { rescale_rounded(rescale, &next->ground),
		!rescale_keeps_fences(rescale, next), gates_of(&next->details),
		!rescale_keeps_around(rescale, next), !rescale_keeps_plants(rescale, next),
		specimens_of(&next->details) };

	before.details.head = block_copy(&next->details.head);
	before.ground = ground_copy(&next->ground);
	rescale_plot(next, rescale); /* all but its head is the plot's own */
	rounding.gates_gone -= gates_of(&next->details);
	rounding.plants_gone -= specimens_of(&next->details);
	plot->ground = next->ground;
	plot->details = next->details;
	plot->details.head = head;
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
		return fault_set(fault, HEAD_CELL, "%s: the ground would have %d x %d cells, "
			"expected at most %d x %d; keep its cells, or choose larger ones",
			attribute_row(HEAD_CELL)->label, rescale.across.new_count,
			rescale.down.new_count, SIDE_MOST, SIDE_MOST);
	if (answer == KEEP_MEASURE) {
		measure_keep(editor, &next, &rescale);
		*head = next.details.head;
	}
	if (answer == KEEP_CELLS)
		levels_cover(&editor_edit(editor)->details.levels, &next.ground, to);
	block_set(head, HEAD_CELL, (struct value){ .set = true, .as.length = to });
	return answer != ANSWER_NONE || fault_set(fault, HEAD_CELL,
		"%s: nothing was picked, so the cells are as they were",
		attribute_row(HEAD_CELL)->label);
}
