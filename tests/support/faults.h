/* Makes a call of the program fail, or kills the program at one (tests/faults/faults.c says how).
 * What the test itself does is left alone. */
#ifndef SUPPORT_FAULTS_H
#define SUPPORT_FAULTS_H

#include <stdbool.h>

struct fault_plan {
	bool is_memory;     /* false: calls on files under `folder` */
	const char *folder; /* an absolute path */
	long at;            /* the how-manieth call, from 1; 0: none */
	bool lasts;         /* all that follow fail as well */
	int error;          /* the number of the error it fails with; 0: the program is killed */
};

/* Of all programs that are started from now on; faults_end takes it back. */
void faults_begin(const struct fault_plan *plan);
void faults_end(void);
/* For a program with an environment of its own, struct launch's: the same, ended by NULL. */
const char *const *faults_environment(void);
/* How many such calls the program made that ended last; 0 where it was killed. */
long faults_count(void);

/* False in a build with sanitizers, whose memory is their own: no call fails there, so there
 * is nothing to test. */
bool faults_work(void);

#endif
