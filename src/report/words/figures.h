/* Declared figures (takeoff/common/figure.h) compared, and their words for people. */
#ifndef REPORT_WORDS_FIGURES_H
#define REPORT_WORDS_FIGURES_H

#include "report/words/groups.h"
#include "report/words/report.h"

/* Groups of rows that are alike: equal in all declared figures but region, entry and cuts. */
groups_compare rows_compare; /* context: the table */
struct groups rows_groups(const struct figure_table *table, const void *rows, int count);

/* The words of a figure, in a cell of the text or on the panel, in report->words. number: the
 * row's, from 1, for a NUMBERED one. */
const char *figure_words(const struct report *report, const struct figure *figure, const void *row,
	int number);
/* A word's heading in the text, and its label on the panel; where it has none, its key. */
const char *word_heading(const struct word *word);
const char *word_label(const struct word *word);

#endif
