#include "screen/filling.h"
#include "screen/draw.h"
#include "screen/status.h"
#include "screen/width.h"

#include <stdio.h>

enum {
	MARGIN = 2, TITLE_ROWS = 2,
	LABEL_COLUMNS = 22,
	WIDE_AT = 12 /* where a field for a whole sentence begins */
};

int filling_column(const struct field *field)
{
	bool is_sentence = field->rule->kind == VALUE_TEXT && field->rule->most > 1;

	return is_sentence ? WIDE_AT : LABEL_COLUMNS;
}

/* The first field in view, so that the current one is. */
static int top_of(const struct filling *filling, int rows)
{
	int at = filling_at(filling);

	return at < rows ? 0 : at - rows + 1;
}

static void draw_row(const struct field *field, const struct area *area, int row)
{
	struct text unset = TEXT_EMPTY;

	draw_text(area, row, 0, field->label, LOOK_PLAIN);
	if (field->typed[0] == '\0' && field->unset) {
		text_print(&unset, "[%s]", field->unset);
		draw_text(area, row, filling_column(field), unset.bytes, LOOK_PLAIN);
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
	snprintf(place, sizeof place, "  %d of %d", filling_at(filling) + 1, count);
	if (area->rows < TITLE_ROWS + count)
		draw_right(area, 0, place, LOOK_PLAIN);
}

/* What is wrong; or the whole of what the field has no room for; or what holds while it is
 * unset. */
static void message_add(const struct filling *filling, struct text *words)
{
	const struct field *field = &filling->sheet->fields[filling_at(filling)];

	if (filling->fault.words.length)
		text_add(words, filling->fault.words.bytes);
	else if (width_of(field->typed) > ROW_COLUMNS - filling_column(field))
		text_add(words, field->typed);
	else if (field->typed[0] == '\0' && field->unset)
		text_print(words, "%s: unset, so %s.", field->label, field->unset);
}

void filling_draw(const struct front *front, const struct layout *layout)
{
	const struct filling *filling = (const struct filling *)front;
	struct area area = layout->form, inner;
	struct text words = TEXT_EMPTY;
	int lines;

	message_add(filling, &words);
	lines = words.length ? width_lines(words.bytes, layout->message.columns) : 1;
	draw_sheet(&area);
	inner = (struct area){ area.row, area.column + MARGIN, area.rows, area.columns - MARGIN };
	/* A message of more lines covers the form's last rows. */
	inner.rows -= lines - 1;
	draw_title(filling, &inner);
	if (words.length)
		status_message(layout, words.bytes);
	text_fini(&words);
	inner.row += TITLE_ROWS;
	inner.rows -= TITLE_ROWS;
	draw_fields(filling, &inner);
}
