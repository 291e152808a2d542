#include "editor/acts/act_groups.h"

static void act_mouse(struct editor *editor)
{
	editor->is_pointing = !editor->is_pointing;
	editor->drag = DRAG_NONE;
	editor_say(editor, editor->is_pointing ?
		"Mouse on: a click goes there, one more lays, a drag pegs." :
		"Mouse off: it is the terminal's own again.");
}

static const char *mouse_state(const struct editor *editor)
{
	return editor->is_pointing ? "on" : "off";
}

static void act_pause(struct editor *editor)
{
	editor->asker->pause(editor->asker);
}

static void act_repaint(struct editor *editor)
{
	editor->asker->repaint(editor->asker);
}

static const struct act acts[] = {
	{ .id = ACT_MOUSE, .key_name = "!", .name = "Mouse",
		.wish = "point with the mouse, or not", .state = mouse_state,
		.words = "click pointer", .run = act_mouse },
	{ .id = ACT_PAUSE, .keys = ONE_KEY(PRESS_PAUSE), .key_name = "Ctrl-Z", .name = "Pause",
		.wish = "go to the shell; fg comes back",
		.words = "suspend background", .run = act_pause },
	{ .id = ACT_REPAINT, .keys = ONE_KEY(PRESS_REPAINT), .key_name = "Ctrl-L",
		.name = "Draw afresh", .wish = "clean up a garbled screen",
		.words = "redraw refresh repaint", .run = act_repaint },
};
const struct act_group acts_of_program = ACT_GROUP("Program", acts);
