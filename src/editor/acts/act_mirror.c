#include "plot/edit/fence_lay.h"
#include "plot/edit/plants_move.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

const char *act_differ_words(int64_t cells)
{
	return cells == 1 ? "cell differs from its image" : "cells differ from their images";
}

/* Off is the same as unset, and leaves no line in the file. */
static void act_mirror(struct editor *editor, int pressed)
{
	struct block *head = &editor_edit(editor)->details.head;
	enum mirror_kind kind = mirror_toggled(mirror_of(editor->plot).kind,
		(enum mirror_kind)pressed);

	block_set(head, HEAD_MIRROR,
		(struct value){ .set = kind != MIRROR_OFF, .as.number = kind });
	editor->said_outside = false;
	editor_stroke(editor);
	if (kind == MIRROR_OFF)
		editor_say(editor, "The mirror is off.");
	else if (editor_faults(editor) == 0)
		editor_say(editor, "Mirror %s: both sides match.", mirror_word(kind));
	else
		editor_say(editor, "Mirror %s: %lld %s. Press %s to copy this side over.",
			mirror_word(kind), (long long)editor->faults,
			act_differ_words(editor->faults), acts_key(ACT_FOLD));
}

/* False, having said what to do first, where the mirror is off. */
static bool has_mirror(struct editor *editor, const struct mirror *mirror)
{
	if (mirror->kind == MIRROR_OFF)
		editor_say(editor, "The mirror is off: turn it on with %s or %s or %s first.",
			acts_key(ACT_LEFT_RIGHT), acts_key(ACT_TOP_BOTTOM),
			acts_key(ACT_HALF_TURN));
	return mirror->kind != MIRROR_OFF;
}

static void act_fold(struct editor *editor)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct plot *plot;

	if (!has_mirror(editor, &mirror))
		return;
	if (!mirror_has_side(&mirror, editor->cursor.x, editor->cursor.y)) {
		editor_say(editor, "The cursor is on the axis: move it to the side to be copied.");
		return;
	}
	plot = editor_edit(editor);
	lay_fold(plot, editor->cursor.x, editor->cursor.y);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_fold(plot, &plot->details.fences[i], editor->cursor);
	plants_fold(plot, editor->cursor);
	if (editor_stroke(editor))
		editor_say(editor, "Folded: this side lies on the other now.");
	else
		editor_say(editor, "Both sides match already.");
}

/* "b Bed here; its image at 4 ft across, 2 ft down is p Path." */
static void say_fault(struct editor *editor, const struct mirror *mirror)
{
	const struct ground *ground = &editor->plot->ground;
	struct place at = editor->cursor, images[IMAGES_MOST];
	int count = mirror_cells(mirror, at.x, at.y, images);
	struct report report = editor_report(editor, &editor->words);
	char letter = ground_cell(ground, at.x, at.y);

	editor_say(editor, "%s %s%s", plain_count(&report, editor->faults),
		editor->faults == 1 ? "fault, here: " : "faults. Here is ",
		plain_letter(&report, letter));
	for (int i = 1; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(ground, image.x, image.y) ||
		    ground_cell(ground, image.x, image.y) == letter)
			continue;
		text_print(&editor->message, "; its image at %s is %s", plain_place(&report, image),
			plain_letter(&report, ground_cell(ground, image.x, image.y)));
	}
	text_add(&editor->message, ".");
}

/* The next one after the cursor in reading order; after the last comes the first. */
static void act_next_fault(struct editor *editor)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct place after = { editor->cursor.x + 1, editor->cursor.y }, first = { 0, 0 };

	if (!has_mirror(editor, &mirror))
		return;
	if (!editor_faults(editor)) {
		editor_say(editor, "Both sides match: there is no fault.");
		return;
	}
	if (!mirror_next_fault(&mirror, &editor->plot->ground, after, &editor->cursor))
		mirror_next_fault(&mirror, &editor->plot->ground, first, &editor->cursor);
	say_fault(editor, &mirror);
}

static const struct act acts[] = {
	{ .id = ACT_LEFT_RIGHT, .keys = { { '|', '|' }, { PRESS_F5, PRESS_F5 } },
		.key_name = "| F5", .key_said = "|", .name = "Mirror left-right",
		.wish = "draw left and right alike",
		.words = "symmetry symmetric", .writes = true, .run_with = act_mirror,
		.with = MIRROR_LEFT_RIGHT },
	{ .id = ACT_TOP_BOTTOM, .keys = { { '-', '-' }, { PRESS_F6, PRESS_F6 } },
		.key_name = "- F6", .key_said = "-", .name = "Mirror top-bottom",
		.wish = "draw top and bottom alike",
		.words = "symmetry symmetric", .writes = true, .run_with = act_mirror,
		.with = MIRROR_TOP_BOTTOM },
	{ .id = ACT_HALF_TURN, .keys = ONE_KEY('%'), .key_name = "%", .name = "Mirror half-turn",
		.wish = "draw the same turned half round",
		.words = "symmetry symmetric rotate", .writes = true, .run_with = act_mirror,
		.with = MIRROR_HALF_TURN },
	{ .id = ACT_FOLD, .keys = ONE_KEY('&'), .key_name = "&", .name = "Fold",
		.wish = "copy this side over the other",
		.words = "symmetry half mirror", .writes = true, .run = act_fold },
	{ .id = ACT_NEXT_FAULT, .keys = ONE_KEY('\''), .key_name = "'", .name = "Next fault",
		.wish = "go to where the sides differ",
		.words = "mirror symmetry broken error", .run = act_next_fault },
};
const struct act_group acts_of_mirror = ACT_GROUP("Mirror", acts);
