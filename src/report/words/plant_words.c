#include "report/words/plant_words.h"
#include "base/date.h"

const char *month_name(int month)
{
	static const char *const names[] = { "January", "February", "March", "April", "May",
		"June", "July", "August", "September", "October", "November", "December" };

	return names[month - 1];
}

int plant_first_month(const struct plant_sum *sum)
{
	return sum->from ? sum->from : sum->until;
}

int plant_last_month(const struct plant_sum *sum)
{
	return sum->until ? sum->until : sum->from;
}

#define MULCHED "weed; top up the mulch, clear of the stems"
#define RESTING "no feed until growth begins; firm what frost or wind has lifted"

const struct care_words care_words[CARES] = {
	[CARE_PLANTED] = { "When planted",
		"water in; then every second or third day for two weeks where it does not rain",
		NULL, NULL },
	[CARE_WEEKLY] = { "Spring and early summer",
		"water once a week as deep as the roots go, 1 to 1 1/2 in with the rain; weed",
		"water once a week as deep as the roots go, 25 to 40 mm with the rain; weed",
		"weed" },
	[CARE_SUMMER] = { "Summer and early autumn",
		"water each ten days in dry weather; " MULCHED, NULL, MULCHED },
	[CARE_REST] = { "Autumn and winter", "water only in drought; " RESTING, NULL, RESTING },
	[CARE_SPRING] = { "The first spring after planting, as growth begins",
		"cut out what is dead; replace what did not take; feed with an inch of compost",
		"cut out what is dead; replace what did not take; feed with 25 mm of compost",
		NULL },
};

/* Months as they are north of the equator, where spring is from March to May. */
enum { MARCH = 3, JUNE = 6, SEPTEMBER = 9, HALF_A_YEAR = 6 };

static int months_on(int month, int by)
{
	return (month - 1 + by) % MONTHS + 1;
}

/* How it is watered so many months after planting. */
static enum care care_of(int planted, int after)
{
	int month = months_on(planted, after);

	if (after == 0)
		return CARE_PLANTED;
	if (month < MARCH || month > SEPTEMBER)
		return CARE_REST;
	return month <= JUNE || after == 1 ? CARE_WEEKLY : CARE_SUMMER;
}

/* Adds a month, to the last span where that is of the same care. Returns how many there are. */
static int span_add(struct care_span *spans, int count, enum care care, int after)
{
	struct care_span *last = &spans[count - 1];

	if (count > 0 && last->care == care) {
		last->until = after;
		return count;
	}
	spans[count] = (struct care_span){ care, after, after };
	return count + 1;
}

int first_year(int month, bool is_south, struct care_span *spans)
{
	int planted = is_south ? months_on(month, HALF_A_YEAR) : month, count = 0;

	for (int after = 0; after <= MONTHS; after++) {
		if (after > 0 && months_on(planted, after) == MARCH)
			count = span_add(spans, count, CARE_SPRING, after);
		if (after < MONTHS)
			count = span_add(spans, count, care_of(planted, after), after);
	}
	return count;
}
