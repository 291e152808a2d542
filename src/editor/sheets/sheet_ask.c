#include "editor/sheets/sheet_ask.h"
#include "base/memory.h"

static void field_set(struct sheet *sheet, int at, const struct field_spec *spec)
{
	struct field *field = &sheet->fields[at];

	field->label = spec->label;
	field->rule = spec->rule;
	field->required = spec->required;
	field->is_far = spec->is_far;
	field->unset = spec->unset ? memory_string(spec->unset) : NULL;
	if (spec->typed)
		sheet_type(sheet, at, spec->typed);
}

static void sheet_open(struct sheet *sheet, const struct sheet_spec *spec, enum units units)
{
	sheet_init(sheet, spec->count + (spec->block ? block_fields(spec->block, &spec->part) : 0));
	sheet->title = spec->title;
	sheet->done = spec->done;
	sheet->units = units;
	sheet->accept = spec->accept;
	sheet->check = spec->check;
	sheet->changed = spec->changed;
	sheet->owner = spec->owner;
	for (int i = 0; i < spec->count; i++)
		field_set(sheet, i, &spec->fields[i]);
	if (spec->block)
		block_fields_set(sheet, spec->count, spec->block, &spec->part);
}

bool sheet_ask(struct editor *editor, const struct sheet_spec *spec)
{
	struct sheet sheet;
	bool is_filled;

	sheet_open(&sheet, spec, plot_units(editor->plot));
	is_filled = editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
	return is_filled;
}
