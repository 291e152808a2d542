#include "screen/question.h"
#include "base/memory.h"
#include "base/utf8.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/encode.h"
#include "screen/pointer.h"
#include "editor/ask/seek.h"
#include "screen/status.h"
#include "screen/width.h"

#include <stdlib.h>
#include <string.h>

enum { MARGIN = 2 };

struct list {
	struct front front; /* first */
	const struct stage *stage;
	const struct question *question;
	char **words;       /* answers and notes as the locale shows them */
	ITEM **items;
	MENU *menu;
	WINDOW *pad;        /* what curses draws the menu on; copied to the screen */
	struct text typed;  /* since the last other key: an answer's words */
	/* The last character, where no answer has it after those; else "". */
	char let_go[UTF8_MOST + 1];
	bool is_pasted_on;  /* the last key was a paste */
};

static const char *const picking[] = { "Up Down", "choose", "Enter", "pick", "Esc", "one step back",
	NULL };

static int columns_wanted(const struct question *question)
{
	int answers = 0, notes = 0;

	for (int i = 0; i < question->count; i++) {
		int answer = width_of(question->answers[i]);
		int note = question->notes ? width_of(question->notes[i]) : 0;

		answers = answer > answers ? answer : answers;
		notes = note > notes ? note : notes;
	}
	return answers + (notes ? notes + 1 : 0);
}

static struct area list_area(const struct question *question, const struct layout *layout)
{
	if (columns_wanted(question) <= layout->list.columns - MARGIN)
		return layout->list;
	return layout->form;
}

static struct area inner(struct area area)
{
	return (struct area){ area.row, area.column + MARGIN, area.rows, area.columns - MARGIN };
}

static int question_rows(const struct list *list, const struct area *area)
{
	return width_lines(list->question->text, area->columns) + 1;
}

/* What was typed; else, where not all answers are in view, how many there are. */
static void list_say(const struct list *list, const struct layout *layout, int at, int rows)
{
	const char *typed = list->typed.bytes, *words = NULL;
	struct arena arena = ARENA_EMPTY;

	if (list->is_pasted_on)
		words = "Pasted text was ignored: it is never read as keys.";
	else if (*list->let_go)
		words = arena_print(&arena, "Nothing here has %s%s. Typed: %s.", typed,
			list->let_go, *typed ? typed : "nothing");
	else if (*typed)
		words = arena_print(&arena, "Typed: %s. Tab goes on to what else has it.", typed);
	else if (rows < list->question->count)
		words = arena_print(&arena, "%d of %d. Type what you seek: a word, or part of one.",
			at + 1, list->question->count);
	if (words)
		status_message(layout, words);
	arena_clear(&arena);
}

static void list_draw(const struct front *front, const struct layout *layout)
{
	const struct list *list = (const struct list *)front;
	struct area area = list_area(list->question, layout), words = inner(area);
	int row, rows, columns, at = item_index(current_item(list->menu));

	draw_sheet(&area);
	row = draw_wrapped(&words, 0, list->question->text, LOOK_STRONG) + 1;
	getmaxyx(list->pad, rows, columns);
	copywin(list->pad, stdscr, 0, 0, words.row + row, words.column, words.row + row + rows - 1,
		words.column + columns - 1, FALSE);
	list_say(list, layout, at, rows);
	move(words.row + row + at - top_row(list->menu), words.column);
}

static const struct front list_front = { STATE_QUESTION, picking, list_draw };

/* Puts the menu on a pad of the size that the screen has for it now. */
static void list_post(struct list *list)
{
	struct layout layout = stage_layout(list->stage);
	struct area area = inner(layout.is_too_small ?
		(struct area){ 0, 0, LEAST_ROWS, LEAST_COLUMNS } :
		list_area(list->question, &layout));
	int room = area.rows - question_rows(list, &area);
	int rows = room < list->question->count ? room : list->question->count;

	rows = rows > 0 ? rows : 1;
	list->pad = newpad(rows, area.columns);
	set_menu_win(list->menu, list->pad);
	set_menu_sub(list->menu, list->pad);
	set_menu_format(list->menu, rows, 1);
	post_menu(list->menu);
}

static void list_unpost(struct list *list)
{
	unpost_menu(list->menu);
	/* The menu asks its old windows for their screen when it is given others. */
	set_menu_win(list->menu, NULL);
	set_menu_sub(list->menu, NULL);
	delwin(list->pad);
}

static void list_open(struct list *list, const struct stage *stage, const struct question *question)
{
	*list = (struct list){ .front = list_front, .stage = stage, .question = question,
		.typed = TEXT_EMPTY };
	list->items = memory_new((size_t)question->count + 1, sizeof(ITEM *));
	list->words = memory_new(2 * (size_t)question->count, sizeof(char *));
	for (int i = 0; i < question->count; i++) {
		char **words = &list->words[2 * (size_t)i];

		words[0] = encode_for_locale(question->answers[i]);
		words[1] = encode_for_locale(question->notes ? question->notes[i] : "");
		list->items[i] = new_item(words[0], words[1]);
	}
	list->menu = new_menu(list->items);
	set_menu_mark(list->menu, "");
	set_menu_fore(list->menu, draw_look(LOOK_PICKED));
	list_post(list);
	set_current_item(list->menu, list->items[question->first]);
}

static void list_close(struct list *list)
{
	list_unpost(list);
	free_menu(list->menu);
	for (int i = 0; i < list->question->count; i++) {
		free_item(list->items[i]);
		free(list->words[2 * (size_t)i]);
		free(list->words[2 * (size_t)i + 1]);
	}
	free(list->words);
	free(list->items);
	text_fini(&list->typed);
}

/* Takes one more character where an answer has them all; else it is only named, in let_go. */
static void list_type(struct list *list, uint32_t character)
{
	char bytes[UTF8_MOST + 1] = "";
	size_t before = list->typed.length;
	int found;

	text_add_bytes(&list->typed, bytes, utf8_encode(character, bytes));
	found = seek_best(list->question, list->typed.bytes);
	if (found != ANSWER_NONE) {
		set_current_item(list->menu, list->items[found]);
		return;
	}
	text_cut(&list->typed, before);
	memcpy(list->let_go, bytes, sizeof bytes);
}

static void list_untype(struct list *list)
{
	size_t length = list->typed.length;

	if (length == 0)
		return;
	while (--length > 0 && (list->typed.bytes[length] & 0xC0) == 0x80)
		;
	text_cut(&list->typed, length);
	if (length)
		set_current_item(list->menu,
			list->items[seek_best(list->question, list->typed.bytes)]);
}

/* From answer to answer, which ends what was typed. */
static void list_step(struct list *list, int key)
{
	static const struct {
		int key, request;
	} moves[] = {
		{ PRESS_UP, REQ_UP_ITEM }, { PRESS_DOWN, REQ_DOWN_ITEM },
		{ PRESS_PAGE_UP, REQ_SCR_UPAGE }, { PRESS_PAGE_DOWN, REQ_SCR_DPAGE },
		{ PRESS_HOME, REQ_FIRST_ITEM }, { PRESS_END, REQ_LAST_ITEM },
		{ PRESS_TAB, REQ_DOWN_ITEM }, { PRESS_BACK_TAB, REQ_UP_ITEM },
	};

	for (size_t i = 0; i < sizeof moves / sizeof *moves; i++)
		if (moves[i].key == key) {
			menu_driver(list->menu, moves[i].request);
			text_clear(&list->typed);
		}
}

static void list_move(struct list *list, int key)
{
	list->let_go[0] = '\0';
	list->is_pasted_on = key == PRESS_PASTE;
	if (key >= ' ' && key < PRESS_FIRST)
		list_type(list, (uint32_t)key);
	else if (key == PRESS_UNREAD)
		list_type(list, '?'); /* as the locale shows what it has no letter for */
	else if (key == PRESS_BACKSPACE)
		list_untype(list);
	else if (key == PRESS_TAB && list->typed.length)
		set_current_item(list->menu, list->items[seek_next(list->question,
			list->typed.bytes, item_index(current_item(list->menu)))]);
	else
		list_step(list, key);
}

/* Picks the answer that is pointed at; the wheel moves up and down. */
static int list_point(struct list *list, const struct point *point)
{
	struct layout layout = stage_layout(list->stage);
	struct area area = list_area(list->question, &layout), words = inner(area);
	int at;

	if (point->kind == POINT_WHEEL_UP || point->kind == POINT_WHEEL_DOWN)
		return point->kind == POINT_WHEEL_UP ? PRESS_UP : PRESS_DOWN;
	words.row += question_rows(list, &words);
	words.rows = getmaxy(list->pad);
	at = top_row(list->menu) + point->row - words.row;
	if (point->kind != POINT_PRESS || !area_holds(&words, point) || at >= list->question->count)
		return PRESS_NOTHING;
	set_current_item(list->menu, list->items[at]);
	return PRESS_ENTER;
}

int question_choose(struct stage *stage, const struct question *question)
{
	struct list list;
	int key = PRESS_NOTHING, answer = ANSWER_NONE;

	list_open(&list, stage, question);
	while (key != PRESS_ENTER && key != PRESS_ESCAPE && key != PRESS_OVER) {
		stage_show(stage, &list.front);
		key = stage_key(stage);
		if (key == PRESS_POINT)
			key = list_point(&list, &stage->keys.point);
		if (key == PRESS_RESIZE) {
			ITEM *current = current_item(list.menu);

			list_unpost(&list);
			list_post(&list);
			set_current_item(list.menu, current);
		} else {
			list_move(&list, key);
		}
	}
	if (key == PRESS_ENTER)
		answer = item_index(current_item(list.menu));
	list_close(&list);
	return answer;
}
