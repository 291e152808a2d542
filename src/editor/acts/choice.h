/* A question each of whose answers does something: an act, or what is offered only here. */
#ifndef EDITOR_ACTS_CHOICE_H
#define EDITOR_ACTS_CHOICE_H

#include "editor/acts/acts.h"

struct choice {
	const char *words;
	enum act_id act;                    /* done when it is picked, unless there is a run */
	void (*run)(struct editor *editor); /* what is no act */
	enum act_id key;                    /* whose key is named beside the words, if any */
	const char *note;                   /* named there instead; NULL: nothing */
};

enum { CHOICES_MOST = 12 };

/* Does what is picked; `count` is at most CHOICES_MOST. */
void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count);

#endif
