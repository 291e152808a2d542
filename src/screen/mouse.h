/* A mouse's reports as terminals send them (XTerm Control Sequences, "Mouse Tracking"). Pure. */
#ifndef SCREEN_MOUSE_H
#define SCREEN_MOUSE_H

#include "editor/key.h"

#include <stdbool.h>

enum { MOUSE_BYTES = 3 };

/* What follows ESC [ < : button ; column ; row, ended by M, or m for a release. */
bool mouse_read_text(const char *text, struct point *point);
/* The older kind, what follows ESC [ M : button, column and row, each with 32 added; a column or
 * row that does not fit a byte is not reported. */
bool mouse_read_bytes(const unsigned char bytes[MOUSE_BYTES], struct point *point);
/* Both are false where a report is not well formed, or of a button that nothing is done with. */

#endif
