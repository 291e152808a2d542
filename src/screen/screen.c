#include "screen/screen.h"
#include "base/complain.h"
#include "editor/acts/acts.h"
#include "editor/acts/opening.h"
#include "screen/form.h"
#include "screen/guard.h"
#include "screen/pointer.h"
#include "screen/question.h"
#include "screen/signals.h"
#include "screen/terminal.h"

static int choose(struct asker *asker, const struct question *question)
{
	return question_choose((struct stage *)asker, question);
}

static bool fill(struct asker *asker, struct card *card)
{
	return form_fill((struct stage *)asker, card);
}

static bool await(struct asker *asker, struct task *task)
{
	return stage_await((struct stage *)asker, task);
}

static void pause_session(struct asker *asker)
{
	stage_pause((struct stage *)asker);
}

static void repaint(struct asker *asker)
{
	(void)asker;
	terminal_repaint();
}

static int idle(void *context)
{
	return editor_idle(context);
}

/* Keys until the session ends. */
static void session(struct stage *stage)
{
	struct editor *editor = &stage->editor;
	int key = PRESS_NOTHING;

	opening_ask(editor);
	while (!editor->is_over && key != PRESS_OVER) {
		struct layout layout;

		stage_show(stage, NULL);
		key = stage_key(stage);
		layout = stage_layout(stage);
		if (key == PRESS_PASTE)
			editor_say(editor, "Pasted text was ignored: it is never read as keys.");
		else if (key == PRESS_POINT)
			pointer_take(editor, &layout, &stage->keys.point);
		else if (key == PRESS_RESIZE || key == PRESS_OVER || key == PRESS_UNREAD)
			continue;
		else if (layout.is_too_small) /* its list would not be seen */
			acts_do(editor, ACT_SAVE);
		else
			acts_press(editor, key);
	}
}

/* Opens the terminal and lets people draw. Where the session is cut off with work that is not saved
 * *left gets a sentence about it. */
static int draw(struct stage *stage, struct text *message, struct text *left)
{
	if (!terminal_open(message))
		return 2;
	keys_open(&stage->keys);
	stage->keys.idle = idle;
	stage->keys.context = &stage->editor;
	session(stage);
	keys_close(&stage->keys);
	rows_fini(&stage->rows);
	text_fini(&stage->here);
	if (!stage->editor.is_over)
		editor_rescue(&stage->editor, left);
	terminal_close();
	return 0;
}

int screen_run(const char *path)
{
	struct stage stage = { .asker = { choose, fill, await, pause_session, repaint } };
	struct text message = TEXT_EMPTY, left = TEXT_EMPTY;
	int status = 2;

	editor_init(&stage.editor, &stage.asker, path);
	if (opening_read(&stage.editor, &message))
		status = draw(&stage, &message, &left);
	editor_fini(&stage.editor);
	if (left.length && guard_can_say())
		complain("%s", left.bytes);
	text_fini(&left);
	if (status == 0 && signals_ending())
		signals_die(signals_ending());
	if (status)
		complain("%s", message.bytes);
	text_fini(&message);
	return status;
}
