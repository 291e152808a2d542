/* The price book that the plot of an editor names. */
#ifndef EDITOR_PRICE_BOOK_H
#define EDITOR_PRICE_BOOK_H

#include "editor/editor.h"

/* Reads the price book where the plot names another than before. That it cannot be read is said
 * once, and quantities are then computed without it. */
void price_book_refresh(struct editor *editor);
/* Has the book that the plot names read anew, and figures counted anew, where its file was written
 * since, or could not be read. */
void price_book_recheck(struct editor *editor);
void price_book_close(struct editor *editor);

#endif
