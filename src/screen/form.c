#include "screen/form.h"
#include "base/memory.h"
#include "screen/filling.h"
#include "screen/prompt.h"

#include <stdlib.h>

enum { GOING = 2 }; /* the words of the last row that say how to go from field to field */

static bool is_last(const struct filling *filling)
{
	return filling->at == filling_last(filling);
}

/* ---- Opening and closing -------------------------------------------------------------------- */

static void filling_open(struct filling *filling, struct card *card)
{
	*filling = (struct filling){
		.front = { STATE_FORM, filling->keys, filling_draw, filling_leaves },
		.keys = { "Up Down", "go", "Enter", NULL, "Esc", "leave", NULL },
		.card = card, .typing = TYPING_EMPTY, .lacking = LACKING_NONE, .said = TEXT_EMPTY,
		.begun = TEXT_EMPTY,
		.fault = { .words = TEXT_EMPTY },
		.opened = memory_new((size_t)card->count, sizeof *filling->opened) };
	for (int i = 0; i < card->count; i++)
		filling->opened[i] = memory_string(card->fields[i].typed);
	if (prompt_suits(card))
		filling->front = (struct front){ STATE_FORM,
			filling->keys + (card->onward ? 0 : GOING), prompt_draw, prompt_leaves };
	if (card->onward) {
		*card->onward = (struct onward){ .goes_on = false };
		filling->keys[0] = "arrows";
		filling->keys[1] = "set, go there";
	}
	filling_go(filling, 0);
}

static void filling_close(struct filling *filling)
{
	for (int i = 0; i < filling->card->count; i++)
		free(filling->opened[i]);
	free(filling->opened);
	typing_fini(&filling->typing);
	text_fini(&filling->said);
	text_fini(&filling->begun);
	fault_fini(&filling->fault);
}

/* ---- Taking --------------------------------------------------------------------------------- */

/* True where the card is taken as it is; else the field at fault is gone to, like any other. */
static bool is_taken(struct filling *filling)
{
	fault_clear(&filling->fault);
	if (filling->card->accept(filling->card, &filling->fault))
		return true;
	if (filling->fault.words.length)
		filling_go_on(filling, filling->fault.field);
	return false;
}

/* False, once, where a field did not take all that was typed into it. */
static bool is_complete(struct filling *filling)
{
	int at = filling->lacking;

	if (at == LACKING_NONE)
		return true;
	filling->lacking = LACKING_NONE;
	fault_set(&filling->fault, at, "%s: not all that came is in it. Enter takes it so.",
		filling->card->fields[at].label);
	filling_go_on(filling, at);
	return false;
}

/* Enter: the next field, at last the whole card. True where it is done. */
static bool enter(struct filling *filling)
{
	if (!is_complete(filling))
		return false;
	if (!filling_settle(filling)) {
		filling_go_on(filling, filling->at);
		return false;
	}
	if (is_last(filling))
		return is_taken(filling);
	filling_go_on(filling, filling->at + 1);
	return false;
}

/* Whether the key takes a card after which it goes on: which way is noted. */
static bool leads_on(const struct filling *filling, int key)
{
	struct onward *onward = filling->card->onward;
	bool is_arrow = key == PRESS_LEFT || key == PRESS_RIGHT || key == PRESS_UP ||
		key == PRESS_DOWN;

	if (!onward || (!is_arrow && key != PRESS_ENTER))
		return false;
	*onward = (struct onward){ .right = (key == PRESS_RIGHT) - (key == PRESS_LEFT),
		.down = (key == PRESS_DOWN) - (key == PRESS_UP) };
	return true;
}

/* ---- Leaving -------------------------------------------------------------------------------- */

static bool has_changed(const struct filling *filling)
{
	for (int i = 0; i < filling->card->count; i++)
		if (filling_has_changed(filling, i))
			return true;
	return false;
}

/* What was typed is not dropped unasked: an Esc too many, or an arrow key that a slow line has cut
 * in two, would take all of it. True where the card is left; *is_done: it was taken. */
static bool is_left(struct stage *stage, struct filling *filling, bool *is_done)
{
	static const char *const answers[] = { "Go on typing", "Set it", "Drop what was typed" };
	enum { GO_ON, SET, DROP, ANSWERS };
	const struct question question = { .answers = answers, .count = ANSWERS,
		.text = "What was typed is not set yet. Esc goes back to it. To drop it type "
			"drop, then Enter." };
	int answer;

	if (!has_changed(filling))
		return true;
	answer = stage->asker.choose(&stage->asker, &question);
	if (answer == SET)
		*is_done = is_complete(filling) && is_taken(filling);
	return answer == DROP || *is_done;
}

static void filling_show(struct stage *stage, struct filling *filling)
{
	const char **keys = filling->keys;

	keys[3] = is_last(filling) ? filling->card->done : "next";
	keys[6] = NULL;
	if (filling_is_choice(filling)) {
		keys[6] = "Space";
		keys[7] = "another word";
	} else if (!is_last(filling)) {
		keys[6] = "PgDn";
		keys[7] = "to the end";
	}
	stage_show(stage, &filling->front);
}

bool form_fill(struct stage *stage, struct card *card)
{
	struct filling filling;
	bool is_done = false, is_over = false;

	filling_open(&filling, card);
	while (!is_done && !is_over) {
		int key;

		filling_show(stage, &filling);
		key = stage_key(stage);
		if (leads_on(&filling, key))
			is_done = card->onward->goes_on = enter(&filling);
		else if (key == PRESS_ENTER)
			is_done = enter(&filling);
		else if (key == PRESS_ESCAPE)
			is_over = is_left(stage, &filling, &is_done);
		else if (key == PRESS_OVER)
			is_over = true;
		else
			filling_key(&filling, &stage->keys, key);
	}
	filling_close(&filling);
	return is_done;
}
