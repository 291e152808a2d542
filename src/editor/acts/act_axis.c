#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

/* What matters after the axis moved: whether it does anything, and what it broke. */
static void say_axis(struct editor *editor, const char *what)
{
	struct report report = editor_report(editor, &editor->words);

	if (mirror_of(editor->plot).kind == MIRROR_OFF)
		editor_say(editor, "%s. The mirror is off: %s or %s or %s turns it on.", what,
			acts_key(ACT_LEFT_RIGHT), acts_key(ACT_TOP_BOTTOM),
			acts_key(ACT_HALF_TURN));
	else if (editor_faults(editor))
		editor_say(editor, "%s. Now %s %s.", what,
			plain_count(&report, editor->faults), act_differ_words(editor->faults));
	else
		editor_say(editor, "%s. Both sides match.", what);
}

static void axis_set(struct editor *editor, struct value axis, const char *what)
{
	block_set(&editor_edit(editor)->details.head, HEAD_AXIS, axis);
	editor->said_outside = false;
	if (editor_stroke(editor))
		say_axis(editor, what);
	else
		editor_say(editor, "It stands there already.");
}

/* Beside an answer is its distance from the datum, of which `halves` has the half cells. */
static void act_axis(struct editor *editor)
{
	enum { ON_LEFT, UPRIGHT, ON_TOP, LEVEL, MIDDLE, ANSWERS };
	static const char *const answers[ANSWERS] = { "Upright, on this cell's left edge",
		"Upright, through this cell", "Level, on this cell's top edge",
		"Level, through this cell", "Both in the middle" };
	const int x = editor->cursor.x, y = editor->cursor.y;
	const int halves[MIDDLE] = { 2 * x, 2 * x + 1, 2 * y, 2 * y + 1 };
	const char *notes[ANSWERS] = { [MIDDLE] = "" };
	struct question question = { .text = "Where does the mirror's axis stand?",
		.answers = answers, .notes = notes, .count = ANSWERS };
	struct report report = editor_report(editor, &editor->words);
	struct mirror mirror = mirror_of(editor->plot);
	int answer;

	for (int i = 0; i < MIDDLE; i++)
		notes[i] = plain_length(&report, halves[i] * plot_cell(editor->plot) / 2);
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == MIDDLE)
		axis_set(editor, (struct value){ .set = false },
			"Both axes stand in the plan's middle");
	else if (answer != ANSWER_NONE && halves[answer] < 1)
		editor_say(editor, "The axis cannot stand on the plan's edge: go %s by a cell.",
			answer == ON_LEFT ? "right" : "down");
	else if (answer == ON_LEFT || answer == UPRIGHT)
		axis_set(editor, (struct value){ .set = true, .as.place = { halves[answer],
			mirror.down } }, "The upright axis stands here");
	else if (answer != ANSWER_NONE)
		axis_set(editor, (struct value){ .set = true, .as.place = { mirror.across,
			halves[answer] } }, "The level axis stands here");
}

static const struct act acts[] = {
	{ .id = ACT_AXIS, .key_name = "!", .name = "Axis",
		.wish = "say where the axis stands",
		.words = "mirror symmetry middle", .writes = true, .run = act_axis },
};
const struct act_group acts_of_axis = ACT_GROUP("Mirror", acts);
