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

/* As many steps as were typed; else one, from afar by a character at least, so that the cursor is
 * seen to move. */
static void act_arrow(struct editor *editor, int key)
{
	const struct grain *grain = view_grain(&editor->view);
	int cells = editor->step * most(editor->steps, 1);
	int right = editor->steps ? cells : most(cells, grain->across);
	int below = editor->steps ? cells : most(cells, grain->down);
	int across = key == PRESS_LEFT ? -right : key == PRESS_RIGHT ? right : 0;
	int down = key == PRESS_UP ? -below : key == PRESS_DOWN ? below : 0;

	go(editor, editor->cursor.x + across, editor->cursor.y + down);
}

/* To the first cell with another letter that way, else to the plan's last cell. */
static struct place on_from(const struct ground *ground, struct place at, int across, int down)
{
	char letter = ground_cell(ground, at.x, at.y);

	while (ground_holds(ground, at.x + across, at.y + down) &&
	       ground_cell(ground, at.x, at.y) == letter)
		at = (struct place){ at.x + across, at.y + down };
	return at;
}

/* Without a key it has no direction, and stays. */
static void act_on(struct editor *editor, int key)
{
	int across = key == PRESS_ON_LEFT ? -1 : key == PRESS_ON_RIGHT ? 1 : 0;
	int down = key == PRESS_ON_UP ? -1 : key == PRESS_ON_DOWN ? 1 : 0;
	struct place at = editor->cursor;
	int times = across || down ? most(editor->steps, 1) : 0;

	for (int i = 0; i < times; i++)
		at = on_from(&editor->plot->ground, at, across, down);
	go(editor, at.x, at.y);
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

/* What the number comes to once the digit is typed, or taken back; Esc drops all of it. */
static int steps_with(int steps, int key)
{
	return key == PRESS_ESCAPE ? 0 : key == PRESS_BACKSPACE ? steps / 10 :
		steps * 10 + key - '0';
}

static void act_digit(struct editor *editor, int key)
{
	struct report report = editor_report(editor, &editor->words);
	int steps = steps_with(editor->steps, key);

	if (steps > SIDE_MOST) {
		editor_say(editor, "No move goes on for more than %d steps.", SIDE_MOST);
		return;
	}
	editor->steps = steps;
	if (steps)
		editor_say(editor, "An arrow goes %d %s from here: %s.", steps,
			steps == 1 ? "step" : "steps",
			exact_length(&report, (nm)steps * editor->step *
				plot_cell(editor->plot)));
	else if (key == '0')
		editor_say(editor, "A number of steps begins with 1 to 9.");
}

static void act_step(struct editor *editor)
{
	static const struct cells_question question = { "Step of the arrows", "Each step", "set it",
		"How far an arrow goes, and each step of a number before it." };
	struct cells cells = { .least = 1, .most = SIDE_MOST, .count = editor->step };
	struct report report = editor_report(editor, &editor->words);

	if (!cells_ask(editor, &question, &cells))
		return;
	editor->step = cells.count;
	editor_say(editor, "A step is %s now.",
		exact_length(&report, editor->step * plot_cell(editor->plot)));
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
	{ .id = ACT_STEPS, .keys = { { '0', '9' } }, .key_name = "digits", .name = "Count steps",
		.wish = "go several steps at once",
		.words = "number digit faster times",
		.hints = { [STATE_REST] = "how far", [STATE_TRAIL] = "how far",
			[STATE_PEGGED] = "how far", [STATE_MARKED] = "how far" },
		.rank = 4, .run_by_key = act_digit },
	{ .id = ACT_ON, .keys = { { PRESS_ON_LEFT, PRESS_ON_DOWN } }, .key_name = "Ctrl-arrows",
		.name = "Go on to other ground", .wish = "go to where the ground changes",
		.words = "next edge border", .run_by_key = act_on },
	{ .id = ACT_EDGE, .keys = { { PRESS_HOME, PRESS_PAGE_DOWN } }, .key_name = "Home...PgDn",
		.name = "Go to an edge", .wish = "go left, right, to top, bottom",
		.words = "side corner start end", .run_by_key = act_edge },
	{ .id = ACT_PLACE, .keys = { { '@', '@' }, { PRESS_F3, PRESS_F3 } },
		.key_name = "@ F3", .key_said = "@", .name = "Go to a place",
		.wish = "go to a measured place",
		.words = "goto jump position coordinates", .run = act_place },
	{ .id = ACT_STEP, .key_name = "!", .name = "Step",
		.wish = "set how far an arrow goes", .words = "faster stride", .run = act_step },
};
const struct act_group acts_of_moving = ACT_GROUP("Go", acts);
