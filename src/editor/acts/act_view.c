#include "editor/acts/act_groups.h"

static void zoom_to(struct editor *editor, int zoom)
{
	struct report report = editor_report(editor, &editor->words);
	const struct grain *grain;

	view_zoom(&editor->view, &editor->plot->ground, editor->cursor, zoom);
	grain = view_grain(&editor->view);
	if (grain->down == 1)
		editor_say(editor, "%s a cell.", grain->columns == 4 ? "Four columns and two rows" :
			grain->columns == 2 ? "Two columns" : "One column");
	else
		editor_say(editor,
			"A character stands for %d x %d cells, %s: what most of them are.",
			grain->across, grain->down,
			plain_cells(&report, grain->across, grain->down));
}

static void act_nearer(struct editor *editor)
{
	if (editor->view.zoom > ZOOM_NEAREST)
		zoom_to(editor, editor->view.zoom - 1);
	else
		editor_say(editor, "This is the nearest view.");
}

static void act_farther(struct editor *editor)
{
	int whole = view_whole(&editor->view, &editor->plot->ground);

	if (editor->view.zoom < whole)
		zoom_to(editor, editor->view.zoom + 1);
	else
		editor_say(editor, "The whole plan is in view.");
}

static void act_overview(struct editor *editor)
{
	struct view *view = &editor->view;
	int whole = view_whole(view, &editor->plot->ground), zoom = view->zoom;

	if (zoom < whole) {
		view->near = zoom;
		zoom_to(editor, whole);
	} else if (view->near < zoom) {
		zoom_to(editor, view->near);
	} else {
		editor_say(editor, "The whole plan is in view.");
	}
}

static void act_centre(struct editor *editor)
{
	struct place before = view_character(&editor->view, editor->cursor), now;

	view_centre(&editor->view, &editor->plot->ground, editor->cursor);
	now = view_character(&editor->view, editor->cursor);
	if (now.x == before.x && now.y == before.y)
		editor_say(editor, "The cursor is as near the middle as the plan lets it be.");
}

/* The cursor comes along where it would leave the view; that lays no trail. */
static void act_scroll(struct editor *editor, int key)
{
	const struct ground *ground = &editor->plot->ground;
	int right = key == PRESS_VIEW_LEFT ? -1 : key == PRESS_VIEW_RIGHT ? 1 : 0;
	int down = key == PRESS_VIEW_UP ? -1 : key == PRESS_VIEW_DOWN ? 1 : 0;

	if (!view_scroll(&editor->view, ground, right, down))
		editor_say(editor, "The plan ends here.");
	editor->cursor = view_nearest(&editor->view, ground, editor->cursor);
}

static void act_measure(struct editor *editor)
{
	editor->is_measuring = !editor->is_measuring;
	editor_say(editor, editor->is_measuring ? "The rulers measure what the cursor is in." :
		"The rulers measure from the plan's corner only.");
}

static const struct act acts[] = {
	{ .id = ACT_FARTHER, .keys = { { '/', '/' }, { PRESS_F8, PRESS_F8 } },
		.key_name = "/ F8", .key_said = "/", .name = "Farther",
		.wish = "see more of the plan, smaller",
		.words = "zoom out reduce", .run = act_farther },
	{ .id = ACT_NEARER, .keys = { { '\\', '\\' }, { PRESS_F7, PRESS_F7 } },
		.key_name = "\\ F7", .key_said = "\\", .name = "Nearer",
		.wish = "see it larger again",
		.words = "zoom in bigger enlarge closer", .run = act_nearer },
	{ .id = ACT_OVERVIEW, .keys = { { '_', '_' }, { PRESS_F9, PRESS_F9 } },
		.key_name = "_ F9", .key_said = "_", .name = "Overview",
		.wish = "see the whole plan, and back",
		.words = "zoom fit all", .run = act_overview },
	{ .id = ACT_CENTRE, .key_name = "!", .name = "Centre",
		.wish = "have the cursor in the middle",
		.words = "center", .run = act_centre },
	{ .id = ACT_MEASURE, .keys = ONE_KEY('"'), .key_name = "\"", .name = "Measure",
		.wish = "measure what the cursor is in",
		.words = "ruler length distance dimensions", .run = act_measure },
	{ .id = ACT_SCROLL, .keys = { { PRESS_VIEW_LEFT, PRESS_VIEW_DOWN } },
		.key_name = "Shift-arrows", .name = "Scroll", .wish = "see what lies beside",
		.words = "pan", .run_by_key = act_scroll },
};
const struct act_group acts_of_view = ACT_GROUP("See", acts);
