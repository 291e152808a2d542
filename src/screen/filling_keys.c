#include "screen/filling.h"
#include "base/memory.h"
#include "screen/encode.h"

#include <stdlib.h>
#include <string.h>

int filling_at(const struct filling *filling)
{
	return field_index(current_field(filling->form));
}

bool filling_is_choice(const struct filling *filling)
{
	return filling->sheet->fields[filling_at(filling)].rule->kind == VALUE_CHOICE;
}

/* ---- Typing --------------------------------------------------------------------------------- */

static char *buffer_taken(FIELD *field)
{
	char *words = memory_string(field_buffer(field, 0));
	size_t length = strlen(words);

	while (length && words[length - 1] == ' ')
		words[--length] = '\0';
	return words;
}

void filling_show_field(struct filling *filling, int at)
{
	char *words = encode_for_locale(filling->sheet->fields[at].typed);

	set_field_buffer(filling->fields[at], 0, words);
	free(words);
	free(filling->seen[at]);
	filling->seen[at] = buffer_taken(filling->fields[at]);
}

/* Shows the fields that the sheet itself has changed. */
static void others_show(struct filling *filling)
{
	for (int i = 0; i < filling->sheet->count; i++) {
		char *words = encode_for_locale(filling->sheet->fields[i].typed);

		if (strcmp(words, filling->seen[i]) != 0)
			filling_show_field(filling, i);
		free(words);
	}
}

/* Takes a change of the current field over into the sheet. */
static void typed_take(struct filling *filling)
{
	int at = filling_at(filling);
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

void filling_go(struct filling *filling, int request)
{
	fault_clear(&filling->fault);
	form_driver(filling->form, request);
	form_driver(filling->form, REQ_BEG_FIELD);
	filling->is_fresh = true;
}

void filling_go_to(struct filling *filling, int field)
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
	set_field_buffer(filling->fields[filling_at(filling)], 0, word);
	form_driver(filling->form, REQ_BEG_FIELD);
	typed_take(filling);
}

/* Turns to the next word, or the one before; unset is one of them where nothing is needed. */
static void choice_turn(struct filling *filling, int by)
{
	const struct field *field = &filling->sheet->fields[filling_at(filling)];
	int first = field->required ? 0 : -1, count = words_count(field->rule->words);
	int word = word_index(field) + by;

	word = word < first ? count - 1 : word >= count ? first : word;
	word_set(filling, word < 0 ? "" : field->rule->words[word]);
}

/* Turns to the next word that begins so, if there is one. */
static void choice_seek(struct filling *filling, int letter)
{
	const struct field *field = &filling->sheet->fields[filling_at(filling)];
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

void filling_key(struct filling *filling, const struct keys *keys, int key)
{
	if (key == PRESS_UP || key == PRESS_BACK_TAB)
		filling_go(filling, REQ_PREV_FIELD);
	else if (key == PRESS_DOWN || key == PRESS_TAB)
		filling_go(filling, REQ_NEXT_FIELD);
	else if (key == PRESS_PAGE_UP)
		filling_go(filling, REQ_FIRST_FIELD);
	else if (key == PRESS_PAGE_DOWN)
		filling_go(filling, REQ_LAST_FIELD);
	else if (filling_is_choice(filling))
		choice_key(filling, key);
	else
		typing_key(filling, keys, key);
}
