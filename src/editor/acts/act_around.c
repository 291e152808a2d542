#include "base/memory.h"
#include "plot/mirror.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/around.h"
#include "editor/cards/obstacle_card.h"
#include "editor/cards/spot_fields.h"
#include "editor/cards/tie_card.h"

void act_around_end(struct editor *editor)
{
	if (!editor_stroke(editor)) {
		editor_say(editor, "Nothing was changed.");
		return;
	}
	text_print(&editor->message, "; %s takes it back.", acts_key(ACT_TAKE_BACK));
	if (mirror_of(editor->plot).kind != MIRROR_OFF)
		text_add_sentence(&editor->message, "What is around is not mirrored.");
}

/* ---- Adding ---------------------------------------------------------------------------------- */

/* What is all beyond an edge of the plan is not seen on it. */
static const char *beyond_words(const struct rectangle *r, const struct ground *ground)
{
	return r->bottom < 0 ? ", above the plan" :
		r->top >= ground->rows ? ", below the plan" :
		r->right < 0 ? ", left of the plan" :
		r->left >= ground->columns ? ", right of the plan" : "";
}

/* Says the name of the thing that was added, and its size or place. */
static void obstacle_end(struct editor *editor, const char *what, const struct obstacles *among)
{
	const struct obstacle *obstacle = &among->items[among->count - 1];
	const struct rectangle *r = &obstacle->cells;
	struct report report = editor_report(editor, &editor->words);

	if (obstacle->radius)
		editor_say(editor, "%s: %s, %s about %s", what, obstacle->name,
			plain_length(&report, obstacle->radius),
			plain_place(&report, obstacle->at));
	else
		editor_say(editor, "%s: %s, %s%s", what, obstacle->name, plain_cells(&report,
			r->right - r->left + 1, r->bottom - r->top + 1),
			beyond_words(r, &editor->plot->ground));
	act_around_end(editor);
}

static void act_keep_circle(struct editor *editor)
{
	if (keep_card_add_circle(editor, spot_meant(editor)))
		obstacle_end(editor, "Kept", &editor->plot->details.around.kept);
}

static void act_keep_rectangle(struct editor *editor)
{
	if (!keep_card_add_rectangle(editor, act_cells_meant(editor)))
		return;
	editor->is_pegged = false;
	obstacle_end(editor, "Kept", &editor->plot->details.around.kept);
}

static void act_house(struct editor *editor)
{
	if (!house_card_add(editor, act_cells_meant(editor)))
		return;
	editor->is_pegged = false;
	obstacle_end(editor, "House", &editor->plot->details.around.houses);
}

static void act_shade(struct editor *editor)
{
	if (!shade_card_add(editor, act_cells_meant(editor)))
		return;
	editor->is_pegged = false;
	obstacle_end(editor, "Shade", &editor->plot->details.around.shades);
}

static void act_tie(struct editor *editor)
{
	const struct ties *ties = &editor->plot->details.around.ties;
	struct report report = editor_report(editor, &editor->words);
	const struct tie *tie;

	if (!tie_card_add(editor, spot_meant(editor)))
		return;
	tie = &ties->items[ties->count - 1];
	editor_say(editor, "Tied: %s to %s, %s", plain_place(&report, tie->at), tie->name,
		plain_length(&report, tie->length));
	act_around_end(editor);
}

static void act_drop(struct editor *editor)
{
	struct surroundings *around = &editor_edit(editor)->details.around;
	struct report report = editor_report(editor, &editor->words);

	around->has_drop = true;
	around->drop = spot_meant(editor);
	editor_say(editor, "Deliveries are put down at %s", plain_place(&report, around->drop));
	act_around_end(editor);
}

static void act_tap(struct editor *editor)
{
	struct surroundings *around = &editor_edit(editor)->details.around;
	struct report report = editor_report(editor, &editor->words);

	around->has_tap = true;
	around->tap = spot_meant(editor);
	editor_say(editor, "Water comes from %s", plain_place(&report, around->tap));
	act_around_end(editor);
}

/* ---- Removing -------------------------------------------------------------------------------- */

static int which_ask(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);
	const int count = around_count(editor->plot);
	const char **answers = arena_new(&editor->words, (size_t)count, sizeof *answers);
	const char **notes = arena_new(&editor->words, (size_t)count, sizeof *notes);
	const struct question question = { .text = "Remove what?", .answers = answers,
		.notes = notes, .count = count };

	for (int i = 0; i < count; i++) {
		struct around around = around_get(editor->plot, i);

		answers[i] = around_name(&report, around);
		notes[i] = around_word(around);
	}
	return editor->asker->choose(editor->asker, &question);
}

static void act_around_out(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);
	struct around around;
	const char *name;
	int answer;

	if (!around_count(editor->plot)) {
		editor_say(editor, "There is nothing around the plot yet.");
		return;
	}
	answer = which_ask(editor);
	if (answer == ANSWER_NONE)
		return;
	around = around_get(editor->plot, answer);
	name = arena_print(&editor->words, "%s", around_name(&report, around));
	if (!around_remove(editor, around))
		return;
	editor_say(editor, "Removed: %s", name);
	act_around_end(editor);
}

static const struct act acts[] = {
	{ .id = ACT_KEEP_CIRCLE, .key_name = "!", .name = "Keep a tree",
		.wish = "keep a tree with its roots",
		.words = "trees protect stump round circle", .writes = true,
		.run = act_keep_circle },
	{ .id = ACT_KEEP_RECTANGLE, .key_name = "!", .name = "Keep a wall or cover",
		.wish = "keep a wall or a cover there is",
		.words = "protect manhole well", .writes = true, .run = act_keep_rectangle },
	{ .id = ACT_HOUSE, .key_name = "!", .name = "House",
		.wish = "say where the house stands",
		.words = "building home garage shed", .writes = true, .run = act_house },
	{ .id = ACT_SHADE, .key_name = "!", .name = "Shade",
		.wish = "say what else casts shade",
		.words = "sun shadow tree hedge", .writes = true, .run = act_shade },
	{ .id = ACT_TIE, .key_name = "!", .name = "Tie to a fixed point",
		.wish = "tape the plan to what stays",
		.words = "measurement tape locate corner", .writes = true, .run = act_tie },
	{ .id = ACT_DROP, .key_name = "!", .name = "Deliveries here",
		.wish = "say where deliveries go",
		.words = "delivery drop unload pallet truck", .writes = true, .run = act_drop },
	{ .id = ACT_TAP, .key_name = "!", .name = "Tap here",
		.wish = "say where water comes from",
		.words = "hose faucet header irrigation", .writes = true,
		.run = act_tap },
	{ .id = ACT_AROUND_OUT, .key_name = "!", .name = "Remove what is around",
		.wish = "remove a pipe, a tree, a house",
		.words = "take away delete service keep tie drop tap", .writes = true,
		.run = act_around_out },
};
const struct act_group acts_of_around = ACT_GROUP("Around", acts);
