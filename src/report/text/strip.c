#include "report/text/strip.h"
#include "base/number.h"
#include "base/show.h"
#include "base/stop.h"
#include "report/words/page.h"

#include <limits.h>
#include <string.h>

/* Columns of the page. Left of the strip are a name and "through", right of it "through". */
enum { NAME_AT = 2, COLUMNS_MOST = 56 };
_Static_assert(STRIP_INDENT + COLUMNS_MOST + sizeof "|through" - 1 <= PAGE_COLUMNS, "no room");

/* Ends of sawn pieces and of a row, were each on a line of its own. */
enum { MARK_LINES = 2 * CUTS_MOST + 2 };

/* The column, from 0, of a place that is not before the origin. */
static int strip_column(const struct strip_scale *scale, nm place)
{
	return (int)(((nm)2 * STRIP_BLOCK * (place - scale->origin) + scale->length) /
		(2 * scale->length));
}

/* ---- One row --------------------------------------------------------------------------------- */

/* Some pieces of a run, one after the other. */
struct strip_row {
	int first, count;
	nm from, end;
	bool is_whole; /* none of them is sawn */
};

struct drawing {
	const struct report *report;
	const struct strip *strip;
	const struct strip_scale *scale;
	const struct sawn *sawn;
	const struct strip_row *row;
	int moved; /* by how many columns the row is drawn further left */
	char line[PAGE_COLUMNS + 1];
	char marks[MARK_LINES][PAGE_COLUMNS + 1];
	int marked[MARK_LINES]; /* the column behind each line's last mark; 0: none */
};

static int column_of(const struct drawing *drawing, nm place)
{
	return STRIP_INDENT + strip_column(drawing->scale, place) - drawing->moved;
}

static void write(char line[static PAGE_COLUMNS + 1], int column, const char *words)
{
	for (; *words; words++)
		line[column++] = *words;
}

static bool is_sawn(const struct strip *strip, int piece)
{
	return strip->pieces[piece] < strip->block;
}

/* Whether the joint before a piece of the row, or at the row's end, is marked whatever is beside
 * it. */
static bool is_needed(const struct drawing *drawing, int piece)
{
	const struct strip_row *row = drawing->row;

	return piece == row->first || piece == row->first + row->count ||
		is_sawn(drawing->strip, piece) || is_sawn(drawing->strip, piece - 1);
}

/* The column of the first such joint from a piece on, which begins at the place. */
static int next_needed(const struct drawing *drawing, int piece, nm place)
{
	while (!is_needed(drawing, piece))
		place += drawing->strip->pieces[piece++];
	return column_of(drawing, place);
}

static void mark(struct drawing *drawing, int piece, nm place)
{
	struct text words = TEXT_EMPTY;
	int column = column_of(drawing, place), line = 0, end;

	show_tape(&words, place, drawing->report->units);
	column = least(column, PAGE_COLUMNS - (int)words.length);
	end = column + (int)words.length;
	if (is_needed(drawing, piece)) {
		while (line < MARK_LINES && drawing->marked[line] >= column)
			line++;
	} else if (drawing->marked[0] >= column || next_needed(drawing, piece + 1, place +
		drawing->strip->pieces[piece]) <= end) {
		line = MARK_LINES;
	}
	if (line < MARK_LINES) {
		write(drawing->marks[line], column, words.bytes);
		drawing->marked[line] = end;
	}
	text_fini(&words);
}

static void fill(struct drawing *drawing, int piece, nm place)
{
	nm length = drawing->strip->pieces[piece];
	int column = column_of(drawing, place), next = column_of(drawing, place + length);
	char filling = '-';

	if (is_sawn(drawing->strip, piece))
		filling = sawn_letter(sawn_size(drawing->sawn, length));
	drawing->line[column] = '|';
	memset(drawing->line + column + 1, filling, (size_t)most(next - column - 1, 0));
	drawing->line[next] = '|';
}

static void print_line(struct sink *out, char line[static PAGE_COLUMNS + 1])
{
	size_t length = PAGE_COLUMNS;

	while (length > 0 && line[length - 1] == ' ')
		length--;
	line[length] = '\0';
	sink_print(out, "%s\n", line);
}

static const char *end_words(const struct strip *strip, int end)
{
	return strip->through[end] ? "through" : "butts";
}

static void draw_row(struct drawing *drawing, const char *name)
{
	const struct strip *strip = drawing->strip;
	const struct strip_row *row = drawing->row;
	nm place = row->from;

	memset(drawing->line, ' ', PAGE_COLUMNS);
	memset(drawing->marks, ' ', sizeof drawing->marks);
	memset(drawing->marked, 0, sizeof drawing->marked);
	for (int i = row->first; i < row->first + row->count; place += strip->pieces[i++]) {
		fill(drawing, i, place);
		mark(drawing, i, place);
	}
	mark(drawing, row->first + row->count, place);
	if (row->first == 0) {
		const char *words = end_words(strip, 0);

		write(drawing->line, NAME_AT, name);
		write(drawing->line, column_of(drawing, row->from) - (int)strlen(words), words);
	}
	if (row->first + row->count == strip->count)
		write(drawing->line, column_of(drawing, row->end) + 1, end_words(strip, 1));
	print_line(drawing->report->out, drawing->line);
	for (int i = 0; i < MARK_LINES && drawing->marked[i] > 0; i++)
		print_line(drawing->report->out, drawing->marks[i]);
}

/* ---- All rows -------------------------------------------------------------------------------- */

/* How many columns rows are apart: as a piece is in the row in which it begins, the last one of a
 * row still fits. */
static int row_columns(const struct strip *strip, const struct strip_scale *scale)
{
	nm block = quotient_up(STRIP_BLOCK * strip->block, scale->length);

	if (strip_column(scale, strip->from + strip->length) <= COLUMNS_MOST)
		return INT_MAX;
	return COLUMNS_MOST + 1 - (int)block;
}

/* The pieces that begin in the same row as the one given. */
static struct strip_row row_from(const struct strip *strip, const struct strip_scale *scale,
	int piece, nm place)
{
	int columns = row_columns(strip, scale), row = strip_column(scale, place) / columns;
	struct strip_row pieces = { piece, 0, place, place, true };

	for (; piece < strip->count && strip_column(scale, pieces.end) / columns == row; piece++) {
		pieces.count++;
		pieces.end += strip->pieces[piece];
		pieces.is_whole = pieces.is_whole && !is_sawn(strip, piece);
	}
	return pieces;
}

static void print_skipped(const struct report *report, int blocks, nm end)
{
	struct text words = TEXT_EMPTY;

	show_tape(&words, end, report->units);
	sink_print(report->out, "%*sthen %d whole, to %s\n", STRIP_INDENT, "", blocks, words.bytes);
	text_fini(&words);
}

void strip_print(const struct report *report, const char *name, const struct strip *strip,
	const struct strip_scale *scale, const struct sawn *sawn)
{
	struct drawing drawing = { .report = report, .strip = strip, .scale = scale, .sawn = sawn };
	int skipped = 0, columns = row_columns(strip, scale);
	struct strip_row row = { .end = strip->from };

	for (int piece = 0; piece < strip->count && !stop_asked(); piece += row.count) {
		nm place = row.end;

		row = row_from(strip, scale, piece, place);
		if (row.is_whole && piece > 0 && piece + row.count < strip->count) {
			skipped += row.count;
			continue;
		}
		if (skipped > 0)
			print_skipped(report, skipped, place);
		skipped = 0;
		drawing.row = &row;
		drawing.moved = strip_column(scale, place) / columns * columns;
		draw_row(&drawing, name);
	}
}
