#include "report/words/page.h"
#include "base/stop.h"
#include "base/utf8.h"

#include <assert.h>
#include <string.h>

enum { COLUMN_GAP = 2, COLUMN_LEAST = 6, CHARACTER_MOST = 4 };

/* A stretch of text for one line. */
struct piece {
	const char *start;
	size_t length;  /* bytes */
	size_t columns;
};

static size_t character(const char *text, size_t *columns)
{
	uint32_t code;
	size_t length;

	*columns = 1;
	if ((unsigned char)*text < 0x80)
		return 1;
	length = utf8_decode(text, strnlen(text, CHARACTER_MOST), &code);
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

/* Takes from the front of *text what fits into `room` columns, up to a blank if there is one,
 * and the blanks after it. At least one character. */
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

static void piece_add(struct text *line, const struct piece *piece)
{
	size_t from = line->length;

	text_add_bytes(line, piece->start, piece->length);
	for (size_t i = from; i < line->length; i++)
		if (line->bytes[i] == PAGE_TIE)
			line->bytes[i] = ' ';
}

/* Prints the line without blanks at its end, and empties it. */
static void end_line(struct text *line, struct sink *out)
{
	size_t length = line->length;

	while (length > 0 && line->bytes[length - 1] == ' ')
		length--;
	if (length > 0)
		sink_add_bytes(out, line->bytes, length);
	sink_add(out, "\n");
	text_clear(line);
}

void page_rule(struct sink *out, const char *title, const char *of)
{
	enum { BLANKS = 2, RULE_LEAST = 3 };
	size_t taken = text_columns(title) + text_columns(of) + BLANKS;
	struct text line = TEXT_EMPTY;

	text_print(&line, "%s ", title);
	if (taken + RULE_LEAST <= PAGE_COLUMNS)
		text_add_repeat(&line, '-', PAGE_COLUMNS - taken);
	text_print(&line, " %s", of);
	sink_add(out, "\n");
	page_paragraph(out, 0, BLANKS, line.bytes);
	text_fini(&line);
}

void page_heading(struct sink *out, const char *words)
{
	struct text line = TEXT_EMPTY;

	sink_print(out, "\n%s\n", words);
	text_add_repeat(&line, '-', text_columns(words));
	end_line(&line, out);
	text_fini(&line);
}

void page_paragraph(struct sink *out, size_t first, size_t rest, const char *words)
{
	struct text line = TEXT_EMPTY;
	size_t indent = first;

	while (*words) {
		struct piece piece = piece_take(&words, PAGE_COLUMNS - indent);

		text_add_repeat(&line, ' ', indent);
		piece_add(&line, &piece);
		end_line(&line, out);
		indent = rest;
	}
	text_fini(&line);
}

void page_note(struct sink *out, const char *words)
{
	sink_add(out, "\n");
	page_paragraph(out, 0, 0, words);
}

/* ---- Tables ---------------------------------------------------------------------------------- */

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

/* How wide a column is, and how narrow it can be without breaking words. */
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

static bool is_across(const struct table *table, const char *const cells[])
{
	return table->count > 1 && !cells[1];
}

/* Measures headings and cells; returns how many rows there are. */
static size_t natural_widths(struct table *table, struct width *widths)
{
	const char *cells[TABLE_COLUMNS_MOST];
	size_t rows = 0;

	for (int i = 0; i < table->count; i++) {
		widths[i] = (struct width){ .wraps = table->columns[i].fit == COLUMN_WRAPS };
		if (table->columns[i].heading)
			widen(&widths[i], table->columns[i].heading);
	}
	for (; !stop_asked() && table->next(table, cells); rows++)
		for (int i = 0; i < table->count && !is_across(table, cells); i++)
			widen(&widths[i], cells[i]);
	return rows;
}

/* Makes the widest of those that wrap, and are wider than their least, one narrower. False:
 * none. */
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

static void add_aligned(struct text *line, const struct piece *piece, size_t width, bool right)
{
	size_t pad = width > piece->columns ? width - piece->columns : 0;

	text_add_repeat(line, ' ', right ? pad : 0);
	piece_add(line, piece);
	text_add_repeat(line, ' ', right ? 0 : pad);
}

/* Prints one row, in as many lines as its longest cell needs. */
static void print_row(const struct table *table, const char *cells[], const struct width *widths,
	struct sink *out)
{
	struct text line = TEXT_EMPTY;
	bool is_left;

	do {
		text_add_repeat(&line, ' ', table->indent);
		is_left = false;
		for (int i = 0; i < table->count; i++) {
			struct piece piece = piece_take(&cells[i], widths[i].wraps ?
				widths[i].columns : PAGE_COLUMNS);

			if (i > 0)
				text_add_repeat(&line, ' ', COLUMN_GAP);
			add_aligned(&line, &piece, widths[i].columns,
				table->columns[i].fit == COLUMN_RIGHT);
			is_left = is_left || *cells[i];
		}
		end_line(&line, out);
	} while (is_left);
	text_fini(&line);
}

void table_print(struct table *table, struct sink *out)
{
	const char *cells[TABLE_COLUMNS_MOST];
	struct width widths[TABLE_COLUMNS_MOST] = { { 0, 0, false } };

	assert(table->count <= TABLE_COLUMNS_MOST);
	if (natural_widths(table, widths) == 0)
		return;
	fit_widths(table, widths);
	if (table->columns[0].heading) {
		for (int i = 0; i < table->count; i++)
			cells[i] = table->columns[i].heading;
		print_row(table, cells, widths, out);
	}
	while (!stop_asked() && table->next(table, cells)) {
		if (is_across(table, cells))
			page_paragraph(out, table->across, table->across, cells[0]);
		else
			print_row(table, cells, widths, out);
	}
}

static bool hand_next(struct table *table, const char *cells[])
{
	struct hand_table *hand = (struct hand_table *)table;
	int count;

	if (hand->at == hand->rows.length) {
		hand->at = 0;
		return false;
	}
	count = (unsigned char)hand->rows.bytes[hand->at++];
	for (int i = 0; i < count; i++) {
		cells[i] = hand->rows.bytes + hand->at;
		hand->at += strlen(cells[i]) + 1;
	}
	if (count < table->count)
		cells[count] = NULL;
	return true;
}

struct hand_table hand_table(const struct table_column *columns, int count, size_t indent)
{
	return (struct hand_table){ .table = { columns, count, indent, hand_next, 0 } };
}

static void add_row(struct hand_table *table, const char *const *cells, int count)
{
	text_add_bytes(&table->rows, &(char){ (char)count }, 1);
	for (int i = 0; i < count; i++)
		text_add_bytes(&table->rows, cells[i], strlen(cells[i]) + 1);
}

void hand_table_add(struct hand_table *table, const char *const *cells, int count)
{
	assert(count == table->table.count);
	add_row(table, cells, count);
}

void hand_table_across(struct hand_table *table, const char *words)
{
	assert(table->table.count > 1);
	add_row(table, &words, 1);
}

void hand_table_print(struct hand_table *table, struct sink *out)
{
	table_print(&table->table, out);
	text_fini(&table->rows);
	table->at = 0;
}
