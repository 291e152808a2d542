#include "screen/form.h"
#include "base/memory.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/encode.h"
#include "screen/status.h"
#include "screen/width.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum {
	MARGIN = 2, TITLE_ROWS = 2,
	ROW_COLUMNS = 44,    /* a label and its field */
	LABEL_COLUMNS = 22,
	WIDE_AT = 12,        /* where a field for a whole sentence begins */
	TYPED_MOST = 2 * NOTE_MOST + 1
};

struct filling {
	struct front front; /* first */
	struct sheet *sheet;
	FIELD **fields;
	char **seen;        /* what curses had in each field when it was last looked at */
	FORM *form;
	WINDOW *pad;        /* one row a field; what is in view is copied, then labelled */
	bool is_fresh;      /* the field was just come to: typing replaces what it says */
	struct fault fault; /* what is wrong, on the message row; no words: nothing */
};

static int current(const struct filling *filling)
{
	return field_index(current_field(filling->form));
}

static bool is_last(const struct filling *filling)
{
	return current(filling) == filling->sheet->count - 1;
}

/* ---- Drawing -------------------------------------------------------------------------------- */

static int column_of(const struct field *field)
{
	bool is_sentence = field->rule->kind == VALUE_TEXT && field->rule->most > 1;

	return is_sentence ? WIDE_AT : LABEL_COLUMNS;
}

/* The first field in view, so that the current one is. */
static int top_of(const struct filling *filling, int rows)
{
	int at = current(filling);

	return at < rows ? 0 : at - rows + 1;
}

static void draw_row(const struct field *field, const struct area *area, int row)
{
	struct text unset = TEXT_EMPTY;

	draw_text(area, row, 0, field->label, LOOK_PLAIN);
	if (field->typed[0] == '\0' && field->unset) {
		text_print(&unset, "[%s]", field->unset);
		draw_text(area, row, column_of(field), unset.bytes, LOOK_PLAIN);
	}
	text_fini(&unset);
}

static void draw_fields(const struct filling *filling, const struct area *area)
{
	int count = filling->sheet->count, rows = count < area->rows ? count : area->rows;
	int top = top_of(filling, rows), y, x;

	copywin(filling->pad, stdscr, top, 0, area->row, area->column, area->row + rows - 1,
		area->column + ROW_COLUMNS - 1, FALSE);
	for (int i = 0; i < rows; i++)
		draw_row(&filling->sheet->fields[top + i], area, i);
	getyx(filling->pad, y, x);
	move(area->row + y - top, area->column + x);
}

/* Says that there are more fields than are in view. */
static void draw_title(const struct filling *filling, const struct area *area)
{
	int count = filling->sheet->count;
	char place[32];

	draw_text(area, 0, 0, filling->sheet->title, LOOK_STRONG);
	snprintf(place, sizeof place, "  %d of %d", current(filling) + 1, count);
	if (area->rows < TITLE_ROWS + count)
		draw_right(area, 0, place, LOOK_PLAIN);
}

/* What is wrong; or the whole of what the field has no room for; or what holds while it is
 * unset. */
static void message_add(const struct filling *filling, struct text *words)
{
	const struct field *field = &filling->sheet->fields[current(filling)];

	if (filling->fault.words.length)
		text_add(words, filling->fault.words.bytes);
	else if (width_of(field->typed) > ROW_COLUMNS - column_of(field))
		text_add(words, field->typed);
	else if (field->typed[0] == '\0' && field->unset)
		text_print(words, "%s: unset, so %s.", field->label, field->unset);
}

static void filling_draw(const struct front *front, const struct layout *layout)
{
	const struct filling *filling = (const struct filling *)front;
	struct area area = layout->form, inner;
	struct text words = TEXT_EMPTY;
	int lines;

	message_add(filling, &words);
	lines = words.length ? width_lines(words.bytes, layout->message.columns) : 1;
	draw_sheet(&area);
	inner = (struct area){ area.row, area.column + MARGIN, area.rows, area.columns - MARGIN };
	/* A message of more lines stands over the form's last rows. */
	inner.rows -= lines - 1;
	draw_title(filling, &inner);
	if (words.length)
		status_message(layout, words.bytes);
	text_fini(&words);
	inner.row += TITLE_ROWS;
	inner.rows -= TITLE_ROWS;
	draw_fields(filling, &inner);
}

/* ---- Opening and closing -------------------------------------------------------------------- */

static char *buffer_taken(FIELD *field)
{
	char *words = memory_string(field_buffer(field, 0));
	size_t length = strlen(words);

	while (length && words[length - 1] == ' ')
		words[--length] = '\0';
	return words;
}

/* Puts what is typed in the sheet into curses' field. */
static void field_show(struct filling *filling, int at)
{
	char *words = encode_for_locale(filling->sheet->fields[at].typed);

	set_field_buffer(filling->fields[at], 0, words);
	free(words);
	free(filling->seen[at]);
	filling->seen[at] = buffer_taken(filling->fields[at]);
}

static FIELD *field_open(const struct field *field, int row)
{
	int column = column_of(field);
	FIELD *opened = new_field(1, ROW_COLUMNS - column, row, column, 0, 0);

	field_opts_off(opened, O_STATIC);
	set_max_field(opened, TYPED_MOST);
	set_field_back(opened, draw_look(LOOK_FIELD));
	return opened;
}

static void filling_open(struct filling *filling, struct sheet *sheet)
{
	size_t count = (size_t)sheet->count;

	*filling = (struct filling){ .front = { .state = STATE_FORM, .draw = filling_draw },
		.sheet = sheet, .is_fresh = true };
	filling->fields = memory_new(count + 1, sizeof(FIELD *));
	filling->seen = memory_new(count, sizeof(char *));
	for (int i = 0; i < sheet->count; i++) {
		filling->fields[i] = field_open(&sheet->fields[i], i);
		field_show(filling, i);
	}
	filling->form = new_form(filling->fields);
	filling->pad = newpad(sheet->count, ROW_COLUMNS);
	set_form_win(filling->form, filling->pad);
	set_form_sub(filling->form, filling->pad);
	post_form(filling->form);
	form_driver(filling->form, REQ_INS_MODE);
}

static void filling_close(struct filling *filling)
{
	unpost_form(filling->form);
	free_form(filling->form);
	for (int i = 0; i < filling->sheet->count; i++) {
		free_field(filling->fields[i]);
		free(filling->seen[i]);
	}
	free(filling->fields);
	free(filling->seen);
	fault_fini(&filling->fault);
	delwin(filling->pad);
}

/* ---- Typing --------------------------------------------------------------------------------- */

/* Shows the fields that the sheet itself has changed. */
static void others_show(struct filling *filling)
{
	for (int i = 0; i < filling->sheet->count; i++) {
		char *words = encode_for_locale(filling->sheet->fields[i].typed);

		if (strcmp(words, filling->seen[i]) != 0)
			field_show(filling, i);
		free(words);
	}
}

/* Takes a change of the current field over into the sheet. */
static void typed_take(struct filling *filling)
{
	int at = current(filling);
	char *now, *words;

	form_driver(filling->form, REQ_VALIDATION);
	now = buffer_taken(filling->fields[at]);
	if (strcmp(now, filling->seen[at]) == 0) {
		free(now);
		return;
	}
	words = encode_from_locale(now);
	sheet_type(filling->sheet, at, words);
	free(words);
	free(filling->seen[at]);
	filling->seen[at] = now;
	fault_clear(&filling->fault);
	if (filling->sheet->changed) {
		filling->sheet->changed(filling->sheet, at);
		others_show(filling);
	}
}

static void go(struct filling *filling, int request)
{
	fault_clear(&filling->fault);
	form_driver(filling->form, request);
	form_driver(filling->form, REQ_BEG_FIELD);
	filling->is_fresh = true;
}

/* Goes to what is wrong, to be mended rather than typed anew. */
static void go_to(struct filling *filling, int field)
{
	set_current_field(filling->form, filling->fields[field]);
	form_driver(filling->form, REQ_END_FIELD);
	filling->is_fresh = false;
}

static void insert(struct filling *filling, int character)
{
	if (filling->is_fresh)
		form_driver(filling->form, REQ_CLR_FIELD);
	form_driver_w(filling->form, OK, (wchar_t)character);
	filling->is_fresh = false;
	typed_take(filling);
}

/* Ends of lines and tabs become blanks; Enter never comes out of a paste. */
static void paste(struct filling *filling, const char *pasted)
{
	wchar_t character;
	mbstate_t state = { 0 };
	size_t used;

	for (const char *at = pasted; *at; at += used) {
		used = mbrtowc(&character, at, MB_CUR_MAX, &state);
		if (used == (size_t)-1 || used == (size_t)-2) {
			memset(&state, 0, sizeof state);
			used = 1;
			continue;
		}
		if (character == '\n' || character == '\r' || character == '\t')
			character = ' ';
		if (character >= ' ')
			insert(filling, (int)character);
	}
}

static void erase_before(struct filling *filling)
{
	form_driver(filling->form, filling->is_fresh ? REQ_CLR_FIELD : REQ_DEL_PREV);
	filling->is_fresh = false;
	typed_take(filling);
}

static void edit(struct filling *filling, int request)
{
	form_driver(filling->form, request);
	filling->is_fresh = false;
	typed_take(filling);
}

/* ---- Fields that take one of a few words ---------------------------------------------------- */

static int words_count(const char *const *words)
{
	int count = 0;

	while (words[count])
		count++;
	return count;
}

static int word_index(const struct field *field)
{
	for (int i = 0; field->rule->words[i]; i++)
		if (strcmp(field->rule->words[i], field->typed) == 0)
			return i;
	return -1;
}

static void word_set(struct filling *filling, const char *word)
{
	set_field_buffer(filling->fields[current(filling)], 0, word);
	form_driver(filling->form, REQ_BEG_FIELD);
	typed_take(filling);
}

/* Turns to the next word, or the one before; unset is one of them where nothing is needed. */
static void choice_turn(struct filling *filling, int by)
{
	const struct field *field = &filling->sheet->fields[current(filling)];
	int first = field->required ? 0 : -1, count = words_count(field->rule->words);
	int word = word_index(field) + by;

	word = word < first ? count - 1 : word >= count ? first : word;
	word_set(filling, word < 0 ? "" : field->rule->words[word]);
}

/* Turns to the next word that begins so, if there is one. */
static void choice_seek(struct filling *filling, int letter)
{
	const struct field *field = &filling->sheet->fields[current(filling)];
	int count = words_count(field->rule->words), at = word_index(field);

	for (int i = 1; i <= count; i++) {
		const char *word = field->rule->words[(at + i) % count];

		if (word[0] == letter) {
			word_set(filling, word);
			return;
		}
	}
}

static void choice_key(struct filling *filling, int key)
{
	if (key == PRESS_LEFT)
		choice_turn(filling, -1);
	else if (key == PRESS_RIGHT || key == ' ')
		choice_turn(filling, 1);
	else if (key == PRESS_BACKSPACE || key == PRESS_DELETE)
		word_set(filling, "");
	else if (key > ' ' && key < PRESS_FIRST)
		choice_seek(filling, key);
}

/* ---- Keys ----------------------------------------------------------------------------------- */

static bool is_choice(const struct filling *filling)
{
	return filling->sheet->fields[current(filling)].rule->kind == VALUE_CHOICE;
}

static void typing_key(struct filling *filling, const struct keys *keys, int key)
{
	if (key == PRESS_LEFT)
		edit(filling, REQ_PREV_CHAR);
	else if (key == PRESS_RIGHT)
		edit(filling, REQ_NEXT_CHAR);
	else if (key == PRESS_HOME)
		edit(filling, REQ_BEG_LINE);
	else if (key == PRESS_END)
		edit(filling, REQ_END_LINE);
	else if (key == PRESS_BACKSPACE)
		erase_before(filling);
	else if (key == PRESS_DELETE)
		edit(filling, filling->is_fresh ? REQ_CLR_FIELD : REQ_DEL_CHAR);
	else if (key == PRESS_PASTE)
		paste(filling, keys->pasted.bytes);
	else if (key >= ' ' && key < PRESS_FIRST)
		insert(filling, key);
}

static void filling_key(struct filling *filling, const struct keys *keys, int key)
{
	if (key == PRESS_UP || key == PRESS_BACK_TAB)
		go(filling, REQ_PREV_FIELD);
	else if (key == PRESS_DOWN || key == PRESS_TAB)
		go(filling, REQ_NEXT_FIELD);
	else if (key == PRESS_PAGE_UP)
		go(filling, REQ_FIRST_FIELD);
	else if (key == PRESS_PAGE_DOWN)
		go(filling, REQ_LAST_FIELD);
	else if (is_choice(filling))
		choice_key(filling, key);
	else
		typing_key(filling, keys, key);
}

/* Types what was offered instead of what is wrong. */
static void offer_take(struct filling *filling)
{
	int at = filling->fault.field;

	sheet_type(filling->sheet, at, filling->fault.offer.bytes);
	fault_clear(&filling->fault);
	field_show(filling, at);
	if (filling->sheet->changed)
		filling->sheet->changed(filling->sheet, at);
}

/* Whether the current field is right; else the fault says why, and the cursor stays. */
static bool is_right(struct filling *filling)
{
	struct sheet *sheet = filling->sheet;
	struct value value;
	int at = current(filling);

	fault_clear(&filling->fault);
	if (!sheet_read(sheet, at, &value, &filling->fault)) {
		if (filling->is_fresh)
			go_to(filling, at);
		return false;
	}
	value_fini(sheet->fields[at].rule->kind, &value);
	return true;
}

/* True where the sheet is taken as it is; else the field at fault is gone to. */
static bool is_taken(struct filling *filling)
{
	fault_clear(&filling->fault);
	if (filling->sheet->accept(filling->sheet, &filling->fault))
		return true;
	if (filling->fault.words.length)
		go_to(filling, filling->fault.field);
	return false;
}

/* Enter: the offer first, then the next field, at last the whole sheet. True where it is done. */
static bool enter(struct filling *filling)
{
	if (filling->fault.offer.length)
		offer_take(filling);
	if (!is_right(filling))
		return false;
	if (is_last(filling))
		return is_taken(filling);
	go(filling, REQ_NEXT_FIELD);
	return false;
}

static void filling_show(struct stage *stage, struct filling *filling)
{
	const char *keys[9] = { "Up Down", "go", "Enter", "next", "Esc", "leave", NULL };

	if (is_last(filling))
		keys[3] = filling->sheet->done;
	if (filling->fault.offer.length)
		keys[3] = "take it";
	if (is_choice(filling)) {
		keys[6] = "Space";
		keys[7] = "another word";
	} else if (!is_last(filling)) {
		keys[6] = "PgDn";
		keys[7] = "to the end";
	}
	filling->front.keys = keys;
	pos_form_cursor(filling->form);
	stage_show(stage, &filling->front);
}

bool form_fill(struct stage *stage, struct sheet *sheet)
{
	struct filling filling;
	bool is_done = false;
	int key = PRESS_NOTHING;

	filling_open(&filling, sheet);
	while (!is_done && key != PRESS_ESCAPE && key != PRESS_OVER) {
		filling_show(stage, &filling);
		key = stage_key(stage);
		if (key == PRESS_ENTER)
			is_done = enter(&filling);
		else
			filling_key(&filling, &stage->keys, key);
	}
	filling_close(&filling);
	return is_done;
}
