/* The keyboard: what comes on the line, and signals, as keys of editor/key.h. */
#ifndef SCREEN_KEYS_H
#define SCREEN_KEYS_H

#include "base/text.h"
#include "editor/key.h"
#include "screen/decode.h"

#include <stdbool.h>
#include <stdint.h>

struct keys {
	struct decoder decoder;
	int64_t since_ms;   /* when the last byte was read or decode_silence was called */
	int held;           /* a key that was looked at ahead, PRESS_NOTHING: none */
	bool is_asking;     /* a list or card is in front: much text at once is a paste */
	struct text pasted; /* after PRESS_PASTE: the text, not checked in any way */
	struct point point; /* after PRESS_POINT */
	/* Called while no key comes: in how many ms it is to be called again, -1: after the next
	 * key. NULL: nothing is to be done. */
	int (*idle)(void *context);
	void *context;
};

/* The terminal is open. */
void keys_open(struct keys *keys);
void keys_close(struct keys *keys);
/* Waits for the next key. Pasted text comes as PRESS_PASTE, in parts where the line falters; what
 * is no key is passed over; requests to stop come as PRESS_PAUSE. PRESS_OVER where a signal ends
 * the session or the line is gone, which counts as a hang-up. */
int keys_next(struct keys *keys);
/* Does what is to be done while no key comes; returns in how many ms it is to be done again, below
 * 0: never. keys_next sees to it while it waits. */
int keys_idle(const struct keys *keys);
/* Above 0 where something has come on the line that may be a key, below 0 where a signal has to be
 * seen to or the line is gone; 0: neither. Reads nothing. */
int keys_look(const struct keys *keys);
/* True where a key has come already: what it changes is drawn with the rest. Does not wait; asked
 * again and again it comes to know Esc too. */
bool keys_are_waiting(struct keys *keys);

#endif
