/* Words of snags. */
#ifndef REPORT_WORDS_SNAG_WORDS_H
#define REPORT_WORDS_SNAG_WORDS_H

#include "report/words/words.h"

/* "wall-jog". */
const char *snag_word(enum snag_code code);
/* The source of its rule: a publication, or common practice. */
const char *snag_source(enum snag_code code);
/* One sentence, with figures in the plot's units, in report->words. */
const char *snag_sentence(const struct report *report, const struct snag *snag);

#endif
