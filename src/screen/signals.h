/* Signals. Handlers only note what came, at any time; whoever waits or computes for long asks. A
 * signal that ends the session also has standard output go nowhere: curses else would go on trying
 * to write where the terminal takes no bytes. A crash gives the terminal back by plain calls and
 * goes on to crash. */
#ifndef SCREEN_SIGNALS_H
#define SCREEN_SIGNALS_H

#include <poll.h>
#include <stdbool.h>

/* Before the terminal is opened, so that curses leaves these signals alone. They are noted until
 * the process ends. */
void signals_open(void);
/* The signal that ends the session, 0 if none came. */
int signals_ending(void);
/* The line is gone: as if SIGHUP had come. */
void signals_hang_up(void);
/* True once for each request from outside to stop; when the program goes on after a stop; for each
 * change of the terminal's size. */
bool signals_take_stop(void);
bool signals_take_continue(void);
bool signals_take_resize(void);
/* Whether any of these has come and is not seen to yet. */
bool signals_are_waiting(void);
/* Waits for the line up to `ms` (below 0: without end) or until a signal is noted; none is missed.
 * Returns above 0: something came on the line; 0: nothing in that time; below 0: a signal. */
int signals_wait(struct pollfd *line, int ms);
/* Keeps all signals waiting but those of a crash, and lets them in again. */
void signals_hold(bool is_held);
/* Stops this program and its job as Ctrl-Z does; returns when it is continued. */
void signals_stop(void);
/* Dies of the signal, so that the parent sees it. */
void signals_die(int signal);

#endif
