#include "editor/acts/act_groups.h"
#include "base/number.h"
#include "editor/acts/shared.h"
#include "editor/cards/card_ask.h"

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

static bool beyond(const struct editor *editor, int field, int cells, struct fault *fault)
{
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);

	fault_set(fault, field, "%s: beyond the plan, which is %s %s",
		field == ACROSS ? "Across" : "Down", plain_sides(&report, cells),
		field == ACROSS ? "wide" : "deep");
	arena_clear(&words);
	return false;
}

static bool place_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct editor *editor = card->owner;
	const struct ground *ground = &editor->plot->ground;
	int cells = field == ACROSS ? ground->columns : ground->rows, at;

	return cell_at(editor, cells, value->as.length, &at) ||
		beyond(editor, field, cells, fault);
}

static bool place_accept(struct card *card, struct fault *fault)
{
	struct editor *editor = card->owner;
	const struct ground *ground = &editor->plot->ground;
	struct value across, down;

	if (!card_read(card, ACROSS, &across, fault) || !card_read(card, DOWN, &down, fault))
		return false;
	cell_at(editor, ground->columns, across.as.length, &editor->cursor.x);
	cell_at(editor, ground->rows, down.as.length, &editor->cursor.y);
	return true;
}

static void act_place(struct editor *editor)
{
	const int cells[PLACE_FIELDS] = { editor->cursor.x, editor->cursor.y };
	struct report report = editor_report(editor, &editor->words);
	struct field_spec fields[PLACE_FIELDS] = {
		[ACROSS] = { .label = "Across from the left",
			.meaning = "How far the place is from the plan's left edge." },
		[DOWN] = { .label = "Down from the top",
			.meaning = "How far the place is from the plan's top edge." },
	};

	for (int i = 0; i < PLACE_FIELDS; i++) {
		fields[i].rule = &reach;
		fields[i].required = true;
		fields[i].span = SPAN_PLAN;
		fields[i].typed = exact_length(&report, cells[i] * plot_cell(editor->plot));
	}
	if (card_ask(editor, &(struct card_spec){ .title = "Go to a place", .done = "go there",
		.fields = fields, .count = PLACE_FIELDS, .accept = place_accept,
		.check = place_check, .owner = editor }))
		editor_say(editor, "%s across, %s down.",
			exact_length(&report, editor->cursor.x * plot_cell(editor->plot)),
			exact_length(&report, editor->cursor.y * plot_cell(editor->plot)));
}

static const struct act acts[] = {
	{ .id = ACT_ARROW, .keys = { { PRESS_LEFT, PRESS_DOWN } }, .key_name = "arrows",
		.name = "Move", .wish = "go to another cell",
		.words = "cursor walk up down left right",
		.hints = { [STATE_REST] = "move", [STATE_TRAIL] = "lay", [STATE_PEGGED] = "move",
			[STATE_MARKED] = "move" },
		.rank = 1, .run_by_key = act_arrow },
	{ .id = ACT_STEP, .keys = { { '0', '9' } }, .key_name = "1-9, 0", .name = "Step",
		.wish = "set the step, 1 to 12 cells",
		.words = "faster digit number stride",
		.hints = { [STATE_REST] = "step", [STATE_TRAIL] = "step", [STATE_PEGGED] = "step",
			[STATE_MARKED] = "step" },
		.rank = 4, .run_by_key = act_step },
	{ .id = ACT_EDGE, .keys = { { PRESS_HOME, PRESS_PAGE_DOWN } }, .key_name = "Home...PgDn",
		.name = "Go to an edge", .wish = "go left, right, to top, bottom",
		.words = "side corner start end", .run_by_key = act_edge },
	{ .id = ACT_PLACE, .keys = ONE_KEY('@'), .key_name = "@", .name = "Go to a place",
		.wish = "go to a measured place",
		.words = "goto jump position coordinates", .run = act_place },
};
const struct act_group acts_of_moving = ACT_GROUP("Go", acts);
