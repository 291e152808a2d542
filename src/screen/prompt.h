/* A card with one field: asked on the message row, so that all of the plan stays in view. */
#ifndef SCREEN_PROMPT_H
#define SCREEN_PROMPT_H

#include "screen/stage.h"

/* Whether a card is asked so. */
bool prompt_suits(const struct card *card);
/* Title, label and field; the unit of a number alone and what the field means where there is room
 * beside it. What is wrong takes rows above, and so does that unit without room. For a filling's
 * front (struct front). */
void prompt_draw(const struct front *front, const struct layout *layout);
struct area prompt_leaves(const struct front *front, const struct layout *layout);

#endif
