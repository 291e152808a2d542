#include "editor/here_plants.h"

/* "Plant: r Shrub rose, 3 ft wide, 4 ft tall". */
static void specimen_words(const struct report *report, const struct plant *plant,
	struct text *out)
{
	const struct value *height = block_value(&plant->block, PLANT_HEIGHT);

	text_print(out, "Plant: %s, %s wide%s\n", plain_letter(report, plant->letter),
		word_length(report, plant_spread(plant, plot_units(report->plot))),
		!height->set ? "" : say(report, ", %s tall",
		word_length(report, height->as.length)));
}

/* Whether the drift fills the bed at the cursor, which has that letter. */
static bool is_drift_here(const struct editor *editor, const struct drift *drift, char bed)
{
	const struct survey *survey = &editor->takeoff.survey;
	struct place at = editor->cursor;

	if (drift->letter)
		return drift->letter == bed;
	return place_equal(drift->at, at) || (!editor->is_stale &&
		survey_region_at(survey, drift->at.x, drift->at.y) ==
		survey_region_at(survey, at.x, at.y));
}

void here_plants_words(const struct editor *editor, const struct report *report, struct text *out)
{
	static const char *const bands[BANDS] = { [BAND_WHOLE] = "All of it",
		[BAND_FRONT] = "In front", [BAND_MIDDLE] = "In its middle",
		[BAND_BACK] = "At the back" };
	const struct plants *plants = &editor->plot->details.plants;
	char letter = ground_cell(&editor->plot->ground, editor->cursor.x, editor->cursor.y);

	for (size_t i = 0; i < plants->count; i++)
		if (plant_specimen(&plants->items[i], editor->cursor) <
			plants->items[i].specimen_count)
			specimen_words(report, &plants->items[i], out);
	if (plot_class_of(editor->plot, letter) != CLASS_BED)
		return;
	for (size_t i = 0; i < plants->count; i++)
		for (size_t j = 0; j < plants->items[i].drift_count; j++) {
			const struct drift *drift = &plants->items[i].drifts[j];

			if (is_drift_here(editor, drift, letter))
				text_print(out, "%s: %s\n", bands[drift->band],
					plain_letter(report, plants->items[i].letter));
		}
}
