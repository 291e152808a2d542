/* Words that depend on what a plot has: a table of phrases, of which those are said whose
 * conditions hold. */
#ifndef REPORT_WORDS_PHRASES_H
#define REPORT_WORDS_PHRASES_H

#include "report/words/words.h"

/* The conditions are sums of FACT(...) (takeoff/work.h). */
struct phrase {
	uint64_t all, any, none; /* all are there; one of these is, unless 0; none of these is */
	const char *words;
	const char *metric;      /* the same where the plot is metric; NULL: the same words */
};

bool phrase_holds(const struct report *report, const struct phrase *phrase);
/* The words in the plot's units. */
const char *phrase_words(const struct report *report, const struct phrase *phrase);

#endif
