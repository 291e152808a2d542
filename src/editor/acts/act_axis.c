#include "editor/acts/acts.h"
#include "base/show.h"
#include "editor/acts/choice.h"

/* What matters after the axis moved: whether it does anything, and what it broke. */
static void say_axis(struct editor *editor, const char *what)
{
	struct text faults = TEXT_EMPTY;

	editor_refresh(editor);
	show_count(&faults, editor->faults);
	if (mirror_of(&editor->plot).kind == MIRROR_OFF)
		editor_say(editor, "%s. The mirror is off: | or - or %% turns it on.", what);
	else if (editor->faults)
		editor_say(editor, "%s. Now %s %s.", what, faults.bytes, editor->faults == 1 ?
			"cell differs from its image" : "cells differ from their images");
	else
		editor_say(editor, "%s. Both sides match.", what);
	text_fini(&faults);
}

static void axis_set(struct editor *editor, struct value axis, const char *what)
{
	block_set(&editor->plot.details.head, HEAD_AXIS, axis);
	editor->told_outside = false;
	if (editor_stroke(editor))
		say_axis(editor, what);
	else
		editor_say(editor, "It stands there already.");
}

/* Half cells from the datum; the other axis stays where it is. */
static void upright_set(struct editor *editor, int across)
{
	struct mirror mirror = mirror_of(&editor->plot);
	struct value axis = { .set = true, .as.place = { across, mirror.down } };

	if (across < 1)
		editor_say(editor, "The axis cannot stand on the plan's edge: go right by a cell.");
	else
		axis_set(editor, axis, "The upright axis stands here");
}

static void level_set(struct editor *editor, int down)
{
	struct mirror mirror = mirror_of(&editor->plot);
	struct value axis = { .set = true, .as.place = { mirror.across, down } };

	if (down < 1)
		editor_say(editor, "The axis cannot stand on the plan's edge: go down by a cell.");
	else
		axis_set(editor, axis, "The level axis stands here");
}

static void upright_before(struct editor *editor, int key)
{
	(void)key;
	upright_set(editor, 2 * editor->cursor.x);
}

static void upright_through(struct editor *editor, int key)
{
	(void)key;
	upright_set(editor, 2 * editor->cursor.x + 1);
}

static void level_above(struct editor *editor, int key)
{
	(void)key;
	level_set(editor, 2 * editor->cursor.y);
}

static void level_through(struct editor *editor, int key)
{
	(void)key;
	level_set(editor, 2 * editor->cursor.y + 1);
}

static void both_in_middle(struct editor *editor, int key)
{
	(void)key;
	axis_set(editor, (struct value){ .set = false }, "Both axes stand in the plan's middle");
}

void act_axis(struct editor *editor, int key)
{
	struct place at = editor->cursor;
	const int halves[] = { 2 * at.x, 2 * at.x + 1, 2 * at.y, 2 * at.y + 1 };
	enum { PLACES = sizeof halves / sizeof *halves };
	struct choice choices[] = {
		{ "Upright, on this cell's left edge", NULL, upright_before },
		{ "Upright, through this cell", NULL, upright_through },
		{ "Level, on this cell's top edge", NULL, level_above },
		{ "Level, through this cell", NULL, level_through },
		{ "Both in the middle", NULL, both_in_middle },
	};
	struct text notes[PLACES] = { TEXT_EMPTY };

	(void)key;
	for (int i = 0; i < PLACES; i++) {
		show_length(&notes[i], halves[i] * plot_cell(&editor->plot) / 2,
			plot_units(&editor->plot));
		choices[i].note = notes[i].bytes;
	}
	choice_ask(editor, "Where does the mirror's axis stand?", choices,
		sizeof choices / sizeof *choices);
	for (int i = 0; i < PLACES; i++)
		text_fini(&notes[i]);
}
