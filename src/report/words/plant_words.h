/* Words about plants. */
#ifndef REPORT_WORDS_PLANT_WORDS_H
#define REPORT_WORDS_PLANT_WORDS_H

#include "report/words/words.h"

/* "January", 1 to 12. */
const char *month_name(int month);

/* The months in which a kind is planted, 1 to 12: one that is told is both. 0: none is. */
int plant_first_month(const struct plant_sum *sum);
int plant_last_month(const struct plant_sum *sum);

/* What is to be done in the first year, by the season. Common practice, no published source, but
 * for how much water: 1 to 1 1/2 in a week, Penn State Extension, 2013, as quoted,
 * title not noted. */
enum care {
	CARE_PLANTED, /* the month of planting */
	CARE_WEEKLY,  /* until early summer; the month after planting in summer too */
	CARE_SUMMER,
	CARE_REST,    /* autumn and winter */
	CARE_SPRING,  /* once, as growth begins again */
	CARES
};
struct care_words {
	const char *season;         /* where no month of planting is told */
	const char *words, *metric; /* metric NULL: the same */
};
extern const struct care_words care_words[CARES];

/* The months of one care: so many after that of planting, 0 to 12. */
struct care_span {
	enum care care;
	int from, until;
};
enum { CARE_SPANS_MOST = 8 };

/* The first year after planting in a month, 1 to 12, in the order of time; seasons south of the
 * equator come half a year later. Returns how many spans there are. */
int first_year(int month, bool is_south, struct care_span *spans);

#endif
