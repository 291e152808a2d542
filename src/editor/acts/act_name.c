#include "plot/edit/names.h"
#include "base/memory.h"
#include "editor/acts/act_groups.h"
#include "editor/cards/card_ask.h"

#include <stdlib.h>

struct naming {
	struct editor *editor;
	char *text; /* owned; "" for none */
};

static bool name_accept(struct card *card, struct fault *fault)
{
	struct naming *naming = card->owner;
	struct value value;

	if (!card_read(card, 0, &value, fault))
		return false;
	naming->text = memory_string(value.set ? value.as.text : "");
	value_fini(VALUE_TEXT, &value);
	return true;
}

static bool name_ask(struct naming *naming, const char *whose, const char *now)
{
	static const struct value_rule rule = { .kind = VALUE_TEXT, .least = 1,
		.most = NAME_MOST };
	const struct field_spec field = { .label = "Name", .rule = &rule, .typed = now,
		.unset = "none of its own",
		.meaning = "The name of this one, here, on the plan and in the takeoff." };

	return card_ask(naming->editor, &(struct card_spec){ .title = whose,
		.done = "name it", .fields = &field, .count = 1, .accept = name_accept,
		.owner = naming });
}

static void act_name(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);
	struct place at = editor->cursor;
	char letter = ground_cell(&editor->plot->ground, at.x, at.y);
	const char *whose = plain_letter(&report, letter), *now;
	struct naming naming = { .editor = editor };
	const struct names *names = &editor->plot->details.names;
	size_t index = names_of_region(editor_edit(editor), at);

	if (letter == OPEN_GROUND && index == names->count) {
		editor_say(editor, "Open ground has no name: go to a bed, a path, a lawn or a "
			"fixture.");
		return;
	}
	now = index < names->count ? names->items[index].text : NULL;
	if (!name_ask(&naming, say(&report, "This place: %s", whose), now))
		return;
	names_set(editor_edit(editor), at, naming.text);
	if (!editor_stroke(editor))
		editor_say(editor, "Nothing was changed.");
	else if (*naming.text)
		editor_say(editor, "Named: %s. %s takes it back.", naming.text,
			acts_key(ACT_TAKE_BACK));
	else
		editor_say(editor, "It has no name of its own now.");
	free(naming.text);
}

static const struct act acts[] = {
	{ .id = ACT_NAME, .key_name = "!", .name = "Name this place",
		.wish = "give one bed or path a name",
		.words = "rename name title label", .writes = true, .run = act_name },
};
const struct act_group acts_of_names = ACT_GROUP("Plot", acts);
