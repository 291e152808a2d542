/* What the program shows, found by its name or its cell, not by a row of the screen. */
#ifndef SUPPORT_SHOWN_H
#define SUPPORT_SHOWN_H

#include "base/text.h"
#include "support/terminal.h"

/* Where the plan's first character is, at every size of the screen. */
enum { PLAN_TOP = 2, PLAN_LEFT = 5 };

/* Grounds of 256 colours: of the cursor's cell, and of what is pegged or marked. */
enum { SHOWN_CURSOR = 226, SHOWN_OUTLINE = 201 };

/* The plan's character in this row and column of it, from 0; the rulers' are at -1. */
char shown_character(struct terminal *t, int row, int column);
/* In two columns a cell, of cell x, y: b, p, l or S where its ground is that of the first bed,
 * path, lawn or fixture, else the character that stands there; whether it is open ground, in 256
 * colours; its ground; whether the sign stands beside the letter, UTF-8; and whether the cursor is
 * on it. */
char shown_letter(struct terminal *t, int x, int y);
bool shown_is_open(struct terminal *t, int x, int y);
int shown_ground(struct terminal *t, int x, int y);
bool shown_mark(struct terminal *t, int x, int y, const char *sign);
bool shown_on_cell(struct terminal *t, int x, int y);

/* The column of the line between plan and panel; -1: there is none. */
int shown_divider(struct terminal *t);
/* Whether the panel shows the page of this name. */
bool shown_page(struct terminal *t, const char *name);
/* Has it shown, by the list of pages. */
void page_turn_to(struct terminal *t, const char *name);

/* What so many rows show from one on, colours and all; to be cleaned up with text_fini. And whether
 * they show that. */
struct text shown_picture(struct terminal *t, int first, int rows, int columns);
bool shown_is(struct terminal *t, const struct text *picture, int first, int rows, int columns);

/* Whether the cursor is on the field with this label, or on the answer that begins so. */
bool shown_at(struct terminal *t, const char *label);
/* Goes to the field with this label, which must be in view. */
void field_go_to(struct terminal *t, const char *label);
/* Leaves a card with Esc, and drops what was typed in it. */
void card_drop(struct terminal *t);

/* Waits until the figures of a plot that has snags are there, which the first row then counts: on a
 * slow machine they come after the plan. */
void shown_wait_counted(struct terminal *t);

#endif
