#include "screen/prompt.h"
#include "base/number.h"
#include "screen/draw.h"
#include "screen/filling.h"
#include "screen/width.h"

/* Columns of a field at the least: for a value, and for words where something stands beside. */
enum { GAP = 2, VALUE_LEAST = 20, WORDS_LEAST = 40 };

/* What the row has besides the title and the label. */
struct prompt {
	int title;                 /* columns of it */
	struct area field;
	struct text beside, above; /* owned */
};

bool prompt_suits(const struct card *card)
{
	return card->count == 1 && !card->has_end;
}

static int field_least(const struct field *field)
{
	return field->rule->kind == VALUE_TEXT && !field->is_cells ? WORDS_LEAST : VALUE_LEAST;
}

/* Meaning and unit, or the unit alone; false where there is no room for that either. */
static bool beside_put(const struct filling *filling, int room, struct text *beside)
{
	filling_add_meaning(filling, beside);
	filling_add_unit(filling, beside);
	if (width_of(beside->bytes) <= room)
		return true;
	text_clear(beside);
	filling_add_unit(filling, beside);
	if (width_of(beside->bytes) <= room)
		return true;
	text_clear(beside);
	return false;
}

static struct prompt prompt_of(const struct filling *filling, const struct layout *layout)
{
	const struct field *field = filling_field(filling);
	const struct area *row = &layout->message;
	int label = width_of(field->label) + 1, column;
	struct prompt prompt = { .beside = TEXT_EMPTY, .above = TEXT_EMPTY };
	bool has_unit;

	prompt.title = least(width_of(filling->card->title),
		row->columns - GAP - label - VALUE_LEAST);
	column = prompt.title + GAP + label;
	has_unit = beside_put(filling, row->columns - column - field_least(field) - GAP,
		&prompt.beside);
	prompt.field = (struct area){ row->row, column, 1, row->columns - column -
		(prompt.beside.length ? GAP + width_of(prompt.beside.bytes) : 0) };
	filling_add_said(filling, &prompt.above);
	if (!prompt.above.length)
		filling_add_whole(filling, prompt.field.columns, &prompt.above);
	if (!prompt.above.length && !has_unit)
		filling_add_unit(filling, &prompt.above);
	return prompt;
}

static void prompt_fini(struct prompt *prompt)
{
	text_fini(&prompt->beside);
	text_fini(&prompt->above);
}

/* The rows above that its words take; not so many that the plan goes out of view. */
static struct area rows_above(const struct prompt *prompt, const struct layout *layout)
{
	const struct area *row = &layout->message;
	int rows = least(width_lines(prompt->above.bytes, row->columns), layout->plan.rows / 2);

	return (struct area){ row->row - rows, row->column, rows, row->columns };
}

struct area prompt_leaves(const struct front *front, const struct layout *layout)
{
	struct prompt prompt = prompt_of((const struct filling *)front, layout);
	struct area above = rows_above(&prompt, layout);

	prompt_fini(&prompt);
	return (struct area){ 0, 0, above.row, layout->screen.columns };
}

void prompt_draw(const struct front *front, const struct layout *layout)
{
	const struct filling *filling = (const struct filling *)front;
	struct prompt prompt = prompt_of(filling, layout);
	struct area above = rows_above(&prompt, layout);

	draw_clear(&above);
	draw_wrapped(&above, 0, prompt.above.bytes, LOOK_PLAIN);
	draw_cut(&layout->message, 0, 0, filling->card->title, prompt.title, LOOK_STRONG);
	draw_text(&layout->message, 0, prompt.title + GAP, filling_field(filling)->label,
		LOOK_PLAIN);
	draw_right(&layout->message, 0, prompt.beside.bytes, LOOK_PLAIN);
	prompt_fini(&prompt);
	filling_draw_typing(filling, &prompt.field);
}
