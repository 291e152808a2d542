#include "editor/acts/choice.h"

#include <assert.h>

static const char *note_of(const struct choice *choice)
{
	if (choice->key != ACT_NONE)
		return acts_key(choice->key);
	return choice->note ? choice->note : "";
}

void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count)
{
	const char *answers[CHOICES_MOST], *notes[CHOICES_MOST];
	struct question question = { .text = text, .answers = answers, .notes = notes,
		.count = count };
	int answer;

	assert(count <= CHOICES_MOST);
	for (int i = 0; i < count; i++) {
		answers[i] = choices[i].words;
		notes[i] = note_of(&choices[i]);
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return;
	if (choices[answer].run)
		choices[answer].run(editor);
	else
		acts_run(editor, choices[answer].act);
}
