#include "screen/terminal.h"
#include "base/memory.h"
#include "base/temporary.h"
#include "screen/colour.h"
#include "screen/curses.h"
#include "screen/guard.h"
#include "screen/sender.h"
#include "screen/signals.h"

#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

static const char paste_on[] = "\033[?2004h", paste_off[] = "\033[?2004l";
/* Presses, drags, and reports without bounds; terminals leave out what they do not know. */
static const char mouse_on[] = "\033[?1000h\033[?1002h\033[?1006h";
static const char mouse_off[] = "\033[?1006l\033[?1002l\033[?1000l";

static void send(const char *bytes)
{
	/* A terminal that takes no bytes is found to be gone where keys are read. */
	if (write(STDOUT_FILENO, bytes, strlen(bytes)) < 0)
		return;
}

const char *terminal_capability(const char *name)
{
	const char *found = tigetstr(name);

	return found == (const char *)-1 ? NULL : found;
}

/* Without the pauses that it may ask for, in $<...>. */
static void add_capability(struct text *bytes, const char *name)
{
	const char *at = terminal_capability(name);

	while (at && *at) {
		const char *pause = strstr(at, "$<"), *end = pause ? strchr(pause, '>') : NULL;

		if (!end) {
			text_add(bytes, at);
			return;
		}
		text_add_bytes(bytes, at, (size_t)(pause - at));
		at = end + 1;
	}
}

static void send_capability(const char *name)
{
	struct text bytes = TEXT_EMPTY;

	add_capability(&bytes, name);
	send(bytes.bytes);
	text_fini(&bytes);
}

static void exhausted(void)
{
	temporary_abandon();
	guard_give_back();
	guard_say("\r\nparterre: out of memory. The next start offers what could be kept.\r\n");
}

/* Where it has no memory curses may end the program by itself. */
static void ended_by_curses(void)
{
	if (!guard_is_held())
		return;
	guard_give_back();
	guard_say("parterre: out of memory\r\n");
	_Exit(2);
}

/* What is written when there is no time for curses: pasting, mouse, attributes, keypad, cursor, the
 * other screen. */
static void guard_set(void)
{
	static const char *const names[] = { "sgr0", "rmkx", "cnorm", "rmcup" };
	struct text bytes = TEXT_EMPTY;

	text_add(&bytes, paste_off);
	text_add(&bytes, mouse_off);
	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		add_capability(&bytes, names[i]);
	guard_bytes(bytes.bytes, bytes.length);
	text_fini(&bytes);
}

/* Asked before curses starts: it starts on anything that has a name, and prints rubbish there. */
static bool is_kind_fit(void)
{
	int error;
	bool is_fit;

	if (setupterm(NULL, STDOUT_FILENO, &error) != OK)
		return false;
	is_fit = terminal_capability("cup") && terminal_capability("clear");
	del_curterm(set_curterm(NULL));
	return is_fit;
}

static void say_kind(struct text *message)
{
	const char *term = getenv("TERM");

	if (term && *term)
		text_print(message,
			"the terminal type \"%s\" is unknown here, or too simple for drawing",
			term);
	else
		text_add(message, "TERM does not say what type the terminal is");
	text_add(message, ". This works nearly everywhere: TERM=xterm-256color parterre FILE");
}

/* Takes the terminal, with all of curses' own modes and the whole screen. */
static void take(void)
{
	guard_hold(true);
	sender_forget();
	refresh();
	send_capability("smkx");
	send(paste_on);
}

static void leave(void)
{
	send(paste_off);
	send(mouse_off);
	send_capability("rmkx");
	endwin();
	if (!signals_ending()) /* which else may have been in the midst of this */
		guard_hold(false);
}

static void modes_set(void)
{
	raw();
	noecho();
	nonl();
	typeahead(-1); /* keys are not curses' to read */
	/* Until it has been suspended once, this curses flushes its output at every move of the
	 * cursor: six writes a frame instead of one. */
	endwin();
	take();
}

bool terminal_open(struct text *message)
{
	if (!isatty(STDIN_FILENO) || !isatty(STDOUT_FILENO)) {
		text_add(message, "drawing needs a terminal. "
			"Without one there is the list of quantities: parterre takeoff FILE");
		return false;
	}
	/* These would hide the real size, and every change of it. */
	unsetenv("LINES");
	unsetenv("COLUMNS");
	guard_open();
	sender_open();
	signals_open();
	guard_hold(true);
	memory_on_exhaustion(exhausted); /* curses changes the modes before it is ready */
	atexit(ended_by_curses);
	if (!is_kind_fit() || !newterm(NULL, stdout, stdin)) {
		memory_on_exhaustion(NULL);
		guard_give_back();
		guard_close();
		sender_close();
		say_kind(message);
		return false;
	}
	guard_set();
	colour_open();
	modes_set();
	return true;
}

void terminal_close(void)
{
	if (!signals_ending())
		leave();
	if (signals_ending())
		guard_give_back();
	memory_on_exhaustion(NULL);
	guard_close();
	sender_close();
}

void terminal_fit(void)
{
	struct winsize size;

	if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_row > 0 && size.ws_col > 0)
		resizeterm(size.ws_row, size.ws_col);
}

/* Where the program was to end meanwhile, the terminal is not its own to take. */
static void come_back(void)
{
	if (signals_ending())
		return;
	take();
	terminal_fit();
}

void terminal_pause(void)
{
	leave();
	if (!signals_ending())
		signals_stop();
	come_back();
}

void terminal_continue(void)
{
	leave();
	come_back();
}

/* Another program may have left it writing in other colours. */
void terminal_repaint(void)
{
	send_capability("sgr0");
	clearok(curscr, TRUE);
}

bool terminal_has_moves(void)
{
	static const struct {
		const char *name, *bytes;
	} moves[] = {
		{ "cup", "\033[%i%p1%d;%p2%dH" }, { "hpa", "\033[%i%p1%dG" },
		{ "vpa", "\033[%i%p1%dd" }, { "cuu", "\033[%p1%dA" }, { "cud", "\033[%p1%dB" },
		{ "cuf", "\033[%p1%dC" }, { "cub", "\033[%p1%dD" }, { "cud1", "\n" },
		{ "cub1", "\b" }, { "cr", "\r" },
	};

	for (size_t i = 0; i < sizeof moves / sizeof *moves; i++) {
		const char *bytes = terminal_capability(moves[i].name);

		if (!bytes || strcmp(bytes, moves[i].bytes) != 0)
			return false;
	}
	return true;
}

bool terminal_has_mouse(void)
{
	return terminal_capability("kmous");
}

void terminal_point(bool is_wanted)
{
	send(is_wanted ? mouse_on : mouse_off);
}
