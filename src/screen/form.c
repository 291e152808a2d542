#include "screen/form.h"
#include "screen/filling.h"

static bool is_last(const struct filling *filling)
{
	return filling->at == filling->sheet->count - 1;
}

/* ---- Opening and closing -------------------------------------------------------------------- */

static void filling_open(struct filling *filling, struct sheet *sheet)
{
	*filling = (struct filling){ .front = { .state = STATE_FORM, .draw = filling_draw },
		.keys = { "Up Down", "go", "Enter", NULL, "Esc", "leave", NULL },
		.sheet = sheet, .typing = TYPING_EMPTY, .lacking = LACKING_NONE, .said = TEXT_EMPTY,
		.fault = { .words = TEXT_EMPTY, .offer = TEXT_EMPTY } };
	filling->front.keys = filling->keys;
	filling_go(filling, 0);
}

static void filling_close(struct filling *filling)
{
	typing_fini(&filling->typing);
	text_fini(&filling->said);
	fault_fini(&filling->fault);
}

/* ---- Taking --------------------------------------------------------------------------------- */

/* Types what was offered instead of what is wrong. */
static void offer_take(struct filling *filling)
{
	int at = filling->fault.field;

	sheet_type(filling->sheet, at, filling->fault.offer.bytes);
	filling_go(filling, at);
	if (filling->sheet->changed)
		filling->sheet->changed(filling->sheet, at);
}

/* Whether the current field is right; else the fault says why, and the cursor stays. */
static bool is_right(struct filling *filling)
{
	struct sheet *sheet = filling->sheet;
	struct value value;
	int at = filling->at;

	fault_clear(&filling->fault);
	if (!sheet_read(sheet, at, &value, &filling->fault)) {
		if (filling->typing.is_fresh)
			filling_go_to(filling, at);
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
		filling_go_to(filling, filling->fault.field);
	return false;
}

/* False, once, where a field did not take all that was typed into it. */
static bool is_complete(struct filling *filling)
{
	int at = filling->lacking;

	if (at == LACKING_NONE)
		return true;
	filling->lacking = LACKING_NONE;
	fault_set(&filling->fault, at, "%s: not all that came is in it. Enter takes it so.",
		filling->sheet->fields[at].label);
	filling_go_to(filling, at);
	return false;
}

/* Enter: the offer first, then the next field, at last the whole sheet. True where it is done. */
static bool enter(struct filling *filling)
{
	if (filling->fault.offer.length)
		offer_take(filling);
	if (!is_complete(filling) || !is_right(filling))
		return false;
	if (is_last(filling))
		return is_taken(filling);
	filling_go(filling, filling->at + 1);
	return false;
}

static void filling_show(struct stage *stage, struct filling *filling)
{
	const char **keys = filling->keys;

	keys[3] = is_last(filling) ? filling->sheet->done : "next";
	if (filling->fault.offer.length)
		keys[3] = "take it";
	keys[6] = NULL;
	if (filling_is_choice(filling)) {
		keys[6] = "Space";
		keys[7] = "another word";
	} else if (!is_last(filling)) {
		keys[6] = "PgDn";
		keys[7] = "to the end";
	}
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
