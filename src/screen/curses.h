/* The one way in for curses. */
#ifndef SCREEN_CURSES_H
#define SCREEN_CURSES_H

#include <curses.h>

/* As <term.h> has them, whose several hundred macros would take away words such as lines and
 * columns. */
struct term;
int setupterm(const char *name, int descriptor, int *error);
struct term *set_curterm(struct term *terminal);
int del_curterm(struct term *terminal);
int tputs(const char *bytes, int lines, int (*put)(int));

#endif
