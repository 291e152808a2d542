#include "support/faults.h"

#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>

static char count_path[4096];

void faults_begin(const struct fault_plan *plan)
{
	char *shim = realpath(BUILD_FOLDER "/tests/faults/faults.so", NULL), number[32];

	snprintf(count_path, sizeof count_path, "%s.%ld.count", shim, (long)getpid());
	unlink(count_path);
	setenv("FAULT_KIND", plan->is_memory ? "memory" : "file", 1);
	setenv("FAULT_FOLDER", plan->folder ? plan->folder : "", 1);
	snprintf(number, sizeof number, "%ld", plan->at);
	setenv("FAULT_AT", number, 1);
	snprintf(number, sizeof number, "%d", plan->error);
	setenv("FAULT_ERROR", number, 1);
	setenv("FAULT_LASTS", plan->lasts ? "1" : "0", 1);
	setenv("FAULT_COUNT", count_path, 1);
	if (faults_work())
		setenv("LD_PRELOAD", shim, 1);
	free(shim);
}

void faults_end(void)
{
	unsetenv("LD_PRELOAD");
	unlink(count_path);
}

const char *const *faults_environment(void)
{
	static const char *const names[] = { "FAULT_KIND", "FAULT_FOLDER", "FAULT_AT",
		"FAULT_ERROR", "FAULT_LASTS", "FAULT_COUNT", "LD_PRELOAD" };
	enum { NAMES = sizeof names / sizeof *names };
	static char lines[NAMES][4200];
	static const char *environment[NAMES + 1];

	for (int i = 0; i < NAMES; i++) {
		snprintf(lines[i], sizeof lines[i], "%s=%s", names[i], getenv(names[i]));
		environment[i] = lines[i];
	}
	return environment;
}

long faults_count(void)
{
	FILE *file = fopen(count_path, "r");
	long count = 0;

	if (file) {
		if (fscanf(file, "%ld", &count) != 1)
			count = 0;
		fclose(file);
	}
	return count;
}

bool faults_work(void)
{
#ifdef __SANITIZE_ADDRESS__
	return false;
#else
	return getenv("CK_FORK") == NULL; /* under valgrind, which has a memory of its own too */
#endif
}
