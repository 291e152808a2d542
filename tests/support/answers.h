/* Somebody who answers the editor's questions and fills in its cards as written down beforehand,
 * without a terminal.
 *
 *	struct answers answers = { .asker = answers_asker(), .picks = { "b Raised" },
 *		.typed = { { "Courses", "5" } } };
 *	editor_init(&editor, &answers.asker, path);
 *	acts_do(&editor, ACT_CARDS);
 *	ck_assert_int_eq(answers.refused, 0);
 *	answers_fini(&answers); */
#ifndef SUPPORT_ANSWERS_H
#define SUPPORT_ANSWERS_H

#include "editor/ask/ask.h"

enum { ANSWERS_MOST = 8 };

/* For the first field with that label, or the first behind it with `skip` others between. */
struct typing {
	const char *label;
	const char *words;
	int skip;
};

struct answers {
	struct asker asker; /* first */
	/* How the answers begin that are picked, question by question; a further question is
	 * left. A question without such an answer fails the test. */
	const char *picks[ANSWERS_MOST];
	struct typing typed[ANSWERS_MOST]; /* typed in every card, up to one without a label */
	const char *leave; /* a card with this title is left, with Esc, after typing; NULL: none */

	int asked, filled, refused; /* questions, cards taken, cards refused */
	struct text question;       /* the last one, its answers and notes */
	struct fault fault;         /* why the last card was refused */
	struct text kept;           /* what the refused field then said */
	struct text unset;          /* of all fields of the last card, joined by semicolons */
};

struct asker answers_asker(void);
void answers_fini(struct answers *answers);

#endif
