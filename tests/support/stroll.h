/* A way through the program at a terminal, key by key: what a person types and presses, and what
 * is then to be seen. What is pressed is counted, as README.md counts it: each key once, letters
 * that find something in a list as well; names and measures that are typed into a field count as
 * one thing typed, however long.
 *
 *	static const struct stroll way[] = {
 *		{ "Rose court", "enter enter", "Width" },
 *		{ NULL, "b right x2 space", "not saved" },
 *	};
 *	struct strolled strolled = stroll_walk(at.t, way, 2);
 *	ck_assert_int_eq(strolled.presses, 6);
 */
#ifndef SUPPORT_STROLL_H
#define SUPPORT_STROLL_H

#include "base/text.h"
#include "support/terminal.h"

/* Typed first, then pressed: names of keys.h between blanks, "x9" for nine of the one before; then
 * seen. typed and seen may be NULL. */
struct stroll {
	const char *typed, *pressed, *seen;
};

struct strolled {
	int presses, typed;
};

/* Counts, and does it, waiting for what is to be seen. */
struct strolled stroll_count(const struct stroll *way, size_t count);
struct strolled stroll_walk(struct terminal *t, const struct stroll *way, size_t count);

/* Adds all of it, a line for each: what is typed in quotes, keys by their names. */
void stroll_list(const struct stroll *way, size_t count, struct text *list);

#endif
