/* Bytes of a terminal in, keys of editor/key.h out. It knows no terminal and no clock: whoever
 * reads adds what came, takes keys until there are none, waits as long as decode_patience says, and
 * calls decode_silence when nothing came.
 *
 * Only what a key sends is a key. Answers of terminals, reports of buttons that nothing is done
 * with, strings, control characters of eight bits, broken characters and sequences that were cut
 * off mean nothing and are passed over. */
#ifndef SCREEN_DECODE_H
#define SCREEN_DECODE_H

#include "editor/key.h"
#include "screen/paste.h"

#include <stdbool.h>
#include <stddef.h>

enum { DECODE_BYTES = 8192, SEQUENCE_MOST = 64, LEARNT_MOST = 32 };

/* What the next bytes belong to. */
enum within {
	WITHIN_NOTHING,
	WITHIN_PASTE,    /* up to its end mark */
	WITHIN_BURST,    /* up to silence: a paste without marks */
	WITHIN_STRING,   /* of a terminal, up to its end */
	WITHIN_SEQUENCE  /* of endless length */
};

struct decoder {
	unsigned char bytes[DECODE_BYTES]; /* from `at` to `end`: not taken yet */
	size_t at, end;
	enum within within;
	bool is_quiet;      /* decode_silence was called since the last byte */
	unsigned char late[SEQUENCE_MOST]; /* what silence cut off; its rest may still come */
	size_t late_length;
	struct {
		const char *bytes;
		int press;
	} learnt[LEARNT_MOST];
	int learnt_count;
	int escape_ms;      /* how long Esc waits for the rest of a sequence */
	struct paste paste; /* after PRESS_PASTE: its text, not checked in any way */
	struct point point; /* after PRESS_POINT */
};

void decode_open(struct decoder *d, int escape_ms);
void decode_close(struct decoder *d);
/* This terminal sends these bytes (which must outlive the decoder) for the key, before all that is
 * known here. NULL or "": it has no such key. */
void decode_learn(struct decoder *d, const char *bytes, int press);

/* Where the next bytes go, and for how many there is room; decode_add then says how many came. */
unsigned char *decode_room(struct decoder *d, size_t *room);
void decode_add(struct decoder *d, size_t count);

/* Whether so much was read that keys are to be taken before more is. */
bool decode_has_many(const struct decoder *d);

/* The next key; PRESS_NOTHING: there is none without further bytes. A paste that stops before its
 * end mark is handed over in parts. */
int decode_next(struct decoder *d);
/* Where text is asked for, so many characters at once are pasted, not typed: begins a paste that
 * ends with silence. */
void decode_burst(struct decoder *d);
/* How many ms to wait for the next byte before decode_silence is called; below 0: without end. */
int decode_patience(const struct decoder *d);
/* Nothing has begun that a short silence would end: there is time for other things. */
bool decode_is_between(const struct decoder *d);
/* Nothing came for so many ms. Returns what that ends, as decode_next does. */
int decode_silence(struct decoder *d);

#endif
