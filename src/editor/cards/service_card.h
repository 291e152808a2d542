/* The cards of services: name, kind, state, attributes, notes. The caller ends the stroke. */
#ifndef EDITOR_CARDS_SERVICE_CARD_H
#define EDITOR_CARDS_SERVICE_CARD_H

#include "editor/editor.h"

/* False where the card was left. */
bool service_card_change(struct editor *editor, int which);
/* The new service is the last one; it has no line yet. */
bool service_card_add(struct editor *editor);

#endif
