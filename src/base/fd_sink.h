/* Bytes into an open file: at once, or in large pieces of what is printed. */
#ifndef BASE_FD_SINK_H
#define BASE_FD_SINK_H

#include "base/sink.h"

#include <stdbool.h>

/* Writes all the bytes. errno says what failed. */
bool fd_put(int fd, const char *bytes, size_t length);

struct fd_sink {
	struct sink sink; /* first */
	int fd, cause;    /* cause: errno of the first failure, 0 without one */
	size_t held;
	char *bytes;
};
struct fd_sink fd_sink(int fd);
/* Writes what is left and frees the sink. False, errno saying why, where something could not be
 * written; ECANCELED where what was printed was stopped (base/stop.h). */
bool fd_sink_end(struct fd_sink *to);

#endif
