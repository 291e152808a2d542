#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

bool act_has_peg(struct editor *editor)
{
	const char *key = acts_key(ACT_PEG);

	if (!editor->is_pegged)
		editor_say(editor, "Peg a corner first: %s, go to the other corner, and %s again.",
			key, key);
	return editor->is_pegged;
}

bool act_has_mark(struct editor *editor)
{
	if (!editor->is_marked)
		editor_say(editor, "Nothing is marked: pick Mark this region from %s, or peg two "
			"corners with %s and pick Mark it.", acts_key(ACT_ALL), acts_key(ACT_PEG));
	return editor->is_marked;
}

static const char *carried_words(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);

	return plain_cells(&report, editor->carried.ground.columns, editor->carried.ground.rows);
}

/* "Turned a quarter clockwise: 3 ft x 5 ft." */
static void say_size(struct editor *editor, const char *what)
{
	editor_say(editor, "%s: %s.", what, carried_words(editor));
}

/* The cursor moves to the piece's top left cell, so that a stamp at once changes it there. */
static void say_marked(struct editor *editor)
{
	editor->cursor = (struct place){ editor->marked.left, editor->marked.top };
	say_size(editor, "Marked");
	text_print(&editor->message, " Go on; %s stamps it there, %s moves it.",
		acts_key(ACT_STAMP), acts_key(ACT_MOVE_MARKED));
}

static void act_mark_region(struct editor *editor)
{
	struct place at = editor->cursor;

	if (ground_cell(&editor->plot->ground, at.x, at.y) == OPEN_GROUND) {
		editor_say(editor, "Open ground is no region: go to a bed, a path, a lawn or a "
			"fixture.");
		return;
	}
	editor_mark_region(editor);
	say_marked(editor);
}

static void act_mark(struct editor *editor)
{
	if (editor->is_marked) {
		editor_say(editor, "It is marked already; %s drops the mark.",
			acts_key(ACT_STEP_BACK));
		return;
	}
	if (!act_has_peg(editor))
		return;
	editor_mark(editor);
	say_marked(editor);
}

/* The legend may have lost an entry since. */
static bool has_letters(struct editor *editor)
{
	const struct ground *carried = &editor->carried.ground;

	for (int i = 0; i < carried->columns * carried->rows; i++) {
		char letter = carried->cells[i];

		if (letter == OPEN_GROUND || letter == PATCH_NOTHING ||
			plot_entry(editor->plot, letter))
			continue;
		editor_say(editor, "%c is no longer in the legend: drop the mark and mark anew.",
			letter);
		return false;
	}
	return true;
}

static bool is_over_the_edge(const struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground, *carried = &editor->carried.ground;

	return editor->cursor.x + carried->columns > ground->columns ||
		editor->cursor.y + carried->rows > ground->rows;
}

static struct laid stamp(struct editor *editor)
{
	return patch_stamp(editor_edit(editor), &editor->carried, editor->cursor.x,
		editor->cursor.y);
}

static struct laid lift(struct editor *editor)
{
	return patch_lift(editor_edit(editor), &editor->shape, editor->marked.left,
		editor->marked.top);
}

static void act_stamp(struct editor *editor)
{
	struct laid laid;

	if (!act_has_mark(editor) || !has_letters(editor))
		return;
	laid = stamp(editor);
	if (is_over_the_edge(editor)) {
		laid.outside = false; /* said here */
		editor_say(editor, "Stamped as far as the plan reaches.");
	} else {
		editor_say(editor, "Stamped; it is still carried.");
	}
	act_lay_end(editor, laid, ACT_IS_THERE);
}

static void act_move_marked(struct editor *editor)
{
	struct laid lifted, laid;

	if (!act_has_mark(editor) || !has_letters(editor))
		return;
	if (is_over_the_edge(editor)) {
		editor_say(editor,
			"Moved here it would reach over the plan's edge, and lose cells there.");
		return;
	}
	lifted = lift(editor);
	laid = stamp(editor);
	laid.outside = laid.outside || lifted.outside;
	editor_drop_mark(editor);
	editor_say(editor, "Moved; %s takes it back. It leaves open ground where it stood.",
		acts_key(ACT_TAKE_BACK));
	act_lay_end(editor, laid, ACT_IS_THERE);
}

static void act_lift_marked(struct editor *editor)
{
	if (!act_has_mark(editor))
		return;
	editor_say(editor, "Lifted, and still carried: %s stamps it.", acts_key(ACT_STAMP));
	act_lay_end(editor, lift(editor),
		"Open ground already.");
}

enum { QUARTER_TURN, ACROSS, DOWN };

static void act_change(struct editor *editor, int change)
{
	static const char *const done[] = { [QUARTER_TURN] = "Turned a quarter clockwise",
		[ACROSS] = "Flipped, left for right", [DOWN] = "Flipped, top for bottom" };

	if (!act_has_mark(editor))
		return;
	if (change == QUARTER_TURN)
		patch_turn(&editor->carried);
	else
		patch_flip(&editor->carried, change == ACROSS);
	say_size(editor, done[change]);
}

void act_mark_ask(struct editor *editor)
{
	static const struct choice choices[] = {
		{ .words = "Move it here", .act = ACT_MOVE_MARKED },
		{ .words = "Stamp it here", .act = ACT_STAMP, .by = ACT_LAY },
		{ .words = "Turn it a quarter", .act = ACT_TURN, .by = ACT_TURN },
		{ .words = "Flip it across", .act = ACT_FLIP_ACROSS, .by = ACT_FLIP_ACROSS },
		{ .words = "Flip it down", .act = ACT_FLIP_DOWN, .by = ACT_FLIP_DOWN },
		{ .words = "Lift it", .act = ACT_LIFT_MARKED, .by = ACT_LIFT },
		{ .words = "Swap a letter", .act = ACT_RELETTER },
		{ .words = "Crop the plan to it", .act = ACT_CROP_TO_MARK },
		{ .words = "Drop the mark", .act = ACT_STEP_BACK },
	};

	choice_ask(editor, arena_print(&editor->words, "Carried, %s:", carried_words(editor)),
		choices, sizeof choices / sizeof *choices);
}

static const struct act acts[] = {
	{ .id = ACT_MARK, .key_name = "Enter twice", .name = "Mark",
		.wish = "mark a piece of the ground",
		.words = "select selection", .writes = true, .run = act_mark },
	{ .id = ACT_MARK_REGION, .key_name = "!", .name = "Mark this region",
		.wish = "mark one bed or path as it is",
		.words = "select take pick whole", .writes = true, .run = act_mark_region },
	{ .id = ACT_STAMP, .key_name = "Space", .name = "Stamp what is marked",
		.wish = "copy what is marked to here",
		.words = "paste duplicate repeat bed", .writes = true, .run = act_stamp },
	{ .id = ACT_MOVE_MARKED, .key_name = "Enter", .name = "Move what is marked",
		.wish = "move what is marked to here",
		.words = "shift cut bed", .writes = true, .run = act_move_marked },
	{ .id = ACT_TURN, .keys = ONE_KEY('}'), .key_name = "}", .name = "Turn what is marked",
		.wish = "turn what is marked a quarter",
		.words = "rotate rotation", .hints = { [STATE_MARKED] = "turn" },
		.rank = 3, .run_with = act_change, .with = QUARTER_TURN },
	{ .id = ACT_FLIP_ACROSS, .keys = ONE_KEY('['), .key_name = "[", .name = "Flip across",
		.wish = "flip it, left for right",
		.words = "reflect reverse", .run_with = act_change,
		.with = ACROSS },
	{ .id = ACT_FLIP_DOWN, .keys = ONE_KEY(']'), .key_name = "]", .name = "Flip down",
		.wish = "flip it, top for bottom",
		.words = "reflect reverse", .run_with = act_change,
		.with = DOWN },
	{ .id = ACT_LIFT_MARKED, .key_name = "Delete", .name = "Lift what is marked",
		.wish = "lift all that is marked",
		.words = "cut delete erase remove clear", .writes = true, .run = act_lift_marked },
};
const struct act_group acts_of_mark = ACT_GROUP("Marked piece", acts);
