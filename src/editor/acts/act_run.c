#include "base/number.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

#include <stdlib.h>

enum { LEGS_MOST = BENDS_MOST + 1 };

/* A run from the peg, by its bends, as far as the cursor: a straight piece for each leg. */
struct run_trial {
	struct trial trial; /* first */
	struct rectangle legs[LEGS_MOST];
	bool is_level[LEGS_MOST];
	int count;
	char letter;
};

/* What both pieces take of the corner between them. */
static struct rectangle corner_of(const struct run_trial *run, int i)
{
	const struct rectangle *one = &run->legs[i - 1], *other = &run->legs[i];
	const struct rectangle *level = run->is_level[i] ? other : one;
	const struct rectangle *upright = run->is_level[i] ? one : other;

	return (struct rectangle){ upright->left, level->top, upright->right, level->bottom };
}

static struct laid run_lay(struct plot *plot, const struct trial *trial)
{
	const struct run_trial *run = (const struct run_trial *)trial;
	struct mirror mirror = mirror_of(plot);
	struct laid laid = { 0, false };

	for (int i = 0; i < run->count; i++) {
		lay_piece(plot, &mirror, rectangle_within(run->legs[i], &plot->ground),
			run->letter, &laid);
		if (i > 0 && run->is_level[i] != run->is_level[i - 1])
			lay_piece(plot, &mirror, rectangle_within(corner_of(run, i),
				&plot->ground), run->letter, &laid);
	}
	return laid;
}

/* Each leg goes on where the one before ends, straight level or upright. */
static void run_fill(struct run_trial *run, const struct editor *editor, int width)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct place from = editor->peg;

	run->count = editor->bend_count + 1;
	for (int i = 0; i < run->count; i++) {
		struct place to = i < editor->bend_count ? editor->bends[i] : editor->cursor;

		run->is_level[i] = abs(to.x - from.x) >= abs(to.y - from.y);
		run->legs[i] = rectangle_run_mirrored(&mirror, from, to, width);
		from = run->is_level[i] ? (struct place){ to.x, from.y } :
			(struct place){ from.x, to.y };
	}
}

/* How wide the widest leg is with its image. */
static int run_width(const struct run_trial *run, const struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);
	int width = 0;

	for (int i = 0; i < run->count; i++) {
		int leg = rectangle_mirrored_width(&mirror, run->legs[i], run->is_level[i]);

		width = leg > width ? leg : width;
	}
	return width;
}

/* "4 ft with the mirror: 4 cells. 3 ft about the axis needs cells of 6 in." */
static const char *width_words(struct editor *editor, int asked, int becomes)
{
	struct report report = editor_report(editor, &editor->words);
	nm cell = plot_cell(editor->plot);
	const char *needs = becomes != asked + 1 ? "" : say(&report,
		" %s about the axis needs cells of %s.", exact_length(&report, asked * cell),
		exact_length(&report, cell / 2));

	return becomes == asked ? "" : say(&report, "With the mirror it is %s wide, %d cells.%s",
		exact_length(&report, becomes * cell), becomes, needs);
}

/* No run is wider than the plan is across it; a bent one goes both ways. */
static int widest_run(const struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground;
	struct rectangle r = editor_pegged(editor);
	bool is_level = r.right - r.left >= r.bottom - r.top;

	if (editor->bend_count)
		return least(ground->columns, ground->rows);
	return is_level ? ground->rows : ground->columns;
}

static void act_run(struct editor *editor)
{
	const struct cells_question question = { editor->bend_count ? "Lay a bent run" :
		"Lay a straight run", "Width", "lay it", "How wide the run is, all of it." };
	int widest = widest_run(editor), width;
	struct cells cells = { .least = 1, .most = widest, .count = least(editor->run, widest),
		.limit = "no more than the plan" };
	struct run_trial run = { .trial = { run_lay, "", false }, .letter = editor->hand };

	if (!act_has_peg(editor) || !cells_ask(editor, &question, &cells))
		return;
	editor->run = cells.count;
	run_fill(&run, editor, cells.count);
	width = run_width(&run, editor->plot);
	run.trial.words = width_words(editor, cells.count, width);
	if (!act_try(editor, &run.trial))
		return;
	editor->is_pegged = false;
	cells.count = width;
	act_say_cells(editor, "A width", &cells);
}

static void act_bend(struct editor *editor)
{
	const char *key = acts_key(ACT_PEG);

	if (!act_has_peg(editor))
		return;
	if (editor->bend_count == BENDS_MOST) {
		editor_say(editor, "A run has at most %d bends.", BENDS_MOST);
		return;
	}
	editor->bends[editor->bend_count++] = editor->cursor;
	editor_say(editor, "It bends here. Go on and press %s: lay the run, or bend again.", key);
}

static const struct act acts[] = {
	{ .id = ACT_RUN, .key_name = "Enter twice", .name = "Straight run",
		.wish = "lay a straight or bent path",
		.words = "line road", .writes = true, .lays = true, .run = act_run },
	{ .id = ACT_BEND, .key_name = "Enter twice", .name = "Bend the run",
		.wish = "lay it round corners",
		.words = "corner turn elbow", .writes = true, .run = act_bend },
};
const struct act_group acts_of_runs = ACT_GROUP("Draw", acts);
