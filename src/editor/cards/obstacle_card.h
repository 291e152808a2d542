/* The cards of houses, shade and things that are kept: name, where and how large, of houses and
 * shade how high, notes. The caller ends the stroke. Each is false where the card was left. */
#ifndef EDITOR_CARDS_OBSTACLE_CARD_H
#define EDITOR_CARDS_OBSTACLE_CARD_H

#include "editor/editor.h"

bool house_card_change(struct editor *editor, int which);
bool shade_card_change(struct editor *editor, int which);
bool keep_card_change(struct editor *editor, int which);
/* These offer where it is; the new one is the last of its kind. */
bool house_card_add(struct editor *editor, struct rectangle cells);
bool shade_card_add(struct editor *editor, struct rectangle cells);
bool keep_card_add_rectangle(struct editor *editor, struct rectangle cells);
bool keep_card_add_circle(struct editor *editor, struct place middle);

#endif
