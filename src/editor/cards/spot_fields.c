#include "editor/cards/spot_fields.h"
#include "editor/cards/cells.h"

struct reach spot_reach(const struct editor *editor, bool is_down)
{
	const struct ground *ground = &editor->plot->ground;

	return (struct reach){ 0, is_down ? ground->rows : ground->columns,
		"no farther than the plan" };
}

struct place spot_meant(const struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground;
	struct place at = editor->cursor;

	at.x += at.x == ground->columns - 1;
	at.y += at.y == ground->rows - 1;
	return at;
}

struct field_spec spot_field(const struct report *report, const char *label, const char *meaning,
	int cells)
{
	return (struct field_spec){ .label = label, .meaning = meaning, .rule = &cells_rule,
		.required = true, .is_cells = true, .span = SPAN_PLAN,
		.typed = exact_length(report, cells * plot_cell(report->plot)) };
}

bool spot_read(const struct card *card, int field, const struct editor *editor, struct reach reach,
	int *cells, struct fault *fault)
{
	struct cells read = { .least = reach.least, .most = reach.most, .limit = reach.limit };

	if (!cells_read(card, field, plot_cell(editor->plot), &read, fault))
		return false;
	*cells = read.count;
	return true;
}

bool spot_point_read(const struct card *card, int across, const struct editor *editor,
	struct place *at, struct fault *fault)
{
	return spot_read(card, across, editor, spot_reach(editor, false), &at->x, fault) &&
		spot_read(card, across + 1, editor, spot_reach(editor, true), &at->y, fault);
}

bool spot_check(const struct card *card, int field, const struct value *value,
	const struct editor *editor, struct reach reach, struct fault *fault)
{
	struct cells read = { .least = reach.least, .most = reach.most, .limit = reach.limit };

	return cells_check(card, field, value, plot_cell(editor->plot), &read, fault);
}
