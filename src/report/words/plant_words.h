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
	CARE_WEEKLY,  /* March to June; the month after planting until September too */
	CARE_SUMMER,  /* July to September */
	CARE_REST,    /* October to February */
	CARE_SPRING,  /* once, in March, as growth begins again */
	CARES
};
struct care_words {
	const char *season;         /* where no month of planting is told */
	const char *words, *metric; /* metric NULL: the same */
	const char *drip;           /* on drip lines, once it is told who gives the water; NULL:
	                               the same */
};
extern const struct care_words care_words[CARES];

/* The months of one care: so many after that of planting, 0 to 12. */
struct care_span {
	enum care care;
	int from, until;
};
enum { CARE_SPANS_MOST = 8 };

/* The first year after planting in a month, 1 to 12, in the order of time; months above are those
 * north of the equator, south of it they come half a year later. Returns how many spans there
 * are. */
int first_year(int month, bool is_south, struct care_span *spans);

#endif
