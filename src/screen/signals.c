#include "screen/signals.h"
#include "screen/guard.h"

#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <time.h>
#include <unistd.h>

enum { STACK_BYTES = 64 * 1024 };

/* What handlers write, and what they need: there is no other way to them. */
static volatile sig_atomic_t ending, stop_asked, continued, resized;
static volatile sig_atomic_t nowhere = -1;

/* A crash may be a full stack. */
static char crash_stack[STACK_BYTES];

static const int crashes[] = { SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL };
/* Whatever else ends a process, but SIGKILL, and the real-time signals, which have no names.
 * Interrupts come as keys; from outside they are let pass, for Ctrl-C never ends the session. A
 * pipe without reader and a file too large are errors of writing. */
static const int endings[] = { SIGHUP, SIGTERM, SIGQUIT, SIGUSR1, SIGUSR2, SIGALRM, SIGVTALRM,
	SIGPROF, SIGIO, SIGPWR, SIGSTKFLT, SIGXCPU, SIGSYS, SIGTRAP };

static const struct sigaction let_pass = { .sa_handler = SIG_IGN };

static void note_ending(int signal)
{
	int cause = errno;

	if (!ending)
		ending = signal;
	if (nowhere >= 0)
		dup2(nowhere, STDOUT_FILENO);
	/* A program that is not in front would be stopped by its own end. */
	(void)sigaction(SIGTTIN, &let_pass, NULL);
	(void)sigaction(SIGTTOU, &let_pass, NULL);
	errno = cause;
}

static void note(int signal)
{
	if (signal == SIGTSTP)
		stop_asked = 1;
	else if (signal == SIGCONT)
		continued = 1;
	else
		resized = 1;
}

static void crash(int signal)
{
	guard_give_back();
	guard_say("\r\nparterre crashed. The next start offers what could be kept.\r\n");
	raise(signal); /* of which it dies: the handler is reset */
}

static void handle(int signal, void (*handler)(int), int flags)
{
	struct sigaction act = { .sa_handler = handler, .sa_flags = flags };

	sigfillset(&act.sa_mask);
	sigaction(signal, &act, NULL);
}

/* A signal that was ignored when the program started stays ignored. Calls that were under way go on
 * afterwards; a write to the line then goes nowhere, and waiting ends all the same. */
static void handle_unless_ignored(int signal, void (*handler)(int))
{
	struct sigaction was;

	if (sigaction(signal, NULL, &was) == 0 && was.sa_handler != SIG_IGN)
		handle(signal, handler, SA_RESTART);
}

static void handle_crashes(void)
{
	stack_t stack = { .ss_sp = crash_stack, .ss_size = sizeof crash_stack };

	sigaltstack(&stack, NULL);
	for (size_t i = 0; i < sizeof crashes / sizeof *crashes; i++)
		handle(crashes[i], crash, (int)SA_RESETHAND | SA_ONSTACK);
}

void signals_open(void)
{
	nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
	for (size_t i = 0; i < sizeof endings / sizeof *endings; i++)
		handle_unless_ignored(endings[i], note_ending);
	for (int signal = SIGRTMIN; signal <= SIGRTMAX; signal++)
		handle_unless_ignored(signal, note_ending);
	handle_unless_ignored(SIGTSTP, note);
	handle(SIGCONT, note, SA_RESTART);
	handle(SIGWINCH, note, SA_RESTART);
	handle(SIGINT, SIG_IGN, 0);
	handle(SIGPIPE, SIG_IGN, 0);
	handle_crashes();
}

int signals_ending(void)
{
	return ending;
}

void signals_hang_up(void)
{
	note_ending(SIGHUP);
}

static bool take(volatile sig_atomic_t *noted)
{
	bool was_noted = *noted;

	*noted = 0;
	return was_noted;
}

bool signals_take_stop(void)
{
	return take(&stop_asked);
}

bool signals_take_continue(void)
{
	return take(&continued);
}

bool signals_take_resize(void)
{
	return take(&resized);
}

bool signals_are_waiting(void)
{
	return ending || stop_asked || continued || resized;
}

int signals_wait(struct pollfd *at, int ms)
{
	struct timespec most = { ms / 1000, ms % 1000 * 1000000L };
	sigset_t all, before;
	int result = -1;

	/* Kept out from the look at the notes until the wait lets them in again. */
	sigfillset(&all);
	sigprocmask(SIG_BLOCK, &all, &before);
	if (!signals_are_waiting())
		result = ppoll(at, 1, ms < 0 ? NULL : &most, &before);
	sigprocmask(SIG_SETMASK, &before, NULL);
	return result;
}

void signals_hold(bool is_held)
{
	static sigset_t before;
	sigset_t held;

	sigfillset(&held);
	for (size_t i = 0; i < sizeof crashes / sizeof *crashes; i++)
		sigdelset(&held, crashes[i]);
	if (is_held)
		sigprocmask(SIG_BLOCK, &held, &before);
	else
		sigprocmask(SIG_SETMASK, &before, NULL);
}

void signals_stop(void)
{
	handle(SIGTSTP, SIG_DFL, 0);
	kill(0, SIGTSTP); /* stops here */
	handle(SIGTSTP, note, SA_RESTART);
	stop_asked = 0;
	continued = 0;
}

void signals_die(int signal)
{
	sigset_t dying;

	handle(signal, SIG_DFL, 0);
	sigemptyset(&dying);
	sigaddset(&dying, signal);
	sigprocmask(SIG_UNBLOCK, &dying, NULL);
	raise(signal);
}
