#include "editor/cards/finish_card.h"
#include "editor/cards/spot_fields.h"

enum { ACROSS, DOWN, DROP, FALL, WAY, BEARING, FIELDS };

static const struct value_rule way_rule = { .kind = VALUE_CHOICE, .words = fall_words };

static bool check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct editor *editor = card->owner;

	return field > DOWN || spot_check(card, field, value, editor,
		spot_reach(editor, field == DOWN), fault);
}

/* A drop that is typed is a level. */
static bool level_read(const struct card *card, struct finish *out, struct fault *fault)
{
	const struct editor *editor = card->owner;
	struct value drop;

	if (!spot_point_read(card, ACROSS, editor, &out->at, fault) ||
		!card_read(card, DROP, &drop, fault))
		return false;
	out->has_level = drop.set;
	if (drop.set)
		out->drop = drop.as.length;
	return true;
}

/* A percentage that is typed is a fall: it needs a bearing, unless it is away from the house. */
static bool fall_read(const struct card *card, struct finish *out, struct fault *fault)
{
	struct value percent, way, bearing;

	if (!card_read(card, FALL, &percent, fault) || !card_read(card, WAY, &way, fault) ||
		!card_read(card, BEARING, &bearing, fault))
		return false;
	out->has_fall = percent.set;
	if (!percent.set)
		return true;
	out->percent = percent.as.number;
	out->is_away = way.as.number;
	if (out->is_away)
		return true;
	if (!bearing.set)
		return fault_set(fault, BEARING, "Bearing: needed where it falls towards one");
	out->bearing = bearing.as.number;
	return true;
}

static bool accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	struct finish finish = { .has_level = false };

	if (!level_read(card, &finish, fault) || !fall_read(card, &finish, fault))
		return false;
	editor_edit(editor)->details.finish = finish;
	return true;
}

/* As the format writes them; "" where there is none. */
static const char *number_words(const struct report *report, const struct value_rule *rule,
	bool is_set, int64_t number)
{
	const struct value value = { .set = is_set, .as.number = number };
	struct text words = TEXT_EMPTY;

	card_value_words(&words, rule, &value, report->units);
	return say_text(report, &words);
}

bool finish_card_fill(struct editor *editor)
{
	const struct finish *finish = &editor->plot->details.finish;
	struct report report = editor_report(editor, &editor->words);
	struct place at = finish->has_level ? finish->at : spot_meant(editor);
	bool has_bearing = finish->has_fall && !finish->is_away;
	const struct field_spec fields[FIELDS] = {
		[ACROSS] = spot_field(&report, "Across from the left",
			"How far the place of the level is from the plan's left edge.", at.x),
		[DOWN] = spot_field(&report, "Down from the top",
			"How far the place of the level is from the plan's top edge.", at.y),
		[DROP] = { .label = "Level there", .rule = &drop_rule,
			.meaning = "From the string down to the finished ground at that place.",
			.typed = finish->has_level ? exact_length(&report, finish->drop) : NULL,
			.unset = "as the ground is" },
		[FALL] = { .label = "Fall", .rule = &fall_rule,
			.meaning = "How much it falls from there: 2 % is 2 in a hundred.",
			.typed = number_words(&report, &fall_rule, finish->has_fall,
				finish->percent), .unset = "none is told" },
		[WAY] = { .label = "It falls", .rule = &way_rule, .required = true,
			.meaning = "Away: away from the house. Towards: towards a bearing.",
			.typed = fall_words[has_bearing ? 0 : 1] },
		[BEARING] = { .label = "Bearing", .rule = &bearing_rule,
			.meaning = "In degrees, clockwise from true north: 90 is east.",
			.typed = number_words(&report, &bearing_rule, has_bearing,
				finish->bearing) },
	};

	return card_ask(editor, &(struct card_spec){ .title = "The finished ground",
		.done = "set all this", .fields = fields, .count = FIELDS, .accept = accept,
		.check = check, .owner = editor });
}
