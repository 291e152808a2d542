/* Words about plants. */
#ifndef REPORT_WORDS_PLANT_WORDS_H
#define REPORT_WORDS_PLANT_WORDS_H

#include "report/words/words.h"

/* "January", 1 to 12. */
const char *month_name(int month);

/* What is to be done in the first year, so many months after planting. Common practice, no
 * published source, but for how much water: 1 to 1 1/2 in a week, Penn State Extension, 2013, as
 * quoted, title not noted. */
struct first_year_step {
	int months;
	const char *words, *metric; /* NULL: the same */
};
extern const struct first_year_step first_year_steps[];
extern const int first_year_step_count;

#endif
