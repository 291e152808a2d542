/* Finding answers in a list by typing words of theirs. Small and capital ASCII letters are alike.
 *
 * All the words that were typed must be there: as whole words, else as beginnings of words, in the
 * answer before in what else it goes by (question.also, question.notes); else within words of the
 * answer. The worst of them counts. */
#ifndef EDITOR_ASK_SEEK_H
#define EDITOR_ASK_SEEK_H

#include "editor/ask/ask.h"

/* The answers that have what was typed, best first, else in their own order; those under one
 * heading stay together, where the best of them is. All of them where nothing was typed.
 * found: room for question->count. Returns how many there are. */
int seek(const struct question *question, const char *typed, int *found);

/* Whether a word of the text, between blanks, was typed as a whole word. */
bool seek_has_word(const char *text, const char *typed);

#endif
