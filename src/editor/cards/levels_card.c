#include "editor/cards/levels_card.h"
#include "base/number.h"
#include "editor/cards/card_ask.h"
#include "plot/edit/levels_move.h"

/* ---- The step -------------------------------------------------------------------------------- */

static bool step_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct editor *editor = card->owner;
	const struct ground *ground = &editor->plot->ground;
	nm cell = plot_cell(editor->plot), step = value->as.length;

	return (levels_count(ground->columns, cell, step) <= LEVELS_SIDE_MOST &&
		levels_count(ground->rows, cell, step) <= LEVELS_SIDE_MOST) ||
		fault_set(fault, field, "%s: there would be more than %d drops in a row",
			card->fields[field].label, LEVELS_SIDE_MOST);
}

static bool step_accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	struct value step;

	if (!card_read(card, 0, &step, fault))
		return false;
	levels_set_step(&editor_edit(editor)->details.levels, step.as.length,
		&editor->plot->ground, plot_cell(editor->plot));
	return true;
}

bool levels_card_step(struct editor *editor)
{
	/* Common practice, no published source. */
	static const nm offered[] = { [UNITS_IMPERIAL] = 8 * NM_PER_FOOT,
		[UNITS_METRIC] = 2 * NM_PER_M };
	const struct levels *levels = &editor->plot->details.levels;
	struct report report = editor_report(editor, &editor->words);
	const struct field_spec field = { .label = "How far apart", .rule = &step_rule,
		.required = true, .span = SPAN_PLAN,
		.meaning = "From one drop to the next, both ways, from the datum on.",
		.typed = exact_length(&report, levels->step ? levels->step :
			offered[report.units]) };

	return card_ask(editor, &(struct card_spec){ .title = "Levels", .done = "set it",
		.fields = &field, .count = 1, .accept = step_accept, .check = step_check,
		.owner = editor });
}

/* ---- One drop -------------------------------------------------------------------------------- */

/* The card's owner. */
struct measuring {
	struct editor *editor;
	size_t at; /* of the drops */
};

static bool drop_accept(struct card *card, struct fault *fault)
{
	const struct measuring *measuring = card->owner;
	struct value drop;

	if (!card_read(card, 0, &drop, fault))
		return false;
	editor_edit(measuring->editor)->details.levels.drops[measuring->at] =
		drop.set ? drop.as.length : 0;
	return true;
}

struct place levels_point_cell(const struct editor *editor, struct place point)
{
	nm step = editor->plot->details.levels.step, cell = plot_cell(editor->plot);

	return ground_nearest(&editor->plot->ground, (struct place){ (int)(point.x * step / cell),
		(int)(point.y * step / cell) });
}

bool levels_card_drop(struct editor *editor, struct place point, struct onward *onward)
{
	const struct levels *levels = &editor->plot->details.levels;
	struct measuring measuring = { editor,
		(size_t)point.y * (size_t)levels->columns + (size_t)point.x };
	nm drop = levels->drops[measuring.at];
	struct report report = editor_report(editor, &editor->words);
	const struct field_spec field = { .rule = &drop_rule,
		.label = say(&report, "%s across, %s down", plain_length(&report,
			point.x * levels->step), plain_length(&report, point.y * levels->step)),
		.meaning = "From the string down to the ground.",
		.typed = drop ? exact_length(&report, drop) : NULL,
		.unset = "0: at the string" };

	return card_ask(editor, &(struct card_spec){ .title = "Drop", .done = "set, next",
		.fields = &field, .count = 1, .accept = drop_accept, .owner = &measuring,
		.onward = onward });
}
