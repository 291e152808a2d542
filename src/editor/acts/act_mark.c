#include "editor/acts/acts.h"
#include "plot/edit/patch.h"
#include "editor/acts/choice.h"

static bool is_marked(struct editor *editor)
{
	if (!editor->is_marked)
		editor_say(editor, "Nothing is marked: peg two corners with Enter, then pick Mark it.");
	return editor->is_marked;
}

static void say_size(struct editor *editor, const char *what, const char *then)
{
	struct text size = TEXT_EMPTY;

	editor_name_size(editor, editor->carried.columns, editor->carried.rows, &size);
	editor_say(editor, "%s: %s.%s", what, size.bytes, then);
	text_fini(&size);
}

/* The cursor goes to the piece's top left cell, so that a stamp at once changes it in its place. */
void act_mark(struct editor *editor, int key)
{
	(void)key;
	if (editor->is_marked) {
		editor_say(editor, "It is marked already; Esc drops the mark.");
		return;
	}
	if (!editor->is_pegged) {
		editor_say(editor, "Peg a corner first: Enter, go to the other corner, and Enter again.");
		return;
	}
	editor_mark(editor);
	editor->cursor = (struct place){ editor->marked.left, editor->marked.top };
	say_size(editor, "Marked", " Go on; Space stamps it there, Enter moves it.");
}

/* The legend may have lost an entry since. */
static bool letters_stand(struct editor *editor)
{
	const struct ground *carried = &editor->carried;

	for (int i = 0; i < carried->columns * carried->rows; i++) {
		char letter = carried->cells[i];

		if (letter == OPEN_GROUND || plot_entry(&editor->plot, letter))
			continue;
		editor_say(editor, "%c is no longer in the legend: drop the mark and mark anew.", letter);
		return false;
	}
	return true;
}

static bool is_over_the_edge(const struct editor *editor)
{
	const struct ground *ground = &editor->plot.ground, *carried = &editor->carried;

	return editor->cursor.x + carried->columns > ground->columns ||
		editor->cursor.y + carried->rows > ground->rows;
}

static struct laid stamp(struct editor *editor)
{
	return patch_stamp(&editor->plot, &editor->carried, editor->cursor.x, editor->cursor.y);
}

void act_stamp(struct editor *editor, int key)
{
	struct laid laid;

	(void)key;
	if (!is_marked(editor) || !letters_stand(editor))
		return;
	laid = stamp(editor);
	if (is_over_the_edge(editor)) {
		laid.outside = false; /* said here */
		editor_say(editor, "Stamped as far as the plan reaches.");
	} else {
		editor_say(editor, "Stamped; it is still carried.");
	}
	act_lay_end(editor, laid, ACT_IS_THERE);
}

void act_move_marked(struct editor *editor, int key)
{
	struct laid lifted, laid;

	(void)key;
	if (!is_marked(editor) || !letters_stand(editor))
		return;
	if (is_over_the_edge(editor)) {
		editor_say(editor, "Moved here it would reach over the plan's edge, and lose cells there.");
		return;
	}
	lifted = lay_rectangle(&editor->plot, editor->marked, OPEN_GROUND);
	laid = stamp(editor);
	laid.outside = laid.outside || lifted.outside;
	editor_drop_mark(editor);
	editor_say(editor, "Moved; Backspace takes it back.");
	act_lay_end(editor, laid, ACT_IS_THERE);
}

void act_lift_marked(struct editor *editor, int key)
{
	(void)key;
	if (!is_marked(editor))
		return;
	editor_say(editor, "Lifted, and still carried: Space stamps it.");
	act_lay_end(editor, lay_rectangle(&editor->plot, editor->marked, OPEN_GROUND),
		"Open ground already.");
}

void act_turn(struct editor *editor, int key)
{
	(void)key;
	if (!is_marked(editor))
		return;
	patch_turn(&editor->carried);
	say_size(editor, "Turned a quarter clockwise", "");
}

void act_flip_across(struct editor *editor, int key)
{
	(void)key;
	if (!is_marked(editor))
		return;
	patch_flip(&editor->carried, true);
	say_size(editor, "Flipped, left for right", "");
}

void act_flip_down(struct editor *editor, int key)
{
	(void)key;
	if (!is_marked(editor))
		return;
	patch_flip(&editor->carried, false);
	say_size(editor, "Flipped, top for bottom", "");
}

void act_mark_ask(struct editor *editor)
{
	static const struct choice choices[] = {
		{ "Move it here", NULL, act_move_marked }, { "Stamp it here", "Space", act_stamp },
		{ "Turn it a quarter", "}", act_turn }, { "Flip it across", "[", act_flip_across },
		{ "Flip it down", "]", act_flip_down }, { "Lift it", "Delete", act_lift_marked },
		{ "Crop the plan to it", NULL, act_crop_to_mark },
		{ "Drop the mark", "Esc", act_step_back },
	};
	struct text words = TEXT_EMPTY;

	text_add(&words, "Carried, ");
	editor_name_size(editor, editor->carried.columns, editor->carried.rows, &words);
	text_add(&words, ":");
	choice_ask(editor, words.bytes, choices, sizeof choices / sizeof *choices);
	text_fini(&words);
}
