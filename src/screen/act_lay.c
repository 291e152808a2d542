#include "screen/acts.h"

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
	editor->hand = (char)key;
	editor_name_letter(editor, editor->hand, &words);
	editor_say(editor, "In hand: %s.", words.bytes);
	text_fini(&words);
}

/* Ends a stroke of laying. That images fell outside the plan is said once, not with every stroke. */
static void laid_end(struct editor *editor, struct laid laid, const char *nothing)
{
	if (!editor_stroke(editor) && nothing)
		editor_say(editor, "%s", nothing);
	if (laid.outside && !editor->told_outside) {
		editor_say(editor, "Some images fall outside the plan; they are left out.");
		editor->told_outside = true;
	}
}

static const char is_there[] = "It lies there already.";

static void lay_here(struct editor *editor, char letter, const char *nothing)
{
	struct place at = editor->cursor;

	laid_end(editor, lay_rectangle(&editor->plot, rectangle_between(at.x, at.y, at.x, at.y),
		letter), nothing);
}

void act_lay(struct editor *editor, int key)
{
	(void)key;
	lay_here(editor, editor->hand, is_there);
}

void act_lift(struct editor *editor, int key)
{
	(void)key;
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
	laid_end(editor, laid, NULL);
}

void act_trail(struct editor *editor, int key)
{
	(void)key;
	editor->is_trailing = !editor->is_trailing;
	editor->is_pegged = false;
	if (editor->is_trailing)
		lay_here(editor, editor->hand, NULL);
}

void act_flood(struct editor *editor, int key)
{
	(void)key;
	laid_end(editor, lay_flood(&editor->plot, editor->cursor.x, editor->cursor.y, editor->hand),
		is_there);
}

static int rectangle_ask(struct editor *editor, struct rectangle r)
{
	static const char *const answers[] = { "Fill it", "Frame it", "Take the peg out" };
	struct text words = TEXT_EMPTY;
	struct question question = { .answers = answers, .count = 3 };
	int answer;

	editor_name_letter(editor, editor->hand, &words);
	text_add(&words, ", a rectangle of ");
	editor_name_size(editor, r.right - r.left + 1, r.bottom - r.top + 1, &words);
	text_add(&words, ":");
	question.text = words.bytes;
	answer = editor->asker->choose(editor->asker, &question);
	text_fini(&words);
	return answer;
}

static void rectangle_end(struct editor *editor)
{
	struct rectangle r = editor_pegged(editor);

	switch (rectangle_ask(editor, r)) {
	case 0:
		editor->is_pegged = false;
		laid_end(editor, lay_rectangle(&editor->plot, r, editor->hand), is_there);
		break;
	case 1:
		editor->is_pegged = false;
		laid_end(editor, lay_frame(&editor->plot, r, 1, editor->hand), is_there);
		break;
	case 2:
		editor->is_pegged = false;
		break;
	default:
		break;
	}
}

void act_peg(struct editor *editor, int key)
{
	(void)key;
	if (editor->is_pegged) {
		rectangle_end(editor);
		return;
	}
	editor->is_trailing = false;
	editor->is_pegged = true;
	editor->peg = editor->cursor;
	editor_say(editor, "Pegged. Go to the opposite corner and press Enter again.");
}

void act_step_back(struct editor *editor, int key)
{
	(void)key;
	if (!editor->is_pegged && !editor->is_trailing)
		editor_say(editor, "At rest already. Press < to leave, ? for help.");
	editor->is_pegged = editor->is_trailing = false;
}
