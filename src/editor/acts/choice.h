/* A question each of whose answers is an act. */
#ifndef EDITOR_ACTS_CHOICE_H
#define EDITOR_ACTS_CHOICE_H

#include "editor/acts/acts.h"

struct choice {
	const char *words;
	enum act_id act;
	bool has_key; /* the act's key is named beside the words */
};

enum { CHOICES_MOST = 12 };

/* Does what is picked; `count` is at most CHOICES_MOST. */
void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count);

#endif
