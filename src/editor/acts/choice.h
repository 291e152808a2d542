/* A question each of whose answers is an act. */
#ifndef EDITOR_ACTS_CHOICE_H
#define EDITOR_ACTS_CHOICE_H

#include "editor/editor.h"

struct choice {
	const char *words;
	const char *note; /* its own key, or what it would come to; NULL: none */
	void (*run)(struct editor *editor, int key);
};

enum { CHOICES_MOST = 12 };

/* Does what is picked; `count` is at most CHOICES_MOST. */
void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count);

#endif
