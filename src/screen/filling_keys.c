#include "screen/filling.h"
#include "screen/encode.h"

#include <string.h>

const struct field *filling_field(const struct filling *filling)
{
	return &filling->card->fields[filling->at];
}

bool filling_is_end(const struct filling *filling)
{
	return filling->at == filling->card->count;
}

int filling_last(const struct filling *filling)
{
	return filling->card->count - !filling->card->has_end;
}

bool filling_is_choice(const struct filling *filling)
{
	return !filling_is_end(filling) && filling_field(filling)->rule->kind == VALUE_CHOICE;
}

/* ---- Going ---------------------------------------------------------------------------------- */

void filling_go(struct filling *filling, int at)
{
	const struct field *field = &filling->card->fields[at];

	filling->at = at;
	fault_clear(&filling->fault);
	text_clear(&filling->said);
	text_clear(&filling->begun);
	filling->is_held = false;
	if (filling_is_end(filling))
		return;
	typing_set(&filling->typing, field->typed, field->rule->kind == VALUE_TEXT ?
		(size_t)field->rule->most : VALUE_MOST);
	filling->is_held = !encode_can_show(field->typed);
}

void filling_go_on(struct filling *filling, int at)
{
	struct fault fault = filling->fault;
	struct text said = filling->said;

	filling->fault = (struct fault){ .words = TEXT_EMPTY };
	filling->said = TEXT_EMPTY;
	filling_go(filling, at);
	filling->fault = fault;
	filling->said = said;
	if (fault.words.length)
		text_clear(&filling->said);
}

bool filling_settle(struct filling *filling)
{
	struct card *card = filling->card;
	int at = filling->at;

	fault_clear(&filling->fault);
	if (filling_is_end(filling))
		return true;
	if (!card_settle(card, at, &filling->said, &filling->fault))
		return false;
	if (filling->said.length && card->changed)
		card->changed(card, at);
	return true;
}

bool filling_has_changed(const struct filling *filling, int at)
{
	return strcmp(filling->card->fields[at].typed, filling->opened[at]) != 0;
}

/* What is wrong in the field that is left is said at once, but holds nobody up. */
static void leave_for(struct filling *filling, int to)
{
	fault_clear(&filling->fault);
	text_clear(&filling->said);
	if (!filling_is_end(filling) && filling_has_changed(filling, filling->at))
		filling_settle(filling);
	filling_go_on(filling, to);
}

/* By so many fields; after the last one comes the first. */
static void go_by(struct filling *filling, int by)
{
	int count = filling_last(filling) + 1;

	leave_for(filling, (filling->at + by + count) % count);
}

/* ---- Keys ----------------------------------------------------------------------------------- */

static const struct {
	int key;
	enum typing_edit edit;
} edits[] = {
	{ PRESS_LEFT, TYPING_LEFT }, { PRESS_RIGHT, TYPING_RIGHT },
	{ PRESS_HOME, TYPING_START }, { PRESS_LINE_START, TYPING_START },
	{ PRESS_END, TYPING_END }, { PRESS_LINE_END, TYPING_END },
	{ PRESS_BACKSPACE, TYPING_BACKSPACE }, { PRESS_DELETE, TYPING_DELETE },
	{ PRESS_ERASE_LINE, TYPING_ERASE_BEFORE }, { PRESS_ERASE_WORD, TYPING_ERASE_WORD },
	{ PRESS_ERASE_REST, TYPING_ERASE_REST },
};

static void edit_key(struct filling *filling, int key)
{
	for (size_t i = 0; i < sizeof edits / sizeof *edits; i++)
		if (edits[i].key == key) {
			text_clear(&filling->said);
			typing_edit(&filling->typing, edits[i].edit);
			if (edits[i].edit > TYPING_END)
				filling_take(filling);
		}
}

/* What is said about this is drawn with the field. */
static void held_key(struct filling *filling, int key)
{
	if (key != PRESS_ERASE_LINE)
		return;
	filling->is_held = false;
	typing_edit(&filling->typing, TYPING_END);
	edit_key(filling, key);
}

static void text_key(struct filling *filling, const struct keys *keys, int key)
{
	if (filling->is_held)
		held_key(filling, key);
	else if (key == PRESS_PASTE)
		filling_paste(filling, &keys->pasted);
	else if (key == PRESS_UNREAD)
		filling_miss(filling);
	else if (key >= ' ' && key < PRESS_FIRST)
		filling_type(filling, (uint32_t)key);
	else
		edit_key(filling, key);
}

/* What is pasted, or typed ahead on a slow line, is as if it came letter by letter; blanks at its
 * end are no word. */
static void choice_key(struct filling *filling, const struct keys *keys, int key)
{
	const struct text *pasted = &keys->pasted;
	size_t length = key == PRESS_PASTE ? pasted->length : 0;

	if (key != PRESS_PASTE)
		filling_choose(filling, key);
	while (length > 0 && pasted->bytes[length - 1] == ' ')
		length--;
	for (size_t i = 0; i < length; i++)
		filling_choose(filling, (unsigned char)pasted->bytes[i]);
}

void filling_key(struct filling *filling, const struct keys *keys, int key)
{
	if (key == PRESS_UP || key == PRESS_BACK_TAB)
		go_by(filling, -1);
	else if (key == PRESS_DOWN || key == PRESS_TAB)
		go_by(filling, 1);
	else if (key == PRESS_PAGE_UP)
		leave_for(filling, 0);
	else if (key == PRESS_PAGE_DOWN)
		leave_for(filling, filling_last(filling));
	else if (filling_is_choice(filling))
		choice_key(filling, keys, key);
	else if (!filling_is_end(filling))
		text_key(filling, keys, key);
}
