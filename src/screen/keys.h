/* The keyboard: bytes and curses' codes in, keys of editor/key.h out. */
#ifndef SCREEN_KEYS_H
#define SCREEN_KEYS_H

#include "base/text.h"
#include "editor/key.h"

#include <stdbool.h>
#include <wchar.h>

struct keys {
	void *window;       /* what curses reads through; never shown */
	int held;           /* a key that was looked at ahead, PRESS_NOTHING: none */
	mbstate_t state;    /* of a character that has come in part */
	struct text pasted; /* after PRESS_PASTE: the text, not checked in any way */
	struct point point; /* after PRESS_POINT */
};

/* The terminal is open. */
void keys_open(struct keys *keys);
void keys_close(struct keys *keys);
/* Waits for the next key. Pasted text comes as one PRESS_PASTE; unknown escape
 * sequences and malformed mouse reports are discarded; requests to stop come as PRESS_PAUSE. */
int keys_next(struct keys *keys);
/* True where a key has come already: what it changes is drawn with the rest. */
bool keys_are_waiting(struct keys *keys);

#endif
