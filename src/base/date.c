#include "base/date.h"
#include "base/number.h"

#include <stdio.h>
#include <string.h>

static int days_in_month(int year, int month)
{
	if (month == 2)
		return year % 4 ? 28 : 29;
	return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

/* So many digits; -1 where another character is among them. */
static int digits(const char *text, int count)
{
	int number = 0;

	for (int i = 0; i < count; i++) {
		if (text[i] < '0' || text[i] > '9')
			return -1;
		number = number * 10 + text[i] - '0';
	}
	return number;
}

bool date_read(const char *text, struct date *date)
{
	struct date read;

	if (strlen(text) != strlen("YYYY-MM-DD") || text[4] != '-' || text[7] != '-')
		return false;
	read = (struct date){ digits(text, 4), digits(text + 5, 2), digits(text + 8, 2) };
	if (read.year < YEAR_LEAST || read.year > YEAR_MOST || read.month < 1 ||
		read.month > MONTHS || read.day < 1 ||
		read.day > days_in_month(read.year, read.month))
		return false;
	*date = read;
	return true;
}

int date_julian(struct date date)
{
	static const int before_1901 = 2415385; /* noon of 1900-12-31 */
	int years = date.year - YEAR_LEAST, days = years * 365 + years / 4;

	for (int month = 1; month < date.month; month++)
		days += days_in_month(date.year, month);
	return before_1901 + days + date.day;
}

void date_write(struct date date, char out[DATE_SIZE])
{
	snprintf(out, DATE_SIZE, "%04d-%02d-%02d", held(date.year, 0, 9999),
		held(date.month, 0, 99), held(date.day, 0, 99));
}
