/* Cautions, once: each has a word, and sentences that say it in full. They are printed in full
 * before all work; at a step there is but the word. */
#ifndef REPORT_WORDS_CAUTION_WORDS_H
#define REPORT_WORDS_CAUTION_WORDS_H

#include "report/words/words.h"

/* Those that apply to the plot, in their order. */

/* The word of the next caution from *at on, which goes past it: start from 0. NULL after the last
 * one. *sentences says it in full. */
const char *caution_next(const struct report *report, int *at, const char **sentences);
/* "services, dust": the words for the steps, 1u << step of each, that are planned; "" where there
 * is none. */
const char *caution_words(const struct report *report, unsigned steps);
/* Whether something at the step takes two people. */
bool caution_takes_two(const struct report *report, const struct planned_step *step);

#endif
