#include "support/quantity.h"
#include "support/garden.h"

#include <check.h>
#include <math.h>
#include <string.h>

#define POUND 0.45359237 /* kg, by definition */

static double unit_read(const char **at)
{
	static const struct { const char *word; double unit; } units[] = {
		{ " cu yd", CUBIC_YARD }, { " cu ft", CUBIC_FOOT }, { " m3", 1 }, { " L", 0.001 },
		{ " sq ft", SQUARE_FOOT }, { " ft", 0.3048 }, { " m2", 1 }, { " kg", 1 },
		{ " g", 0.001 },
		{ " lb", POUND }, { " oz", POUND / 16 }, { " tons", 2000 * POUND },
		{ " ton", 2000 * POUND }, { " t", 1000 },
	};

	for (size_t i = 0; i < sizeof units / sizeof *units; i++) {
		size_t length = strlen(units[i].word);

		if (strncmp(*at, units[i].word, length) == 0) {
			*at += length;
			return units[i].unit;
		}
	}
	return 1;
}

/* "1,234.5", with what its last digit stands for. */
static double number_read(const char **at, double *place)
{
	double value = 0;
	bool is_behind = false;

	*place = 1;
	for (; **at && strchr("0123456789,.", **at); ++*at) {
		if (**at == '.')
			is_behind = true;
		if (**at == '.' || **at == ',')
			continue;
		value = value * 10 + (**at - '0');
		*place /= is_behind ? 10 : 1;
	}
	return value * *place;
}

/* What a number is with what may go on with it: "/2" or " 1/2". */
static double fraction_read(const char **at, double value)
{
	const char *c = *at + 1;
	double place, over = number_read(&c, &place);

	if (**at == '/') {
		*at = c;
		return value / over;
	}
	if (**at != ' ' || *c != '/')
		return value;
	*at = c + 1;
	return value + over / number_read(at, &place);
}

double quantity_read(const char **at, double *half)
{
	double place, value, unit;

	*at += strspn(*at, " ");
	*half = 0;
	if (**at == '-') {
		++*at;
		return 0;
	}
	value = fraction_read(at, number_read(at, &place));
	unit = unit_read(at);
	*half = place / 2 * unit;
	return value * unit;
}

void quantity_is(const char **at, double expected)
{
	const char *start = *at + strspn(*at, " ");
	double half, found = quantity_read(at, &half);

	ck_assert_msg(*at > start, "%.30s: no quantity", start);
	ck_assert_msg(fabs(found - expected) <= half * 1.0001, "%.30s: not %.9g", start, expected);
}
