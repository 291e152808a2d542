/* Patterns of the ground: of each class where there are no colours, and of the second of two shades
 * where there are but few. */
#ifndef SCREEN_HATCH_H
#define SCREEN_HATCH_H

#include "screen/curses.h"
#include "screen/scene.h"

/* The sign at this place of the pattern, cells or larger squares across and down; NULL: a blank. */
const cchar_t *hatch_sign(const struct scene *scene, char letter, int x, int y);
/* Whether the pattern goes on through all characters of a cell. */
bool hatch_is_closed(const struct scene *scene, char letter);

#endif
