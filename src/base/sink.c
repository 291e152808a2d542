#include "base/sink.h"

#include <stdarg.h>
#include <string.h>

static void text_write(struct sink *sink, const char *bytes, size_t length)
{
	text_add_bytes(((struct text_sink *)sink)->text, bytes, length);
}

struct text_sink text_sink(struct text *text)
{
	return (struct text_sink){ { text_write }, text };
}

static void stream_write(struct sink *sink, const char *bytes, size_t length)
{
	struct stream_sink *to = (struct stream_sink *)sink;

	to->failed = to->failed || fwrite(bytes, 1, length, to->stream) != length;
}

struct stream_sink stream_sink(FILE *stream)
{
	return (struct stream_sink){ { stream_write }, stream, false };
}

static void count_write(struct sink *sink, const char *bytes, size_t length)
{
	(void)bytes;
	((struct counting_sink *)sink)->length += length;
}

struct counting_sink counting_sink(void)
{
	return (struct counting_sink){ { count_write }, 0 };
}

void sink_add(struct sink *sink, const char *string)
{
	sink->write(sink, string, strlen(string));
}

void sink_add_bytes(struct sink *sink, const char *bytes, size_t length)
{
	sink->write(sink, bytes, length);
}

void sink_print(struct sink *sink, const char *format, ...)
{
	struct text text = TEXT_EMPTY;
	va_list list;

	va_start(list, format);
	text_vprint(&text, format, list);
	va_end(list);
	sink_add_bytes(sink, text.bytes, text.length);
	text_fini(&text);
}
