#include "screen/block_sheet.h"
#include "base/memory.h"

/* The sheet's owner: whose attributes they are. */
struct filling {
	struct editor *editor;
	struct block *block;
};

static char *unset_words(const struct attribute_row *row, enum units units)
{
	struct text words = TEXT_EMPTY;

	if (row->derived)
		text_add(&words, row->derived);
	else if (row->preset.set)
		value_write(&words, &row->rule, &row->preset, units);
	return words.bytes;
}

static void fields_set(struct sheet *sheet, const struct block *block)
{
	for (int i = 0; i < sheet->count; i++) {
		enum attribute a = block_first(block->kind) + (enum attribute)i;
		const struct attribute_row *row = attribute_row(a);

		sheet->fields[i].label = row->label;
		sheet->fields[i].rule = &row->rule;
		sheet->fields[i].required = row->required;
		sheet->fields[i].unset = unset_words(row, sheet->units);
		sheet_type_value(sheet, i, block_value(block, a));
	}
}

/* The one value whose range hangs on the rest of the plot. */
static bool axis_check(const struct editor *editor, const struct value *axis, struct fault *fault)
{
	const struct ground *ground = &editor->plot.ground;
	int across = 2 * ground->columns - 1, down = 2 * ground->rows - 1;
	struct place at = axis->as.place;

	if (!axis->set || (at.x >= 1 && at.x <= across && at.y >= 1 && at.y <= down))
		return true;
	return fault_set(fault, HEAD_AXIS,
		"%s: found %d,%d, expected 1,1 to %d,%d", attribute_row(HEAD_AXIS)->label, at.x, at.y,
		across, down);
}

static void values_drop(struct value *values, const struct sheet *sheet)
{
	for (int i = 0; i < sheet->count; i++)
		value_fini(sheet->fields[i].rule->kind, &values[i]);
}

static bool fields_accept(struct sheet *sheet, struct fault *fault)
{
	struct filling *filling = sheet->owner;
	struct block *block = filling->block;
	struct value values[BLOCK_VALUES_MOST] = { { .set = false } };
	bool is_good = true;

	for (int i = 0; i < sheet->count && is_good; i++)
		is_good = sheet_read(sheet, i, &values[i], fault);
	if (is_good && block->kind == BLOCK_HEAD)
		is_good = axis_check(filling->editor, &values[HEAD_AXIS], fault);
	if (!is_good) {
		values_drop(values, sheet);
		return false;
	}
	for (int i = 0; i < sheet->count; i++)
		block_set(block, block_first(block->kind) + (enum attribute)i, values[i]);
	return true;
}

_Static_assert(HEAD_TITLE == 0, "the head's attributes are numbered from 0");

bool block_sheet_fill(struct editor *editor, struct block *block, const char *title)
{
	struct filling filling = { editor, block };
	struct sheet sheet;
	bool is_filled;

	sheet_init(&sheet, (int)(block_last(block->kind) - block_first(block->kind)) + 1);
	sheet.title = title;
	sheet.done = "set all this";
	sheet.units = plot_units(&editor->plot);
	sheet.accept = fields_accept;
	sheet.owner = &filling;
	fields_set(&sheet, block);
	is_filled = editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
	return is_filled;
}
