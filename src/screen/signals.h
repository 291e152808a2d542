/* Signals. Handlers only note what came; the keyboard loop asks. They are let in only while the
 * program waits for keys, so nothing is half done when they are seen. A crash puts the terminal
 * back by plain writes and goes on to crash. */
#ifndef SCREEN_SIGNALS_H
#define SCREEN_SIGNALS_H

#include <signal.h>
#include <stdbool.h>
#include <stddef.h>

/* Before the terminal is opened, so that curses leaves these signals alone. */
void signals_open(void);
void signals_close(void);
/* The signal that ends the session (hang-up, termination), 0 if none came. */
int signals_ending(void);
/* True once for each request from outside to stop. */
bool signals_take_stop(void);
/* What to let in while waiting. */
void signals_wait_mask(sigset_t *mask);
/* Stops this program and its job as Ctrl-Z does; returns when it is continued. */
void signals_stop(void);
/* Dies of the signal, so that the parent sees it. */
void signals_die(int signal);

/* What puts the terminal back, for a crash: bytes to write and its modes as they are now. */
void signals_guard(const char *bytes, size_t length);
/* Restores the terminal from what signals_guard was given. Async-signal-safe. */
void signals_restore(void);

#endif
