#include "editor/acts/acts.h"

#include <math.h>
#include <stdlib.h>

static void say_legend(struct editor *editor, int key)
{
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < editor->plot.details.legend_count; i++) {
		text_add(&words, i ? ", " : "");
		editor_name_letter(editor, editor->plot.details.legend[i].letter, &words);
	}
	editor_say(editor, "%c is not in the legend: %s%s. open ground.", key,
		words.bytes ? words.bytes : "", words.bytes ? ", " : "");
	text_fini(&words);
}

void act_take(struct editor *editor, int key)
{
	struct text words = TEXT_EMPTY;

	if (key != OPEN_GROUND && !plot_entry(&editor->plot, (char)key)) {
		say_legend(editor, key);
		return;
	}
	editor_drop_mark(editor);
	editor->hand = (char)key;
	editor_name_letter(editor, editor->hand, &words);
	editor_say(editor, "In hand: %s.", words.bytes);
	text_fini(&words);
}

static void lay_here(struct editor *editor, char letter, const char *nothing)
{
	struct place at = editor->cursor;

	act_lay_end(editor, lay_rectangle(&editor->plot, rectangle_between(at.x, at.y, at.x, at.y),
		letter), nothing);
}

/* What would be laid is not to be seen while a piece is carried. */
static bool is_carrying(struct editor *editor)
{
	if (editor->is_marked)
		editor_say(editor, "A piece of ground is carried: Space stamps it, Esc drops it.");
	return editor->is_marked;
}

void act_lay(struct editor *editor, int key)
{
	if (editor->is_marked)
		act_stamp(editor, key);
	else
		lay_here(editor, editor->hand, ACT_IS_THERE);
}

void act_lift(struct editor *editor, int key)
{
	if (editor->is_marked)
		act_lift_marked(editor, key);
	else
		lay_here(editor, OPEN_GROUND, "Open ground already.");
}

static int part(int whole, int i, int count)
{
	return (int)lround((double)whole * i / count);
}

void act_lay_way(struct editor *editor, struct place from, struct place to)
{
	struct mirror mirror = mirror_of(&editor->plot);
	int across = to.x - from.x, down = to.y - from.y;
	int count = abs(across) > abs(down) ? abs(across) : abs(down);
	struct laid laid = { 0 };

	lay_cell(&editor->plot, &mirror, from, editor->hand, &laid);
	for (int i = 1; i <= count; i++)
		lay_cell(&editor->plot, &mirror, (struct place){ from.x + part(across, i, count),
			from.y + part(down, i, count) }, editor->hand, &laid);
	if (editor->drag == DRAG_NONE) {
		act_lay_end(editor, laid, NULL);
		return;
	}
	editor->is_dragging |= laid.changed > 0;
	editor->is_stale |= laid.changed > 0;
	act_tell_outside(editor, laid);
}

void act_trail(struct editor *editor, int key)
{
	(void)key;
	if (is_carrying(editor))
		return;
	editor->is_trailing = !editor->is_trailing;
	editor->is_pegged = false;
	if (editor->is_trailing)
		lay_here(editor, editor->hand, NULL);
}

void act_flood(struct editor *editor, int key)
{
	(void)key;
	if (is_carrying(editor))
		return;
	act_lay_end(editor, lay_flood(&editor->plot, editor->cursor.x, editor->cursor.y, editor->hand),
		ACT_IS_THERE);
}
