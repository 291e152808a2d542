/* How many columns a text takes on this terminal, as the C library counts them in the session's
 * locale, and where it can be broken. Texts are UTF-8; what the locale cannot show, and what no
 * text should have, is shown as ?. Where terminals count otherwise, see screen/rows.h. */
#ifndef SCREEN_WIDTH_H
#define SCREEN_WIDTH_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <wchar.h>

/* The first character of a text that is not empty: how it is shown, in how many columns (0: it
 * joins the one before). Returns its bytes. */
size_t width_character(const char *text, size_t length, wchar_t *shown, int *columns);
/* The first cluster (editor/field/cluster.h) of such a text: its columns, at least 1. Returns its
 * bytes. */
size_t width_cluster(const char *text, size_t length, int *columns);
int width_of(const char *text);
/* Bytes of the longest beginning, by clusters, that takes at most so many columns. */
size_t width_cut(const char *text, int columns);
/* Bytes of the first line when the text is broken between words, or where it has a newline, to
 * lines of so many columns (at least 2); the next line begins *next bytes on. A word too long is
 * cut. */
size_t width_line(const char *text, int columns, size_t *next);
/* A character that has one column on all terminals: of a script whose every letter has, or one of
 * the signs that the screen itself is drawn with. */
bool width_is_plain(uint32_t code);
/* How many lines that makes; an empty text makes none. */
int width_lines(const char *text, int columns);

#endif
