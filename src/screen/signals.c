#include "screen/signals.h"

#include <string.h>
#include <termios.h>
#include <unistd.h>

enum { GUARD_MOST = 256 };

/* What handlers write, and what a crash needs: there is no other way to them. */
static volatile sig_atomic_t ending, stop_asked;
static struct {
	char bytes[GUARD_MOST];
	size_t length;
	struct termios modes;
	bool has_modes;
} guard;

static const int crashes[] = { SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL };
static const int endings[] = { SIGHUP, SIGTERM };

static void note_ending(int signal)
{
	ending = signal;
}

static void note_stop(int signal)
{
	(void)signal;
	stop_asked = 1;
}

static void crash(int signal)
{
	static const char words[] =
		"\r\nparterre crashed. Look for a rescue file at the next start.\r\n";

	signals_restore();
	if (write(STDERR_FILENO, words, sizeof words - 1) < 0)
		_exit(2);
	raise(signal); /* of which it dies: the handler is reset */
}

static void handle(int signal, void (*handler)(int), int flags)
{
	struct sigaction act = { .sa_handler = handler, .sa_flags = flags };

	sigemptyset(&act.sa_mask);
	sigaction(signal, &act, NULL);
}

/* A signal that was ignored when the program started stays ignored. */
static void handle_unless_ignored(int signal, void (*handler)(int))
{
	struct sigaction was;

	if (sigaction(signal, NULL, &was) == 0 && was.sa_handler != SIG_IGN)
		handle(signal, handler, 0);
}

static void block(int how)
{
	sigset_t set;

	sigemptyset(&set);
	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++)
		sigaddset(&set, endings[i]);
	sigaddset(&set, SIGTSTP);
	sigaddset(&set, SIGWINCH);
	sigprocmask(how, &set, NULL);
}

void signals_open(void)
{
	block(SIG_BLOCK);
	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++)
		handle_unless_ignored(endings[i], note_ending);
	handle_unless_ignored(SIGTSTP, note_stop);
	handle(SIGINT, SIG_IGN, 0);
	handle(SIGPIPE, SIG_IGN, 0);
}

void signals_close(void)
{
	guard.length = 0;
	guard.has_modes = false;
	for (size_t i = 0; i < sizeof crashes / sizeof *crashes; i++)
		handle(crashes[i], SIG_DFL, 0);
	handle(SIGTSTP, SIG_DFL, 0);
	block(SIG_UNBLOCK);
}

int signals_ending(void)
{
	return ending;
}

bool signals_take_stop(void)
{
	bool was_asked = stop_asked;

	stop_asked = 0;
	return was_asked;
}

void signals_wait_mask(sigset_t *mask)
{
	sigprocmask(SIG_SETMASK, NULL, mask);
	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++)
		sigdelset(mask, endings[i]);
	sigdelset(mask, SIGTSTP);
	sigdelset(mask, SIGWINCH);
}

void signals_stop(void)
{
	sigset_t stop;

	sigemptyset(&stop);
	sigaddset(&stop, SIGTSTP);
	handle(SIGTSTP, SIG_DFL, 0);
	kill(0, SIGTSTP);
	sigprocmask(SIG_UNBLOCK, &stop, NULL); /* stops here */
	sigprocmask(SIG_BLOCK, &stop, NULL);
	handle(SIGTSTP, note_stop, 0);
	stop_asked = 0;
}

void signals_die(int signal)
{
	handle(signal, SIG_DFL, 0);
	block(SIG_UNBLOCK);
	raise(signal);
}

void signals_guard(const char *bytes, size_t length)
{
	guard.length = length < GUARD_MOST ? length : GUARD_MOST;
	memcpy(guard.bytes, bytes, guard.length);
	guard.has_modes = tcgetattr(STDIN_FILENO, &guard.modes) == 0;
	for (size_t i = 0; i < sizeof crashes / sizeof *crashes; i++)
		handle(crashes[i], crash, (int)SA_RESETHAND);
}

void signals_restore(void)
{
	if (guard.length && write(STDOUT_FILENO, guard.bytes, guard.length) < 0)
		return;
	if (guard.has_modes)
		tcsetattr(STDIN_FILENO, TCSANOW, &guard.modes);
}
