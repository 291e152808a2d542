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

/* Fails the test unless the program ends with that status, having these words in what it prints and
 * in what it complains of: nothing is printed with status 2, nothing complained of with another. */
void program_check(const char *const *arguments, const char *input, int status,
	const char *output, const char *errors);

/* The words, in short: program_run(ARGUMENTS("takeoff", "plots/court.plot"), NULL). */
#define ARGUMENTS(...) ((const char *const[]){ __VA_ARGS__, NULL })

#endif
