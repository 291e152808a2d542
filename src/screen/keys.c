#include "screen/keys.h"
#include "base/clock.h"
#include "screen/signals.h"
#include "screen/terminal.h"

#include <errno.h>
#include <poll.h>
#include <stdlib.h>
#include <unistd.h>

/* What the terminal's description says of keys; the two that curses' authors took for the view
 * scrolled up and down are Shift with an arrow. */
static const struct {
	const char *capability;
	int press;
} described[] = {
	{ "kcub1", PRESS_LEFT }, { "kcuf1", PRESS_RIGHT }, { "kcuu1", PRESS_UP },
	{ "kcud1", PRESS_DOWN }, { "khome", PRESS_HOME }, { "kend", PRESS_END },
	{ "kpp", PRESS_PAGE_UP }, { "knp", PRESS_PAGE_DOWN }, { "kent", PRESS_ENTER },
	{ "kcbt", PRESS_BACK_TAB }, { "kbs", PRESS_BACKSPACE }, { "kdch1", PRESS_DELETE },
	{ "kLFT", PRESS_VIEW_LEFT }, { "kRIT", PRESS_VIEW_RIGHT },
	{ "kri", PRESS_VIEW_UP }, { "kind", PRESS_VIEW_DOWN },
	{ "kLFT5", PRESS_ON_LEFT }, { "kRIT5", PRESS_ON_RIGHT },
	{ "kUP5", PRESS_ON_UP }, { "kDN5", PRESS_ON_DOWN },
	{ "kf1", PRESS_F1 }, { "kf2", PRESS_F2 }, { "kf3", PRESS_F3 }, { "kf4", PRESS_F4 },
	{ "kf5", PRESS_F5 }, { "kf6", PRESS_F6 }, { "kf7", PRESS_F7 }, { "kf8", PRESS_F8 },
	{ "kf9", PRESS_F9 },
};

void keys_open(struct keys *keys)
{
	const char *escape_ms = getenv("ESCDELAY");

	*keys = (struct keys){ .pasted = TEXT_EMPTY };
	decode_open(&keys->decoder, escape_ms ? (int)strtol(escape_ms, NULL, 10) : 0);
	for (size_t i = 0; i < sizeof described / sizeof *described; i++)
		decode_learn(&keys->decoder, terminal_capability(described[i].capability),
			described[i].press);
}

void keys_close(struct keys *keys)
{
	decode_close(&keys->decoder);
	text_fini(&keys->pasted);
}

/* Reads what has come. False where the line is gone: its end, not a wait that came to nothing. */
static bool line_read(struct keys *keys)
{
	struct pollfd line = { .fd = STDIN_FILENO, .events = POLLIN };
	struct decoder *d = &keys->decoder;
	size_t room;

	for (unsigned char *to = decode_room(d, &room); room; to = decode_room(d, &room)) {
		ssize_t count;

		if (poll(&line, 1, 0) <= 0)
			return true;
		count = read(STDIN_FILENO, to, room);
		if (count <= 0)
			return count < 0 && (errno == EINTR || errno == EAGAIN);
		decode_add(d, (size_t)count);
		keys->since_ms = clock_ms();
	}
	return true;
}

/* How long to wait still before decode_silence is called; below 0: without end. */
static int patience_left(const struct keys *keys)
{
	int patience = decode_patience(&keys->decoder);
	int64_t left = patience - (clock_ms() - keys->since_ms);

	return patience < 0 ? -1 : left > 0 ? (int)left : 0;
}

/* The next key of what was read, a point with it; the silence since then may be one. */
static int key_take(struct keys *keys)
{
	int key;

	if (keys->is_asking)
		decode_burst(&keys->decoder);
	key = decode_next(&keys->decoder);
	if (key == PRESS_NOTHING && patience_left(keys) == 0) {
		key = decode_silence(&keys->decoder);
		keys->since_ms = clock_ms();
	}
	keys->point = keys->decoder.point;
	return key;
}

int keys_idle(const struct keys *keys)
{
	return keys->idle && decode_is_between(&keys->decoder) ? keys->idle(keys->context) : -1;
}

/* How long to wait at most: until decode_silence is to be called, or there is something else to
 * do. */
static int wait_most(const struct keys *keys)
{
	int again = keys_idle(keys), left;

	if (keys->held != PRESS_NOTHING)
		return 0; /* it has looked ahead */
	left = patience_left(keys);
	return left >= 0 && (again < 0 || left < again) ? left : again;
}

/* Waits for bytes, which are read. */
static void wait_for_bytes(struct keys *keys)
{
	struct pollfd line = { .fd = STDIN_FILENO, .events = POLLIN };

	if (signals_wait(&line, wait_most(keys)) > 0 && !line_read(keys))
		signals_hang_up();
}

/* What signals asked for, at once; another size only after the keys that were pressed before. */
static int key_of_signals(void)
{
	if (signals_ending())
		return PRESS_OVER;
	if (signals_take_stop())
		return PRESS_PAUSE;
	return signals_take_continue() ? PRESS_CONTINUE : PRESS_NOTHING;
}

static int key_of_resize(void)
{
	if (!signals_take_resize())
		return PRESS_NOTHING;
	terminal_fit();
	return PRESS_RESIZE;
}

int keys_look(const struct keys *keys)
{
	struct pollfd line = { .fd = STDIN_FILENO, .events = POLLIN };

	if (signals_are_waiting())
		return -1;
	if (keys->held != PRESS_NOTHING || patience_left(keys) == 0)
		return 1;
	if (poll(&line, 1, 0) <= 0)
		return 0;
	return (line.revents & (POLLHUP | POLLERR)) ? -1 : 1;
}

bool keys_are_waiting(struct keys *keys)
{
	if (keys->held != PRESS_NOTHING)
		return true;
	/* That the line is gone is found by the wait. */
	if (!decode_has_many(&keys->decoder) && !signals_ending())
		(void)line_read(keys);
	keys->held = key_take(keys);
	return keys->held != PRESS_NOTHING;
}

static int key_held(struct keys *keys)
{
	int key = keys_are_waiting(keys) ? keys->held : PRESS_NOTHING;

	keys->held = PRESS_NOTHING;
	return key;
}

static void paste_take(struct keys *keys)
{
	struct text pasted = keys->pasted;

	keys->pasted = keys->decoder.paste.text;
	keys->decoder.paste.text = pasted;
	text_clear(&keys->decoder.paste.text);
}

int keys_next(struct keys *keys)
{
	int key;

	while ((key = key_of_signals()) == PRESS_NOTHING &&
	       (key = key_held(keys)) == PRESS_NOTHING &&
	       (key = key_of_resize()) == PRESS_NOTHING)
		wait_for_bytes(keys);
	if (key == PRESS_PASTE)
		paste_take(keys);
	return key;
}
