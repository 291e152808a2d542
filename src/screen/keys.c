#include "screen/keys.h"
#include "screen/curses.h"
#include "screen/mouse.h"
#include "screen/signals.h"

#include <poll.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* Codes of our own beyond those of curses: the two ends of a paste, the beginnings of a mouse's two
 * kinds of reports. Curses itself would read but one kind, going by the terminal's description, and
 * join quick reports to clicks. */
enum { KEY_PASTE = KEY_MAX + 1, KEY_PASTED, KEY_REPORT_TEXT, KEY_REPORT_BYTES };
enum { SILENCE_MS = 100, PASTE_MOST = 64 * 1024, REPORT_MOST = 24, ESCAPE = 27, NO_BYTE = -1 };

static const struct {
	int code, press;
} known[] = {
	{ KEY_LEFT, PRESS_LEFT }, { KEY_RIGHT, PRESS_RIGHT }, { KEY_UP, PRESS_UP },
	{ KEY_DOWN, PRESS_DOWN }, { KEY_HOME, PRESS_HOME }, { KEY_END, PRESS_END },
	{ KEY_PPAGE, PRESS_PAGE_UP }, { KEY_NPAGE, PRESS_PAGE_DOWN }, { KEY_ENTER, PRESS_ENTER },
	{ KEY_BTAB, PRESS_BACK_TAB }, { KEY_BACKSPACE, PRESS_BACKSPACE }, { KEY_DC, PRESS_DELETE },
	{ KEY_SLEFT, PRESS_VIEW_LEFT }, { KEY_SRIGHT, PRESS_VIEW_RIGHT },
	{ KEY_SR, PRESS_VIEW_UP }, { KEY_SF, PRESS_VIEW_DOWN },
	{ KEY_RESIZE, PRESS_RESIZE },
	{ '\r', PRESS_ENTER }, { '\n', PRESS_ENTER }, { '\t', PRESS_TAB },
	{ 0x7f, PRESS_BACKSPACE }, { '\b', PRESS_BACKSPACE }, { 'C' & 0x1f, PRESS_ESCAPE },
	{ 'A' & 0x1f, PRESS_LINE_START }, { 'E' & 0x1f, PRESS_LINE_END },
	{ 'U' & 0x1f, PRESS_ERASE_LINE }, { 'W' & 0x1f, PRESS_ERASE_WORD },
	{ 'K' & 0x1f, PRESS_ERASE_REST },
	{ 'Z' & 0x1f, PRESS_PAUSE }, { 'L' & 0x1f, PRESS_REPAINT },
};

/* After a stop, or on some terminals, the keypad may be in its other mode. */
static const struct {
	const char *bytes;
	int code;
} more[] = {
	{ "\033[A", KEY_UP }, { "\033[B", KEY_DOWN },
	{ "\033[C", KEY_RIGHT }, { "\033[D", KEY_LEFT },
	{ "\033OA", KEY_UP }, { "\033OB", KEY_DOWN },
	{ "\033OC", KEY_RIGHT }, { "\033OD", KEY_LEFT },
	{ "\033[H", KEY_HOME }, { "\033[F", KEY_END },
	{ "\033OH", KEY_HOME }, { "\033OF", KEY_END },
	{ "\033[1~", KEY_HOME }, { "\033[4~", KEY_END }, { "\033[3~", KEY_DC },
	{ "\033[5~", KEY_PPAGE }, { "\033[6~", KEY_NPAGE }, { "\033[Z", KEY_BTAB },
	{ "\033[1;2A", KEY_SR }, { "\033[1;2B", KEY_SF }, { "\033[1;2C", KEY_SRIGHT },
	{ "\033[1;2D", KEY_SLEFT }, { "\033[a", KEY_SR }, { "\033[b", KEY_SF },
	{ "\033[c", KEY_SRIGHT }, { "\033[d", KEY_SLEFT },
	{ "\033[200~", KEY_PASTE }, { "\033[201~", KEY_PASTED },
	{ "\033[<", KEY_REPORT_TEXT }, { "\033[M", KEY_REPORT_BYTES },
};

void keys_open(struct keys *keys)
{
	WINDOW *window = newpad(1, 1); /* reading through it draws nothing by the way */

	*keys = (struct keys){ .window = window, .pasted = TEXT_EMPTY };
	keypad(window, TRUE);
	nodelay(window, TRUE);
	for (size_t i = 0; i < sizeof more / sizeof *more; i++)
		define_key(more[i].bytes, more[i].code);
}

void keys_close(struct keys *keys)
{
	delwin(keys->window);
	text_fini(&keys->pasted);
}

/* Reads up to the end of the paste, or to silence: the end may have been lost. */
static int paste_read(struct keys *keys)
{
	int code;

	text_clear(&keys->pasted);
	wtimeout(keys->window, SILENCE_MS);
	while ((code = wgetch(keys->window)) != ERR && code != KEY_PASTED) {
		char byte = (char)code;

		if (code < KEY_MIN && keys->pasted.length < PASTE_MOST)
			text_add_bytes(&keys->pasted, &byte, 1);
	}
	nodelay(keys->window, TRUE);
	return PRESS_PASTE;
}

/* Esc alone, or with the rest of a sequence that no key is known by. */
static int escape_read(struct keys *keys)
{
	int code = wgetch(keys->window);

	if (code != '[' && code != 'O') {
		if (code != ERR)
			ungetch(code);
		return PRESS_ESCAPE;
	}
	do
		code = wgetch(keys->window);
	while (code >= ' ' && code < '@');
	return PRESS_OTHER;
}

/* The rest of a report, which may come in pieces. */
static int report_read(struct keys *keys, bool is_text)
{
	unsigned char bytes[REPORT_MOST] = { 0 };
	int length = 0, code = 0;
	bool is_read;

	wtimeout(keys->window, SILENCE_MS);
	while (length < (is_text ? REPORT_MOST - 1 : MOUSE_BYTES) &&
	       !(is_text && (code == 'M' || code == 'm'))) {
		code = wgetch(keys->window);
		if (code == ERR || code >= KEY_MIN)
			break;
		bytes[length++] = (unsigned char)code;
	}
	nodelay(keys->window, TRUE);
	is_read = is_text ? mouse_read_text((const char *)bytes, &keys->point) :
		mouse_read_bytes(bytes, &keys->point);
	return is_read ? PRESS_POINT : PRESS_NOTHING;
}

/* A character that may come byte by byte. */
static int character_read(struct keys *keys, int code)
{
	char byte = (char)code;
	wchar_t character;
	size_t taken = mbrtowc(&character, &byte, 1, &keys->state);

	if (taken == (size_t)-2)
		return PRESS_NOTHING;
	if (taken == (size_t)-1) {
		memset(&keys->state, 0, sizeof keys->state);
		return PRESS_OTHER;
	}
	return character >= ' ' ? (int)character : PRESS_OTHER;
}

/* One key without waiting; NO_BYTE where nothing has come, PRESS_NOTHING for part of a character
 * and for reports that mean nothing. */
static int key_read(struct keys *keys)
{
	int code = wgetch(keys->window);

	if (code == ERR)
		return NO_BYTE;
	for (size_t i = 0; i < sizeof known / sizeof *known; i++)
		if (known[i].code == code)
			return known[i].press;
	if (code == KEY_PASTE)
		return paste_read(keys);
	if (code == KEY_REPORT_TEXT || code == KEY_REPORT_BYTES)
		return report_read(keys, code == KEY_REPORT_TEXT);
	if (code == ESCAPE)
		return escape_read(keys);
	return code < KEY_MIN ? character_read(keys, code) : PRESS_OTHER;
}

/* Waits for bytes or a signal. */
static bool wait_for_bytes(void)
{
	struct pollfd line = { STDIN_FILENO, POLLIN, 0 };
	sigset_t mask;

	signals_wait_mask(&mask);
	return ppoll(&line, 1, NULL, &mask) > 0;
}

int keys_next(struct keys *keys)
{
	int key = keys->held;
	bool has_bytes = false;

	keys->held = PRESS_NOTHING;
	while (key == PRESS_NOTHING) {
		if (signals_ending())
			return PRESS_OVER;
		if (signals_take_stop())
			return PRESS_PAUSE;
		key = key_read(keys);
		if (key != NO_BYTE)
			continue;
		/* Bytes were announced and none came: the terminal is gone. */
		if (has_bytes)
			return PRESS_OVER;
		has_bytes = wait_for_bytes();
		key = PRESS_NOTHING;
	}
	return key;
}

bool keys_are_waiting(struct keys *keys)
{
	int key;

	if (keys->held != PRESS_NOTHING)
		return true;
	key = key_read(keys);
	if (key != NO_BYTE)
		keys->held = key;
	return keys->held != PRESS_NOTHING;
}
