#include "base/fd_sink.h"
#include "base/memory.h"
#include "base/stop.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { SINK_BYTES = 64 * 1024 };

bool fd_put(int fd, const char *bytes, size_t length)
{
	while (length) {
		ssize_t put = write(fd, bytes, length);

		if (put < 0 && errno == EINTR)
			continue;
		if (put < 0)
			return false;
		bytes += put;
		length -= (size_t)put;
	}
	return true;
}

static void flush(struct fd_sink *to)
{
	if (to->cause == 0 && stop_asked())
		to->cause = ECANCELED; /* what comes is half of it */
	if (to->cause == 0 && !fd_put(to->fd, to->bytes, to->held))
		to->cause = errno;
	to->held = 0;
}

static void hold(struct sink *sink, const char *bytes, size_t length)
{
	struct fd_sink *to = (struct fd_sink *)sink;

	while (length > 0 && to->cause == 0) {
		size_t room = SINK_BYTES - to->held, part = length < room ? length : room;

		memcpy(to->bytes + to->held, bytes, part);
		to->held += part;
		bytes += part;
		length -= part;
		if (to->held == SINK_BYTES)
			flush(to);
	}
}

struct fd_sink fd_sink(int fd)
{
	return (struct fd_sink){ .sink = { hold }, .fd = fd, .bytes = memory_new(SINK_BYTES, 1) };
}

bool fd_sink_end(struct fd_sink *to)
{
	flush(to);
	free(to->bytes);
	if (to->cause)
		errno = to->cause;
	return to->cause == 0;
}
