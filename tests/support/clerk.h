/* Somebody who tries every answer to the editor's questions, and writes down what it asks, says and
 * changes.
 *
 *	struct clerk *c = clerk_new("tests/plots/gallery.plot");
 *	clerk_try(c, "in a bed", prepare, ACT_FILL, PRESS_NOTHING, 40);
 *	clerk_check(c, "minutes.txt");
 *
 * Each way through an act begins anew, with the plot as it was. A question or a card is written
 * down with all that is on it where it is met first, and by its first row alone after that. */
#ifndef SUPPORT_CLERK_H
#define SUPPORT_CLERK_H

#include "editor/acts/acts.h"

struct clerk;

/* For the plot of a file in order. The book of the sample plots lies beside it as "book.json". */
struct clerk *clerk_new(const char *path);
/* Has the editor prepared, and the act done, or the key pressed unless it is PRESS_NOTHING, once
 * for each way to answer what is asked: each answer and none; a card as it stands, with some
 * of its fields changed, with a wrong one, and left; but no more ways than `most`. */
void clerk_try(struct clerk *c, const char *where, void (*prepare)(struct editor *editor),
	enum act_id act, int key, int most);
/* Compares the minutes with a file of tests/golden/, and frees all. */
void clerk_check(struct clerk *c, const char *golden);

#endif
