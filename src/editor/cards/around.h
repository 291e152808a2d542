/* Everything around a plot, one after the other as in its file, for lists that change it or take
 * it away: services, levels, the finished ground, houses, shade, ties, what is kept, the drop, the
 * tap. The caller ends the stroke. */
#ifndef EDITOR_CARDS_AROUND_H
#define EDITOR_CARDS_AROUND_H

#include "editor/editor.h"

enum around_kind { AROUND_SERVICE, AROUND_LEVELS, AROUND_FINISH, AROUND_HOUSE,
	AROUND_SHADE, AROUND_TIE, AROUND_KEEP, AROUND_DROP, AROUND_TAP };
enum { AROUND_KINDS = AROUND_TAP + 1 };

struct around {
	enum around_kind kind;
	int which; /* of its kind */
};

int around_count(const struct plot *plot);
/* index is 0..around_count - 1. */
struct around around_get(const struct plot *plot, int index);
/* In the report's words, or the plot's. */
const char *around_name(const struct report *report, struct around around);
/* "service": what it is, in a word. */
const char *around_word(struct around around);
/* False where its card was left. */
bool around_change(struct editor *editor, struct around around);
/* Takes it away; of a service with several lines asks how much of it. False where that was left. */
bool around_remove(struct editor *editor, struct around around);

#endif
