#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

void act_say_outside(struct editor *editor, struct laid laid)
{
	if (laid.outside && !editor->said_outside) {
		editor_say(editor, "Some images fall outside the plan; they are left out.");
		editor->said_outside = true;
	}
}

void act_lay_end(struct editor *editor, struct laid laid, const char *nothing)
{
	if (!editor_stroke(editor) && nothing)
		editor_say(editor, "%s", nothing);
	act_say_outside(editor, laid);
}

static void act_step_back(struct editor *editor)
{
	if (editor->is_marked)
		editor_say(editor, "The mark is dropped; the ground stays as it is.");
	else if (!editor->is_pegged && !editor->is_trailing)
		editor_say(editor, "There is nothing to go back from. %s leaves, %s helps.",
			acts_key(ACT_LEAVE), acts_key(ACT_HELP));
	editor_drop_mark(editor);
	editor->is_pegged = editor->is_trailing = false;
}

/* "Taken back: Lay (b Raised bed); 3 more can be." */
static void say_step(struct editor *editor, const char *what, const char *name, size_t left)
{
	if (left)
		editor_say(editor, "%s: %s; %zu more can be.", what, name, left);
	else
		editor_say(editor, "%s: %s; no more can be.", what, name);
}

static void act_take_back(struct editor *editor)
{
	const char *name = editor_take_back(editor);

	if (name)
		say_step(editor, "Taken back", name, history_undo_count(editor->history));
	else
		editor_say(editor, "There is no stroke to take back.");
}

static void act_put_back(struct editor *editor)
{
	const char *name = editor_put_back(editor);

	if (name)
		say_step(editor, "Put back", name, history_redo_count(editor->history));
	else
		editor_say(editor, "Nothing was taken back that could be put back.");
}

static const struct act acts[] = {
	{ .id = ACT_TAKE_BACK, .keys = ONE_KEY(PRESS_BACKSPACE), .key_name = "Backspace",
		.name = "Take back", .wish = "take back the last stroke",
		.words = "undo revert mistake",
		.hints = { [STATE_REST] = "take back", [STATE_TRAIL] = "take back" }, .rank = 3,
		.writes = true, .run = act_take_back },
	{ .id = ACT_PUT_BACK, .keys = ONE_KEY('+'), .key_name = "+", .name = "Put back",
		.wish = "put it back again",
		.words = "redo", .writes = true, .run = act_put_back },
	{ .id = ACT_STEP_BACK, .keys = ONE_KEY(PRESS_ESCAPE), .key_name = "Esc, Ctrl-C",
		.key_said = "Esc", .name = "One step back", .wish = "go one step back",
		.words = "cancel stop escape abort",
		.hints = { [STATE_TRAIL] = "one step back", [STATE_PEGGED] = "one step back",
			[STATE_MARKED] = "drop" },
		.rank = 2, .run = act_step_back },
};
const struct act_group acts_of_end = ACT_GROUP("Draw", acts);
