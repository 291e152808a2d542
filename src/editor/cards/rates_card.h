/* The card of the hours that work takes. Whoever calls ends the stroke. */
#ifndef EDITOR_CARDS_RATES_CARD_H
#define EDITOR_CARDS_RATES_CARD_H

#include "editor/editor.h"

/* False where the card was left. */
bool rates_card_fill(struct editor *editor);

#endif
