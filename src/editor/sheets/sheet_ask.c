#include "editor/sheets/sheet_ask.h"
#include "base/memory.h"

#include <stdlib.h>

struct field_spec sheet_file(const char *typed)
{
	static const struct value_rule name = { .kind = VALUE_TEXT, .least = 1, .most = 4000 };

	return (struct field_spec){ .label = "File",
		.meaning = "The name of a file, with its folder where that is another.",
		.rule = &name, .required = true, .typed = typed };
}

bool sheet_ask(struct editor *editor, const struct sheet_spec *spec)
{
	struct sheet sheet;
	bool is_filled;

	sheet_init(&sheet, spec->count +
		(spec->block ? block_fields(spec->block, &spec->part) : 0));
	sheet.title = spec->title;
	sheet.done = spec->done;
	sheet.units = plot_units(editor->plot);
	sheet.accept = spec->accept;
	sheet.check = spec->check;
	sheet.changed = spec->changed;
	sheet.owner = spec->owner;
	for (int i = 0; i < spec->count; i++) {
		const struct field_spec *from = &spec->fields[i];

		free(sheet.fields[i].typed);
		sheet.fields[i] = (struct field){ .label = from->label, .meaning = from->meaning,
			.rule = from->rule, .required = from->required,
			.is_cells = from->is_cells, .span = from->span,
			.typed = memory_string(from->typed ? from->typed : ""),
			.unset = from->unset ? memory_string(from->unset) : NULL };
	}
	if (spec->block)
		block_fields_set(&sheet, spec->count, spec->block, &spec->part);
	is_filled = editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
	return is_filled;
}
