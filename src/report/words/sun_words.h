/* Words for hours of sun, in report->words. */
#ifndef REPORT_WORDS_SUN_WORDS_H
#define REPORT_WORDS_SUN_WORDS_H

#include "report/words/words.h"
#include "takeoff/sun/sun_hours.h"

/* "6:04", to the nearest minute; "6.3", down to a tenth of an hour, so that what is less than a
 * bound is not shown as it. */
const char *sun_time_words(const struct report *report, double hours);
const char *sun_hours_words(const struct report *report, double hours);
/* From rise to set, both as they are shown: "11:58". */
const char *sun_length_words(const struct report *report, const struct sun_times *times);
/* "6": from how many hours on a place is of a class. */
const char *sun_bound_words(const struct report *report, enum sun_class class);
/* "6 and more", "4 to 6", "under 2": the hours of a class. */
const char *sun_class_hours(const struct report *report, enum sun_class class);
/* A sign for hours of a day: a digit, rounded down, and + from 10 on. */
char sun_sign(double hours);
/* "51.5 north", "0". */
const char *sun_latitude_words(const struct report *report, double latitude);
/* A sentence on houses that cast no shade since their height is not told; NULL: there is none. */
const char *sun_untold_words(const struct report *report);
/* A sentence on what the classes rest on. */
const char *sun_source_words(const struct report *report);
/* A sentence on plants whose need of sun is not checked, since the plot tells no latitude; NULL:
 * there are none. */
const char *sun_unchecked_words(const struct takeoff *takeoff);
/* What is missing of a plot without a latitude, in a sentence without its full stop. */
const char *sun_missing_words(void);
/* Whether there are dials to reckon, and on what: "F1 Sundial, F3 Sundial"; NULL: on nothing. */
const char *sun_dials_words(const struct report *report);
/* A fixture that has a dial, which a level one can be only off the equator. */
bool sun_is_dial(const struct takeoff *takeoff, int region);
/* How many hours before and after noon the sun shines in the year, whole ones: those have lines. */
int sun_dial_hours(double latitude);

#endif
