#include "editor/acts/act_groups.h"
#include "base/number.h"
#include "editor/acts/shared.h"
#include "editor/sheets/sheet_ask.h"

/* Moves to the cell, or as near as the plan reaches; a trail is laid on the way. */
static void go(struct editor *editor, int x, int y)
{
	struct place from = editor->cursor;

	editor->cursor = ground_nearest(&editor->plot->ground, (struct place){ x, y });
	if (editor->is_trailing)
		act_lay_way(editor, from, editor->cursor);
}

/* From afar by a character at least, so that the cursor is seen to move. */
static void act_arrow(struct editor *editor, int key)
{
	const struct grain *grain = view_grain(&editor->view);
	int right = most(editor->step, grain->across), below = most(editor->step, grain->down);
	int across = key == PRESS_LEFT ? -right : key == PRESS_RIGHT ? right : 0;
	int down = key == PRESS_UP ? -below : key == PRESS_DOWN ? below : 0;

	go(editor, editor->cursor.x + across, editor->cursor.y + down);
}

static void act_edge(struct editor *editor, int key)
{
	struct place at = editor->cursor;

	if (key == PRESS_HOME || key == PRESS_END)
		at.x = key == PRESS_HOME ? 0 : editor->plot->ground.columns - 1;
	else
		at.y = key == PRESS_PAGE_UP ? 0 : editor->plot->ground.rows - 1;
	go(editor, at.x, at.y);
}

static void act_step(struct editor *editor, int key)
{
	editor->step = key == '0' ? STEP_MOST : key - '0';
	editor_say(editor, "%d %s a step.", editor->step, editor->step == 1 ? "cell" : "cells");
}

enum { ACROSS, DOWN, PLACE_FIELDS };

static const struct value_rule reach = { .kind = VALUE_LENGTH, .least = 0, .most = LENGTH_MOST };

/* The cell that holds a distance from the plan's edge; its far edge is the last cell's. */
static bool cell_at(const struct editor *editor, int cells, nm distance, int *at)
{
	nm cell = plot_cell(editor->plot);

	if (distance > cells * cell)
		return false;
	*at = least((int)(distance / cell), cells - 1);
	return true;
}

static bool beyond(struct editor *editor, int field, int cells, struct fault *fault)
{
	struct report report = editor_report(editor, &editor->words);

	return fault_set(fault, field, "%s: beyond the plan, which is %s %s",
		field == ACROSS ? "Across" : "Down", plain_sides(&report, cells),
		field == ACROSS ? "wide" : "deep");
}

static bool place_accept(struct sheet *sheet, struct fault *fault)
{
	struct editor *editor = sheet->owner;
	const struct ground *ground = &editor->plot->ground;
	struct value across, down;
	struct place at;

	if (!sheet_read(sheet, ACROSS, &across, fault) || !sheet_read(sheet, DOWN, &down, fault))
		return false;
	if (!cell_at(editor, ground->columns, across.as.length, &at.x))
		return beyond(editor, ACROSS, ground->columns, fault);
	if (!cell_at(editor, ground->rows, down.as.length, &at.y))
		return beyond(editor, DOWN, ground->rows, fault);
	editor->cursor = at;
	return true;
}

static void act_place(struct editor *editor)
{
	const int cells[PLACE_FIELDS] = { editor->cursor.x, editor->cursor.y };
	struct report report = editor_report(editor, &editor->words);
	struct field_spec fields[PLACE_FIELDS] = {
		[ACROSS] = { .label = "Across from the left" },
		[DOWN] = { .label = "Down from the top" },
	};

	for (int i = 0; i < PLACE_FIELDS; i++) {
		fields[i].rule = &reach;
		fields[i].required = fields[i].is_far = true;
		fields[i].typed = exact_length(&report, cells[i] * plot_cell(editor->plot));
	}
	sheet_ask(editor, &(struct sheet_spec){ .title = "Go to a place", .done = "go there",
		.fields = fields, .count = PLACE_FIELDS, .accept = place_accept, .owner = editor });
}

static const struct act acts[] = {
	{ .id = ACT_ARROW, .keys = { { PRESS_LEFT, PRESS_DOWN } }, .key_name = "arrows",
		.name = "Move", .wish = "go to another cell",
		.hints = { [STATE_REST] = "move", [STATE_TRAIL] = "lay", [STATE_PEGGED] = "move",
			[STATE_MARKED] = "move" },
		.rank = 1, .run_by_key = act_arrow },
	{ .id = ACT_STEP, .keys = { { '0', '9' } }, .key_name = "1-9, 0", .name = "Step",
		.wish = "set the step, 1 to 12 cells",
		.hints = { [STATE_REST] = "step", [STATE_TRAIL] = "step", [STATE_PEGGED] = "step",
			[STATE_MARKED] = "step" },
		.rank = 4, .run_by_key = act_step },
	{ .id = ACT_EDGE, .keys = { { PRESS_HOME, PRESS_PAGE_DOWN } }, .key_name = "Home...PgDn",
		.name = "Go to an edge", .wish = "go left, right, to top, bottom",
		.run_by_key = act_edge },
	{ .id = ACT_PLACE, .keys = ONE_KEY('@'), .key_name = "@", .name = "Go to a place",
		.wish = "go to a measured place", .run = act_place },
};
const struct act_group acts_of_moving = ACT_GROUP(acts);
