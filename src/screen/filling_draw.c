#include "screen/filling.h"
#include "base/number.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/status.h"
#include "screen/width.h"

#include <stdio.h>

enum {
	MARGIN = 2, TITLE_ROWS = 2,
	LABEL_COLUMNS = 22,
	WIDE_AT = 12, /* where a field for a whole sentence begins */
	FOOT_ROWS = 2 /* what a field means, and what holds in it */
};

/* Where a field begins, after its label. */
static int field_column(const struct field *field)
{
	bool is_sentence = field->rule->kind == VALUE_TEXT && field->rule->most > 1;

	return !is_sentence ? LABEL_COLUMNS : most(WIDE_AT, width_of(field->label) + 1);
}

/* The first field in view, so that the current one is. */
static int top_of(const struct filling *filling, int rows)
{
	return filling->at < rows ? 0 : filling->at - rows + 1;
}

/* How many columns of a text are left of its field, so that the cursor is in view: none, or so many
 * halves of the field. */
static int columns_passed(int cursor, int columns)
{
	int half = columns / 2;

	return cursor < columns ? 0 : ((cursor - columns + 1) / half + 1) * half;
}

static void draw_field(const struct area *area, const char *words)
{
	int column = draw_text(area, 0, 0, words, LOOK_FIELD);

	while (column < area->columns)
		draw_character(area, 0, column++, ' ', LOOK_FIELD);
}

/* The field that the cursor is in; leaves the cursor there. */
static void draw_typing(const struct filling *filling, const struct area *area)
{
	struct text before = TEXT_EMPTY, all = TEXT_EMPTY;
	size_t passed;
	int cursor;

	typing_add_before(&filling->typing, &before);
	typing_add_all(&filling->typing, &all);
	cursor = width_of(before.bytes);
	passed = width_cut(all.bytes, columns_passed(cursor, area->columns));
	if (all.length)
		draw_field(area, all.bytes + passed);
	text_cut(&all, passed);
	move(area->row, area->column + cursor - width_of(all.bytes));
	text_fini(&before);
	text_fini(&all);
}

/* Where the field of a row is, after its label. */
static struct area field_area(const struct field *field, const struct area *area, int row)
{
	int column = field_column(field);

	return (struct area){ area->row + row, area->column + column, 1, ROW_COLUMNS - column };
}

static void draw_row(const struct field *field, const struct area *area, int row)
{
	struct area own = field_area(field, area, row);
	struct text unset = TEXT_EMPTY;

	draw_text(area, row, 0, field->label, LOOK_PLAIN);
	draw_field(&own, field->typed);
	if (field->typed[0] == '\0' && field->unset) {
		text_print(&unset, "[%s]", field->unset);
		draw_text(area, row, field_column(field), unset.bytes, LOOK_PLAIN);
	}
	text_fini(&unset);
}

/* The row that takes the card, below its fields. */
static void draw_end(const struct filling *filling, const struct area *area, int row)
{
	bool is_here = filling_is_end(filling);
	struct text words = TEXT_EMPTY;

	text_print(&words, "Enter here: %s", filling->card->done);
	draw_text(area, row, 0, words.bytes, is_here ? LOOK_PICKED : LOOK_STRONG);
	if (is_here)
		move(area->row + row, area->column);
	text_fini(&words);
}

static void draw_fields(const struct filling *filling, const struct area *area)
{
	int count = filling_last(filling) + 1, rows = least(count, area->rows);
	int top = top_of(filling, rows);

	for (int i = 0; i < rows; i++)
		if (top + i < filling->card->count)
			draw_row(&filling->card->fields[top + i], area, i);
		else
			draw_end(filling, area, i);
	if (!filling_is_end(filling)) {
		struct area own = field_area(filling_field(filling), area, filling->at - top);

		draw_typing(filling, &own);
	}
}

/* Says that there are more fields than are in view. */
static void draw_title(const struct filling *filling, const struct area *area)
{
	int count = filling_last(filling) + 1;
	char place[32];

	draw_text(area, 0, 0, filling->card->title, LOOK_STRONG);
	snprintf(place, sizeof place, "  %d of %d", filling->at + 1, count);
	if (area->rows < TITLE_ROWS + count)
		draw_right(area, 0, place, LOOK_PLAIN);
}

/* ---- The foot ------------------------------------------------------------------------------- */

/* What is wrong; or what was not taken, or was taken otherwise; or why nothing is taken. */
static void said_add(const struct filling *filling, struct text *words)
{
	if (filling->fault.words.length)
		text_add(words, filling->fault.words.bytes);
	else if (filling->said.length)
		text_add(words, filling->said.bytes);
	else if (filling->is_held)
		text_print(words, "%s: the locale cannot show all of it: left whole. Ctrl-U "
			"empties it.", filling_field(filling)->label);
}

static void meaning_add(const struct filling *filling, struct text *words)
{
	if (filling_is_end(filling))
		text_add(words, "Enter takes the card as it stands; Up goes back into it.");
	else if (filling_field(filling)->meaning)
		text_add(words, filling_field(filling)->meaning);
}

/* The whole of what the field has no room for; or what holds while it is unset, and what a number
 * without a unit is. */
static void details_add(const struct filling *filling, struct text *words)
{
	const struct field *field;
	const char *unit;

	if (filling_is_end(filling))
		return;
	field = filling_field(filling);
	unit = card_unit(filling->card, filling->at);
	if (width_of(field->typed) > ROW_COLUMNS - field_column(field)) {
		text_add(words, field->typed);
		return;
	}
	if (field->typed[0] == '\0' && field->unset)
		text_add_sentence(words, "Unset, so %s.", field->unset);
	if (unit)
		text_add_sentence(words, "A number alone is in %s.", unit);
}

/* Cuts a message to so many lines, for the fields to stay in view. Returns how many it has. */
static int message_cut(struct text *words, int columns, int most)
{
	size_t end = 0, next;
	int lines = 0;

	while (lines < most && words->bytes[end]) {
		width_line(words->bytes + end, columns, &next);
		end += next;
		lines++;
	}
	if (words->length)
		text_cut(words, end);
	return lines;
}

/* Two parts, each from a row of its own on; they end on the message row. Returns their rows. */
static int foot_rows(struct text *upper, struct text *lower, int columns, int most_rows)
{
	int rows = message_cut(upper, columns, most_rows);

	return rows + message_cut(lower, columns, most(most_rows - rows, 1));
}

static void draw_foot(const struct layout *layout, int rows, const char *upper, const char *lower)
{
	struct area area = layout->message;

	area.row -= rows - 1;
	area.rows = rows;
	draw_clear(&area);
	draw_wrapped(&area, *upper ? draw_wrapped(&area, 0, upper, LOOK_PLAIN) : 0, lower,
		LOOK_PLAIN);
}

void filling_draw(const struct front *front, const struct layout *layout)
{
	const struct filling *filling = (const struct filling *)front;
	struct area area = layout->form, inner;
	struct text upper = TEXT_EMPTY, lower = TEXT_EMPTY;
	int rows;

	said_add(filling, &upper);
	meaning_add(filling, upper.length ? &lower : &upper);
	if (!lower.length)
		details_add(filling, &lower);
	/* Rows of the form's are covered, always the same while that is enough. */
	rows = most(foot_rows(&upper, &lower, layout->message.columns, area.rows / 2), FOOT_ROWS);
	draw_card(&area);
	inner = (struct area){ area.row, area.column + MARGIN, area.rows - (rows - 1),
		area.columns - MARGIN };
	draw_title(filling, &inner);
	draw_foot(layout, rows, upper.bytes, lower.bytes);
	text_fini(&upper);
	text_fini(&lower);
	inner.row += TITLE_ROWS;
	inner.rows -= TITLE_ROWS;
	draw_fields(filling, &inner);
}
