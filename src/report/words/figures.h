/* The values of declared figures (takeoff/common/figure.h), and their words for people. */
#ifndef REPORT_WORDS_FIGURES_H
#define REPORT_WORDS_FIGURES_H

#include "report/words/groups.h"
#include "report/words/report.h"

/* Of a COUNT, LENGTH, INCHES, MONEY, WORD, NUMBERED, REGION or TRUTH. */
int64_t figure_whole(const struct figure *figure, const void *row);
/* Of an AREA, VOLUME, WEIGHT or NUMBER. */
double figure_real(const struct figure *figure, const void *row);
const char *figure_text(const struct figure *figure, const void *row);
/* Of a LENGTHS, CUTS or ROWS: the first, *count of them. */
const void *figure_rows(const struct figure *figure, const void *row, int *count);
/* The field itself. */
const void *figure_field(const struct figure *figure, const void *row);
bool figure_is_none(const struct figure *figure, const void *row);
/* True where a figure that the row needs is 0: it is in no view. */
bool row_is_left_out(const struct figure_table *table, const void *row);

/* Rows of a table that are alike: equal in all declared figures but region, entry and cuts. */
groups_compare rows_compare; /* context: the table */
struct groups rows_groups(const struct figure_table *table, const void *rows, int count);

/* The words of a figure in a cell of the text, with heading, or on the panel, in report->words. A NUMBERED
 * one is the row `number`, from 1. */
const char *figure_words(const struct report *report, const struct figure *figure, const void *row,
	int number);
/* A word as the text has it, as the panel has it. */
const char *word_heading(const struct word *word);
const char *word_label(const struct word *word);

#endif
