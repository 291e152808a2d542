/* Forms: a card's labels and fields over the panel and the plan's right, so that the plan stays in
 * view; a card with one field on the message row (prompt.h). */
#ifndef SCREEN_FORM_H
#define SCREEN_FORM_H

#include "screen/stage.h"

/* Has the card filled in: true once its accept has taken it, false where it was left. */
bool form_fill(struct stage *stage, struct card *card);

#endif
