#include "screen/form.h"
#include "base/memory.h"
#include "screen/draw.h"
#include "screen/filling.h"

#include <stdlib.h>

enum { TYPED_MOST = 2 * NOTE_MOST + 1 };

static bool is_last(const struct filling *filling)
{
	return filling_at(filling) == filling->sheet->count - 1;
}

/* ---- Opening and closing -------------------------------------------------------------------- */

static FIELD *field_open(const struct field *field, int row)
{
	int column = filling_column(field);
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
		filling_show_field(filling, i);
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

/* ---- Taking --------------------------------------------------------------------------------- */

/* Types what was offered instead of what is wrong. */
static void offer_take(struct filling *filling)
{
	int at = filling->fault.field;

	sheet_type(filling->sheet, at, filling->fault.offer.bytes);
	fault_clear(&filling->fault);
	filling_show_field(filling, at);
	if (filling->sheet->changed)
		filling->sheet->changed(filling->sheet, at);
}

/* Whether the current field is right; else the fault says why, and the cursor stays. */
static bool is_right(struct filling *filling)
{
	struct sheet *sheet = filling->sheet;
	struct value value;
	int at = filling_at(filling);

	fault_clear(&filling->fault);
	if (!sheet_read(sheet, at, &value, &filling->fault)) {
		if (filling->is_fresh)
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

/* Enter: the offer first, then the next field, at last the whole sheet. True where it is done. */
static bool enter(struct filling *filling)
{
	if (filling->fault.offer.length)
		offer_take(filling);
	if (!is_right(filling))
		return false;
	if (is_last(filling))
		return is_taken(filling);
	filling_go(filling, REQ_NEXT_FIELD);
	return false;
}

static void filling_show(struct stage *stage, struct filling *filling)
{
	const char *keys[9] = { "Up Down", "go", "Enter", "next", "Esc", "leave", NULL };

	if (is_last(filling))
		keys[3] = filling->sheet->done;
	if (filling->fault.offer.length)
		keys[3] = "take it";
	if (filling_is_choice(filling)) {
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
