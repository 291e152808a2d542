/* What is said of the finished ground, in the text and on drawings. */
#ifndef REPORT_DRAWING_FINISHED_H
#define REPORT_DRAWING_FINISHED_H

#include "report/words/words.h"

/* "The finished ground falls 2 % towards 135 degrees from true north, down on the plan, from 8 in
 * below the string at 12 ft across, 0 in down."; NULL where the plot tells none that counts. */
const char *finished_words(const struct report *report);

#endif
