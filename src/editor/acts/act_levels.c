#include "base/number.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/finish_card.h"
#include "editor/cards/levels_card.h"

/* ---- Measuring ------------------------------------------------------------------------------- */

/* "12 drops, from 0 in to 4 1/2 in below the string; 3 of them 0.": those left out are seen. */
static void say_measured(struct editor *editor)
{
	const struct levels *levels = &editor->plot->details.levels;
	struct report report = editor_report(editor, &editor->words);
	struct drop_range range = levels_range(levels);
	int count = levels->columns * levels->rows, none = 0;

	for (int i = 0; i < count; i++)
		none += levels->drops[i] == 0;
	editor_say(editor, "%d drops, from %s to %s below the string%s.", count,
		plain_inches(&report, range.least), plain_inches(&report, range.most),
		none ? say(&report, "; %d of them 0", none) : "");
}

/* The point of the levels that is nearest to the cursor's cell: they reach to the plan's end. */
static struct place point_near(const struct editor *editor)
{
	nm cell = plot_cell(editor->plot), step = editor->plot->details.levels.step;
	nm half = (step + cell) / 2;

	return (struct place){ (int)((editor->cursor.x * cell + half) / step),
		(int)((editor->cursor.y * cell + half) / step) };
}

/* Where it goes on: an arrow to the point beside, as far as there is one; Enter to the next,
 * row by row. False where that was the last. */
static bool point_next(const struct levels *levels, const struct onward *onward,
	struct place *point)
{
	int next = point->y * levels->columns + point->x + 1;

	if (onward->right || onward->down) {
		point->x = held(point->x + onward->right, 0, levels->columns - 1);
		point->y = held(point->y + onward->down, 0, levels->rows - 1);
		return true;
	}
	*point = (struct place){ next % levels->columns, next / levels->columns };
	return point->y < levels->rows;
}

/* Each drop is a stroke: none is lost, whatever happens, and each can be taken back. */
static void points_measure(struct editor *editor, struct place point)
{
	const struct levels *levels = &editor->plot->details.levels;
	struct onward onward = { .goes_on = false };

	do {
		editor->cursor = levels_point_cell(editor, point);
		if (!levels_card_drop(editor, point, &onward))
			break;
		editor_stroke(editor);
	} while (onward.goes_on && point_next(levels, &onward, &point));
	say_measured(editor);
}

static void act_levels(struct editor *editor)
{
	struct place point = { 0, 0 };
	bool is_new = editor->plot->details.levels.step == 0;

	if (is_new && !levels_card_step(editor))
		return;
	if (is_new)
		editor_stroke(editor);
	else
		point = point_near(editor);
	editor->layer = LAYER_LEVELS;
	editor->is_trailing = editor->is_pegged = false;
	editor_drop_mark(editor);
	points_measure(editor, point);
}

/* ---- The finished ground, and what is shown -------------------------------------------------- */

static void act_finish(struct editor *editor)
{
	if (!finish_card_fill(editor))
		return;
	editor_say(editor, "The finished ground is set");
	act_around_end(editor);
}

static void act_show_levels(struct editor *editor)
{
	if (!editor->plot->details.levels.step) {
		editor_say(editor, "No levels are measured yet: pick %s from %s.",
			acts_get(ACT_LEVELS)->name, acts_key(ACT_ALL));
		return;
	}
	editor->layer = editor->layer == LAYER_LEVELS ? LAYER_NONE : LAYER_LEVELS;
	if (editor->layer == LAYER_LEVELS)
		say_measured(editor);
	else
		editor_say(editor, "The plan shows no levels now.");
}

static const char *is_shown(const struct editor *editor)
{
	return editor->layer == LAYER_LEVELS ? "on" : "off";
}

static const struct act acts[] = {
	{ .id = ACT_LEVELS, .key_name = "!", .name = "Measure levels",
		.wish = "enter how the ground lies",
		.words = "slope height level survey drop string hill", .writes = true,
		.run = act_levels },
	{ .id = ACT_FINISH, .key_name = "!", .name = "Finished ground",
		.wish = "set how the ground is to fall",
		.words = "slope fall level grade drainage percent", .writes = true,
		.run = act_finish },
	{ .id = ACT_SHOW_LEVELS, .key_name = "!", .name = "Show levels",
		.wish = "see how deep the ground lies",
		.words = "slope layer contour shade hide", .state = is_shown,
		.run = act_show_levels },
};
const struct act_group acts_of_levels = ACT_GROUP("Around", acts);
