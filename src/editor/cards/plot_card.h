/* The card of the plot itself. The caller ends the stroke. */
#ifndef EDITOR_CARDS_PLOT_CARD_H
#define EDITOR_CARDS_PLOT_CARD_H

#include "editor/editor.h"

/* False where the card was left; else the editor may have said what became of the ground. */
bool plot_card_fill(struct editor *editor);
/* The one field of it that names the price book. False where it was left. */
bool prices_card_fill(struct editor *editor);

#endif
