/* What a file descriptor takes in part. */
#include "base/fd_sink.h"

#include "support/runner.h"

#include <fcntl.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <sys/wait.h>
#include <unistd.h>

static int signals;

static void noted(int signal)
{
	(void)signal;
	signals++;
}

/* When the pipe is full its writer sleeps, with only a part taken: a signal then ends its call.
 * Reads all of it afterwards. */
static bool disturb_and_read(int pipe, int room, pid_t writer, const char *expected, size_t length)
{
	char *found = malloc(length + 1);
	size_t count = 0;
	ssize_t got;
	int held = 0;
	bool is_same;

	for (int i = 0; i < 10000 && held < room; i++) {
		ioctl(pipe, FIONREAD, &held);
		usleep(1000);
	}
	kill(writer, SIGUSR1);
	usleep(10000);
	while ((got = read(pipe, found + count, length + 1 - count)) > 0)
		count += (size_t)got;
	is_same = held == room && count == length && memcmp(found, expected, length) == 0;
	free(found);
	return is_same;
}

START_TEST(what_is_taken_in_part_goes_on_where_it_stopped)
{
	struct sigaction action = { .sa_handler = noted }; /* calls are not begun anew */
	int ends[2], room, status;
	size_t length;
	char *bytes;
	pid_t reader;

	ck_assert_int_eq(pipe(ends), 0);
	room = fcntl(ends[1], F_GETPIPE_SZ);
	ck_assert_int_gt(room, 0);
	length = 3 * (size_t)room + 1;
	bytes = malloc(length);
	for (size_t i = 0; i < length; i++)
		bytes[i] = (char)(i % 251);
	ck_assert_int_eq(sigaction(SIGUSR1, &action, NULL), 0);
	reader = fork();
	if (reader == 0) {
		close(ends[1]);
		_exit(!disturb_and_read(ends[0], room, getppid(), bytes, length));
	}
	close(ends[0]);
	ck_assert(fd_put(ends[1], bytes, length));
	close(ends[1]);
	ck_assert_int_eq(waitpid(reader, &status, 0), reader);
	ck_assert_int_eq(status, 0);
	ck_assert_int_eq(signals, 1);
	free(bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fd sink");
	TCase *parts = suite_case(suite, "parts");

	tcase_add_test(parts, what_is_taken_in_part_goes_on_where_it_stopped);
	return suite;
}
