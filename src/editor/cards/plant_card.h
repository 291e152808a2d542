/* The cards of plants: name, letter, attributes, notes, and what is planted of it, to be seen and
 * lifted. The caller ends the stroke. */
#ifndef EDITOR_CARDS_PLANT_CARD_H
#define EDITOR_CARDS_PLANT_CARD_H

#include "editor/editor.h"

/* False where the card, or a question, was left. */
bool plant_card_change(struct editor *editor, int which);
/* The new plant is the last one, and in hand. */
bool plant_card_add(struct editor *editor);
/* Asks which, and takes it away with all that is planted of it. */
bool plant_card_remove(struct editor *editor);

/* Asks which; a new one is added where that is picked. -1: the question, or its card, was left. */
int plant_card_ask(struct editor *editor, const char *words);

/* "front of every bed b", "all of bed B3"; of a cell that is no bed, or without a survey, "all of
 * the bed at 3 ft across, 2 ft down". With a survey the report has its takeoff. */
const char *plant_drift_words(const struct report *report, const struct survey *survey,
	const struct drift *drift);

#endif
