/* Values and rows of the takeoff as JSON, for the files that print its arrays.
 *
 * Each row of an array is built, printed and freed by itself. Numbers are put in as raw text: cJSON's own
 * printing may choose an exponent or lose digits. Every cJSON value made here belongs to the caller until
 * it is put into another or printed. */
#ifndef REPORT_JSON_JSON_VALUE_H
#define REPORT_JSON_JSON_VALUE_H

#include "base/text.h"
#include "takeoff/takeoff.h"

#include <cjson/cJSON.h>

/* Makes cJSON take its memory from where the program does, so that running out of it is met in one
 * place. */
void json_start(void);

/* At most 9 places, trimmed, never with an exponent. */
cJSON *json_number(double value);
cJSON *json_count(int64_t value);
/* Metres, exact. */
cJSON *json_length(nm value);
cJSON *json_lengths(const nm *list, int how_many);
cJSON *json_size(const struct size *block);
cJSON *json_place(struct place at);
/* Of a barrow, a pickup, a truck. */
cJSON *json_loads(const struct loads *loads);

/* Take over value. */
void json_put(cJSON *object, const char *key, cJSON *value);
void json_put_text(cJSON *object, const char *key, const char *value);
void json_put_letter(cJSON *object, char letter);
/* The region's name; null for NO_REGION. */
void json_put_region(cJSON *object, const char *key, const struct takeoff *takeoff, int region);

/* Prints the value and frees it. */
void json_print(struct text *out, cJSON *value);
/* The same of an object with at least one key whose further keys are printed behind it. */
void json_print_open(struct text *out, cJSON *object);

/* An array printed row by row: `between` stands before each row and the end. */
struct json_rows {
	struct text *out;
	const char *between;
	int64_t printed;
};

/* Opens an array as one more key of an object; `lead` stands before the key. */
struct json_rows json_rows_open(struct text *out, const char *key, const char *lead,
	const char *between);
/* What stands before a row that the caller prints. */
void json_rows_next(struct json_rows *rows);
void json_rows_add(struct json_rows *rows, cJSON *row);
void json_rows_close(struct json_rows *rows);

/* The arrays of the whole takeoff: one row a line. */
struct json_rows json_top_open(struct text *out, const char *key);
void json_top_close(struct json_rows *rows);

#endif
