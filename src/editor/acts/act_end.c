#include "editor/acts/acts.h"

void act_tell_outside(struct editor *editor, struct laid laid)
{
	if (laid.outside && !editor->told_outside) {
		editor_say(editor, "Some images fall outside the plan; they are left out.");
		editor->told_outside = true;
	}
}

void act_lay_end(struct editor *editor, struct laid laid, const char *nothing)
{
	if (!editor_stroke(editor) && nothing)
		editor_say(editor, "%s", nothing);
	act_tell_outside(editor, laid);
}

void act_step_back(struct editor *editor, int key)
{
	(void)key;
	if (editor->is_marked)
		editor_say(editor, "The mark is dropped; the ground stays as it is.");
	else if (!editor->is_pegged && !editor->is_trailing)
		editor_say(editor, "At rest already. Press < to leave, ? for help.");
	editor_drop_mark(editor);
	editor->is_pegged = editor->is_trailing = false;
}
