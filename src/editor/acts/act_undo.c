#include "editor/acts/acts.h"

static void say_left(struct editor *editor, const char *what, size_t left)
{
	editor_say(editor, "%s; %zu more can be.", what, left);
}

void act_take_back(struct editor *editor, int key)
{
	(void)key;
	if (editor_take_back(editor))
		say_left(editor, "Taken back", history_undo_count(editor->history));
	else
		editor_say(editor, "There is no stroke to take back.");
}

void act_put_back(struct editor *editor, int key)
{
	(void)key;
	if (editor_put_back(editor))
		say_left(editor, "Put back", history_redo_count(editor->history));
	else
		editor_say(editor, "Nothing was taken back that could be put back.");
}
