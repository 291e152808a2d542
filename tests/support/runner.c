#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

TCase *suite_case(Suite *suite, const char *name)
{
	TCase *made = tcase_create(name);

	tcase_set_timeout(made, 30);
	suite_add_tcase(suite, made);
	return made;
}

int runner_count(int few, int many)
{
	return getenv("FULL") ? many : few;
}

/* What the code under test keeps among its user's state is not to be in this user's, nor where
 * another test program looks that runs at the same time. The folder, that need not be there; to be
 * freed. */
static char *state_choose(void)
{
	char *folder = realpath(BUILD_FOLDER, NULL), state[4200];

	snprintf(state, sizeof state, "%s/scratch/state-%d", folder ? folder : "/nowhere",
		(int)getpid());
	free(folder);
	setenv("XDG_STATE_HOME", state, 1);
	return strdup(state);
}

int main(void)
{
	char *state = state_choose();
	SRunner *runner = srunner_create(test_suite());

	srunner_run_all(runner, CK_NORMAL);
	int ran = srunner_ntests_run(runner);
	int failed = srunner_ntests_failed(runner);
	srunner_free(runner);
	if (failed == 0)
		scratch_remove(state);
	else
		free(state);

	if (ran == 0)
		fputs("no test ran\n", stderr);
	return ran > 0 && failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
