/* Words of advice: what could be changed, and what that spares. */
#ifndef REPORT_WORDS_ADVICE_WORDS_H
#define REPORT_WORDS_ADVICE_WORDS_H

#include "report/words/words.h"
#include "takeoff/advice/advice.h"

/* "B1 and B2 4 ft x 3 ft instead of 5 ft x 3 ft: 16 pieces fewer to saw, 4 blocks more to buy, 120
 * lb less to carry, 18.00 USD less." With ties. */
const char *proposal_sentence(const struct report *report, const struct proposal *proposal);
/* Where on the plan what it is about begins. */
struct place proposal_place(const struct report *report, const struct proposal *proposal);
/* Whether there is anything that advice could be on: a raised bed or a fence. */
bool advice_has_subject(const struct takeoff *takeoff);
/* What is said before all proposals, or where there is none. */
const char *advice_intro(const struct advice *advice);
/* What is said after them; NULL: nothing. */
const char *advice_rest(const struct advice *advice);

#endif
