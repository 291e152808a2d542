/* Words about watering that more than one view has. */
#ifndef REPORT_WORDS_WATER_WORDS_H
#define REPORT_WORDS_WATER_WORDS_H

#include "report/words/words.h"

/* How the timer runs for new plants in their first two weeks: "3 times a week, not 2, for two
 * weeks, as many minutes each time". Every second or third day, as by hand: common practice, no
 * published source. */
const char *water_new_words(const struct report *report);
/* Where all months ask for as much: that they do, and whether any is told. "": they do not. */
const char *water_even_words(const struct report *report);

#endif
