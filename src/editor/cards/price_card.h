/* The card of one pack in the plot's price book, which is written into the book's file. */
#ifndef EDITOR_CARDS_PRICE_CARD_H
#define EDITOR_CARDS_PRICE_CARD_H

#include "editor/editor.h"

/* The item has a purchase, of figures that are counted with the book. pack: of the purchase's
 * goods; their count, 0 where it has none: one more. False where the file is as it was: the card
 * was left, or nothing changed in it. Figures and book are not what the file says until
 * price_book_recheck. */
bool price_card_fill(struct editor *editor, const struct item *item, int pack);

#endif
