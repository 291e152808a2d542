#include "editor/cards/plant_card.h"
#include "editor/cards/named_card.h"
#include "plot/edit/legend.h"
#include "plot/edit/plants_lay.h"

#include <stdlib.h>

enum { NEW_PLANT = -1 };

/* Drifts, then specimens, that a card has fields for; later ones are lifted on the plan. */
enum { PARTS_MOST = 100 };

struct entering {
	struct named_card named; /* first */
	int which; /* NEW_PLANT: one that is not there yet */
	struct field_spec parts[PARTS_MOST];
	struct drift drifts[PARTS_MOST]; /* the first of the parts */
	int drift_count;
	struct place specimens[PARTS_MOST]; /* the others */
};

static void take(struct named_card *named, char letter, char *name, const struct block *block)
{
	const struct entering *entering = (struct entering *)named;
	struct plants *plants = &editor_edit(named->editor)->details.plants;
	bool is_new = entering->which == NEW_PLANT;
	struct plant *plant = is_new ? plants_add(plants, letter, NULL) :
		&plants->items[entering->which];

	bool is_in_hand = is_new || named->editor->hand == plant->letter;

	plant->letter = letter;
	if (is_in_hand)
		editor_take_in_hand(named->editor, letter);
	free(plant->name);
	plant->name = name;
	block_fini(&plant->block);
	plant->block = *block;
}

/* ---- What is planted of it ------------------------------------------------------------------- */

static const char *bed_words(const struct report *report, const struct survey *survey,
	struct place at)
{
	int region = survey ? survey_region_at(survey, at.x, at.y) : NO_REGION;

	return region == NO_REGION ? say(report, "the bed at %s", plain_place(report, at)) :
		say(report, "bed %s", plain_region(report, region));
}

const char *plant_drift_words(const struct report *report, const struct survey *survey,
	const struct drift *drift)
{
	static const char *const bands[BANDS] = { [BAND_WHOLE] = "all", [BAND_FRONT] = "front",
		[BAND_MIDDLE] = "middle", [BAND_BACK] = "back" };
	const char *where = drift->letter ?
		say(report, "every bed %c", drift->letter) :
		bed_words(report, survey, drift->at);

	return say(report, "%s of %s", bands[drift->band], where);
}

static struct field_spec part_field(const char *label, const char *typed)
{
	static const struct value_rule rule = { .kind = VALUE_TEXT, .most = NOTE_MOST };

	return (struct field_spec){ .label = label, .rule = &rule, .typed = typed,
		.unset = "lifted", .meaning = "Planted there; emptied, it is lifted, with its "
			"images in the mirror." };
}

static void list_parts(struct entering *entering, const struct plant *plant)
{
	struct editor *editor = entering->named.editor;
	struct report report = editor_report(editor, &editor->words);
	int count = 0;

	for (size_t i = 0; i < plant->drift_count && count < PARTS_MOST; i++) {
		entering->drifts[count] = plant->drifts[i];
		entering->parts[count++] = part_field("Drift",
			plant_drift_words(&report, NULL, &plant->drifts[i]));
	}
	entering->drift_count = count;
	for (size_t i = 0; i < plant->specimen_count && count < PARTS_MOST; i++) {
		entering->specimens[count] = plant->specimens[i];
		entering->parts[count++] = part_field("Single one at",
			plain_place(&report, plant->specimens[i]));
	}
	entering->named.parts = entering->parts;
	entering->named.part_count = count;
}

/* Lifted as an image of another it is gone already. */
static void lift_part(struct named_card *named, int part)
{
	struct entering *entering = (struct entering *)named;
	struct plot *plot = editor_edit(named->editor);
	const struct plant *plant = &plot->details.plants.items[entering->which];
	struct place at = entering->specimens[part];

	if (part < entering->drift_count)
		plants_empty(plot, plant->letter, entering->drifts[part]);
	else if (plant_specimen(plant, at) < plant->specimen_count)
		plants_lift(plot, at);
}

/* ---- The cards ------------------------------------------------------------------------------- */

bool plant_card_change(struct editor *editor, int which)
{
	const struct plant *plant = &editor->plot->details.plants.items[which];
	struct entering entering = { .which = which, .named = { .editor = editor,
		.kind = BLOCK_PLANT, .name = plant->name, .block = &plant->block,
		.title = arena_print(&editor->words, "The plant %c", plant->letter),
		.letter = plant->letter, .letter_so_far = plant->letter, .letter_class = CLASS_BED,
		.letter_of = "plant", .take = take, .remove = lift_part } };

	list_parts(&entering, plant);
	return named_card_ask(&entering.named);
}

bool plant_card_add(struct editor *editor)
{
	struct entering entering = { .which = NEW_PLANT, .named = { .editor = editor,
		.title = "A new plant", .kind = BLOCK_PLANT, .letter_class = CLASS_BED,
		.letter = legend_free_letter(&editor->plot->details, CLASS_BED),
		.letter_of = "plant", .take = take } };

	if (!entering.named.letter) {
		editor_say(editor, "All small letters are taken; remove an entry or a plant "
			"first.");
		return false;
	}
	return named_card_ask(&entering.named);
}

/* ---- Which ----------------------------------------------------------------------------------- */

/* "4 single, 2 bands". */
static const char *planted_words(const struct report *report, const struct plant *plant)
{
	const char *words = "";

	if (plant->specimen_count)
		words = say(report, "%s single", plain_count(report,
			(int64_t)plant->specimen_count));
	if (plant->drift_count)
		words = say(report, "%s%s%s %s", words, *words ? ", " : "", plain_count(report,
			(int64_t)plant->drift_count), plant->drift_count == 1 ? "band" : "bands");
	return words;
}

static int which_ask(struct editor *editor, const char *words, bool is_new_too)
{
	const struct plants *plants = &editor->plot->details.plants;
	struct report report = editor_report(editor, &editor->words);
	const char **answers = arena_new(&editor->words, plants->count + 1, sizeof *answers);
	const char **notes = arena_new(&editor->words, plants->count + 1, sizeof *notes);
	struct question question = { .text = words, .answers = answers, .notes = notes };

	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *plant = &plants->items[i];

		if (plant->letter == editor->hand)
			question.first = question.count;
		answers[question.count] = plain_letter(&report, plant->letter);
		notes[question.count++] = planted_words(&report, plant);
	}
	if (is_new_too) {
		answers[question.count] = "A new plant";
		notes[question.count++] = "";
	}
	return editor->asker->choose(editor->asker, &question);
}

int plant_card_ask(struct editor *editor, const char *words)
{
	const struct plants *plants = &editor->plot->details.plants;
	size_t count = plants->count;
	int which = count ? which_ask(editor, words, true) : 0;

	if (which == (int)count && !plant_card_add(editor))
		return -1;
	return which == ANSWER_NONE ? -1 : which;
}

bool plant_card_remove(struct editor *editor)
{
	int which = which_ask(editor, "Remove which plant, with all that is planted of it?",
		false);
	struct plants *plants;

	if (which == ANSWER_NONE)
		return false;
	plants = &editor_edit(editor)->details.plants;
	if (editor->hand == plants->items[which].letter)
		editor_take_in_hand(editor, OPEN_GROUND);
	plants_remove(plants, (size_t)which);
	return true;
}
