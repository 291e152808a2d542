/* Runs the program without a terminal and keeps what it said. */
#ifndef SUPPORT_PROGRAM_H
#define SUPPORT_PROGRAM_H

#include "base/text.h"

struct program_result {
	int status; /* exit status; 128 + n where signal n ended it */
	struct text output, errors;
};

/* Runs parterre with the words of `arguments` (ended by NULL), `input` as its standard input (NULL:
 * none), and waits for it. program_free frees the result. */
struct program_result program_run(const char *const *arguments, const char *input);
void program_free(struct program_result *result);

/* The same, in short: program_run(ARGUMENTS("takeoff", "plots/court.plot"), NULL). */
#define ARGUMENTS(...) ((const char *const[]){ __VA_ARGS__, NULL })

#endif
