/* How acts ask people: questions with words to pick, and cards to fill in. The screen answers from
 * the keyboard; tests answer from what they wrote down beforehand. */
#ifndef EDITOR_ASK_ASK_H
#define EDITOR_ASK_ASK_H

#include "editor/ask/card.h"

struct question {
	const char *text;           /* one sentence or more */
	const char *const *answers; /* words to pick, `count` of them */
	const char *const *notes;   /* beside each answer, such as its key; NULL: none */
	const char *const *also;    /* other words that find each answer when typed; NULL: none */
	/* Above each answer, the same above all that belong together; NULL: none. */
	const char *const *headings;
	const int *keys;            /* that pick each answer, or PRESS_NOTHING; NULL: none */
	/* What to do instead where that was typed, a sentence; else NULL. NULL: no advice. */
	const char *(*advice)(const char *typed);
	int count;
	int first;                  /* the answer offered first */
};

enum { ANSWER_NONE = -1 };

/* Work that takes long, and can be stopped (base/stop.h). */
struct task {
	const char *words; /* what is done: "Writing the takeoff" */
	/* True once it is done; where it was stopped it is begun anew, or never done. */
	bool (*run)(struct task *task);
};

struct asker {
	/* The index of the answer picked, ANSWER_NONE where the question was left. */
	int (*choose)(struct asker *asker, const struct question *question);
	/* Has the card filled in: true once its accept has taken it, false where it was left. */
	bool (*fill)(struct asker *asker, struct card *card);
	/* Has it done to its end however many keys wait, saying so where that takes long; false
	 * where it was given up. */
	bool (*await)(struct asker *asker, struct task *task);
	/* Stops the program until the shell continues it. */
	void (*pause)(struct asker *asker);
	/* Draws all of the screen afresh. */
	void (*repaint)(struct asker *asker);
};

#endif
