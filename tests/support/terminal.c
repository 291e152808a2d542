#include "support/terminal.h"

#include "base/utf8.h"
#include "support/keys.h"
#include "support/scratch.h"

#include <assert.h>
#include <check.h>
#include <errno.h>
#include <fcntl.h>
#include <glob.h>
#include <poll.h>
#include <pty.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>
#include <vterm.h>

enum { WAIT_MS = 15000, QUIET_MS = 60, ARGUMENTS_MOST = 32,
	TICKS_A_PICTURE = 5 }; /* no picture takes more than 0.05 s of the processor */

struct terminal {
	pid_t program;            /* 0 once it has ended and been waited for */
	int line;                 /* our end of the pseudo-terminal; -1 after a hang-up */
	bool is_over;             /* nothing more can come */
	char term[64];
	char *folder, *home;

	VTerm *vterm;
	VTermScreen *screen;
	char begun[UTF8_MOST];    /* what came of a character that is not whole yet */
	size_t begun_length;
	int rows, columns;
	char **row_texts;         /* rows of them, each with room for any row */
	bool is_alternate, is_cursor_visible;

	char *sent;               /* all that the program wrote, ended by a NUL */
	size_t sent_length, sent_capacity, mark;
	struct traffic traffic;
	struct termios modes;     /* at the start */
};

/* Time */

static double patience(void)
{
	const char *multiplier = getenv("CK_TIMEOUT_MULTIPLIER");
	double factor = multiplier ? strtod(multiplier, NULL) : 1;

	return factor > 0 ? factor : 1;
}

static long now_ms(void)
{
	struct timespec now;

	clock_gettime(CLOCK_MONOTONIC, &now);
	return now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

long terminal_deadline(void)
{
	return now_ms() + (long)(WAIT_MS * patience());
}

_Noreturn static void give_up(struct terminal *t, const char *claim)
{
	if (t->line >= 0)
		terminal_print(t);
	ck_abort_msg("waited in vain for: %s%s", claim,
		t->is_over ? " (the program has ended)" : "");
}

/* The screen */

static int property_changed(VTermProp property, VTermValue *value, void *user)
{
	struct terminal *t = user;

	if (property == VTERM_PROP_CURSORVISIBLE)
		t->is_cursor_visible = value->boolean;
	if (property == VTERM_PROP_ALTSCREEN)
		t->is_alternate = value->boolean;
	return 1;
}

static void row_texts_free(struct terminal *t)
{
	for (int row = 0; row < t->rows; row++)
		free(t->row_texts[row]);
	free(t->row_texts);
}

static void row_texts_new(struct terminal *t, int rows, int columns)
{
	t->rows = rows;
	t->columns = columns;
	t->row_texts = calloc((size_t)rows, sizeof *t->row_texts);
	for (int row = 0; row < rows; row++)
		t->row_texts[row] = calloc((size_t)columns + 1, sizeof ((struct cell *)0)->text);
}

static void screen_new(struct terminal *t, int rows, int columns)
{
	static const VTermScreenCallbacks callbacks = { .settermprop = property_changed };

	row_texts_new(t, rows, columns);
	t->is_cursor_visible = true;
	t->vterm = vterm_new(rows, columns);
	vterm_set_utf8(t->vterm, 1);
	t->screen = vterm_obtain_screen(t->vterm);
	vterm_screen_set_callbacks(t->screen, &callbacks, t);
	vterm_screen_enable_altscreen(t->screen, 1);
	vterm_screen_reset(t->screen, 1);
}

static int colour_index(const VTermColor *colour, bool is_default)
{
	if (is_default)
		return -1;
	return VTERM_COLOR_IS_INDEXED(colour) ? colour->indexed.idx : -2;
}

/* Of a place that is on the screen: each check costs a message to the runner of the tests, so rows
 * are not checked cell by cell. */
static struct cell cell_at(struct terminal *t, int row, int column)
{
	VTermScreenCell from;
	VTermRect area = { row, row + 1, column, column + 1 };
	struct cell cell = { .text = " " };

	vterm_screen_get_cell(t->screen, (VTermPos) { row, column }, &from);
	if (from.chars[0]) {
		size_t n = vterm_screen_get_text(t->screen, cell.text, sizeof cell.text - 1, area);
		cell.text[from.chars[0] == (uint32_t)-1 ? 0 : n] = 0;
	}
	cell.bold = from.attrs.bold;
	cell.underline = from.attrs.underline != VTERM_UNDERLINE_OFF;
	cell.reverse = from.attrs.reverse;
	cell.blink = from.attrs.blink;
	cell.ink = colour_index(&from.fg, VTERM_COLOR_IS_DEFAULT_FG(&from.fg));
	cell.ground = colour_index(&from.bg, VTERM_COLOR_IS_DEFAULT_BG(&from.bg));
	return cell;
}

struct cell terminal_cell(struct terminal *t, int row, int column)
{
	ck_assert_msg(row >= 0 && row < t->rows && column >= 0 && column < t->columns,
		"no cell %d,%d on a screen of %d x %d", row, column, t->rows, t->columns);
	return cell_at(t, row, column);
}

const char *terminal_row(struct terminal *t, int row)
{
	ck_assert_msg(row >= 0 && row < t->rows, "no row %d of %d", row, t->rows);
	char *end = t->row_texts[row];

	for (int column = 0; column < t->columns; column++)
		end = stpcpy(end, cell_at(t, row, column).text);
	return t->row_texts[row];
}

/* Whether the text begins here; "  " in it stands for any number of blanks from one on, as between
 * a figure and its words. */
static bool begins_with(const char *here, const char *text)
{
	while (*text) {
		if (strncmp(text, "  ", 2) == 0) {
			if (*here != ' ')
				return false;
			here += strspn(here, " ");
			text += strspn(text, " ");
		} else if (*here++ != *text++) {
			return false;
		}
	}
	return true;
}

static bool row_has(const char *row, const char *text)
{
	while (*row && !begins_with(row, text))
		row++;
	return *row || !*text;
}

int terminal_find(struct terminal *t, const char *text)
{
	for (int row = 0; row < t->rows; row++)
		if (row_has(terminal_row(t, row), text))
			return row;
	return -1;
}

bool terminal_shows(struct terminal *t, const char *text)
{
	return terminal_find(t, text) >= 0;
}

struct cursor terminal_cursor(struct terminal *t)
{
	VTermPos at;

	vterm_state_get_cursorpos(vterm_obtain_state(t->vterm), &at);
	return (struct cursor) { at.row, at.col, t->is_cursor_visible };
}

bool terminal_is_alternate(struct terminal *t)
{
	return t->is_alternate;
}

void terminal_print(struct terminal *t)
{
	struct cursor at = terminal_cursor(t);

	fprintf(stderr, "%d x %d, cursor %d,%d%s\n", t->rows, t->columns, at.row, at.column,
		at.is_visible ? "" : " (hidden)");
	for (int row = 0; row < t->rows; row++)
		fprintf(stderr, "%3d|%s|\n", row, terminal_row(t, row));
}

/* The line */

static void terminal_write(struct terminal *t, const char *bytes, size_t length);

static void sent_append(struct terminal *t, const char *bytes, size_t length)
{
	if (t->sent_length + length >= t->sent_capacity) {
		t->sent_capacity = 2 * (t->sent_length + length + 1);
		t->sent = realloc(t->sent, t->sent_capacity);
	}
	for (size_t i = 0; i < length; i++)
		t->sent[t->sent_length++] = bytes[i] ? bytes[i] : ' ';
	t->sent[t->sent_length] = 0;
	t->traffic.bytes += length;
	t->traffic.reads++;
}

/* How many bytes at the end are of a character that is not whole. */
static size_t character_begun(const char *bytes, size_t length)
{
	for (size_t begun = 1; begun < UTF8_MOST && begun <= length; begun++) {
		unsigned char byte = (unsigned char)bytes[length - begun];

		if (byte >= 0xc0)
			return begun < (byte >= 0xf0 ? 4u : byte >= 0xe0 ? 3u : 2u) ? begun : 0;
		if (byte < 0x80)
			return 0;
	}
	return 0;
}

/* The emulator loses a character that comes in two pieces, where the first follows ASCII. */
static void terminal_draw(struct terminal *t, const char *bytes, size_t length)
{
	t->begun_length = character_begun(bytes, length);
	length -= t->begun_length;
	memcpy(t->begun, bytes + length, t->begun_length);
	vterm_input_write(t->vterm, bytes, length);
}

/* Reads once, after at most so many ms; false if nothing came. */
static bool terminal_pump(struct terminal *t, long ms)
{
	struct pollfd line = { t->line, POLLIN, 0 };
	size_t begun = t->begun_length;
	char bytes[65536];

	if (t->is_over || poll(&line, 1, ms > 0 ? (int)ms : 0) <= 0)
		return false;
	ssize_t n = read(t->line, bytes + begun, sizeof bytes - begun);
	if (n <= 0) {
		t->is_over = n == 0 || (errno != EAGAIN && errno != EINTR);
		return false;
	}
	sent_append(t, bytes + begun, (size_t)n);
	memcpy(bytes, t->begun, begun);
	terminal_draw(t, bytes, begun + (size_t)n);
	size_t answer = vterm_output_read(t->vterm, bytes, sizeof bytes);
	terminal_write(t, bytes, answer);
	return true;
}

/* Goes on reading where the program must be read before it reads. */
static void terminal_write(struct terminal *t, const char *bytes, size_t length)
{
	for (long deadline = terminal_deadline(); length > 0 && !t->is_over;) {
		ssize_t n = write(t->line, bytes, length);

		if (n > 0) {
			bytes += n;
			length -= (size_t)n;
		} else if (now_ms() > deadline) {
			give_up(t, "the program to read its keys");
		} else if (!terminal_pump(t, 5)) {
			poll(NULL, 0, 1);
		}
	}
}

/* What was written up to here was not brought about by what the test does next. */
static void terminal_mark(struct terminal *t)
{
	while (terminal_pump(t, 0))
		;
	t->mark = t->sent_length;
}

void terminal_type(struct terminal *t, const char *bytes)
{
	terminal_mark(t);
	terminal_write(t, bytes, strlen(bytes));
}

/* How often "x12" presses the key before it again: 11; -1 if the word is not of this kind. */
static long more_times(const char *word)
{
	char *end = NULL;

	if (word[0] != 'x' || word[1] < '1' || word[1] > '9')
		return -1;
	long times = strtol(word + 1, &end, 10);
	return *end ? -1 : times - 1;
}

void terminal_keys(struct terminal *t, const char *names)
{
	char *words = strdup(names), *rest = words, *name;
	char bytes[64] = "";

	terminal_mark(t);
	while ((name = strsep(&rest, " "))) {
		long times = more_times(name);

		if (!*name)
			continue;
		if (times < 0) {
			ck_assert_msg(key_bytes(name, t->term, bytes, sizeof bytes),
				"no key %s on a terminal %s", name, t->term);
			times = 1;
		}
		for (; times > 0; times--)
			terminal_write(t, bytes, strlen(bytes));
	}
	free(words);
}

void terminal_resize(struct terminal *t, int rows, int columns)
{
	struct winsize size = { .ws_row = (unsigned short)rows, .ws_col = (unsigned short)columns };

	terminal_mark(t);
	row_texts_free(t);
	row_texts_new(t, rows, columns);
	vterm_set_size(t->vterm, rows, columns);
	ioctl(t->line, TIOCSWINSZ, &size);
}

void terminal_signal(struct terminal *t, int signal)
{
	terminal_mark(t);
	if (t->program)
		kill(t->program, signal);
}

void terminal_stall(struct terminal *t)
{
	int program_side = open(ptsname(t->line), O_RDWR | O_NOCTTY | O_CLOEXEC);

	terminal_mark(t);
	ck_assert_msg(program_side >= 0 && tcflow(program_side, TCOOFF) == 0, "no stall: %s",
		strerror(errno));
	close(program_side);
}

bool terminal_has_old_modes(struct terminal *t)
{
	struct termios now;

	return tcgetattr(t->line, &now) == 0 && now.c_iflag == t->modes.c_iflag &&
		now.c_oflag == t->modes.c_oflag && now.c_lflag == t->modes.c_lflag &&
		now.c_cflag == t->modes.c_cflag &&
		memcmp(now.c_cc, t->modes.c_cc, sizeof now.c_cc) == 0;
}

void terminal_set_old_modes(struct terminal *t)
{
	tcsetattr(t->line, TCSANOW, &t->modes);
}

void terminal_hang_up(struct terminal *t)
{
	terminal_mark(t);
	close(t->line);
	t->line = -1;
	t->is_over = true;
}

/* Waiting */

bool terminal_is_over(struct terminal *t)
{
	return t->is_over;
}

/* What the system says of the program, or of what a shell has in the foreground. */
struct load {
	bool is_working; /* it waits for the processor or a disk, or has them: not for keys */
	long ticks;      /* of the processor, that it has had so far */
};

static struct load load_of(struct terminal *t)
{
	char path[64], line[512] = "", state = 'S';
	long user = 0, system = 0;
	FILE *stat;

	snprintf(path, sizeof path, "/proc/%ld/stat", (long)tcgetpgrp(t->line));
	stat = fopen(path, "r");
	if (!stat)
		return (struct load){ false, 0 };
	if (fgets(line, sizeof line, stat) && strrchr(line, ')'))
		sscanf(strrchr(line, ')') + 1,
			" %c %*s %*s %*s %*s %*s %*s %*s %*s %*s %*s %ld %ld", &state, &user,
			&system);
	fclose(stat);
	return (struct load){ state == 'R' || state == 'D', user + system };
}

void terminal_catch_up(struct terminal *t)
{
	long deadline = terminal_deadline(), ticks = load_of(t).ticks;

	for (;;) {
		struct load load = load_of(t);

		if (!terminal_pump(t, load.is_working ? 1 : 0) && !load.is_working)
			return;
		if (load.ticks > ticks + TICKS_A_PICTURE || now_ms() > deadline)
			return;
	}
}

bool terminal_goes_on(struct terminal *t, long deadline, const char *claim)
{
	if (terminal_pump(t, deadline - now_ms()))
		return true;
	if (!t->is_over && now_ms() >= deadline)
		give_up(t, claim);
	return !t->is_over;
}

void terminal_read(struct terminal *t, long deadline, const char *claim)
{
	if (!terminal_goes_on(t, deadline, claim))
		give_up(t, claim);
}

void terminal_wait(struct terminal *t, const char *text)
{
	for (long deadline = terminal_deadline(); !terminal_shows(t, text);)
		terminal_read(t, deadline, text);
	terminal_catch_up(t);
}

void terminal_wait_gone(struct terminal *t, const char *text)
{
	for (long deadline = terminal_deadline(); terminal_shows(t, text);)
		terminal_read(t, deadline, text);
	terminal_catch_up(t);
}

/* At rest before the silence and after it: a wait that the program itself limits, as for what comes
 * after an Esc, is over by then. */
static bool is_quiet(struct terminal *t)
{
	bool was_working = load_of(t).is_working;

	return !terminal_pump(t, (long)(QUIET_MS * patience())) && !was_working &&
		!load_of(t).is_working;
}

struct traffic terminal_settle(struct terminal *t)
{
	long deadline = terminal_deadline();

	while (!is_quiet(t) && !t->is_over)
		if (now_ms() > deadline)
			give_up(t, "the program to be quiet");
	struct traffic since = t->traffic;
	t->traffic = (struct traffic) { 0 };
	return since;
}

bool terminal_sent(struct terminal *t, const char *bytes)
{
	return t->sent && strstr(t->sent, bytes);
}

bool terminal_answered(struct terminal *t, const char *bytes)
{
	return t->sent && strstr(t->sent + t->mark, bytes);
}

/* Start and end */

static void environment_set(const struct launch *how, const char *home, const char *logs)
{
	/* The last two say where gcov counts. */
	static const char *const names[] = { "PATH", "GCOV_PREFIX", "GCOV_PREFIX_STRIP" };
	enum { NAMES = sizeof names / sizeof *names };
	char *kept[NAMES];

	for (int i = 0; i < NAMES; i++)
		kept[i] = getenv(names[i]) ? strdup(getenv(names[i])) : NULL;
	clearenv();
	setenv("PATH", "/usr/bin:/bin", 1);
	for (int i = 0; i < NAMES; i++) {
		if (kept[i])
			setenv(names[i], kept[i], 1);
		free(kept[i]);
	}
	setenv("HOME", home, 1);
	setenv("LC_ALL", "C.UTF-8", 1);
	setenv("ESCDELAY", "25", 1);
	setenv("ASAN_OPTIONS", logs, 1);
	setenv("UBSAN_OPTIONS", logs, 1);
	if (!how->term || *how->term)
		setenv("TERM", how->term ? how->term : "xterm-256color", 1);
	for (const char *const *env = how->env; env && *env; env++) {
		if (strchr(*env, '='))
			putenv(strdup(*env));
		else
			unsetenv(*env);
	}
}

_Noreturn static void program_exec(const struct launch *how, const char *home, const char *logs)
{
	char *argv[ARGUMENTS_MOST + 1] = { NULL };

	for (int i = 0; i < ARGUMENTS_MOST && how->argv[i]; i++)
		argv[i] = strdup(how->argv[i]);
	assert(argv[0]);
	prctl(PR_SET_PDEATHSIG, SIGKILL);
	signal(SIGHUP, SIG_DFL); /* which the tests ignore when they were begun with nohup */
	environment_set(how, home, logs);
	execvp(*argv, argv);
	dprintf(2, "%s: %s\n", *how->argv, strerror(errno));
	_exit(127);
}

static struct termios modes_of_new_line(void)
{
	struct termios modes = { 0 };
	int line = posix_openpt(O_RDWR | O_NOCTTY);

	ck_assert_msg(line >= 0 && tcgetattr(line, &modes) == 0, "no pseudo-terminal: %s",
		strerror(errno));
	close(line);
	return modes;
}

struct terminal *terminal_new(const struct launch *how)
{
	struct terminal *t = calloc(1, sizeof *t);
	int rows = how->rows ? how->rows : 24, columns = how->columns ? how->columns : 80;
	struct winsize size = { .ws_row = (unsigned short)rows, .ws_col = (unsigned short)columns };
	char *logs;

	snprintf(t->term, sizeof t->term, "%s", how->term ? how->term : "xterm-256color");
	t->folder = scratch_new();
	ck_assert_int_gt(asprintf(&t->home, "%s/home", t->folder), 0);
	ck_assert_int_gt(asprintf(&logs, "log_path=%s/sanitizer", t->folder), 0);
	mkdir(t->home, 0777);
	screen_new(t, rows, columns);
	t->modes = modes_of_new_line();
	t->program = forkpty(&t->line, NULL, &t->modes, &size);
	ck_assert_msg(t->program >= 0, "no pseudo-terminal: %s", strerror(errno));
	if (t->program == 0)
		program_exec(how, t->home, logs);
	fcntl(t->line, F_SETFL, O_NONBLOCK);
	fcntl(t->line, F_SETFD, FD_CLOEXEC);
	free(logs);
	return t;
}

const char *terminal_home(struct terminal *t)
{
	return t->home;
}

static void check_sanitizer_logs(struct terminal *t)
{
	char pattern[4096], line[1024];
	glob_t found = { 0 };

	snprintf(pattern, sizeof pattern, "%s/sanitizer*", t->folder);
	glob(pattern, 0, NULL, &found);
	for (size_t i = 0; i < found.gl_pathc; i++) {
		FILE *log = fopen(found.gl_pathv[i], "r");

		while (log && fgets(line, sizeof line, log))
			fputs(line, stderr);
		if (log)
			fclose(log);
	}
	size_t count = found.gl_pathc;
	globfree(&found);
	ck_assert_msg(count == 0, "the program was at fault, see above");
}

struct terminal_end terminal_end(struct terminal *t)
{
	long deadline = terminal_deadline();
	int status = 0;

	ck_assert_msg(t->program, "the program's end was asked for twice");
	while (waitpid(t->program, &status, WNOHANG) == 0) {
		if (now_ms() > deadline)
			give_up(t, "the program's end");
		if (!terminal_pump(t, 5))
			poll(NULL, 0, 1);
	}
	t->program = 0;
	while (terminal_pump(t, QUIET_MS))
		;
	check_sanitizer_logs(t);
	return (struct terminal_end) {
		.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1,
		.signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0,
		.last = t->sent ? t->sent + t->mark : "",
	};
}

void terminal_free(struct terminal *t)
{
	if (!t)
		return;
	if (t->program) {
		kill(t->program, SIGKILL);
		waitpid(t->program, NULL, 0);
	}
	if (t->line >= 0)
		close(t->line);
	vterm_free(t->vterm);
	row_texts_free(t);
	scratch_remove(t->folder);
	free(t->home);
	free(t->sent);
	free(t);
}
