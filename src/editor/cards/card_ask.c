#include "editor/cards/card_ask.h"
#include "base/memory.h"
#include "base/path.h"

#include <stdlib.h>
#include <string.h>

struct field_spec card_file(const char *typed)
{
	static const struct value_rule name = { .kind = VALUE_TEXT, .least = 1, .most = 4000 };

	return (struct field_spec){ .label = "File",
		.meaning = "The name of a file, with its folder where that is another.",
		.rule = &name, .required = true, .typed = typed };
}

bool card_file_read(const struct card *card, int field, char **path, struct fault *fault)
{
	struct value value;

	if (!card_read(card, field, &value, fault))
		return false;
	*path = path_typed(value.as.text);
	value_fini(VALUE_TEXT, &value);
	return true;
}

struct field_spec card_name(const char *meaning, const char *typed)
{
	static const struct value_rule name = { .kind = VALUE_TEXT, .least = 1,
		.most = NAME_MOST };

	return (struct field_spec){ .label = "Name", .meaning = meaning, .rule = &name,
		.required = true, .typed = typed };
}

bool card_name_read(const struct card *card, int field, const char *before, char **name,
	struct fault *fault)
{
	struct value value;

	if (before && strcmp(card->fields[field].typed, before) == 0) {
		*name = memory_string(before);
		return true;
	}
	if (!card_read(card, field, &value, fault))
		return false;
	*name = memory_string(value.as.text);
	value_fini(VALUE_TEXT, &value);
	return true;
}

static void put_fields(struct card *card, int first, const struct field_spec *specs, int count)
{
	for (int i = 0; i < count; i++) {
		const struct field_spec *from = &specs[i];
		struct field *field = &card->fields[first + i];

		free(field->typed);
		*field = (struct field){ .label = from->label, .meaning = from->meaning,
			.rule = from->rule, .required = from->required,
			.is_cells = from->is_cells, .span = from->span,
			.typed = memory_string(from->typed ? from->typed : ""),
			.unset = from->unset ? memory_string(from->unset) : NULL };
	}
}

bool card_ask(struct editor *editor, const struct card_spec *spec)
{
	int of_block = spec->block ? block_fields(spec->block, &spec->part) : 0;
	struct card card;
	bool is_filled;

	card_init(&card, spec->count + of_block + spec->last_count);
	card.title = spec->title;
	card.done = spec->done;
	card.units = plot_units(editor->plot);
	card.accept = spec->accept;
	card.check = spec->check;
	card.changed = spec->changed;
	card.owner = spec->owner;
	card.onward = spec->onward;
	put_fields(&card, 0, spec->fields, spec->count);
	put_fields(&card, spec->count + of_block, spec->last, spec->last_count);
	if (spec->block)
		block_fields_set(&card, spec->count, spec->block, &spec->part);
	is_filled = editor->asker->fill(editor->asker, &card);
	card_fini(&card);
	return is_filled;
}
