/* Compares a whole text with a file in tests/golden/.
 *
 * Fails the running test where they differ, and says in which line, what stands there and what
 * was expected. `make golden` (UPDATE_GOLDEN=1 in the environment) writes the files instead:
 * read the difference that makes before it is committed. */
#ifndef SUPPORT_GOLDEN_H
#define SUPPORT_GOLDEN_H

#include <stdbool.h>

/* name: a file of tests/golden/, such as "court.txt". */
void golden_check(const char *name, const char *text);

/* Whether the file begins so; always where it is to be written anew. */
bool golden_begins(const char *name, const char *text);

/* golden_check for any file; path is relative to the repository's root. */
void golden_check_file(const char *path, const char *text);

#endif
