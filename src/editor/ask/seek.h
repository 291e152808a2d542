/* Finding an answer in a list by typing some of its words. Small and capital ASCII letters are
 * alike. */
#ifndef EDITOR_ASK_SEEK_H
#define EDITOR_ASK_SEEK_H

#include "editor/ask/ask.h"

/* The answer that begins with what was typed; else one with a word that does; else one that has it
 * anywhere; else one that also goes by a word that begins so. The first of several. ANSWER_NONE
 * where there is none. */
int seek_best(const struct question *question, const char *typed);
/* The next one after `at`, the list being a ring, that has what was typed in any of these ways.
 * `at` itself where there is no other. */
int seek_next(const struct question *question, const char *typed, int at);

#endif
