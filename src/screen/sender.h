/* Sends what curses draws, shortened: meanwhile standard output is a file in memory, so that what
 * curses writes there can be read before it goes to the terminal. Where there can be no such file,
 * it goes as it is. */
#ifndef SCREEN_SENDER_H
#define SCREEN_SENDER_H

#include <stdbool.h>

/* When standard output is the terminal. */
void sender_open(void);
void sender_close(void);
/* Between them curses draws on a screen of so many rows and columns, and nothing else writes to the
 * terminal. A signal that ends the session waits until then. Without `has_moves`, which says that
 * the terminal's cursor is moved as screen/steer.h does, only colours are left out. */
void sender_begin(int rows, int columns, bool has_moves);
void sender_end(void);
/* Somebody else has written to the terminal: nothing is known of it. */
void sender_forget(void);

#endif
