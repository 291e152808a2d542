/* Words of the notice of digging. */
#ifndef REPORT_WORDS_NOTICE_WORDS_H
#define REPORT_WORDS_NOTICE_WORDS_H

#include "report/words/words.h"

/* "2231-0417, ends 14 May", with a line to write on for what is not told; "" where the plot has
 * neither a notice nor a service. In report->words. */
const char *notice_words(const struct report *report);
/* "Notice of digging 2231-0417 ends 14 May.", of what is told alone; "" where nothing is. */
const char *notice_sentence(const struct report *report);

#endif
