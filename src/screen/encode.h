/* Texts between UTF-8, in which the plot holds them, and the encoding of the terminal's locale. */
#ifndef SCREEN_ENCODE_H
#define SCREEN_ENCODE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* Whether the locale has all characters of a text. */
bool encode_can_show(const char *utf8);
/* The characters of bytes that came from the terminal, in new memory; NULL, *count 0, where a
 * byte is part of none in the locale. */
uint32_t *encode_read(const char *local, size_t length, size_t *count);

#endif
