/* Words of the order of work: what a step is called, what is done, with which tools. They name
 * only what the plot has. */
#ifndef REPORT_WORDS_WORK_WORDS_H
#define REPORT_WORDS_WORK_WORDS_H

#include "report/words/words.h"

/* "Dig, post holes with the rest". */
const char *step_title(const struct report *report, enum work_step step);
/* Sentences. */
const char *step_doing(const struct report *report, enum work_step step);
/* "spade, pick, barrow, level": the tools of all steps that are planned, each once. */
const char *work_tools(const struct report *report);

/* Goods and hire that the plot's work needs and nobody can reckon: "string and stakes, marking
 * paint". */
const char *uncounted_words(const struct report *report);

#endif
