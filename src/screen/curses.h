/* The one way in for curses and its libraries. */
#ifndef SCREEN_CURSES_H
#define SCREEN_CURSES_H

#include <curses.h>
#include <form.h>
#include <menu.h>

#endif
