#include "support/program.h"

#include <check.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

enum { ARGUMENTS_MOST = 16 };

static void start(const char *const *arguments, FILE *input, FILE *output, FILE *errors)
{
	char *argv[ARGUMENTS_MOST] = { (char[]){ BUILD_FOLDER "/parterre" } };

	for (int i = 0; i < ARGUMENTS_MOST - 2 && arguments[i]; i++)
		argv[i + 1] = strdup(arguments[i]);
	dup2(fileno(input), STDIN_FILENO);
	dup2(fileno(output), STDOUT_FILENO);
	dup2(fileno(errors), STDERR_FILENO);
	execv(argv[0], argv);
	perror(argv[0]);
	_exit(127);
}

static void collect(FILE *file, struct text *out)
{
	char buffer[4096];
	size_t length;

	text_clear(out);
	rewind(file);
	while ((length = fread(buffer, 1, sizeof buffer, file)) > 0)
		text_add_bytes(out, buffer, length);
	fclose(file);
}

struct program_result program_run(const char *const *arguments, const char *input)
{
	struct program_result result = { 0, TEXT_EMPTY, TEXT_EMPTY };
	FILE *given = input ? tmpfile() : fopen("/dev/null", "r");
	FILE *output = tmpfile(), *errors = tmpfile();
	int status = 0;
	pid_t child;

	if (input) {
		fputs(input, given);
		fflush(given);
		rewind(given);
	}
	child = fork();
	if (child == 0)
		start(arguments, given, output, errors);
	waitpid(child, &status, 0);
	result.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
	fclose(given);
	collect(output, &result.output);
	collect(errors, &result.errors);
	return result;
}

void program_free(struct program_result *result)
{
	text_fini(&result->output);
	text_fini(&result->errors);
}

void program_check(const char *const *arguments, const char *input, int status,
	const char *output, const char *errors)
{
	struct program_result r = program_run(arguments, input);

	ck_assert_msg(r.status == status, "status %d, said: %s", r.status, r.errors.bytes);
	ck_assert_msg(strstr(r.output.bytes, output) != NULL, "printed: %.300s", r.output.bytes);
	ck_assert_msg(strstr(r.errors.bytes, errors) != NULL, "said: %s", r.errors.bytes);
	if (status == 2)
		ck_assert_str_eq(r.output.bytes, "");
	else
		ck_assert_str_eq(r.errors.bytes, "");
	program_free(&r);
}
