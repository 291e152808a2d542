/* The cards of what is allowed for in all of the plot, one for each few trades. Whoever calls ends
 * the stroke. */
#ifndef EDITOR_CARDS_ALLOW_CARD_H
#define EDITOR_CARDS_ALLOW_CARD_H

#include "editor/ask/block_card.h"
#include "editor/editor.h"

/* They share out the attributes of the block, in its order; the first has its notes. */
struct block_part allow_card_part(int card);
/* False where the card was left. */
bool allow_card_fill(struct editor *editor, int card);

#endif
