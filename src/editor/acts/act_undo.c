#include "editor/acts/act_groups.h"

static void act_take_back(struct editor *editor)
{
	if (editor_take_back(editor))
		editor_say(editor, "Taken back; %zu more can be.",
			history_undo_count(editor->history));
	else
		editor_say(editor, "There is no stroke to take back.");
}

static void act_put_back(struct editor *editor)
{
	if (editor_put_back(editor))
		editor_say(editor, "Put back; %zu more can be.",
			history_redo_count(editor->history));
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
