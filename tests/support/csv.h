/* Comma-separated values read back by a general reader, the csv module of Python's library. One
 * process of it reads all tables of a test and ends with it; SIGPIPE is ignored meanwhile. */
#ifndef SUPPORT_CSV_H
#define SUPPORT_CSV_H

#include "base/text.h"
#include "support/garden.h"

#include <cjson/cJSON.h>

/* The records as an array of arrays of strings; the caller deletes it. Fails the test where the
 * reader, which is told to be strict, does not take it, or has ended. */
cJSON *csv_records(const struct text *csv);
/* Counts the garden, prints its table into *text in place of what is there and reads that: an array
 * of rows, each an object of strings by the columns' names. The caller deletes it. */
cJSON *csv_of(struct garden *garden, struct text *text);
/* A field of a row; fails the test where there is none. */
const char *csv_get(const cJSON *row, const char *column);
/* The same of a number; not a number where it is empty. Fails the test where it is written in
 * another way than plain. */
double csv_number(const cJSON *row, const char *column);
/* Fails the test unless the field is that. */
void csv_is(const cJSON *row, const char *column, const char *expected);
/* What a spreadsheet makes of a column. */
double csv_sum(const cJSON *rows, const char *column);

#endif
