/* Any bytes on the line: the same keys come of them in one piece and byte by byte, each is a
 * character or has a name, and after silence the next key is itself. A NUL is a silence. */

#include "support/fuzz.h"

#include "screen/decode.h"

#include <assert.h>
#include <locale.h>
#include <stdlib.h>
#include <string.h>

struct taken {
	int *keys;
	size_t count;
	struct text pasted; /* all of it, one after the other */
};

static void take(struct decoder *d, struct taken *taken)
{
	int key;

	while ((key = decode_next(d)) != PRESS_NOTHING) {
		assert((key >= ' ' && key < 0x7f) || (key >= 0xa0 && key < PRESS_OVER));
		assert(key < 0xd800 || key > 0xdfff);
		taken->keys[taken->count++] = key;
		if (key == PRESS_PASTE)
			text_add_bytes(&taken->pasted, d->paste.text.bytes, d->paste.text.length);
		if (key == PRESS_POINT)
			assert(d->point.row >= 0 && d->point.column >= 0);
	}
}

static void silence(struct decoder *d, struct taken *taken)
{
	while (decode_patience(d) >= 0) {
		int key = decode_silence(d);

		assert(key == PRESS_NOTHING || key == PRESS_ESCAPE || key == PRESS_PASTE);
		if (key != PRESS_NOTHING)
			taken->keys[taken->count++] = key;
		if (key == PRESS_PASTE)
			text_add_bytes(&taken->pasted, d->paste.text.bytes, d->paste.text.length);
		take(d, taken);
	}
}

static void come(struct decoder *d, struct taken *taken, const uint8_t *bytes, size_t size)
{
	while (size) {
		size_t room;
		unsigned char *to = decode_room(d, &room);
		size_t part = size < room ? size : room;

		memcpy(to, bytes, part);
		decode_add(d, part);
		take(d, taken);
		bytes += part;
		size -= part;
	}
}

/* In pieces of so many bytes at most, each up to the next silence. */
static struct taken keys_of(const uint8_t *bytes, size_t size, size_t most)
{
	struct taken taken = { calloc(2 * size + 8, sizeof(int)), 0, TEXT_EMPTY };
	struct decoder *d = malloc(sizeof *d);

	decode_open(d, 0);
	for (size_t at = 0, part; at < size; at += part) {
		const uint8_t *end = memchr(bytes + at, 0, size - at);

		part = end ? (size_t)(end - bytes) - at : size - at;
		part = part < most ? part : most;
		come(d, &taken, bytes + at, part);
		if (part == 0) {
			silence(d, &taken);
			part = 1;
		}
	}
	silence(d, &taken);
	assert(decode_next(d) == PRESS_NOTHING && decode_patience(d) < 0);
	come(d, &taken, (const uint8_t *)"q", 1);
	assert(taken.count && taken.keys[taken.count - 1] == 'q');
	decode_close(d);
	free(d);
	return taken;
}

static void fini(struct taken *taken)
{
	free(taken->keys);
	text_fini(&taken->pasted);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct taken whole, single;

	setlocale(LC_CTYPE, "C.UTF-8");
	whole = keys_of(bytes, size, size + 1);
	single = keys_of(bytes, size, 1);
	assert(whole.count == single.count);
	assert(memcmp(whole.keys, single.keys, whole.count * sizeof *whole.keys) == 0);
	assert(whole.pasted.length == single.pasted.length);
	assert(memcmp(whole.pasted.bytes, single.pasted.bytes, whole.pasted.length) == 0);
	fini(&whole);
	fini(&single);
	return 0;
}
