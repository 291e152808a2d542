#include "report/words/plant_words.h"

const char *month_name(int month)
{
	static const char *const names[] = { "January", "February", "March", "April", "May",
		"June", "July", "August", "September", "October", "November", "December" };

	return names[month - 1];
}

const struct first_year_step first_year_steps[] = {
	{ 0, "water in; then every second or third day for two weeks where it does not rain",
		NULL },
	{ 1, "water once a week as deep as the roots go, 1 to 1 1/2 in with the rain; weed",
		"water once a week as deep as the roots go, 25 to 40 mm with the rain; weed" },
	{ 3, "water each ten days in dry weather; weed; top up the mulch, clear of the stems",
		NULL },
	{ 6, "water only in drought; no feed from now on until growth begins again; firm what "
		"wind or frost has lifted", NULL },
	{ 12, "cut out what is dead; replace what did not take; feed with an inch of compost",
		"cut out what is dead; replace what did not take; feed with 25 mm of compost" },
};
const int first_year_step_count = sizeof first_year_steps / sizeof *first_year_steps;
