/* Words about watering that more than one view has. */
#ifndef REPORT_WORDS_WATER_WORDS_H
#define REPORT_WORDS_WATER_WORDS_H

#include "report/words/words.h"

/* How many months ask for water, 0 to MONTHS; in the others the timer does not run. */
int water_months(const struct report *report);
/* How new plants get their water in their first two weeks: "water in by hand, then let the timer
 * run 3 times a week, not 2, for two weeks, as many minutes each time". Every second or third day,
 * as by hand, with no more than half as much again as in another week: from one run a week half
 * the minutes each time, from two as many, from three or more as ever. Common practice, no
 * published source. By hand where no month asks for water. */
const char *water_new_words(const struct report *report);
/* Where all months ask for as much, or for nothing: that they do, and whether any is told. "":
 * they do not. */
const char *water_even_words(const struct report *report);

#endif
