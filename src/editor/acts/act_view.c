#include "editor/acts/acts.h"

static void say_grain(struct editor *editor)
{
	const struct grain *grain = view_grain(&editor->view);
	struct text size = TEXT_EMPTY;

	editor_name_size(editor, grain->across, grain->down, &size);
	if (grain->down == 1)
		editor_say(editor, grain->columns == 2 ? "Two columns a cell." : "One column a cell.");
	else
		editor_say(editor, "A character stands for %d x %d cells, %s: the commonest letter.",
			grain->across, grain->down, size.bytes);
	text_fini(&size);
}

static void zoom_to(struct editor *editor, int zoom)
{
	view_zoom(&editor->view, &editor->plot.ground, editor->cursor, zoom);
	say_grain(editor);
}

void act_nearer(struct editor *editor, int key)
{
	(void)key;
	if (editor->view.zoom > 0)
		zoom_to(editor, editor->view.zoom - 1);
	else
		editor_say(editor, "Nearer than two columns a cell is not to be had.");
}

void act_farther(struct editor *editor, int key)
{
	int whole = view_whole(&editor->view, &editor->plot.ground);

	(void)key;
	if (editor->view.zoom < whole)
		zoom_to(editor, editor->view.zoom + 1);
	else
		editor_say(editor, "The whole plan is in view.");
}

void act_overview(struct editor *editor, int key)
{
	struct view *view = &editor->view;
	int whole = view_whole(view, &editor->plot.ground), zoom = view->zoom;

	(void)key;
	if (zoom < whole) {
		view->near = zoom;
		zoom_to(editor, whole);
	} else if (view->near < zoom) {
		zoom_to(editor, view->near);
	} else {
		editor_say(editor, "The whole plan is in view.");
	}
}

void act_centre(struct editor *editor, int key)
{
	struct place before = view_character(&editor->view, editor->cursor), now;

	(void)key;
	view_centre(&editor->view, &editor->plot.ground, editor->cursor);
	now = view_character(&editor->view, editor->cursor);
	if (now.x == before.x && now.y == before.y)
		editor_say(editor, "The cursor is as near the middle as the plan lets it be.");
}

/* The cursor comes along where it would be left behind; a trail is not laid by that. */
void act_scroll(struct editor *editor, int key)
{
	const struct ground *ground = &editor->plot.ground;
	int right = key == PRESS_VIEW_LEFT ? -1 : key == PRESS_VIEW_RIGHT ? 1 : 0;
	int down = key == PRESS_VIEW_UP ? -1 : key == PRESS_VIEW_DOWN ? 1 : 0;

	if (!view_scroll(&editor->view, ground, right, down))
		editor_say(editor, "The plan ends here.");
	editor->cursor = view_nearest(&editor->view, ground, editor->cursor);
}

void act_panel(struct editor *editor, int key)
{
	static const struct {
		enum panel_width next;
		const char *words;
	} turns[] = {
		[PANEL_NORMAL] = { PANEL_WIDE, "The panel is wide." },
		[PANEL_WIDE] = { PANEL_HIDDEN, "The panel is hidden; : or Tab brings it back." },
		[PANEL_HIDDEN] = { PANEL_NORMAL, "The panel is back." },
	};

	(void)key;
	editor_say(editor, "%s", turns[editor->panel].words);
	editor->panel = turns[editor->panel].next;
}

void act_measure(struct editor *editor, int key)
{
	(void)key;
	editor->is_measuring = !editor->is_measuring;
	editor_say(editor, editor->is_measuring ? "The rulers measure what the cursor is in." :
		"The rulers measure from the plan's corner only.");
}

void act_mouse(struct editor *editor, int key)
{
	(void)key;
	editor->is_pointing = !editor->is_pointing;
	editor->drag = DRAG_NONE;
	editor_say(editor, editor->is_pointing ?
		"Mouse on: a click goes there, one more lays, a drag pegs." :
		"Mouse off: it is the terminal's own again.");
}
