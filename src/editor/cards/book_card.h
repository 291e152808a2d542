/* The card that gives the plot a price book: one that is there, or a new one to fill in. The caller
 * ends the stroke. */
#ifndef EDITOR_CARDS_BOOK_CARD_H
#define EDITOR_CARDS_BOOK_CARD_H

#include "editor/editor.h"

/* The figures are counted, without a book. False where the card was left. */
bool book_card_fill(struct editor *editor);

#endif
