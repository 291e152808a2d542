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

const struct care_words care_words[CARES] = {
	[CARE_PLANTED] = { "When planted",
		"water in; then every second or third day for two weeks where it does not rain",
		NULL },
	[CARE_WEEKLY] = { "Spring and early summer",
		"water once a week as deep as the roots go, 1 to 1 1/2 in with the rain; weed",
		"water once a week as deep as the roots go, 25 to 40 mm with the rain; weed" },
	[CARE_SUMMER] = { "Summer",
		"water each ten days in dry weather; weed; top up the mulch, clear of the stems",
		NULL },
	[CARE_REST] = { "Autumn and winter",
		"water only in drought; no feed until growth begins; firm what frost or wind has "
		"lifted", NULL },
	[CARE_SPRING] = { "The first spring after planting, as growth begins",
		"cut out what is dead; replace what did not take; feed with an inch of compost",
		"cut out what is dead; replace what did not take; feed with 25 mm of compost" },
};

/* Months as they are north of the equator. */
enum { MARCH = 3, APRIL = 4, JUNE = 6, SEPTEMBER = 9, HALF_A_YEAR = 6 };

static int months_on(int month, int by)
{
	return (month - 1 + by) % MONTHS + 1;
}

/* What was planted from March on has grown for a summer when spring comes; what was planted after
 * September shows in April whether it took. */
static int spring_month(int planted)
{
	return planted >= MARCH && planted <= SEPTEMBER ? MARCH : APRIL;
}

/* How it is watered so many months after planting. */
static enum care care_of(int planted, int after)
{
	int month = months_on(planted, after);

	if (after == 0)
		return CARE_PLANTED;
	if (month < APRIL || month > SEPTEMBER)
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
		bool is_spring = after > 0 && months_on(planted, after) == spring_month(planted);

		if (is_spring)
			count = span_add(spans, count, CARE_SPRING, after);
		/* in March nothing is watered but in drought, and growth begins */
		if (after < MONTHS && !(is_spring && spring_month(planted) == MARCH))
			count = span_add(spans, count, care_of(planted, after), after);
	}
	return count;
}
