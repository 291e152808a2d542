#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

#include <math.h>
#include <stdlib.h>

static void act_take(struct editor *editor, int key)
{
	const struct details *details = &editor->plot->details;
	struct report report = editor_report(editor, &editor->words);

	if (key != OPEN_GROUND && !plants_find(&details->plants, (char)key) &&
	    !plot_entry(editor->plot, (char)key)) {
		const char *words = "";

		for (size_t i = 0; i < details->legend_count; i++)
			words = say(&report, "%s%s, ", words,
				plain_letter(&report, details->legend[i].letter));
		for (size_t i = 0; i < details->plants.count; i++)
			words = say(&report, "%s%s, ", words,
				plain_letter(&report, details->plants.items[i].letter));
		editor_say(editor, "%c is not in the legend: %s. open ground.", key, words);
		return;
	}
	editor_drop_mark(editor);
	editor_take_in_hand(editor, (char)key);
	editor_say(editor, "In hand: %s.", plain_letter(&report, editor->hand));
}

static void lay_here(struct editor *editor, char letter, const char *nothing)
{
	struct place at = editor->cursor;

	act_lay_end(editor, lay_rectangle(editor_edit(editor),
		rectangle_between(at.x, at.y, at.x, at.y), letter), nothing);
}

/* While a piece is carried nobody sees what is in hand, so it is not laid. */
static bool is_carrying(struct editor *editor)
{
	if (editor->is_marked)
		editor_say(editor, "A piece of ground is carried: %s stamps it, %s drops it.",
			acts_key(ACT_STAMP), acts_key(ACT_STEP_BACK));
	return editor->is_marked;
}

static void act_lay(struct editor *editor)
{
	if (editor->is_marked)
		acts_run(editor, ACT_STAMP);
	else if (plants_find(&editor->plot->details.plants, editor->hand))
		act_plant_here(editor);
	else
		lay_here(editor, editor->hand, ACT_IS_THERE);
}

static void act_lift(struct editor *editor)
{
	if (editor->is_marked)
		acts_run(editor, ACT_LIFT_MARKED);
	else if (!act_lift_plants(editor))
		lay_here(editor, OPEN_GROUND, "Open ground already.");
}

void act_lay_way(struct editor *editor, struct place from, struct place to)
{
	struct plot *plot = editor_edit(editor);
	struct mirror mirror = mirror_of(plot);
	int across = to.x - from.x, down = to.y - from.y;
	int count = abs(across) > abs(down) ? abs(across) : abs(down);
	struct laid laid = { 0 };

	acts_name_step(editor, ACT_TRAIL);
	lay_cell(plot, &mirror, from, editor->hand, &laid);
	for (int i = 1; i <= count; i++)
		lay_cell(plot, &mirror, (struct place){
			from.x + (int)lround((double)across * i / count),
			from.y + (int)lround((double)down * i / count) }, editor->hand, &laid);
	if (editor->drag == DRAG_NONE) {
		act_lay_end(editor, laid, NULL);
		return;
	}
	editor_dragged(editor, laid);
	act_say_outside(editor, laid);
}

static void act_trail(struct editor *editor)
{
	if (is_carrying(editor))
		return;
	editor->is_trailing = !editor->is_trailing;
	editor->is_pegged = false;
	if (editor->is_trailing)
		lay_here(editor, editor->hand, NULL);
}

static void act_flood(struct editor *editor)
{
	if (is_carrying(editor))
		return;
	act_lay_end(editor, lay_flood(editor_edit(editor), editor->cursor.x, editor->cursor.y,
		editor->hand), ACT_IS_THERE);
}

static const struct act acts[] = {
	{ .id = ACT_TAKE, .keys = { { 'a', 'z' }, { 'A', 'Z' }, { OPEN_GROUND, OPEN_GROUND } },
		.key_name = "letter, .", .name = "Take in hand",
		.wish = "take in hand what will be laid",
		.words = "letter bed path lawn fixture turf choose material pen",
		.run_by_key = act_take },
	{ .id = ACT_LAY, .keys = ONE_KEY(' '), .key_name = "Space", .name = "Lay",
		.wish = "lay it here",
		.words = "put set place draw paint",
		.hints = { [STATE_REST] = "lay", [STATE_MARKED] = "stamp" },
		.rank = 1, .writes = true, .lays = true, .plants = true, .run = act_lay },
	{ .id = ACT_LIFT, .keys = ONE_KEY(PRESS_DELETE), .key_name = "Delete", .name = "Lift",
		.wish = "lift what lies here",
		.words = "delete erase remove clear empty",
		.hints = { [STATE_REST] = "lift" }, .rank = 4,
		.writes = true, .run = act_lift },
	{ .id = ACT_TRAIL, .keys = ONE_KEY('='), .key_name = "=", .name = "Trail",
		.wish = "lay while moving, on and off",
		.words = "draw paint freehand",
		.hints = { [STATE_REST] = "trail", [STATE_TRAIL] = "end trail" }, .rank = 2,
		.writes = true, .lays = true, .run = act_trail },
	{ .id = ACT_FLOOD, .keys = ONE_KEY('*'), .key_name = "*", .name = "Flood",
		.wish = "lay over a whole patch",
		.words = "fill pour area", .hints = { [STATE_REST] = "flood" }, .rank = 4,
		.writes = true, .lays = true, .run = act_flood },
};
const struct act_group acts_of_laying = ACT_GROUP("Draw", acts);
