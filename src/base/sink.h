/* Where printed bytes go, piece by piece: whoever prints holds no whole text. */
#ifndef BASE_SINK_H
#define BASE_SINK_H

#include "base/text.h"

#include <stdio.h>

struct sink {
	/* Cannot fail: a sink that may run out of room remembers that it did. */
	void (*write)(struct sink *sink, const char *bytes, size_t length);
};

/* Into a growing text. */
struct text_sink {
	struct sink sink; /* first */
	struct text *text;
};
struct text_sink text_sink(struct text *text);

/* Into a stream. */
struct stream_sink {
	struct sink sink; /* first */
	FILE *stream;
	bool failed; /* something could not be written; nothing was after it */
};
struct stream_sink stream_sink(FILE *stream);

/* Counts the bytes. */
struct counting_sink {
	struct sink sink; /* first */
	size_t length;
};
struct counting_sink counting_sink(void);

void sink_add(struct sink *sink, const char *string);
void sink_add_bytes(struct sink *sink, const char *bytes, size_t length);
void sink_print(struct sink *sink, const char *format, ...) __attribute__((format(printf, 2, 3)));

#endif
