#include "editor/acts/choice.h"

#include <assert.h>

void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count)
{
	const char *answers[CHOICES_MOST], *notes[CHOICES_MOST];
	struct question question = { .text = text, .answers = answers, .notes = notes,
		.count = count };
	int answer;

	assert(count <= CHOICES_MOST);
	for (int i = 0; i < count; i++) {
		answers[i] = choices[i].words;
		notes[i] = choices[i].has_key ? acts_key(choices[i].act) : "";
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer != ANSWER_NONE)
		acts_run(editor, choices[answer].act);
}
