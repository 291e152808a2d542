/* Days of the calendar, as they are typed: 2026-06-21. */
#ifndef BASE_DATE_H
#define BASE_DATE_H

#include <stdbool.h>

/* A day that there is, from 1901-01-01 to 2099-12-31: every fourth year of those is a leap year. */
struct date {
	int year, month, day;
};
enum { YEAR_LEAST = 1901, YEAR_MOST = 2099, MONTHS = 12 };

/* All of text as YYYY-MM-DD; false, *date untouched, where it is no such day. */
bool date_read(const char *text, struct date *date);
/* The Julian day at noon of it, universal time: whole days counted from noon, 2,451,545 for
 * 2000-01-01. */
int date_julian(struct date date);

enum { DATE_SIZE = 12 };
/* "2026-06-21". */
void date_write(struct date date, char out[DATE_SIZE]);

#endif
