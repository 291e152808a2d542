#include "screen/stage.h"
#include "editor/acts/acts.h"
#include "editor/here.h"
#include "screen/aside.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/panel.h"
#include "screen/patience.h"
#include "screen/plan.h"
#include "screen/plan_light.h"
#include "screen/ruler.h"
#include "screen/status.h"
#include "screen/terminal.h"

struct layout stage_layout(const struct stage *stage)
{
	const struct editor *editor = &stage->editor;
	const struct wanted wanted = { editor->panel,
		view_columns_of_all(&editor->view, &editor->plot->ground), stage->here_rows,
		light_of(editor).is_asked };

	return layout_of(LINES, COLS, &wanted);
}

/* What is under the cursor has as many rows as its words take, and keeps those it had while the
 * page has no use for them: so neither moves with every step. */
static void fit_here(struct stage *stage)
{
	struct layout layout = stage_layout(stage);
	int needed;

	if (layout.is_too_small)
		return;
	needed = panel_here_rows(&layout, &stage->here);
	if (needed > stage->here_rows || panel_top_most(&stage->editor, &layout) > 0)
		stage->here_rows = needed;
}

/* Behind a list or a card that is not seen nothing can be done. */
static void draw_too_small(const struct editor *editor, const struct layout *layout,
	const struct front *front)
{
	struct arena words = ARENA_EMPTY;
	const char *then = front ? "What was asked waits." :
		arena_print(&words, "%s saves it.", acts_key(ACT_SAVE));

	draw_wrapped(&layout->screen, 0, arena_print(&words,
		"This window has %d columns and %d rows; the plan needs %d and %d. "
		"Make it larger to go on: %s is kept as it is. %s%s%s",
		layout->screen.columns, layout->screen.rows, LEAST_COLUMNS, LEAST_ROWS,
		editor->name, then, editor->message.length ? "\n" : "",
		editor->message.bytes), LOOK_PLAIN);
	arena_clear(&words);
	curs_set(1);
	move(0, 0);
}

static void draw_state(const struct stage *stage, const struct layout *layout, enum state state)
{
	const struct editor *editor = &stage->editor;

	status_draw(editor, layout, state);
	ruler_draw(editor, layout);
	plan_draw(editor, layout);
	plan_light_draw_scale(editor, &layout->scale);
	panel_draw(editor, layout, &stage->here);
}

static void draw_alone(const struct stage *stage, const struct layout *layout)
{
	const struct editor *editor = &stage->editor;

	draw_state(stage, layout, editor_state(editor));
	if (editor->message.length)
		status_message(layout, editor->message.bytes);
	else
		status_rectangle(editor, layout);
	status_keys(editor, layout, editor_state(editor));
	plan_point(editor, layout);
	curs_set(0); /* its cell is painted */
}

/* The view is moved aside for as long as that takes. */
static void draw_behind(struct stage *stage, const struct layout *layout,
	const struct front *front)
{
	struct view *view = &stage->editor.view, own = *view;
	struct area left = front->leaves(front, layout);

	*view = aside_view(&stage->editor, layout, &left);
	draw_state(stage, layout, front->state);
	*view = own;
	curs_set(1);
	status_key_words(layout, front->keys);
	front->draw(front, layout);
}

/* Has the terminal report the mouse, or not, as the editor has it. */
static void point_mouse(struct stage *stage)
{
	struct editor *editor = &stage->editor;

	if (editor->is_pointing && !terminal_has_mouse()) {
		editor->is_pointing = false;
		editor_say(editor, "This terminal does not report a mouse.");
	}
	if (stage->is_pointing != editor->is_pointing)
		terminal_point(editor->is_pointing);
	stage->is_pointing = editor->is_pointing;
}

/* All that is shown, the plan first: some pages take longer. */
static bool shown_refresh(struct editor *editor)
{
	return editor_refresh_light(editor) && editor_refresh(editor);
}

/* Counts what is not counted; false where patience ended first. Where it is known to, the plan is
 * not kept waiting. */
static bool count(struct stage *stage, enum until until, bool (*counts)(struct editor *editor))
{
	struct patience patience;
	bool is_done;

	if (editor_is_counted(&stage->editor) && editor_has_light(&stage->editor))
		return true;
	if (stage->is_slow && until == UNTIL_SOON)
		return false;
	patience_begin(&patience, &stage->keys, until);
	is_done = counts(&stage->editor);
	patience_end();
	if (is_done || patience_was_long(&patience))
		stage->is_slow = patience_was_long(&patience);
	return is_done;
}

/* Fits the state to the screen: the view follows the cursor, and the page is turned no further than
 * its end. */
static void settle(struct editor *editor, const struct layout *layout)
{
	struct mirror mirror;
	int most;

	if (layout->is_too_small)
		return;
	mirror = mirror_of(editor->plot);
	view_fit(&editor->view, &mirror, layout->plan.rows, layout->plan.columns);
	view_follow(&editor->view, &editor->plot->ground, editor->cursor);
	editor->page_rows = panel_page_rows(layout);
	most = panel_top_most(editor, layout);
	editor->page_top = editor->page_top < most ? editor->page_top : most;
}

void stage_show(struct stage *stage, const struct front *front)
{
	struct layout layout;

	point_mouse(stage);
	stage->keys.is_asking = front != NULL;
	stage->front = front;
	if (keys_are_waiting(&stage->keys))
		return;
	count(stage, UNTIL_SOON, shown_refresh);
	editor_draw(&stage->editor);
	text_clear(&stage->here);
	here_words(&stage->editor, &stage->here);
	fit_here(stage);
	layout = stage_layout(stage);
	settle(&stage->editor, &layout);
	erase();
	if (layout.is_too_small)
		draw_too_small(&stage->editor, &layout, front);
	else if (front)
		draw_behind(stage, &layout, front);
	else
		draw_alone(stage, &layout);
	rows_send(&stage->rows);
}

static bool task_until(struct stage *stage, struct task *task, enum until until)
{
	struct patience patience;
	bool is_done;

	patience_begin(&patience, &stage->keys, until);
	is_done = task->run(task);
	patience_end();
	return is_done;
}

bool stage_await(struct stage *stage, struct task *task)
{
	struct editor *editor = &stage->editor;
	bool is_done;

	if (task_until(stage, task, UNTIL_SOON))
		return true;
	editor_say(editor, "%s. Esc gives it up.", task->words);
	stage_show(stage, NULL);
	is_done = task_until(stage, task, UNTIL_ESCAPE);
	if (!is_done && stage->keys.held == PRESS_ESCAPE)
		keys_next(&stage->keys);
	text_clear(&editor->message);
	return is_done;
}

/* Counts on until something comes on the line, and then it is false; what the panel is to show is
 * shown as soon as it is there. */
static bool count_on(struct stage *stage)
{
	struct editor *editor = &stage->editor;
	struct patience patience;
	bool is_done, had_second, had_sun;

	if (!editor_has_light(editor) && count(stage, UNTIL_KEY, editor_refresh_light))
		stage_show(stage, stage->front);
	if (editor_has_light(editor) && !editor_is_counted(editor) &&
	    count(stage, UNTIL_KEY, editor_refresh))
		stage_show(stage, stage->front);
	had_second = editor->pages.pages[(editor->page + 1) % pages_count()].is_made;
	had_sun = pages_sun(&editor->pages) != NULL;
	patience_begin(&patience, &stage->keys, UNTIL_KEY);
	is_done = editor_is_counted(editor) && editor_has_light(editor) &&
		editor_refresh_pages(editor);
	patience_end();
	/* The second page may stand beside the first; the cursor's cell has hours of sun now. */
	if (is_done && (!had_second || (!had_sun && pages_sun(&editor->pages))))
		stage_show(stage, stage->front);
	return is_done;
}

/* Waits with something to do, unless a key was typed ahead: what has come may have been no key. */
static void wait_counting(struct stage *stage)
{
	while (!keys_are_waiting(&stage->keys) && !count_on(stage) && keys_look(&stage->keys) >= 0)
		;
}

void stage_pause(struct stage *stage)
{
	terminal_pause();
	rows_forget(&stage->rows);
	stage->is_pointing = false;
}

/* It was stopped without having been asked. */
static void go_on(struct stage *stage)
{
	terminal_continue();
	rows_forget(&stage->rows);
	stage->is_pointing = false;
}

/* On a screen too small to show anything: an end; the key of the list that begins with saving, but
 * not where something in front of the plan would take it. */
static bool is_taken_unseen(const struct stage *stage, int key)
{
	const struct act *act = acts_find(key);

	return key == PRESS_OVER || (!stage->front && act && act->id == ACT_FILES);
}

int stage_key(struct stage *stage)
{
	int key;

	wait_counting(stage);
	key = keys_next(&stage->keys);
	if (key == PRESS_PAUSE)
		stage_pause(stage);
	if (key == PRESS_CONTINUE)
		go_on(stage);
	if (key == PRESS_REPAINT)
		terminal_repaint();
	if (key == PRESS_PAUSE || key == PRESS_CONTINUE || key == PRESS_REPAINT)
		return PRESS_RESIZE;
	if (key == PRESS_POINT && !stage->is_pointing)
		return PRESS_RESIZE; /* a report that nobody asked for */
	if (stage_layout(stage).is_too_small && !is_taken_unseen(stage, key))
		return PRESS_RESIZE;
	return key;
}
