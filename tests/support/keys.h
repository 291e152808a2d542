/* What a terminal sends for a key.
 *
 * The bytes of arrows and the like come from the terminal's own description (terminfo), as it
 * sends them once a full-screen program has switched its keypad on; the rest is ASCII. */
#ifndef SUPPORT_KEYS_H
#define SUPPORT_KEYS_H

#include <stdbool.h>
#include <stddef.h>

/* name up down left right home end pageup pagedown insert delete backspace shift-tab shift-left
 * shift-right,
 *        enter tab space escape, ctrl-a to ctrl-z, or any one character (UTF-8) for itself
 * term what TERM says Writes the key's bytes, with a NUL, to bytes[size]. False if there is no
 * such name, or no such key on that terminal. */
bool key_bytes(const char *name, const char *term, char *bytes, size_t size);

#endif
