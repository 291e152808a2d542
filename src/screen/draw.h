/* Writing on the screen: words, rules and looks, all held within an area. */
#ifndef SCREEN_DRAW_H
#define SCREEN_DRAW_H

#include "screen/layout.h"

#include <stddef.h>

enum look {
	LOOK_PLAIN,
	LOOK_STRONG,  /* headings, states, keys */
	LOOK_PICKED,  /* what Enter would pick */
	LOOK_FIELD    /* what can be typed into */
};

/* Row and column count from the area's corner. What does not fit is cut. Returns the column
 * after it. */
int draw_text(const struct area *area, int row, int column, const char *text, enum look look);
/* The same for the first `length` bytes. */
int draw_bytes(const struct area *area, int row, int column, const char *text, size_t length,
	enum look look);
/* So many columns of a text, with dots at the end where it takes more. */
int draw_cut(const struct area *area, int row, int column, const char *text, int columns,
	enum look look);
/* Ends at the area's right. */
void draw_right(const struct area *area, int row, const char *text, enum look look);
/* One cluster (width_cluster) that fits, with the attributes that curses has. */
void draw_cluster(const struct area *area, int row, int column, const char *text, size_t length);
/* Broken into lines from `row` on; returns the row after them. */
int draw_wrapped(const struct area *area, int row, const char *text, enum look look);
/* One ASCII character; none above the area. */
void draw_character(const struct area *area, int row, int column, char c, enum look look);
/* Lines over the width or height of the area. */
void draw_rule(const struct area *area, int row);
void draw_upright(const struct area *area);
/* Blanks. */
void draw_clear(const struct area *area);
/* Blanks, with a line at the left. */
void draw_card(const struct area *area);

#endif
