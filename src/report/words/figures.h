/* The words for people of declared figures (takeoff/common/figure.h). */
#ifndef REPORT_WORDS_FIGURES_H
#define REPORT_WORDS_FIGURES_H

#include "report/words/report.h"

/* The words of a figure, in a cell of the text or on the panel, in report->words. */
const char *figure_words(const struct report *report, const struct figure *figure, const void *row);
/* A word's heading in the text, and its label on the panel; where it has none, its key. */
const char *word_heading(const struct word *word);
const char *word_label(const struct word *word);

#endif
