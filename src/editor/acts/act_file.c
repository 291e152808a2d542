#include "editor/acts/acts.h"
#include "base/memory.h"
#include "report/deliver.h"
#include "report/json/json.h"
#include "report/text/print.h"

#include <stdlib.h>
#include <string.h>

/* ---- Save ------------------------------------------------------------------------------------- */

static bool may_write_over(struct editor *editor)
{
	static const char *const answers[] = { "Keep the file as it is", "Write over it" };
	const struct question question = {
		.text = "Somebody else has changed the file since it was read here.",
		.answers = answers, .count = 2,
	};

	return !store_is_changed(&editor->store) ||
		editor->asker->choose(editor->asker, &question) == 1;
}

bool act_file_save(struct editor *editor)
{
	struct file_error error;

	if (!may_write_over(editor)) {
		editor_say(editor, "Not saved: the file stays as somebody else left it.");
		return false;
	}
	if (!store_save(&editor->store, &editor->plot, &error)) {
		editor_say(editor, "Not saved: %s.", error.sentence);
		return false;
	}
	editor->saved_position = editor->position;
	editor->strokes = 0;
	editor_say(editor, "Saved in %s.", editor->store.path);
	return true;
}

void act_save(struct editor *editor, int key)
{
	(void)key;
	act_file_save(editor);
}

/* ---- Takeoff ---------------------------------------------------------------------------------- */

static bool ends_in(const char *name, const char *ending)
{
	size_t length = strlen(name), end = strlen(ending);

	return length >= end && strcmp(name + length - end, ending) == 0;
}

/* "court.plot" gives "court.txt", in the same folder. */
static char *takeoff_name(const char *plot_path)
{
	struct text name = TEXT_EMPTY;
	size_t length = strlen(plot_path);

	if (ends_in(plot_path, ".plot"))
		length -= strlen(".plot");
	text_add_bytes(&name, plot_path, length);
	text_add(&name, ".txt");
	return name.bytes;
}

static bool may_replace(struct editor *editor, const char *sentence)
{
	static const char *const answers[] = { "Leave that file alone", "Write over it" };
	const struct question question = { .text = sentence, .answers = answers, .count = 2 };

	return editor->asker->choose(editor->asker, &question) == 1;
}

/* Only by the ending of its name does a takeoff for programs differ. */
static void print_json(struct sink *out, const void *context)
{
	const struct editor *editor = context;

	report_json(out, &editor->plot, &editor->takeoff);
}

static void print_text(struct sink *out, const void *context)
{
	const struct editor *editor = context;

	report_text(out, &editor->plot, &editor->takeoff, editor->name);
}

static void say_written(struct editor *editor, const char *path)
{
	int snags = (int)editor->takeoff.snags.count;

	if (!editor->takeoff.complete)
		editor_say(editor, "Takeoff written to %s. It is incomplete: see the snags.", path);
	else if (snags)
		editor_say(editor, "Takeoff written to %s. %d %s: read before anything is bought.", path,
			snags, snags == 1 ? "snag" : "snags");
	else
		editor_say(editor, "Takeoff written to %s.", path);
}

static bool takeoff_write(struct editor *editor, const char *path, struct fault *fault)
{
	const char *plot = editor->store.path;
	const struct file_content content = { ends_in(path, ".json") ? print_json : print_text,
		editor };
	struct file_error error;
	enum delivery delivery;

	editor_refresh(editor);
	delivery = report_deliver(path, &content, plot, false, &error);
	if (delivery == DELIVERY_WOULD_REPLACE && may_replace(editor, error.sentence))
		delivery = report_deliver(path, &content, plot, true, &error);
	if (delivery != DELIVERY_DONE)
		return fault_set(fault, 0, "%s.", error.sentence);
	say_written(editor, path);
	return true;
}

static bool takeoff_accept(struct sheet *sheet, struct fault *fault)
{
	struct value path;
	bool done;

	if (!sheet_read(sheet, 0, &path, fault))
		return false;
	done = takeoff_write(sheet->owner, path.as.text, fault);
	value_fini(VALUE_TEXT, &path);
	return done;
}

void act_takeoff(struct editor *editor, int key)
{
	static const struct value_rule file_name = { .kind = VALUE_TEXT, .least = 1, .most = 4000 };
	char *name = takeoff_name(editor->store.path);
	struct sheet sheet;

	(void)key;
	sheet_init(&sheet, 1);
	sheet.title = "Write the takeoff to a file";
	sheet.done = "write it";
	sheet.accept = takeoff_accept;
	sheet.owner = editor;
	sheet.fields[0].label = "File";
	sheet.fields[0].rule = &file_name;
	sheet.fields[0].required = true;
	sheet_type(&sheet, 0, name);
	editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
	free(name);
}

/* ---- Leave ------------------------------------------------------------------------------------ */

static int leave_ask(struct editor *editor)
{
	static const char *const answers[] = { "Save and leave", "Leave without saving", "Stay" };
	const struct question question = { .text = "Not saved since the last change. Leave?",
		.answers = answers, .count = 3 };

	return editor->asker->choose(editor->asker, &question);
}

void act_leave(struct editor *editor, int key)
{
	(void)key;
	if (editor_is_saved(editor) || editor->is_looking) {
		editor->is_over = true;
		return;
	}
	switch (leave_ask(editor)) {
	case 0:
		editor->is_over = act_file_save(editor);
		break;
	case 1:
		store_rescue_drop(&editor->store);
		editor->is_over = true;
		break;
	default:
		break;
	}
}
