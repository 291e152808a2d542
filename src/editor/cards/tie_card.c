#include "editor/cards/tie_card.h"
#include "editor/cards/spot_fields.h"

#include <stdlib.h>

enum { ACROSS, DOWN, PLACE_FIELDS, NAME = PLACE_FIELDS, LENGTH, TIE_FIELDS };
enum { NEW_TIE = -1 };

/* The card's owner. */
struct entering {
	struct editor *editor;
	int which; /* NEW_TIE: one that is not there yet; of the drop or the tap: not looked at */
	const struct tie *tie; /* as it is so far, or as it is offered */
};

static bool check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct entering *entering = card->owner;

	return field >= PLACE_FIELDS || spot_check(card, field, value, entering->editor,
		spot_reach(entering->editor, field == DOWN), fault);
}

static void fields_place(struct field_spec *fields, const struct report *report, struct place at)
{
	fields[ACROSS] = spot_field(report, "Across from the left",
		"How far the place is from the plan's left edge.", at.x);
	fields[DOWN] = spot_field(report, "Down from the top",
		"How far the place is from the plan's top edge.", at.y);
}

/* ---- Ties ------------------------------------------------------------------------------------ */

static bool tie_accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct value length;
	struct place at;
	struct ties *ties;
	char *name;

	if (!spot_point_read(card, ACROSS, entering->editor, &at, fault) ||
		!card_name_read(card, NAME, entering->tie->name, &name, fault))
		return false;
	if (!card_read(card, LENGTH, &length, fault)) {
		free(name);
		return false;
	}
	ties = &editor_edit(entering->editor)->details.around.ties;
	if (entering->which == NEW_TIE) {
		ties_add(ties, at, name, length.as.length);
	} else {
		free(ties->items[entering->which].name);
		ties->items[entering->which] = (struct tie){ at, name, length.as.length };
	}
	return true;
}

static bool tie_ask(struct editor *editor, int which, const struct tie *tie)
{
	struct entering entering = { editor, which, tie };
	struct report report = editor_report(editor, &editor->words);
	struct field_spec fields[TIE_FIELDS] = {
		[NAME] = card_name("What stays where it is: House corner, north.", tie->name),
		[LENGTH] = { .label = "Length", .rule = &tie_rule, .required = true,
			.span = SPAN_LONG, .meaning = "What the tape reads from the place to it.",
			.typed = tie->length ? exact_length(&report, tie->length) : NULL },
	};

	fields_place(fields, &report, tie->at);
	return card_ask(editor, &(struct card_spec){
		.title = which == NEW_TIE ? "A new tie" : "A tie",
		.done = which == NEW_TIE ? "add it" : "set all this", .fields = fields,
		.count = TIE_FIELDS, .accept = tie_accept, .check = check, .owner = &entering });
}

bool tie_card_change(struct editor *editor, int which)
{
	return tie_ask(editor, which, &editor->plot->details.around.ties.items[which]);
}

bool tie_card_add(struct editor *editor, struct place at)
{
	const struct tie tie = { .at = at };

	return tie_ask(editor, NEW_TIE, &tie);
}

/* ---- The drop and the tap -------------------------------------------------------------------- */

static bool drop_accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct place at;

	if (!spot_point_read(card, ACROSS, entering->editor, &at, fault))
		return false;
	editor_edit(entering->editor)->details.around.drop = at;
	return true;
}

static bool tap_accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct place at;

	if (!spot_point_read(card, ACROSS, entering->editor, &at, fault))
		return false;
	editor_edit(entering->editor)->details.around.tap = at;
	return true;
}

static bool point_ask(struct editor *editor, const char *title, struct place at,
	bool (*accept)(struct card *card, struct fault *fault))
{
	struct entering entering = { .editor = editor };
	struct report report = editor_report(editor, &editor->words);
	struct field_spec fields[PLACE_FIELDS];

	fields_place(fields, &report, at);
	return card_ask(editor, &(struct card_spec){ .title = title, .done = "set all this",
		.fields = fields, .count = PLACE_FIELDS, .accept = accept, .check = check,
		.owner = &entering });
}

bool drop_card_change(struct editor *editor)
{
	return point_ask(editor, "Deliveries are put down",
		editor->plot->details.around.drop, drop_accept);
}

bool tap_card_change(struct editor *editor)
{
	return point_ask(editor, "Water comes from", editor->plot->details.around.tap,
		tap_accept);
}
