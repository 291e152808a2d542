/* A text file line by line, refusing bytes that no plot holds. */
#ifndef PLOT_FORMAT_LINES_H
#define PLOT_FORMAT_LINES_H

#include "base/scan.h"

struct lines {
	const char *bytes;
	size_t length, at;
	int number; /* of the line last read, from 1 */
};

enum line_result { LINE_READ, LINE_END, LINE_BAD };

/* Reads the next line into *s, without its LF or CRLF and without trailing blanks. LINE_BAD, d
 * filled, at the first of these: a byte order mark at the start, a NUL, a lone CR, invalid
 * UTF-8, the byte after the `most` that a line may have. */
enum line_result lines_next(struct lines *lines, size_t most, struct scan *s, struct diag *d);

#endif
