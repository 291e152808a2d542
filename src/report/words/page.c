#include "report/words/page.h"
#include "base/memory.h"
#include "base/utf8.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

enum { COLUMN_GAP = 2, COLUMN_LEAST = 6, CHARACTER_MOST = 4 };

/* A stretch of text that goes on one line. */
struct piece {
	const char *start;
	size_t length;  /* bytes */
	size_t columns;
};

static size_t character(const char *text, size_t *columns)
{
	uint32_t code;
	size_t length = utf8_decode(text, strnlen(text, CHARACTER_MOST), &code);

	*columns = length ? (size_t)utf8_columns(code) : 1;
	return length ? length : 1;
}

static size_t text_columns(const char *text)
{
	size_t all = 0, columns;

	while (*text) {
		text += character(text, &columns);
		all += columns;
	}
	return all;
}

/* Takes what fits into the columns off the front of *text, up to a blank if one is there, and the
 * blanks behind it. At least one character. */
static struct piece piece_take(const char **text, size_t room)
{
	struct piece fits = { *text, 0, 0 }, whole_words = { *text, 0, 0 };

	for (const char *at = *text; *at;) {
		size_t columns, length = character(at, &columns);

		if (*at == ' ')
			whole_words = fits;
		if (fits.length > 0 && fits.columns + columns > room) {
			fits = whole_words.length ? whole_words : fits;
			break;
		}
		fits.length += length;
		fits.columns += columns;
		at += length;
	}
	*text += fits.length;
	*text += strspn(*text, " ");
	return fits;
}

static void piece_print(struct text *out, const struct piece *piece)
{
	size_t from = out->length;

	text_add_bytes(out, piece->start, piece->length);
	for (size_t i = from; i < out->length; i++)
		if (out->bytes[i] == PAGE_TIE)
			out->bytes[i] = ' ';
}

void page_tie(struct text *text, size_t from)
{
	for (size_t i = from; i < text->length; i++)
		if (text->bytes[i] == ' ')
			text->bytes[i] = PAGE_TIE;
}

static void trim_blanks(struct text *out)
{
	while (out->length > 0 && out->bytes[out->length - 1] == ' ')
		out->bytes[--out->length] = '\0';
}

static void end_line(struct text *out)
{
	trim_blanks(out);
	text_add(out, "\n");
}

void page_heading(struct text *out, const char *words)
{
	text_print(out, "\n%s\n", words);
	text_add_repeat(out, '-', text_columns(words));
	text_add(out, "\n");
}

void page_paragraph(struct text *out, size_t first, size_t rest, const char *words)
{
	size_t indent = first;

	while (*words) {
		struct piece piece = piece_take(&words, PAGE_COLUMNS - indent);

		text_add_repeat(out, ' ', indent);
		piece_print(out, &piece);
		end_line(out);
		indent = rest;
	}
}

void page_note(struct text *out, const char *words)
{
	text_add(out, "\n");
	page_paragraph(out, 0, 0, words);
}

void page_clean(struct text *out, const char *bytes)
{
	size_t left = strlen(bytes);

	while (left > 0) {
		uint32_t code;
		size_t length = utf8_decode(bytes, left, &code);

		if (length > 0 && utf8_is_text(code)) {
			text_add_bytes(out, bytes, length);
		} else {
			text_add(out, "?");
			length = length ? length : 1;
		}
		bytes += length;
		left -= length;
	}
}

/* ---- Tables ----------------------------------------------------------------------------------- */

struct table table_start(const struct table_column *columns, int count, size_t indent)
{
	assert(count <= TABLE_COLUMNS_MOST);
	return (struct table){ .columns = columns, .count = count, .indent = indent };
}

struct text *table_cell(struct table *table)
{
	if (table->cell_count++ > 0)
		text_add_bytes(&table->cells, "", 1);
	return &table->cells;
}

void table_words(struct table *table, const char *words)
{
	text_add(table_cell(table), words);
}

static const char *next_cell(const char *cell)
{
	return cell + strlen(cell) + 1;
}

static size_t longest_word(const char *text)
{
	size_t longest = 0, word = 0;

	while (*text) {
		size_t columns = 0, length = character(text, &columns);

		word = *text == ' ' ? 0 : word + columns;
		longest = word > longest ? word : longest;
		text += length;
	}
	return longest;
}

/* How wide a column would be, and how narrow without breaking words. */
struct width {
	size_t columns, least;
	bool wraps;
};

static void widen(struct width *width, const char *text)
{
	size_t columns = text_columns(text), least = width->wraps ? longest_word(text) : 0;

	width->columns = columns > width->columns ? columns : width->columns;
	width->least = least > width->least ? least : width->least;
}

static void natural_widths(const struct table *table, struct width *widths)
{
	const char *cell = table->cells.bytes;

	for (int i = 0; i < table->count; i++) {
		widths[i] = (struct width){ .wraps = table->columns[i].fit == COLUMN_WRAPS };
		if (table->columns[i].heading)
			widen(&widths[i], table->columns[i].heading);
	}
	for (size_t i = 0; i < table->cell_count; i++) {
		widen(&widths[i % (size_t)table->count], cell);
		cell = next_cell(cell);
	}
}

/* Takes one column off the widest of those that wrap and are wider than their least. */
static bool narrow(const struct table *table, struct width *widths, bool may_break)
{
	struct width *widest = NULL;

	for (int i = 0; i < table->count; i++) {
		struct width *width = &widths[i];
		size_t least = may_break ? COLUMN_LEAST : width->least;

		if (width->wraps && width->columns > least &&
			(!widest || width->columns > widest->columns))
			widest = width;
	}
	if (widest)
		widest->columns--;
	return widest != NULL;
}

static void fit_widths(const struct table *table, struct width *widths)
{
	size_t all = table->indent + COLUMN_GAP * (size_t)(table->count - 1);

	for (int i = 0; i < table->count; i++)
		all += widths[i].columns;
	while (all > PAGE_COLUMNS &&
		(narrow(table, widths, false) || narrow(table, widths, true)))
		all--;
}

static void print_aligned(struct text *out, const struct piece *piece, size_t width, bool right)
{
	size_t pad = width > piece->columns ? width - piece->columns : 0;

	text_add_repeat(out, ' ', right ? pad : 0);
	piece_print(out, piece);
	text_add_repeat(out, ' ', right ? 0 : pad);
}

/* Prints one row, in as many lines as its longest cell needs. */
static void print_row(const struct table *table, const char *cells[], const struct width *widths,
	struct text *out)
{
	bool is_left;

	do {
		text_add_repeat(out, ' ', table->indent);
		is_left = false;
		for (int i = 0; i < table->count; i++) {
			struct piece piece = piece_take(&cells[i], widths[i].wraps ? widths[i].columns :
				PAGE_COLUMNS);

			if (i > 0)
				text_add_repeat(out, ' ', COLUMN_GAP);
			print_aligned(out, &piece, widths[i].columns, table->columns[i].fit == COLUMN_RIGHT);
			is_left = is_left || *cells[i];
		}
		end_line(out);
	} while (is_left);
}

static void print_table(const struct table *table, struct text *out)
{
	const char *cells[TABLE_COLUMNS_MOST], *cell = table->cells.bytes;
	struct width widths[TABLE_COLUMNS_MOST] = { { 0, 0, false } };
	size_t rows = table->cell_count / (size_t)table->count;

	natural_widths(table, widths);
	fit_widths(table, widths);
	if (table->columns[0].heading) {
		for (int i = 0; i < table->count; i++)
			cells[i] = table->columns[i].heading;
		print_row(table, cells, widths, out);
	}
	for (size_t row = 0; row < rows; row++) {
		for (int i = 0; i < table->count; i++) {
			cells[i] = cell;
			cell = next_cell(cell);
		}
		print_row(table, cells, widths, out);
	}
}

void table_print(struct table *table, struct text *out)
{
	assert(table->cell_count % (size_t)table->count == 0);
	if (table->cell_count > 0)
		print_table(table, out);
	text_fini(&table->cells);
	table->cell_count = 0;
}
