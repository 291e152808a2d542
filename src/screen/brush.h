/* Characters of the picture in their colours. */
#ifndef SCREEN_BRUSH_H
#define SCREEN_BRUSH_H

#include "screen/colour.h"
#include "screen/curses.h"
#include "screen/layout.h"

/* Whether the locale has all characters, not ASCII alone. */
bool brush_has_unicode(void);
/* Whether a line below characters is seen in this paint. */
bool brush_can_underline(void);

/* Row and column count from the area's corner, and are in it. A sign of the terminal's own
 * (WACS_...), or a character that the locale has. */
void brush_sign(const struct area *area, int row, int column, const cchar_t *sign,
	struct paint paint);
void brush_put(const struct area *area, int row, int column, wchar_t character,
	struct paint paint);
/* Of UTF-8, see draw_cluster. */
void brush_cluster(const struct area *area, int row, int column, const char *text, size_t length,
	struct paint paint);

#endif
