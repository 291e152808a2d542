/* What was wrong with an input, and where. Filled by the reader that failed, shown by its
 * caller. */
#ifndef BASE_DIAG_H
#define BASE_DIAG_H

#include <stdbool.h>
#include <stddef.h>

struct diag {
	int line, column;   /* from 1; 0: the input as a whole. Columns count bytes. */
	char found[64];     /* printable ASCII or whole UTF-8 characters, cut with "..." */
	char expected[160]; /* what would have been right */
};

/* Fills d and returns false, so that a reader can `return diag_set(...)`. found may hold any bytes:
 * control characters and broken UTF-8 are shown as <XX>, "" as "nothing". */
bool diag_set(struct diag *d, int line, int column, const char *found, size_t found_length,
	const char *expected, ...) __attribute__((format(printf, 6, 7)));
/* The same for something found that only words can say. */
bool diag_set_words(struct diag *d, int line, int column, const char *found,
	const char *expected, ...) __attribute__((format(printf, 5, 6)));

#endif
