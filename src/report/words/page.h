/* A page of text: 80 columns, headings, paragraphs, tables. Texts of the user may hold any character;
 * widths are counted in columns. No line ends in a blank. */
#ifndef REPORT_WORDS_PAGE_H
#define REPORT_WORDS_PAGE_H

#include "base/text.h"

#include <stdbool.h>

enum { PAGE_COLUMNS = 80 };

/* A blank at which no line is broken. */
#define PAGE_TIE '\t'
/* Turns the blanks of text from byte `from` on into ties: what stands there stays on one line. */
void page_tie(struct text *text, size_t from);

/* An underlined heading with a blank line before it. */
void page_heading(struct text *out, const char *words);
/* Words broken at blanks, or anywhere where one alone is too long; the first line is indented by
 * `first`, all others by `rest`. */
void page_paragraph(struct text *out, size_t first, size_t rest, const char *words);
/* A paragraph with a blank line before it. */
void page_note(struct text *out, const char *words);
/* Any bytes as text that can be printed: what is no character of a text becomes "?". */
void page_clean(struct text *out, const char *bytes);

enum { TABLE_COLUMNS_MOST = 8 };

struct table_column {
	const char *heading; /* NULL throughout: no heading line */
	enum { COLUMN_LEFT, COLUMN_RIGHT, COLUMN_WRAPS } fit; /* WRAPS: left, broken where too wide */
};

/* Rows of cells under aligned columns. Columns that wrap share what the others leave, and break words
 * only where that is too little for the longest. */
struct table {
	const struct table_column *columns;
	int count;           /* of columns */
	size_t indent;
	struct text cells;   /* row by row, each ended by NUL */
	size_t cell_count;
};

struct table table_start(const struct table_column *columns, int count, size_t indent);
/* Begins the next cell, which the caller adds to until the one after it. */
struct text *table_cell(struct table *table);
/* The next cell in one go. */
void table_words(struct table *table, const char *words);
/* Prints the table and frees what it holds; nothing where it has no row. The last row must be
 * complete. */
void table_print(struct table *table, struct text *out);

#endif
