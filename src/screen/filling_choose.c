#include "screen/filling.h"
#include "plot/attribute.h"
#include "screen/keys.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

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
	text_clear(&filling->said);
	if (filling->lacking == filling->at)
		filling->lacking = LACKING_NONE;
	typing_set(&filling->typing, word, VALUE_MOST);
	filling_take(filling);
}

/* ---- Turning -------------------------------------------------------------------------------- */

/* The word after another, or before; -1, unset, is one of them where nothing is needed. */
static int word_beside(const struct field *field, int word, int by)
{
	int first = field->required ? 0 : -1, count = words_count(field->rule->words);

	word += by;
	return word < first ? count - 1 : word >= count ? first : word;
}

/* Whether a word says what holds without it. */
static bool holds_unset(const struct field *field, int word)
{
	return field->unset && strcmp(field->rule->words[word], field->unset) == 0;
}

/* Turns to the next word, or the one before: where none is set, to one that changes something. */
static void turn(struct filling *filling, int by)
{
	const struct field *field = filling_field(filling);
	int from = word_index(field), word = word_beside(field, from, by);

	if (from < 0 && holds_unset(field, word))
		word = word_beside(field, word, by);
	text_clear(&filling->begun);
	word_set(filling, word < 0 ? "" : field->rule->words[word]);
}

/* ---- Typing --------------------------------------------------------------------------------- */

static bool begins_so(const char *word, const struct text *begun)
{
	return strncmp(word, begun->bytes, begun->length) == 0;
}

/* Months go by their numbers too. NULL where that is none. */
static const char *month_numbered(const struct field *field, const struct text *begun)
{
	const char *const *words = field->rule->words;
	long number;

	if (words != attribute_row(PLANT_FROM)->rule.words ||
	    strspn(begun->bytes, "0123456789") != begun->length)
		return NULL;
	number = strtol(begun->bytes, NULL, 10);
	return number >= 1 && number <= words_count(words) ? words[number - 1] : NULL;
}

/* The first word that begins so; from the second letter on the one that is set, if it does. NULL:
 * none. */
static const char *word_begun(const struct field *field, const struct text *begun)
{
	const char *const *words = field->rule->words;

	if (begun->length > 1 && begins_so(field->typed, begun))
		return field->typed;
	for (int i = 0; words[i]; i++)
		if (begins_so(words[i], begun))
			return words[i];
	return month_numbered(field, begun);
}

/* The same letter once more: the next word that begins with it. NULL: it is another one. */
static const char *word_after(const struct field *field, const struct text *begun)
{
	const char *const *words = field->rule->words;
	int count = words_count(words), at = word_index(field);

	if (begun->length != 2 || begun->bytes[0] != begun->bytes[1])
		return NULL;
	for (int i = 1; i <= count; i++)
		if (words[(at + i) % count][0] == begun->bytes[0])
			return words[(at + i) % count];
	return NULL;
}

static void refuse(struct filling *filling, const struct text *begun)
{
	fault_clear(&filling->fault);
	filling_lack(filling);
	text_print(&filling->said, "no word here begins with %s. Backspace empties it.",
		begun->bytes);
}

/* What is typed so far and one more letter. */
static void begin_with(const struct filling *filling, char letter, struct text *begun)
{
	text_add_bytes(begun, filling->begun.bytes, filling->begun.length);
	text_add_bytes(begun, &letter, 1);
}

/* A letter: what is typed so far begins a word, or is left as it was. */
static void type(struct filling *filling, char letter)
{
	const struct field *field = filling_field(filling);
	struct text begun = TEXT_EMPTY;
	const char *word, *next;

	begin_with(filling, letter, &begun);
	word = word_begun(field, &begun);
	next = word ? NULL : word_after(field, &begun);
	if (next)
		text_cut(&begun, 1);
	if (word || next) {
		word_set(filling, word ? word : next);
		text_clear(&filling->begun);
		text_add(&filling->begun, begun.bytes);
	} else {
		refuse(filling, &begun);
	}
	text_fini(&begun);
}

/* Whether a blank stands for the hyphen of a word that begins as was typed. */
static bool is_hyphen(const struct filling *filling)
{
	struct text begun = TEXT_EMPTY;
	bool is_one;

	begin_with(filling, '-', &begun);
	is_one = word_begun(filling_field(filling), &begun) != NULL;
	text_fini(&begun);
	return is_one;
}

void filling_choose(struct filling *filling, int key)
{
	if (key == ' ' && is_hyphen(filling))
		type(filling, '-');
	else if (key == PRESS_LEFT)
		turn(filling, -1);
	else if (key == PRESS_RIGHT || key == ' ')
		turn(filling, 1);
	else if (key == PRESS_BACKSPACE || key == PRESS_DELETE || key == PRESS_ERASE_LINE) {
		text_clear(&filling->begun);
		word_set(filling, "");
	} else if (key > ' ' && key < PRESS_FIRST) {
		type(filling, key < 0x7f ? (char)tolower(key) : '?'); /* words are ASCII */
	}
}
