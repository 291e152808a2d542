#include "screen/terminal.h"
#include "base/memory.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/signals.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { ESCAPE_MS = 100 }; /* over a slow line a key's bytes come in pieces */

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

/* A login from elsewhere may name a locale that is not installed here; of it only the encoding
 * matters. */
static void locale_choose(void)
{
	static const char *const names[] = { "LC_ALL", "LC_CTYPE", "LANG" };
	const char *wanted = NULL;

	if (setlocale(LC_CTYPE, ""))
		return;
	for (size_t i = 0; i < sizeof names / sizeof *names && (!wanted || !*wanted); i++)
		wanted = getenv(names[i]);
	if (wanted && (strcasestr(wanted, "utf-8") || strcasestr(wanted, "utf8")))
		setlocale(LC_CTYPE, "C.UTF-8");
}

static void exhausted(void)
{
	static const char words[] =
		"\r\nparterre: out of memory. Look for a rescue file at the next start.\r\n";

	signals_restore();
	if (write(STDERR_FILENO, words, sizeof words - 1) < 0)
		_exit(2);
}

/* NULL: the terminal does not have it. */
static const char *capability(const char *name)
{
	const char *found = tigetstr(name);

	return found == (const char *)-1 ? NULL : found;
}

/* What a crash must send: pasting, mouse, attributes, keypad, cursor, the other screen. */
static void guard_set(void)
{
	static const char *const names[] = { "sgr0", "rmkx", "cnorm", "rmcup" };
	struct text bytes = TEXT_EMPTY;

	text_add(&bytes, paste_off);
	text_add(&bytes, mouse_off);
	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (capability(names[i]))
			text_add(&bytes, capability(names[i]));
	signals_guard(bytes.bytes, bytes.length);
	text_fini(&bytes);
	memory_on_exhaustion(exhausted);
}

/* Asked before curses starts: it starts on anything that has a name, and prints rubbish there. */
static bool is_kind_fit(void)
{
	int error;
	bool is_fit;

	if (setupterm(NULL, STDOUT_FILENO, &error) != OK)
		return false;
	is_fit = capability("cup") && capability("clear");
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

static void modes_set(void)
{
	raw();
	noecho();
	nonl();
	if (!getenv("ESCDELAY"))
		set_escdelay(ESCAPE_MS);
	/* Until it has been suspended once, this curses flushes its output at every move of the
	 * cursor: six writes a frame instead of one. */
	endwin();
	refresh();
	send(paste_on);
}

bool terminal_open(struct text *message)
{
	if (!isatty(STDIN_FILENO) || !isatty(STDOUT_FILENO)) {
		text_add(message, "drawing needs a terminal. "
			"Without one there is the list of quantities: parterre takeoff FILE");
		return false;
	}
	locale_choose();
	/* These would hide the real size, and every change of it. */
	unsetenv("LINES");
	unsetenv("COLUMNS");
	if (!is_kind_fit()) {
		say_kind(message);
		return false;
	}
	signals_open();
	if (!newterm(NULL, stdout, stdin)) {
		signals_close();
		say_kind(message);
		return false;
	}
	guard_set();
	draw_looks_open();
	modes_set();
	return true;
}

void terminal_close(bool is_gone)
{
	SCREEN *screen = set_term(NULL);

	set_term(screen);
	if (!is_gone) {
		send(paste_off);
		send(mouse_off);
		endwin();
	}
	delscreen(screen);
	memory_on_exhaustion(NULL);
	signals_close();
}

void terminal_pause(void)
{
	send(paste_off);
	send(mouse_off);
	endwin();
	signals_stop();
	refresh();
	send(paste_on);
}

void terminal_repaint(void)
{
	clearok(curscr, TRUE);
}

bool terminal_has_mouse(void)
{
	return capability("kmous");
}

void terminal_point(bool is_wanted)
{
	send(is_wanted ? mouse_on : mouse_off);
}
