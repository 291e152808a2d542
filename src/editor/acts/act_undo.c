#include "editor/acts/act_groups.h"

static void say_left(struct editor *editor, const char *what, size_t left)
{
	editor_say(editor, "%s; %zu more can be.", what, left);
}

static void act_take_back(struct editor *editor)
{
	if (editor_take_back(editor))
		say_left(editor, "Taken back", history_undo_count(editor->history));
	else
		editor_say(editor, "There is no stroke to take back.");
}

static void act_put_back(struct editor *editor)
{
	if (editor_put_back(editor))
		say_left(editor, "Put back", history_redo_count(editor->history));
	else
		editor_say(editor, "Nothing was taken back that could be put back.");
}

static const struct act acts[] = {
	{ .id = ACT_TAKE_BACK, .keys = ONE_KEY(PRESS_BACKSPACE), .key_name = "Backspace",
		.name = "Take back", .wish = "take back the last stroke",
		.hints = { [STATE_REST] = "take back", [STATE_TRAIL] = "take back" }, .rank = 3,
		.writes = true, .run = act_take_back },
	{ .id = ACT_PUT_BACK, .keys = ONE_KEY('+'), .key_name = "+", .name = "Put back",
		.wish = "put it back again", .writes = true, .run = act_put_back },
};
const struct act_group acts_of_undo = ACT_GROUP(acts);
