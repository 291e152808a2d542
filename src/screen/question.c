#include "screen/question.h"
#include "base/memory.h"
#include "base/utf8.h"
#include "editor/ask/seek.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/pointer.h"
#include "screen/status.h"
#include "screen/width.h"

#include <stdlib.h>
#include <string.h>

enum { MARGIN = 2, HEADING = -1, NO_ROW = -1 };

struct list {
	struct front front; /* first */
	const struct stage *stage;
	const struct question *question;
	int answers, notes; /* columns of the widest ones */
	struct text typed;
	int *found;         /* answers that have what was typed */
	int found_count;
	int *rows;          /* of these, with HEADING before the first of each heading */
	int count;
	int at;             /* the row that is chosen, NO_ROW: none has what was typed */
	int top;            /* the first row in view */
	bool is_pasted_on;  /* the last key was a paste */
};

static const char *const picking[] = { "letters", "find", "Up Down", "choose", "Enter", "pick",
	"Esc", "one step back", NULL };

/* ---- Where everything is --------------------------------------------------------------------- */

static const char *note_of(const struct question *question, int answer)
{
	return question->notes ? question->notes[answer] : "";
}

static void columns_measure(struct list *list)
{
	for (int i = 0; i < list->question->count; i++) {
		int answer = width_of(list->question->answers[i]);
		int note = width_of(note_of(list->question, i));

		list->answers = answer > list->answers ? answer : list->answers;
		list->notes = note > list->notes ? note : list->notes;
	}
}

static struct area list_area(const struct list *list, const struct layout *layout)
{
	int wanted = list->answers + (list->notes ? list->notes + 1 : 0);

	return wanted <= layout->list.columns - MARGIN ? layout->list : layout->form;
}

/* Where words go: the question's text, a row left free, and the list's rows. */
static struct area inner(struct area area)
{
	return (struct area){ area.row, area.column + MARGIN, area.rows, area.columns - MARGIN };
}

static struct area rows_area(const struct list *list, const struct layout *layout)
{
	struct area area = inner(list_area(list, layout));
	int above = width_lines(list->question->text, area.columns) + 1;

	if (above >= area.rows)
		above = area.rows - 1;
	area.row += above;
	area.rows -= above;
	return area;
}

/* How many rows are in view; on a screen that is too small for any, one. */
static int rows_in_view(const struct list *list)
{
	struct layout layout = stage_layout(list->stage);

	return layout.is_too_small ? 1 : rows_area(list, &layout).rows;
}

/* Brings the chosen row into view, with a heading right above it. */
static void list_fit(struct list *list)
{
	int rows = rows_in_view(list), first = list->at;

	if (first > 0 && rows > 1 && list->rows[first - 1] == HEADING)
		first--;
	if (list->top > first)
		list->top = first;
	if (list->top < list->at - rows + 1)
		list->top = list->at - rows + 1;
	if (list->top > list->count - rows)
		list->top = list->count - rows;
	if (list->top < 0)
		list->top = 0;
}

/* ---- Drawing --------------------------------------------------------------------------------- */

/* A line with the heading in it. */
static void draw_heading(const struct area *area, int row, const char *heading)
{
	draw_rule(area, row);
	draw_text(area, row, draw_text(area, row, 1, " ", LOOK_PLAIN), heading, LOOK_STRONG);
	draw_text(area, row, 2 + width_of(heading), " ", LOOK_PLAIN);
}

/* Beside the widest answer stand the notes; where there is no room for both, answers are cut. */
static int answer_columns(const struct list *list, int columns)
{
	int room = columns - (list->notes ? list->notes + 1 : 0);

	return list->answers < room ? list->answers : room;
}

static void draw_answer(const struct list *list, const struct area *area, int row, int answer,
	enum look look)
{
	int columns = answer_columns(list, area->columns);

	for (int i = 0; i < columns + (list->notes ? list->notes + 1 : 0); i++)
		draw_character(area, row, i, ' ', look);
	draw_cut(area, row, 0, list->question->answers[answer], columns, look);
	draw_text(area, row, columns + 1, note_of(list->question, answer), look);
}

static void draw_row(const struct list *list, const struct area *area, int row)
{
	int at = list->top + row;

	if (list->rows[at] == HEADING)
		draw_heading(area, row, list->question->headings[list->rows[at + 1]]);
	else
		draw_answer(list, area, row, list->rows[at],
			at == list->at ? LOOK_PICKED : LOOK_PLAIN);
}

/* Of the chosen answer among all, from 1. */
static int place_of(const struct list *list)
{
	int place = 0;

	for (int i = 0; i <= list->at; i++)
		place += list->rows[i] != HEADING;
	return place;
}

/* Where the rows are that are out of view. */
static const char *more_words(const struct list *list, int rows)
{
	if (list->top == 0)
		return "more below";
	return list->top + rows < list->count ? "more above and below" : "more above";
}

/* What was typed and found; else, where not all rows are in view, how many answers there are; NULL:
 * nothing is to be said. */
static const char *found_words(const struct list *list, int rows, struct arena *arena)
{
	const struct question *question = list->question;
	const char *typed = list->typed.bytes;
	const char *advice = question->advice ? question->advice(typed) : NULL;

	if (list->is_pasted_on)
		return "Pasted text was ignored: it is never read as keys.";
	if (advice)
		return arena_print(arena, "Typed: %s. %s", typed, advice);
	if (*typed && !list->count)
		return arena_print(arena,
			"Typed: %s. Nothing here has it; Backspace takes a letter back.", typed);
	if (*typed)
		return arena_print(arena, "Typed: %s. %d of %d %s it.", typed, list->found_count,
			question->count, list->found_count == 1 ? "has" : "have");
	if (rows < list->count)
		return arena_print(arena, "%d of %d, %s. Type what you seek.", place_of(list),
			question->count, more_words(list, rows));
	return NULL;
}

/* Where the chosen answer is cut, and is no longer than a row: instead of how many there are, or in
 * front of what was typed if there is room for both. The message takes no rows of the list. */
static const char *list_words(const struct list *list, const struct layout *layout,
	const struct area *rows, struct arena *arena)
{
	const char *words = found_words(list, rows->rows, arena), *chosen, *both;

	if (list->at == NO_ROW)
		return words;
	chosen = list->question->answers[list->rows[list->at]];
	if (width_of(chosen) <= answer_columns(list, rows->columns))
		return words;
	both = list->typed.length ? arena_print(arena, "%s. %s", chosen, words) : chosen;
	return width_of(both) <= layout->message.columns ? both : words;
}

static struct area list_leaves(const struct front *front, const struct layout *layout)
{
	const struct list *list = (const struct list *)front;
	struct arena arena = ARENA_EMPTY;
	struct area rows = rows_area(list, layout);
	const char *words = list_words(list, layout, &rows, &arena);
	struct area leaves = { 0, 0, status_message_row(layout, words ? words : ""),
		list_area(list, layout).column };

	arena_clear(&arena);
	return leaves;
}

static void list_draw(const struct front *front, const struct layout *layout)
{
	const struct list *list = (const struct list *)front;
	struct area area = list_area(list, layout), words = inner(area);
	struct area rows = rows_area(list, layout);
	struct arena arena = ARENA_EMPTY;
	const char *said = list_words(list, layout, &rows, &arena);

	draw_card(&area);
	draw_wrapped(&words, 0, list->question->text, LOOK_STRONG);
	for (int row = 0; row < rows.rows && list->top + row < list->count; row++)
		draw_row(list, &rows, row);
	if (said)
		status_message(layout, said);
	arena_clear(&arena);
	move(rows.row + (list->at == NO_ROW ? 0 : list->at - list->top), rows.column);
}

static const struct front list_front = { STATE_QUESTION, picking, list_draw, list_leaves };

/* ---- What is in it --------------------------------------------------------------------------- */

static bool begins_group(const struct list *list, int i)
{
	const char *const *headings = list->question->headings;

	return headings && (i == 0 ||
		strcmp(headings[list->found[i]], headings[list->found[i - 1]]) != 0);
}

/* Lists what has what was typed; the best is chosen, or where nothing is typed any more the answer
 * that was. */
static void list_find(struct list *list, int was)
{
	list->found_count = seek(list->question, list->typed.bytes, list->found);
	list->count = list->top = 0;
	list->at = NO_ROW;
	for (int i = 0; i < list->found_count; i++) {
		if (begins_group(list, i))
			list->rows[list->count++] = HEADING;
		if (i == 0 || (!list->typed.length && list->found[i] == was))
			list->at = list->count;
		list->rows[list->count++] = list->found[i];
	}
}

static int answer_at(const struct list *list)
{
	return list->at == NO_ROW ? ANSWER_NONE : list->rows[list->at];
}

static void list_open(struct list *list, const struct stage *stage, const struct question *question)
{
	size_t most = (size_t)question->count;

	*list = (struct list){ .front = list_front, .stage = stage, .question = question,
		.typed = TEXT_EMPTY };
	columns_measure(list);
	list->found = memory_new(most, sizeof *list->found);
	list->rows = memory_new(2 * most, sizeof *list->rows);
	list_find(list, question->first);
}

static void list_close(struct list *list)
{
	free(list->found);
	free(list->rows);
	text_fini(&list->typed);
}

/* ---- Keys ------------------------------------------------------------------------------------ */

static void list_type(struct list *list, uint32_t character)
{
	char bytes[UTF8_MOST + 1] = "";

	text_add_bytes(&list->typed, bytes, utf8_encode(character, bytes));
	list_find(list, ANSWER_NONE);
}

/* Takes back so much of what was typed that `length` bytes are left, or one character more. */
static void list_untype(struct list *list, size_t length)
{
	int was = answer_at(list) == ANSWER_NONE ? list->question->first : answer_at(list);

	while (length > 0 && (list->typed.bytes[length] & 0xC0) == 0x80)
		length--;
	text_cut(&list->typed, length);
	list_find(list, was);
}

/* To the nearest answer so many rows on, else to the last one there is that way. */
static void list_step(struct list *list, int by)
{
	int at = list->at + by, way = by < 0 ? -1 : 1;

	if (list->at == NO_ROW)
		return;
	at = at < 0 ? 0 : at >= list->count ? list->count - 1 : at;
	while (at > 0 && list->rows[at] == HEADING)
		at += way;
	list->at = list->rows[at] == HEADING ? at + 1 : at;
}

static void list_move(struct list *list, int key)
{
	const int page = rows_in_view(list);
	const struct {
		int key, by;
	} moves[] = {
		{ PRESS_UP, -1 }, { PRESS_DOWN, 1 }, { PRESS_TAB, 1 }, { PRESS_BACK_TAB, -1 },
		{ PRESS_PAGE_UP, -page }, { PRESS_PAGE_DOWN, page },
		{ PRESS_HOME, -list->count }, { PRESS_END, list->count },
	};

	list->is_pasted_on = key == PRESS_PASTE;
	if (key >= ' ' && key < PRESS_FIRST && (key != ' ' || list->typed.length))
		list_type(list, (uint32_t)key);
	else if (key == PRESS_UNREAD)
		list_type(list, '?'); /* as the locale shows what it has no letter for */
	else if (key == PRESS_BACKSPACE && list->typed.length)
		list_untype(list, list->typed.length - 1);
	for (size_t i = 0; i < sizeof moves / sizeof *moves; i++)
		if (moves[i].key == key)
			list_step(list, moves[i].by);
}

/* Picks the answer that is pointed at; the wheel moves up and down. */
static int list_point(struct list *list, const struct point *point)
{
	struct layout layout = stage_layout(list->stage);
	struct area area = rows_area(list, &layout);
	int at = list->top + point->row - area.row;

	if (point->kind == POINT_WHEEL_UP || point->kind == POINT_WHEEL_DOWN)
		return point->kind == POINT_WHEEL_UP ? PRESS_UP : PRESS_DOWN;
	if (point->kind != POINT_PRESS || !area_holds(&area, point) || at >= list->count ||
	    list->rows[at] == HEADING)
		return PRESS_NOTHING;
	list->at = at;
	return PRESS_ENTER;
}

/* The answer that a key picks, ANSWER_NONE: none. In a word the same key is typed. */
static int answer_of(const struct list *list, int key)
{
	const int *keys = list->question->keys;

	for (int i = 0; keys && !list->typed.length && i < list->question->count; i++)
		if (keys[i] != PRESS_NOTHING && keys[i] == key)
			return i;
	return ANSWER_NONE;
}

/* True where the list is left; *answer is what was picked. */
static bool list_take(struct list *list, int key, int *answer)
{
	*answer = key == PRESS_ENTER ? answer_at(list) : answer_of(list, key);
	if (key == PRESS_RESIZE)
		return false; /* what was said stays */
	if (*answer != ANSWER_NONE || key == PRESS_OVER)
		return true;
	if (key == PRESS_ESCAPE && !list->typed.length)
		return true;
	if (key == PRESS_ESCAPE)
		list_untype(list, 0);
	else
		list_move(list, key);
	return false;
}

int question_choose(struct stage *stage, const struct question *question)
{
	struct list list;
	int key, answer;

	list_open(&list, stage, question);
	do {
		list_fit(&list);
		stage_show(stage, &list.front);
		key = stage_key(stage);
		if (key == PRESS_POINT)
			key = list_point(&list, &stage->keys.point);
	} while (!list_take(&list, key, &answer));
	list_close(&list);
	return answer;
}
