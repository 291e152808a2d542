/* The terminal: opened, given back, stopped and continued. */
#ifndef SCREEN_TERMINAL_H
#define SCREEN_TERMINAL_H

#include "base/text.h"

#include <stdbool.h>

/* Opens the terminal for full-screen work, its signals with it. False, message filled, where
 * standard input or output is none or it is of a kind unknown or too simple. */
bool terminal_open(struct text *message);
/* Gives it back as it was. is_gone: the line has dropped, so nothing is written. */
void terminal_close(bool is_gone);
/* Gives it back, stops the program, and takes it again, without the mouse, when the program is
 * continued. */
void terminal_pause(void);
/* Whether the terminal can report a mouse; and has it do so or not. */
bool terminal_has_mouse(void);
void terminal_point(bool is_wanted);
/* Sends the whole screen again with the next drawing. */
void terminal_repaint(void);

#endif
