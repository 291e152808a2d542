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
	bool is_sentence = field->rule->kind == VALUE_TEXT && field->rule->most > 1 &&
		!field->is_cells;

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

/* Blanks from a column on. */
static void draw_rest(const struct area *area, int column)
{
	while (column < area->columns)
		draw_character(area, 0, column++, ' ', LOOK_FIELD);
}

/* What a field says; or in brackets what holds while it says nothing. */
static void draw_value(const struct field *field, const struct area *area)
{
	struct text unset = TEXT_EMPTY;

	draw_rest(area, draw_cut(area, 0, 0, field->typed, area->columns, LOOK_FIELD));
	if (field->typed[0] == '\0' && field->unset) {
		text_print(&unset, "[%s]", field->unset);
		draw_cut(area, 0, 0, unset.bytes, area->columns, LOOK_PLAIN);
	}
	text_fini(&unset);
}

void filling_draw_typing(const struct filling *filling, const struct area *area)
{
	struct text before = TEXT_EMPTY, all = TEXT_EMPTY;
	size_t passed;
	int cursor;

	draw_value(filling_field(filling), area);
	typing_add_before(&filling->typing, &before);
	typing_add_all(&filling->typing, &all);
	cursor = width_of(before.bytes);
	passed = width_cut(all.bytes, columns_passed(cursor, area->columns));
	if (all.length)
		draw_rest(area, draw_text(area, 0, 0, all.bytes + passed, LOOK_FIELD));
	text_cut(&all, passed);
	move(area->row, area->column + cursor - width_of(all.bytes));
	text_fini(&before);
	text_fini(&all);
}

/* Where the field of a row is, after its label. */
static struct area field_area(const struct field *field, const struct area *area, int row)
{
	int column = field_column(field);

	return (struct area){ area->row + row, area->column + column, 1, area->columns - column };
}

static void draw_row(const struct field *field, const struct area *area, int row)
{
	struct area own = field_area(field, area, row);

	draw_text(area, row, 0, field->label, LOOK_PLAIN);
	draw_value(field, &own);
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

		filling_draw_typing(filling, &own);
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

/* Two parts, each from a row of its own on; they end on the message row. */
struct foot {
	struct text upper, lower; /* owned */
	int rows;
};

static int foot_cut(struct foot *foot, int columns, int most_rows)
{
	int rows = message_cut(&foot->upper, columns, most_rows);

	return rows + message_cut(&foot->lower, columns, most(most_rows - rows, 1));
}

static void draw_foot(const struct layout *layout, const struct foot *foot)
{
	struct area area = layout->message;
	int row;

	area.row -= foot->rows - 1;
	area.rows = foot->rows;
	draw_clear(&area);
	row = draw_wrapped(&area, 0, foot->upper.bytes, LOOK_PLAIN);
	draw_wrapped(&area, row, foot->lower.bytes, LOOK_PLAIN);
}

/* The whole of what the field has no room for; or the words it takes, what holds while it is unset,
 * and what a number without a unit is. */
static void add_details(const struct filling *filling, int columns, struct text *words)
{
	if (filling_is_end(filling))
		return;
	filling_add_whole(filling, columns - field_column(filling_field(filling)), words);
	if (words->length)
		return;
	filling_add_choices(filling, words);
	filling_add_unset(filling, words);
	filling_add_unit(filling, words);
}

/* Cut to what there is room for. Rows of the form's are covered, always the same while that is
 * enough. */
static struct foot foot_of(const struct filling *filling, const struct layout *layout)
{
	struct foot foot = { TEXT_EMPTY, TEXT_EMPTY, 0 };

	filling_add_said(filling, &foot.upper);
	filling_add_meaning(filling, foot.upper.length ? &foot.lower : &foot.upper);
	if (!foot.lower.length)
		add_details(filling, layout->form.columns - MARGIN, &foot.lower);
	foot.rows = most(foot_cut(&foot, layout->message.columns, layout->form.rows / 2),
		FOOT_ROWS);
	return foot;
}

static void foot_fini(struct foot *foot)
{
	text_fini(&foot->upper);
	text_fini(&foot->lower);
}

struct area filling_leaves(const struct front *front, const struct layout *layout)
{
	struct foot foot = foot_of((const struct filling *)front, layout);
	struct area leaves = { 0, 0, layout->message.row + 1 - foot.rows, layout->form.column };

	foot_fini(&foot);
	return leaves;
}

void filling_draw(const struct front *front, const struct layout *layout)
{
	const struct filling *filling = (const struct filling *)front;
	struct foot foot = foot_of(filling, layout);
	struct area area = layout->form, inner;

	draw_card(&area);
	inner = (struct area){ area.row, area.column + MARGIN, area.rows - (foot.rows - 1),
		area.columns - MARGIN };
	draw_title(filling, &inner);
	draw_foot(layout, &foot);
	foot_fini(&foot);
	inner.row += TITLE_ROWS;
	inner.rows -= TITLE_ROWS;
	draw_fields(filling, &inner);
}
