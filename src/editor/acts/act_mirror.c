#include "editor/acts/acts.h"
#include "base/show.h"
#include "plot/edit/fence_lay.h"

static const char *plural(int64_t count)
{
	return count == 1 ? "cell differs from its image" : "cells differ from their images";
}

static void say_mirror(struct editor *editor, enum mirror_kind kind)
{
	editor_refresh(editor);
	if (kind == MIRROR_OFF)
		editor_say(editor, "The mirror is off.");
	else if (editor->faults == 0)
		editor_say(editor, "Mirror %s: both sides match.", mirror_word(kind));
	else
		editor_say(editor, "Mirror %s: %lld %s. Press & to copy this side over.",
			mirror_word(kind), (long long)editor->faults, plural(editor->faults));
}

/* Off is the same as unset, and leaves no line in the file. */
static void mirror_turn(struct editor *editor, enum mirror_kind pressed)
{
	struct block *head = &editor->plot.details.head;
	enum mirror_kind now = mirror_of(&editor->plot).kind;
	enum mirror_kind kind = mirror_toggled(now, pressed);

	block_set(head, HEAD_MIRROR, (struct value){ .set = kind != MIRROR_OFF, .as.number = kind });
	editor->told_outside = false;
	editor_stroke(editor);
	say_mirror(editor, kind);
}

void act_left_right(struct editor *editor, int key)
{
	(void)key;
	mirror_turn(editor, MIRROR_LEFT_RIGHT);
}

void act_top_bottom(struct editor *editor, int key)
{
	(void)key;
	mirror_turn(editor, MIRROR_TOP_BOTTOM);
}

void act_half_turn(struct editor *editor, int key)
{
	(void)key;
	mirror_turn(editor, MIRROR_HALF_TURN);
}

void act_fold(struct editor *editor, int key)
{
	struct mirror mirror = mirror_of(&editor->plot);

	(void)key;
	if (mirror.kind == MIRROR_OFF) {
		editor_say(editor, "The mirror is off: turn it on with | or - or %% first.");
		return;
	}
	if (!mirror_has_side(&mirror, editor->cursor.x, editor->cursor.y)) {
		editor_say(editor, "The cursor is on the axis: move it to the side to be copied.");
		return;
	}
	lay_fold(&editor->plot, editor->cursor.x, editor->cursor.y);
	for (size_t i = 0; i < editor->plot.details.fence_count; i++)
		fence_fold(&editor->plot, &editor->plot.details.fences[i], editor->cursor);
	if (editor_stroke(editor))
		editor_say(editor, "Folded: this side lies on the other now.");
	else
		editor_say(editor, "Both sides match already.");
}

/* "b Bed here; its image at 4 ft across, 2 ft down is p Path." */
static void say_fault(struct editor *editor, const struct mirror *mirror)
{
	const struct ground *ground = &editor->plot.ground;
	struct place at = editor->cursor, images[IMAGES_MOST];
	int count = mirror_cells(mirror, at.x, at.y, images);
	struct text words = TEXT_EMPTY;

	show_count(&words, editor->faults);
	text_add(&words, editor->faults == 1 ? " fault, here: " : " faults. Here is ");
	editor_name_letter(editor, ground_cell(ground, at.x, at.y), &words);
	for (int i = 1; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(ground, image.x, image.y) ||
		    ground_cell(ground, image.x, image.y) == ground_cell(ground, at.x, at.y))
			continue;
		text_add(&words, "; its image at ");
		editor_name_place(editor, image, &words);
		text_add(&words, " is ");
		editor_name_letter(editor, ground_cell(ground, image.x, image.y), &words);
	}
	editor_say(editor, "%s.", words.bytes);
	text_fini(&words);
}

/* The next one behind the cursor in reading order; after the last comes the first. */
void act_next_fault(struct editor *editor, int key)
{
	struct mirror mirror = mirror_of(&editor->plot);
	struct place behind = { editor->cursor.x + 1, editor->cursor.y }, first = { 0, 0 };

	(void)key;
	editor_refresh(editor);
	if (mirror.kind == MIRROR_OFF) {
		editor_say(editor, "The mirror is off: turn it on with | or - or %% first.");
		return;
	}
	if (!editor->faults) {
		editor_say(editor, "Both sides match: there is no fault.");
		return;
	}
	if (!mirror_next_fault(&mirror, &editor->plot.ground, behind, &editor->cursor))
		mirror_next_fault(&mirror, &editor->plot.ground, first, &editor->cursor);
	say_fault(editor, &mirror);
}
