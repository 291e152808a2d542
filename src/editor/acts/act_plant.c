#include "base/memory.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/plant_card.h"
#include "plot/edit/plants_lay.h"

static void say_left_out(struct editor *editor, struct planted planted, const char *barred)
{
	act_say_outside(editor, (struct laid){ planted.changed, planted.outside });
	if (planted.is_barred)
		text_add_sentence(&editor->message, "%s", barred);
}

void act_plant_here(struct editor *editor)
{
	struct place at = editor->cursor;
	char ground = ground_cell(&editor->plot->ground, at.x, at.y);
	struct report report = editor_report(editor, &editor->words);
	struct planted planted;

	if (!class_takes_plant(plot_class_of(editor->plot, ground))) {
		editor_say(editor, "No plant stands on %s: go to a bed, a lawn or open ground.",
			plain_letter(&report, ground));
		return;
	}
	planted = plants_set(editor_edit(editor), editor->hand, at);
	if (!editor_stroke(editor))
		editor_say(editor, "It stands there already.");
	say_left_out(editor, planted, "Images on paths or fixtures are left out.");
}

bool act_lift_plants(struct editor *editor)
{
	const struct plants *plants = &editor->plot->details.plants;
	struct report report = editor_report(editor, &editor->words);
	const char *names = "";

	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *plant = &plants->items[i];

		if (plant_specimen(plant, editor->cursor) < plant->specimen_count)
			names = say(&report, "%s%s%s", names, *names ? ", " : "",
				plain_letter(&report, plant->letter));
	}
	if (!*names)
		return false;
	plants_lift(editor_edit(editor), editor->cursor);
	editor_stroke(editor);
	editor_say(editor, "Lifted: %s. %s again lifts the ground.", names, acts_key(ACT_LIFT));
	return true;
}

static void act_plant_add(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);

	if (!plant_card_add(editor))
		return;
	editor_stroke(editor);
	editor_say(editor, "In hand: %s. %s sets one at the cursor; %s fills a bed with it.",
		plain_letter(&report, editor->hand), acts_key(ACT_LAY),
		acts_get(ACT_DRIFT)->name);
}

/* ---- Bands ----------------------------------------------------------------------------------- */

static const char *const band_answers[BANDS] = { [BAND_WHOLE] = "All of it",
	[BAND_FRONT] = "Its front", [BAND_MIDDLE] = "Its middle", [BAND_BACK] = "Its back" };

static int band_ask(struct editor *editor, const char *plant)
{
	static const char *const notes[BANDS] = { [BAND_WHOLE] = "",
		[BAND_FRONT] = "the third by the walk", [BAND_MIDDLE] = "the third behind it",
		[BAND_BACK] = "the third farthest in" };
	struct report report = editor_report(editor, &editor->words);
	const struct question question = { .answers = band_answers, .notes = notes,
		.count = BANDS,
		.text = say(&report, "How much of the bed is filled with %s?", plant) };

	return editor->asker->choose(editor->asker, &question);
}

enum { THIS_BED, ALL_BEDS, WHICH_BEDS };

static int beds_ask(struct editor *editor, const char *bed)
{
	struct report report = editor_report(editor, &editor->words);
	const char *answers[WHICH_BEDS] = { [THIS_BED] = "This bed",
		[ALL_BEDS] = say(&report, "All beds of %s", bed) };
	const char *notes[WHICH_BEDS] = {
		[THIS_BED] = mirror_of(editor->plot).kind == MIRROR_OFF ? "" : "and its images",
		[ALL_BEDS] = "" };
	const struct question question = { .text = "Which beds?", .answers = answers,
		.notes = notes, .count = WHICH_BEDS };

	return editor->asker->choose(editor->asker, &question);
}

/* The plant in hand, else the one that is picked; -1: none is. */
static int plant_meant(struct editor *editor)
{
	const struct plants *plants = &editor->plot->details.plants;
	const struct plant *in_hand = plants_find(plants, editor->hand);

	return in_hand ? (int)(in_hand - plants->items) :
		plant_card_ask(editor, "Fill it with which plant?");
}

static void act_drift(struct editor *editor)
{
	struct report report = editor_report(editor, &editor->words);
	char bed = ground_cell(&editor->plot->ground, editor->cursor.x, editor->cursor.y);
	int which, band, beds;
	const char *name;
	struct planted planted;
	char letter;

	if (plot_class_of(editor->plot, bed) != CLASS_BED) {
		editor_say(editor, "Go to the bed that is to be filled, and pick this again.");
		return;
	}
	which = plant_meant(editor);
	if (which < 0)
		return;
	letter = editor->plot->details.plants.items[which].letter;
	name = plain_letter(&report, letter);
	if ((band = band_ask(editor, name)) == ANSWER_NONE ||
		(beds = beds_ask(editor, plain_letter(&report, bed))) == ANSWER_NONE) {
		editor_stroke(editor); /* of a plant that was added */
		return;
	}
	planted = plants_fill(editor_edit(editor), letter, editor->cursor, (enum band)band,
		beds == ALL_BEDS);
	if (editor_stroke(editor))
		editor_say(editor, "%s fills it; %s takes it back.", name, acts_key(ACT_TAKE_BACK));
	else
		editor_say(editor, "It is filled so already.");
	say_left_out(editor, planted, "Images that are no bed of that letter are left out.");
}

struct drift_row {
	char letter; /* of the plant */
	struct drift drift;
};

static void act_drift_out(struct editor *editor)
{
	const struct plants *plants = &editor->plot->details.plants;
	struct report report = editor_report(editor, &editor->words);
	struct question question = { .text = "Lift which drift?" };
	struct drift_row *rows;
	const char **answers;
	size_t count = 0;
	int answer;

	for (size_t i = 0; i < plants->count; i++)
		count += plants->items[i].drift_count;
	if (!count) {
		editor_say(editor, "There is no drift yet.");
		return;
	}
	if (!act_count(editor)) /* which has the beds' names */
		return;
	question.answers = answers = arena_new(&editor->words, count, sizeof *answers);
	rows = arena_new(&editor->words, count, sizeof *rows);
	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *plant = &plants->items[i];

		for (size_t j = 0; j < plant->drift_count; j++) {
			rows[question.count] = (struct drift_row){ plant->letter,
				plant->drifts[j] };
			answers[question.count++] = say(&report, "%s: %s",
				plain_letter(&report, plant->letter),
				plant_drift_words(&report, &editor->takeoff.survey,
					&plant->drifts[j]));
		}
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return;
	plants_empty(editor_edit(editor), rows[answer].letter, rows[answer].drift);
	editor_stroke(editor);
	editor_say(editor, "Lifted: %s; %s takes it back.", answers[answer],
		acts_key(ACT_TAKE_BACK));
}

static const struct act acts[] = {
	{ .id = ACT_PLANT_ADD, .key_name = "!", .name = "New plant",
		.wish = "plant something new",
		.words = "flower shrub tree perennial herb vegetable hedge seedling bulb plants",
		.writes = true, .run = act_plant_add },
	{ .id = ACT_DRIFT, .key_name = "!", .name = "Plant a drift",
		.wish = "plant a whole bed, or its front",
		.words = "fill plants flowers front back middle mass group cover",
		.writes = true, .run = act_drift },
	{ .id = ACT_DRIFT_OUT, .key_name = "!", .name = "Lift a drift",
		.wish = "take a drift out again",
		.words = "plants remove clear empty", .writes = true,
		.run = act_drift_out },
};
const struct act_group acts_of_plants = ACT_GROUP("Plants", acts);
