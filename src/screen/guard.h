/* Gives the terminal back by plain calls, wherever the program is: when it crashes, is out of
 * memory or ended by a signal. It waits for a line that takes no bytes no longer than a third of a
 * second. All but the first three may be called from handlers of signals. */
#ifndef SCREEN_GUARD_H
#define SCREEN_GUARD_H

#include <stdbool.h>
#include <stddef.h>

/* Remembers the terminal's modes, and the way to it. Before curses starts, which changes them. */
void guard_open(void);
void guard_close(void);
/* What to write to get the screen back. */
void guard_bytes(const char *bytes, size_t length);
/* Whether the program has the terminal: only then there is something to give back. */
void guard_hold(bool is_held);
bool guard_is_held(void);
void guard_give_back(void);
/* Whether standard error takes bytes: as a rule it is the same line. */
bool guard_can_say(void);
/* A line on standard error. */
void guard_say(const char *words);

#endif
