#include "editor/acts/acts.h"

#define ONE(key_) .key = (key_), .until = (key_)
#define FROM(key_, until_) .key = (key_), .until = (until_)

static const struct act table[] = {
	{ FROM(PRESS_LEFT, PRESS_DOWN), "arrows", "Move", "go to another cell",
		{ "move", "lay", "move", "move" }, 1, false, act_arrow },
	{ FROM('0', '9'), "1-9, 0", "Step", "set the step, 1 to 12 cells",
		{ "step", "step", "step", "step" }, 4, false,
		act_step },
	{ FROM(PRESS_HOME, PRESS_PAGE_DOWN), "Home...PgDn", "Go to an edge",
		"go left, right, to top, bottom", { NULL }, 0, false, act_edge },
	{ ONE('@'), "@", "Go to a place", "go to a measured place", { NULL }, 0, false, act_place },

	{ ONE('/'), "/", "Farther", "see more of the plan, smaller", { NULL }, 0, false,
		act_farther },
	{ ONE('\\'), "\\", "Nearer", "see it larger again", { NULL }, 0, false, act_nearer },
	{ ONE('_'), "_", "Overview", "see the whole plan, and back", { NULL }, 0, false,
		act_overview },
	{ ONE(','), ",", "Centre", "have the cursor in the middle", { NULL }, 0, false,
		act_centre },
	{ ONE('"'), "\"", "Measure", "measure what the cursor is in", { NULL }, 0, false,
		act_measure },
	{ FROM(PRESS_VIEW_LEFT, PRESS_VIEW_DOWN), "Shift-arrows", "Scroll", "see what lies beside",
		{ NULL }, 0, false, act_scroll },

	{ FROM('a', 'z'), "letter, .", "Take in hand", "take in hand what will be laid",
		{ NULL }, 0, false, act_take },
	{ .key = 'A', .until = 'Z', .run = act_take },
	{ .key = '.', .until = '.', .run = act_take },
	{ ONE(' '), "Space", "Lay", "lay it here", { "lay", NULL, NULL, "stamp" }, 1, true, act_lay },
	{ ONE(PRESS_DELETE), "Delete", "Lift", "lift what lies here", { "lift" }, 4, true,
		act_lift },
	{ ONE('='), "=", "Trail", "lay while moving, on and off", { "trail", "end trail" }, 2, true,
		act_trail },
	{ ONE(PRESS_ENTER), "Enter", "Peg", "peg a rectangle's corners",
		{ "peg", NULL, "other corner", "move, flip" }, 2, true, act_peg },
	{ ONE(LISTED_FILL), "Enter twice", "Fill", "lay a rectangle", { NULL }, 0, true, act_fill },
	{ ONE(LISTED_FRAME), "Enter twice", "Frame", "lay a frame of any thickness", { NULL }, 0,
		true, act_frame },
	{ ONE(LISTED_RUN), "Enter twice", "Straight run", "lay a straight path", { NULL }, 0, true,
		act_run },
	{ ONE('*'), "*", "Flood", "lay over a whole patch", { "flood" }, 4, true, act_flood },

	{ ONE(LISTED_MARK), "Enter twice", "Mark", "mark a piece of the ground", { NULL }, 0, true,
		act_mark },
	{ ONE(LISTED_STAMP), "Space", "Stamp what is marked", "copy what is marked to here",
		{ NULL }, 0, true, act_stamp },
	{ ONE(LISTED_MOVE), "Enter", "Move what is marked", "move what is marked to here", { NULL },
		0, true, act_move_marked },
	{ ONE('}'), "}", "Turn what is marked", "turn what is marked a quarter",
		{ NULL, NULL, NULL, "turn" }, 3, false, act_turn },
	{ ONE('['), "[", "Flip across", "flip it, left for right", { NULL }, 0, false,
		act_flip_across },
	{ ONE(']'), "]", "Flip down", "flip it, top for bottom", { NULL }, 0, false,
		act_flip_down },
	{ ONE(LISTED_LIFT), "Delete", "Lift what is marked", "lift all that is marked", { NULL }, 0,
		true, act_lift_marked },

	{ ONE('`'), "`", "Fence", "fence the sides of cells", { NULL }, 0, true, act_fence },
	{ ONE(LISTED_FENCE), "`", "Lay a fence", "lay a fence along a side", { NULL }, 0, true,
		act_fence_lay },
	{ ONE(LISTED_GATE), "`", "Set a gate", "set a gate in a fence", { NULL }, 0, true,
		act_gate_set },
	{ ONE(LISTED_LIFT_FENCE), "`", "Lift the fence", "lift a fence along a side", { NULL }, 0,
		true, act_fence_lift },
	{ ONE(LISTED_LIFT_GATE), "`", "Take out the gate", "take a gate out again", { NULL }, 0,
		true, act_gate_lift },
	{ ONE(LISTED_FENCE_PLAN), "`", "Fence the whole plan", "fence all round the plan",
		{ NULL }, 0, true, act_fence_plan },

	{ ONE(PRESS_BACKSPACE), "Backspace", "Take back", "take back the last stroke",
		{ "take back", "take back" }, 3, true, act_take_back },
	{ ONE('+'), "+", "Put back", "put it back again", { NULL }, 0, true, act_put_back },

	{ ONE('|'), "|", "Mirror left-right", "draw left and right alike", { NULL }, 0, true,
		act_left_right },
	{ ONE('-'), "-", "Mirror top-bottom", "draw top and bottom alike", { NULL }, 0, true,
		act_top_bottom },
	{ ONE('%'), "%", "Mirror half-turn", "draw the same turned half round", { NULL }, 0, true,
		act_half_turn },
	{ ONE('&'), "&", "Fold", "copy this side over the other", { NULL }, 0, true, act_fold },
	{ ONE('\''), "'", "Next fault", "go to the next mirror fault", { NULL }, 0, false,
		act_next_fault },
	{ ONE('{'), "{", "Axis", "say where the mirror stands", { NULL }, 0, true, act_axis },

	{ ONE(PRESS_TAB), "Tab", "Next page", "see other figures", { "page" }, 3, false,
		act_next_page },
	{ ONE(PRESS_BACK_TAB), "Shift-Tab", "Page before", "see the page before", { NULL }, 0,
		false, act_page_before },
	{ ONE(';'), ";", "Pages", "pick a page", { NULL }, 0, false, act_pages },
	{ ONE(':'), ":", "Panel width", "hide the panel, or widen it", { NULL }, 0, false,
		act_panel },
	{ ONE(')'), ")", "Further down the page", "see the rest of a long page", { NULL }, 0, false,
		act_further },
	{ ONE('('), "(", "Back up the page", "see its start again", { NULL }, 0, false, act_back },

	{ ONE('#'), "#", "Sheets", "change the legend; title, units", { NULL }, 0, true,
		act_sheets },
	{ ONE('^'), "^", "Grow or crop", "make the plan larger or smaller", { NULL }, 0, true,
		act_size },
	{ ONE(LISTED_CROP), "^", "Crop to the mark", "keep only what is marked", { NULL }, 0, true,
		act_crop_to_mark },
	{ ONE('$'), "$", "Save", "save the plot", { "save" }, 2, true, act_save },
	{ ONE('>'), ">", "Takeoff", "write out the quantities", { "takeoff" }, 4, false,
		act_takeoff },
	{ ONE('<'), "<", "Leave", "leave the program", { "leave" }, 2, false, act_leave },
	{ ONE('~'), "~", "Mouse", "point with the mouse, or not",
		{ "end mouse", "end mouse", NULL, "end mouse" }, 1, false, act_mouse },
	{ ONE(PRESS_PAUSE), "Ctrl-Z", "Pause", "go to the shell; fg comes back", { NULL }, 0, false,
		act_pause },
	{ ONE(PRESS_REPAINT), "Ctrl-L", "Draw afresh", "clean up a garbled screen", { NULL }, 0,
		false, act_repaint },
	{ ONE(PRESS_ESCAPE), "Esc, Ctrl-C", "One step back", "go one step back",
		{ NULL, "one step back", "one step back", "drop" }, 2, false, act_step_back },
	{ ONE('!'), "!", "All acts", "see all acts by name", { "acts", "acts", "acts", "acts" }, 1, false,
		act_all },
	{ ONE('?'), "?", "Help", "see this list", { "help", "help", "help" }, 1, false, act_help },
};

const struct act *acts_all(int *count)
{
	*count = (int)(sizeof table / sizeof *table);
	return table;
}

const struct act *acts_find(int key)
{
	for (size_t i = 0; i < sizeof table / sizeof *table; i++)
		if (key >= table[i].key && key <= table[i].until)
			return &table[i];
	return NULL;
}

static void say_looking(struct editor *editor)
{
	if (editor->store.access == STORE_LOOKS && editor->store.holder)
		editor_say(editor, "Looking only: another session (process %ld) is drawing this plot.",
			editor->store.holder);
	else if (editor->store.access == STORE_LOOKS)
		editor_say(editor, "Looking only: another session is drawing this plot.");
	else
		editor_say(editor, "Looking only: rescued work waits to be taken up at the next start.");
}

void acts_press(struct editor *editor, int key)
{
	const struct act *act = acts_find(key);

	text_clear(&editor->message);
	editor_end_drag(editor); /* a key ends what the mouse has begun */
	if (!act)
		editor_say(editor, "This key does nothing. Press ! for all that can be done.");
	else if (act->writes && editor->is_looking)
		say_looking(editor);
	else
		act->run(editor, key);
}
