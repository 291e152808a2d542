/* Words of labour: how much there is to do, at which rate, and who gave that. */
#ifndef REPORT_WORDS_LABOUR_WORDS_H
#define REPORT_WORDS_LABOUR_WORDS_H

#include "report/words/page.h"
#include "report/words/words.h"

/* "set 6 posts", "dig 37.5 cu ft", "set 13 ft of edging". */
const char *labour_words(const struct report *report, const struct labour *labour);
/* What the kind is counted in: "each", "m", "m2" or "m3". */
const char *labour_unit(enum attribute kind);
/* "rate dig N h per cu-ft": the line of a plot that gives a rate, in its units. */
const char *labour_line(const struct report *report, enum attribute kind);
/* "0.062 h per cu ft": the hours by the quantity, in the plot's units. */
const char *labour_rate(const struct report *report, const struct labour *labour);
/* Who gives the rate: "the plot", "the price book", "usual *"; "" where nobody does. */
const char *labour_source(const struct labour *labour);

/* "18 ft", "5.4 m": a way of a barrow, to whole feet or 100 mm. */
const char *word_way(const struct report *report, nm way);

/* "3.4 hours"; "2.5 days". */
const char *word_hours(const struct report *report, double hours);
const char *word_days(const struct report *report, double days);

#endif
