#include "support/answers.h"

#include <check.h>
#include <string.h>

static void question_keep(struct answers *answers, const struct question *question)
{
	text_clear(&answers->question);
	text_add(&answers->question, question->text);
	for (int i = 0; i < question->count; i++)
		text_print(&answers->question, "; %s%s%s", question->answers[i],
			question->notes && question->notes[i][0] ? ": " : "",
			question->notes ? question->notes[i] : "");
}

static int choose(struct asker *asker, const struct question *question)
{
	struct answers *answers = (struct answers *)asker;
	const char *pick = answers->asked < ANSWERS_MOST ? answers->picks[answers->asked] : NULL;

	answers->asked++;
	question_keep(answers, question);
	if (!pick)
		return ANSWER_NONE;
	for (int i = 0; i < question->count; i++)
		if (strncmp(question->answers[i], pick, strlen(pick)) == 0)
			return i;
	ck_abort_msg("no answer begins with %s: %s", pick, answers->question.bytes);
	return ANSWER_NONE;
}

static int field_find(const struct card *card, const struct typing *typing)
{
	for (int i = 0; i < card->count; i++)
		if (strcmp(card->fields[i].label, typing->label) == 0)
			return i + typing->skip;
	ck_abort_msg("no field is labelled %s", typing->label);
	return -1;
}

static void unset_keep(struct answers *answers, const struct card *card)
{
	text_clear(&answers->unset);
	for (int i = 0; i < card->count; i++)
		text_print(&answers->unset, "%s;",
			card->fields[i].unset ? card->fields[i].unset : "");
}

static bool fill(struct asker *asker, struct card *card)
{
	struct answers *answers = (struct answers *)asker;

	unset_keep(answers, card);
	for (int i = 0; i < ANSWERS_MOST && answers->typed[i].label; i++) {
		int field = field_find(card, &answers->typed[i]);

		card_type(card, field, answers->typed[i].words);
		if (card->changed)
			card->changed(card, field);
	}
	if (answers->leave && strcmp(answers->leave, card->title) == 0)
		return false;
	fault_clear(&answers->fault);
	if (card->accept(card, &answers->fault)) {
		answers->filled++;
		return true;
	}
	answers->refused++;
	text_clear(&answers->kept);
	text_add(&answers->kept, card->fields[answers->fault.field].typed);
	return false;
}

static void nothing(struct asker *asker)
{
	(void)asker;
}

struct asker answers_asker(void)
{
	return (struct asker){ .choose = choose, .fill = fill, .pause = nothing,
		.repaint = nothing };
}

void answers_fini(struct answers *answers)
{
	text_fini(&answers->question);
	fault_fini(&answers->fault);
	text_fini(&answers->kept);
	text_fini(&answers->unset);
}
