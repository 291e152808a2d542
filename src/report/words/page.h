/* A page of text: 80 columns, headings, paragraphs, tables. Texts of the user may have any
 * character; widths are counted in columns. No line ends in a blank. */
#ifndef REPORT_WORDS_PAGE_H
#define REPORT_WORDS_PAGE_H

#include "base/sink.h"

#include <stdbool.h>

enum { PAGE_COLUMNS = 80 };

/* A blank at which no line is broken. */
#define PAGE_TIE '\t'

/* The head of a part: "Shopping ------ Herb court", as wide as the page, with a blank line before
 * it. Words that take more than a line are broken, without a rule. */
void page_rule(struct sink *out, const char *title, const char *of);
/* An underlined heading with a blank line before it. */
void page_heading(struct sink *out, const char *words);
/* Words broken at blanks, or within a word that is longer than a line; the first line is
 * indented by `first`, all others by `rest`. */
void page_paragraph(struct sink *out, size_t first, size_t rest, const char *words);
/* A paragraph with a blank line before it. */
void page_note(struct sink *out, const char *words);

enum { TABLE_COLUMNS_MOST = 10 };

struct table_column {
	const char *heading; /* NULL throughout: no heading line */
	/* WRAPS: left, broken where too wide */
	enum { COLUMN_LEFT, COLUMN_RIGHT, COLUMN_WRAPS } fit;
};

/* Rows of cells under aligned columns. Columns that wrap share what the others leave, and break
 * words only where the longest does not fit. All rows are asked for twice, to be measured and
 * to be printed; only one is held at a time. */
struct table {
	const struct table_column *columns;
	int count; /* of columns */
	size_t indent;
	/* Fills in the cells of the next row, valid until the one after it; false after the
	 * last. Then the first row comes again. Where cells[1] is NULL the first is a paragraph
	 * across all columns. */
	bool (*next)(struct table *table, const char *cells[]);
	size_t across; /* how far such a paragraph is indented */
};

/* Prints the table; nothing where it has no row. */
void table_print(struct table *table, struct sink *out);

/* A table whose rows are made by hand. Start with hand_table. */
struct hand_table {
	struct table table; /* first */
	struct text rows;   /* of each how many cells it has, as a byte; each cell ended by NUL */
	size_t at;          /* in bytes, of the next row */
};

struct hand_table hand_table(const struct table_column *columns, int count, size_t indent);
/* Adds a copy of a row of `count` cells, which must be as many as the columns. */
void hand_table_add(struct hand_table *table, const char *const *cells, int count);
#define TABLE_ROW(table, ...) hand_table_add((table), (const char *const[]){ __VA_ARGS__ }, \
	(int)(sizeof((const char *const[]){ __VA_ARGS__ }) / sizeof(const char *)))
/* Adds a paragraph across all columns. */
void hand_table_across(struct hand_table *table, const char *words);
/* Prints the table and frees what it holds. */
void hand_table_print(struct hand_table *table, struct sink *out);

#endif
