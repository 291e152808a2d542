/* A terminal for tests: runs the real program at a pseudo-terminal, reads what it writes into a
 * screen, and types at it.
 *
 *	struct terminal *t = terminal_new(&(struct launch) {
 *		.argv = (const char *[]) { BUILD_FOLDER "/parterre", "plots/court.plot", NULL },
 *	});
 *	terminal_wait(t, "Raised bed");
 *	terminal_keys(t, "b right x3 space");
 *	terminal_until(t, terminal_cursor(t).column == 14);
 *	ck_assert(strstr(terminal_row(t, 5), "b"));
 *	terminal_signal(t, SIGTERM);
 *	struct terminal_end end = terminal_end(t);
 *	ck_assert_int_eq(end.signal, SIGTERM);
 *	ck_assert(strstr(end.last, "\033[?1049l"));
 *	terminal_free(t);
 *
 * Wait for what the screen must show, never for time: the waits below go on as soon as it is
 * there, and after 15 s (times CK_TIMEOUT_MULTIPLIER) print the whole screen and fail the test.
 * The screen is read only while something here waits: after keys, wait for what they bring about
 * before looking at rows and cells.
 *
 * What the program asks the terminal (its name, the cursor's place) is answered. The program
 * dies with the test process, even if the test fails before terminal_free.
 *
 * The program starts in an environment of its own: TERM, LC_ALL=C.UTF-8, an empty folder as
 * HOME, ESCDELAY=25, and PATH; launch.env adds to this or takes away. It leads a session, so
 * closing the terminal sends it SIGHUP; with no shell above it, it cannot be stopped by ^Z: to
 * test that, let argv be { "/bin/bash", "--norc", "-i", NULL } and type the program's line.
 *
 * In a build with sanitizers, what they find in the program fails the test when it ends. */
#ifndef SUPPORT_TERMINAL_H
#define SUPPORT_TERMINAL_H

#include <stdbool.h>
#include <stddef.h>

struct launch {
	/* up to NULL, 32 at most; argv[0] is sought in PATH if without a slash */
	const char *const *argv;
	const char *const *env;   /* up to NULL: "NAME=value" sets,
		"NAME" takes away; may be NULL */
	const char *term;         /* NULL: xterm-256color; "" leaves TERM unset */
	int rows, columns;        /* 0: 24 and 80 */
};

/* What the program wrote since the last terminal_settle (or the start). */
struct traffic {
	size_t bytes;
	/* chunks it came in; as many as writes, unless two come at once */
	int reads;
};

struct cell {
	char text[25];            /* UTF-8; " " where nothing was written, "" right of a wide one */
	bool bold, underline, reverse, blink;
	int ink, ground;          /* palette colours 0 to 255; -1: the terminal's own; -2: RGB */
};

struct cursor {
	int row, column;          /* from 0 */
	bool is_visible;
};

struct terminal_end {
	int code;                 /* exit status; -1 if ended by a signal */
	int signal;               /* the signal; 0 if it exited */
	/* all bytes since the last keys, resize or signal; NULs are blanks */
	const char *last;
};

/* Starts the program. Fails the test only if the system gives no pseudo-terminal; a program that
 * cannot be run ends with status 127. */
struct terminal *terminal_new(const struct launch *how);

/* Kills the program if it still runs, and frees. NULL is let pass, so that a teardown may call it
 * in any case. */
void terminal_free(struct terminal *t);

/* The folder that the program has as HOME, gone with terminal_free. */
const char *terminal_home(struct terminal *t);

/* Typing. terminal_keys takes key names (keys.h) between blanks; "x12" presses the key before it
 * twelve times in all. terminal_type sends bytes as they stand. Neither waits. */
void terminal_keys(struct terminal *t, const char *names);
void terminal_type(struct terminal *t, const char *bytes);

void terminal_resize(struct terminal *t, int rows, int columns);
void terminal_signal(struct terminal *t, int signal);

/* Closes the line, as a dropped connection does. Only terminal_end and terminal_free may follow. */
void terminal_hang_up(struct terminal *t);

/* The line takes no bytes from the program any more, as where a connection hangs; keys still come
 * through. Nothing can then be waited for but the end. */
void terminal_stall(struct terminal *t);

/* The terminal's modes are again those that the program found; and has it so, as other programs
 * do that take the terminal meanwhile. */
bool terminal_has_old_modes(struct terminal *t);
void terminal_set_old_modes(struct terminal *t);

/* Waits until the text stands on a row of the screen, or no longer on any. */
void terminal_wait(struct terminal *t, const char *text);
void terminal_wait_gone(struct terminal *t, const char *text);

/* Waits until an expression is true; it is tried again after all that the program writes. */
#define terminal_until(t, expression)                                                \
	do {                                                                         \
		for (long until_ = terminal_deadline(); !(expression);)              \
			terminal_read(t, until_, #expression);                       \
		terminal_catch_up(t);                                                \
	} while (0)

/* The same, but the program's end is an end of the wait as well. */
#define terminal_until_end(t, expression)                                            \
	do                                                                           \
		for (long until_ = terminal_deadline();                              \
		     !(expression) && terminal_goes_on(t, until_, #expression);)     \
			;                                                            \
	while (0)

/* Whether the program has closed the line: it has ended. */
bool terminal_is_over(struct terminal *t);

/* Waits until the program has written nothing for 60 ms and waits for keys, not for the processor;
 * what it wrote since the last time. Use it to count bytes, not to wait for something to happen. */
struct traffic terminal_settle(struct terminal *t);

/* Waits until the program has ended. The bytes belong to the terminal. */
struct terminal_end terminal_end(struct terminal *t);

/* What stands on the screen as last read. A row is padded to the full width and stays as it is
 * until it is asked for again. Rows and columns count from 0 and must be on the screen. */
bool terminal_shows(struct terminal *t, const char *text);
int terminal_find(struct terminal *t, const char *text); /* the first row with it; -1: none */
const char *terminal_row(struct terminal *t, int row);
struct cell terminal_cell(struct terminal *t, int row, int column);
struct cursor terminal_cursor(struct terminal *t);

/* Whether the program is on the alternate screen, which leaves the user's own as it was. */
bool terminal_is_alternate(struct terminal *t);

/* Whether the program has written these bytes since it started (modes switched on, say). */
bool terminal_sent(struct terminal *t, const char *bytes);
/* The same since the last keys, resize or signal. */
bool terminal_answered(struct terminal *t, const char *bytes);

/* The screen in a frame, to stderr. */
void terminal_print(struct terminal *t);

/* For terminal_until: the time, in ms, at which a wait that starts now has failed; and one read,
 * which fails the test with the claim if that time is past or the program has ended. */
long terminal_deadline(void);
void terminal_read(struct terminal *t, long deadline, const char *claim);
/* For terminal_until_end: as terminal_read, but false where the program has ended. */
bool terminal_goes_on(struct terminal *t, long deadline, const char *claim);
/* After a wait: reads on where the program is in the middle of drawing, so that what stands beside
 * what was waited for is there too. */
void terminal_catch_up(struct terminal *t);

#endif
