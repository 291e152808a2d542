#include "editor/acts/choice.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

/* What matters after the axis moved: whether it does anything, and what it broke. */
static void say_axis(struct editor *editor, const char *what)
{
	struct report report = editor_report(editor, &editor->words);

	editor_refresh(editor);
	if (mirror_of(editor->plot).kind == MIRROR_OFF)
		editor_say(editor, "%s. The mirror is off: %s or %s or %s turns it on.", what,
			acts_key(ACT_LEFT_RIGHT), acts_key(ACT_TOP_BOTTOM),
			acts_key(ACT_HALF_TURN));
	else if (editor->faults)
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

/* Half cells from the datum; the other axis stays where it is. */
static void upright_set(struct editor *editor, int across)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct value axis = { .set = true, .as.place = { across, mirror.down } };

	if (across < 1)
		editor_say(editor, "The axis cannot stand on the plan's edge: go right by a cell.");
	else
		axis_set(editor, axis, "The upright axis stands here");
}

static void level_set(struct editor *editor, int down)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct value axis = { .set = true, .as.place = { mirror.across, down } };

	if (down < 1)
		editor_say(editor, "The axis cannot stand on the plan's edge: go down by a cell.");
	else
		axis_set(editor, axis, "The level axis stands here");
}

static void upright_before(struct editor *editor)
{
	upright_set(editor, 2 * editor->cursor.x);
}

static void upright_through(struct editor *editor)
{
	upright_set(editor, 2 * editor->cursor.x + 1);
}

static void level_above(struct editor *editor)
{
	level_set(editor, 2 * editor->cursor.y);
}

static void level_through(struct editor *editor)
{
	level_set(editor, 2 * editor->cursor.y + 1);
}

static void both_in_middle(struct editor *editor)
{
	axis_set(editor, (struct value){ .set = false }, "Both axes stand in the plan's middle");
}

static void act_axis(struct editor *editor)
{
	struct place at = editor->cursor;
	const int halves[] = { 2 * at.x, 2 * at.x + 1, 2 * at.y, 2 * at.y + 1 };
	enum { PLACES = sizeof halves / sizeof *halves };
	struct choice choices[] = {
		{ .words = "Upright, on this cell's left edge", .run = upright_before },
		{ .words = "Upright, through this cell", .run = upright_through },
		{ .words = "Level, on this cell's top edge", .run = level_above },
		{ .words = "Level, through this cell", .run = level_through },
		{ .words = "Both in the middle", .run = both_in_middle },
	};
	struct report report = editor_report(editor, &editor->words);

	for (int i = 0; i < PLACES; i++)
		choices[i].note = plain_length(&report, halves[i] * plot_cell(editor->plot) / 2);
	choice_ask(editor, "Where does the mirror's axis stand?", choices,
		sizeof choices / sizeof *choices);
}

static const struct act acts[] = {
	{ .id = ACT_AXIS, .keys = ONE_KEY('{'), .key_name = "{", .name = "Axis",
		.wish = "say where the mirror stands", .writes = true, .run = act_axis },
};
const struct act_group acts_of_axis = ACT_GROUP(acts);
