/* Rows whose characters a terminal may count otherwise than the C library does: wide ones, marks,
 * what a joiner binds, scripts that are written from right to left. Curses trusts its own count, so
 * that what follows such a text on its row would be wherever the terminal has its cursor. Such
 * rows are therefore kept from curses and drawn anew when they change: from the left, and after
 * each such cluster the cursor is put where the next one belongs. */
#ifndef SCREEN_ROWS_H
#define SCREEN_ROWS_H

#include <stdint.h>

struct rows {
	uint64_t *shown; /* for each row of the screen: a hash of what was drawn; owned */
	int count;
};

void rows_fini(struct rows *rows);
/* Sends what changed on the screen to the terminal. */
void rows_send(struct rows *rows);
/* Curses has drawn the whole screen by itself. */
void rows_forget(struct rows *rows);

#endif
