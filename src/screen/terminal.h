/* The terminal: opened, given back, stopped and continued. */
#ifndef SCREEN_TERMINAL_H
#define SCREEN_TERMINAL_H

#include "base/text.h"

#include <stdbool.h>

/* Opens the terminal for full-screen work, its signals with it. False, message filled, where
 * standard input or output is none or it is of a kind unknown or too simple. */
bool terminal_open(struct text *message);
/* Gives it back as it was, without waiting for a line that takes no bytes where a signal ends the
 * session. */
void terminal_close(void);
/* Gives it back, stops the program, and takes it again, without the mouse, when the program is
 * continued; where that was to end it, the terminal stays given back. */
void terminal_pause(void);
/* The same where the program was stopped from outside, which it could not see coming. */
void terminal_continue(void);
/* Has the screen follow the terminal's size. */
void terminal_fit(void);
/* What the terminal's description says by that name, NULL: nothing. It lasts until the terminal is
 * closed. */
const char *terminal_capability(const char *name);
/* Whether it has all moves of the cursor that screen/steer.h makes, and the bytes are those. */
bool terminal_has_moves(void);
/* Whether the terminal can report a mouse; and has it do so or not. */
bool terminal_has_mouse(void);
void terminal_point(bool is_wanted);
/* Sends the whole screen again with the next drawing. */
void terminal_repaint(void);

#endif
