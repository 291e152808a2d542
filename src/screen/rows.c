#include "screen/rows.h"
#include "base/hash.h"
#include "base/memory.h"
#include "editor/field/cluster.h"
#include "screen/curses.h"
#include "screen/sender.h"
#include "screen/terminal.h"
#include "screen/width.h"

#include <limits.h>
#include <stdlib.h>

/* A character as curses has it in its cells. */
struct glyph {
	wchar_t words[CCHARW_MAX + 1]; /* it and what joins it */
	attr_t attributes;
	short pair;
};

/* What curses draws in place of such a row: not a blank, which it may write to move the
 * cursor over it, and which it may erase with all that is to the right or below. */
static const wchar_t held[] = L"\u00a0";

void rows_fini(struct rows *rows)
{
	free(rows->shown);
	*rows = (struct rows){ .shown = NULL };
}

void rows_forget(struct rows *rows)
{
	for (int i = 0; i < rows->count; i++)
		rows->shown[i] = 0;
}

static void resize(struct rows *rows, int count)
{
	if (rows->count == count)
		return;
	rows->shown = memory_resize(rows->shown, (size_t)count, sizeof *rows->shown);
	rows->count = count;
	rows_forget(rows);
}

/* ---- Which rows ------------------------------------------------------------------------------ */

static bool is_plain(const struct glyph *glyph)
{
	wchar_t code = glyph->words[0];

	return !code || (!glyph->words[1] && width_is_plain((uint32_t)code));
}

/* Reads a row of the screen as it was composed. glyphs: room for all its columns. Returns how many
 * glyphs it has. */
static int row_read(int row, struct glyph *glyphs)
{
	cchar_t *cells = memory_new((size_t)COLS + 1, sizeof *cells);
	int count = 0;

	mvin_wchnstr(row, 0, cells, COLS);
	while (count < COLS) {
		struct glyph *glyph = &glyphs[count];

		*glyph = (struct glyph){ .pair = 0 };
		if (getcchar(&cells[count], glyph->words, &glyph->attributes, &glyph->pair,
			NULL) == ERR || !glyph->words[0])
			break;
		count++;
	}
	free(cells);
	return count;
}

static bool is_odd(const struct glyph *glyphs, int count)
{
	for (int i = 0; i < count; i++)
		if (!is_plain(&glyphs[i]))
			return true;
	return false;
}

/* Never 0. */
static uint64_t row_hash(const struct glyph *glyphs, int count)
{
	uint64_t hash = HASH_EMPTY;

	for (int i = 0; i < count; i++) {
		hash = hash_bytes(hash, glyphs[i].words, sizeof glyphs[i].words);
		hash = hash_bytes(hash, &glyphs[i].attributes, sizeof glyphs[i].attributes);
		hash = hash_bytes(hash, &glyphs[i].pair, sizeof glyphs[i].pair);
	}
	return hash ? hash : 1;
}

/* ---- Drawing --------------------------------------------------------------------------------- */

/* Curses has a buffer of its own, and nothing in it between its drawings. */
static void send(const char *name)
{
	const char *capability = terminal_capability(name);

	if (capability)
		tputs(capability, 1, putchar);
}

static void cursor_put(int row, int column)
{
	tputs(tparm(terminal_capability("cup"), row, column), 1, putchar);
}

static void glyph_put(const struct glyph *glyph)
{
	mbstate_t state = { 0 };
	char bytes[(CCHARW_MAX + 1) * MB_LEN_MAX];
	size_t length = 0;

	for (const wchar_t *word = glyph->words; *word; word++) {
		size_t used = wcrtomb(bytes + length, *word, &state);

		length += used == (size_t)-1 ? 0 : used;
	}
	vid_puts(glyph->attributes, glyph->pair, NULL, putchar);
	fwrite(bytes, 1, length, stdout);
}

static bool is_bound(const struct glyph *before, const struct glyph *glyph)
{
	size_t last = wcslen(before->words) - 1;

	return cluster_binds((uint32_t)before->words[last], (uint32_t)glyph->words[0]);
}

static void row_put(int row, const struct glyph *glyphs, int count)
{
	int column = 0;

	cursor_put(row, 0);
	vid_puts(A_NORMAL, 0, NULL, putchar);
	send("el");
	for (int i = 0; i < count; i++) {
		if (i > 0 && !is_plain(&glyphs[i - 1]) && !is_bound(&glyphs[i - 1], &glyphs[i]))
			cursor_put(row, column);
		glyph_put(&glyphs[i]);
		column += wcwidth(glyphs[i].words[0]);
	}
	vid_puts(A_NORMAL, 0, NULL, putchar);
}

/* ---- Sending --------------------------------------------------------------------------------- */

/* Reads each row and takes the odd ones away from curses. Those that must be drawn are marked. */
static bool rows_take(struct rows *rows, struct glyph *glyphs, bool *is_new)
{
	cchar_t blank;
	bool is_any = false;
	int row, column;

	setcchar(&blank, held, A_NORMAL, 0, NULL);
	getyx(newscr, row, column);
	for (int i = 0; i < rows->count; i++) {
		int count = row_read(i, glyphs);
		uint64_t hash = is_odd(glyphs, count) ? row_hash(glyphs, count) : 0;

		is_new[i] = hash && hash != rows->shown[i];
		is_any |= is_new[i];
		rows->shown[i] = hash;
		if (hash) {
			wmove(newscr, i, 0);
			whline_set(newscr, &blank, COLS);
		}
	}
	wmove(newscr, row, column);
	return is_any;
}

/* A cluster at the right edge must not run over to the next row. */
static void rows_put(const struct rows *rows, struct glyph *glyphs, const bool *is_new)
{
	int row, column;

	getyx(curscr, row, column);
	send("rmam");
	for (int i = 0; i < rows->count; i++)
		if (is_new[i])
			row_put(i, glyphs, row_read(i, glyphs));
	send("smam");
	cursor_put(row, column); /* where curses has it */
	fflush(stdout);
}

void rows_send(struct rows *rows)
{
	struct glyph *glyphs = memory_new((size_t)COLS, sizeof *glyphs);
	bool *is_new = memory_new((size_t)LINES, sizeof *is_new), is_any;

	resize(rows, LINES);
	if (is_cleared(curscr)) {
		rows_forget(rows);
		sender_forget();
	}
	wnoutrefresh(stdscr);
	is_any = rows_take(rows, glyphs, is_new);
	sender_begin(LINES, COLS, terminal_has_moves());
	doupdate();
	if (is_any)
		rows_put(rows, glyphs, is_new);
	sender_end();
	free(is_new);
	free(glyphs);
}
