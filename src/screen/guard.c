#include "screen/guard.h"

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

enum { BYTES_MOST = 256, WAIT_MS = 30, WAITS_MOST = 10 };

/* A handler of signals has no other way to them. */
static struct {
	char bytes[BYTES_MOST];
	size_t length;
	struct termios modes;
	bool has_modes;
	int line; /* standard output, whatever becomes of that */
	volatile sig_atomic_t is_held;
} guard;

void guard_open(void)
{
	guard.length = 0;
	guard.has_modes = tcgetattr(STDIN_FILENO, &guard.modes) == 0;
	guard.line = fcntl(STDOUT_FILENO, F_DUPFD_CLOEXEC, STDERR_FILENO + 1);
}

void guard_close(void)
{
	guard.is_held = 0;
	if (guard.line >= 0)
		close(guard.line);
}

void guard_bytes(const char *bytes, size_t length)
{
	guard.length = length < BYTES_MOST ? length : BYTES_MOST;
	memcpy(guard.bytes, bytes, guard.length);
}

void guard_hold(bool is_held)
{
	guard.is_held = is_held;
}

bool guard_is_held(void)
{
	return guard.is_held;
}

/* Not waiting is a setting of the line, which others share: it has it for this moment only. */
static void put(int fd, const char *bytes, size_t length)
{
	struct pollfd line = { fd, POLLOUT, 0 };
	int flags = fcntl(fd, F_GETFL), waits = 0;

	if (flags < 0 || fcntl(fd, F_SETFL, flags | O_NONBLOCK) < 0)
		return;
	while (length && waits < WAITS_MOST) {
		ssize_t count = write(fd, bytes, length);

		if (count < 0 && errno != EAGAIN && errno != EINTR)
			break;
		if (count > 0) {
			bytes += count;
			length -= (size_t)count;
		} else {
			poll(&line, 1, WAIT_MS);
			waits++;
		}
	}
	fcntl(fd, F_SETFL, flags);
}

/* The shell has taken the terminal: its modes are the shell's own by now. */
static bool is_behind(void)
{
	pid_t front = tcgetpgrp(STDIN_FILENO);

	return front >= 0 && front != getpgrp();
}

void guard_give_back(void)
{
	sigset_t stop, before;

	if (!guard.is_held)
		return;
	guard.is_held = 0;
	/* A program that is not in front would be stopped instead. */
	sigemptyset(&stop);
	sigaddset(&stop, SIGTTOU);
	sigprocmask(SIG_BLOCK, &stop, &before);
	put(guard.line, guard.bytes, guard.length);
	if (guard.has_modes && !is_behind())
		tcsetattr(STDIN_FILENO, TCSANOW, &guard.modes);
	sigprocmask(SIG_SETMASK, &before, NULL);
}

bool guard_can_say(void)
{
	struct pollfd line = { STDERR_FILENO, POLLOUT, 0 };

	return poll(&line, 1, WAIT_MS * WAITS_MOST) > 0;
}

void guard_say(const char *words)
{
	put(STDERR_FILENO, words, strlen(words));
}
